package arithmetic

// StartAt is the first move on a number line: a finger on a number.
type StartAt struct {
	At    Number
	Parts []Number    // of the other number, where it is jumped in more than one
	Less  Number      // what the one part is too much: 19 is jumped as 20 − 1; else 0
	As    [][2]Number // decimals that are jumped in the places of another, as given and so written: 0.3 is 0.30
}

// Jump is one hop along the line. A hop back goes to the left.
type Jump struct {
	From, By, To Number
	Back         bool
	Round        bool // it was chosen to land on a round number: the next ten, the next dollar
	Over         bool // it goes too far, and the next hop comes back
	Fix          bool // it takes back what the hop before it went too far
}

// AddJumps adds the hops that lead from one number to another.
type AddJumps struct {
	Hops []Number
	Sum  Number
}

// Recut cuts every whole of the line in the common parts of both fractions, so
// that both can be counted in them: 1/2 is 3/6 and 1/3 is 2/6.
type Recut struct {
	Parts          int64
	Each           Number // one of the common parts
	First, Second  Number // as given
	FirstAs, SecAs Number // in the common parts
}

func (StartAt) move()  {}
func (Jump) move()     {}
func (AddJumps) move() {}
func (Recut) move()    {}

// AddByJumps works Left of an Addition on a number line: from the first number
// by the places of the second, the largest first. 345 + 278 goes 200, 70, 8;
// fractions go by wholes and then parts. The last hop stops at the next ten when
// it would cross it (8 + 6 = 8 + 2 + 4, CCSS 1.OA.C.6). A number just below a round
// one makes it easier: 398 + 17 goes 2 to 400 and then 15; 345 + 19 goes 20, and 1
// back (make a ten, compensate: common practice, no source).
func AddByJumps(p Problem) (Working, error) {
	a, b, s, err := jumpScale(p)
	if err != nil {
		return Working{}, err
	}
	hops := splitJump(s, s.Count(a), s.Count(b), false)
	if easier := byRoundNumber(s, s.Count(a), s.Count(b)); easier != nil && s.Count(a) > 0 {
		hops = easier
	}
	w := begin(p, s, a, b, hops)
	w.Moves = append(w.Moves, trace(s, s.Count(a), hops, false)...)
	return w.ends(s.Write(s.Count(a) + s.Count(b))), nil
}

// SubtractByJumps works Left of a Subtraction on a number line. It jumps back
// from the first number by the places of the second, or counts up from the
// second to the first where that is shorter: when the two are close (their
// difference is at most half of the number taken away, as in 402 − 398) and when
// giving change. Its error is [ErrNegative] or [ErrOverflow].
func SubtractByJumps(p Problem) (Working, error) {
	a, b, s, err := jumpScale(p)
	if err != nil {
		return Working{}, err
	}
	from, by := s.Count(a), s.Count(b)
	if from < by {
		return Working{}, ErrNegative
	}
	gap := from - by
	if countsUp(s, gap, by) {
		w := Working{Problem: p, Moves: []Move{StartAt{At: b, As: inPlaces(s, b, a)}}}
		w.Moves = append(w.Moves, upTo(s, by, from)...)
		return w.ends(s.Write(gap)), nil
	}
	hops := splitJump(s, from, by, true)
	if to, _, near := nearRound(s, by); near && to <= from {
		hops = overAndBack(s, by)
	}
	w := begin(p, s, a, b, hops)
	w.Moves = append(w.Moves, trace(s, from, hops, true)...)
	return w.ends(s.Write(gap)), nil
}

func countsUp(s Scale, gap, by int64) bool {
	if s.Form == Common || s.Form == Mixed || gap == 0 {
		return false
	}
	return gap <= by/2 || s.Form == Money && by > 0
}

// begin is the first move, and for fractions with unlike parts the second.
func begin(p Problem, s Scale, a, b Number, hops []hop) Working {
	start := StartAt{At: a, Parts: partsOfJump(s, b, hops), As: inPlaces(s, a, b)}
	if len(hops) == 2 && hops[1].turn {
		start.Parts, start.Less = start.Parts[:1], s.Write(hops[1].by)
	}
	w := Working{Problem: p, Moves: []Move{start}}
	if s.Form != Common && s.Form != Mixed {
		return w
	}
	if a.Value.Den() == s.Parts && b.Value.Den() == s.Parts || a.Value.IsWhole() || b.Value.IsWhole() {
		return w
	}
	w.Moves = append(w.Moves, Recut{s.Parts, s.Write(1), a, b, s.Write(s.Count(a)), s.Write(s.Count(b))})
	return w
}

// partsOfJump are the parts of a number that is jumped in more than one hop. A
// mixed number keeps its own parts, since the line is not cut in others yet.
func partsOfJump(s Scale, b Number, hops []hop) []Number {
	if len(hops) < 2 {
		return nil
	}
	if wholes, part := b.Value.Mixed(); b.Form == Mixed {
		return []Number{Int(wholes), Frac(part)}
	}
	var parts []Number
	for _, h := range hops {
		parts = append(parts, s.Write(h.by))
	}
	return parts
}

// inPlaces are the numbers that are written in more places to be jumped.
func inPlaces(s Scale, numbers ...Number) [][2]Number {
	var list [][2]Number
	for _, n := range numbers {
		if as := s.Write(s.Count(n)); s.Form == Decimal && as != n {
			list = append(list, [2]Number{n, as})
		}
	}
	return list
}

func (w Working) ends(n Number) Working {
	w.Answer.Number, w.Answer.Simplest = n, FinalName(n)
	return w
}

// jumpScale are the two numbers of a problem and the units they are jumped in.
func jumpScale(p Problem) (a, b Number, s Scale, err error) {
	a, b, ok := p.Operands()
	if !ok {
		return a, b, s, errNotOnLine
	}
	s, err = CommonScale(a, b)
	if err == nil && s.Count(a)+s.Count(b) < s.Count(a) {
		err = ErrOverflow
	}
	return a, b, s, err
}

// trace turns hops, in units, into moves.
func trace(s Scale, at int64, hops []hop, back bool) []Move {
	var moves []Move
	for i, h := range hops {
		to, back := at+h.by, back != h.turn
		if back {
			to = at - h.by
		}
		over := i+1 < len(hops) && hops[i+1].turn
		moves = append(moves, Jump{From: s.Write(at), By: s.Write(h.by), To: s.Write(to), Back: back, Round: h.round, Over: over, Fix: h.turn})
		at = to
	}
	return moves
}

// upTo counts up from one number to another and adds the hops.
func upTo(s Scale, from, to int64) []Move {
	hops := countUp(from, to)
	moves := trace(s, from, hops, false)
	if len(hops) > 1 {
		total := AddJumps{Sum: s.Write(to - from)}
		for _, h := range hops {
			total.Hops = append(total.Hops, s.Write(h.by))
		}
		moves = append(moves, total)
	}
	return moves
}
