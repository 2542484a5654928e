package arithmetic

import "modeler/fraction"

// DrawStretch draws a stretch of number line and marks its ends.
type DrawStretch struct{ Lo, Hi Number }

// CutStretch cuts every whole of the line in equal parts for a fraction, or every
// stretch between two long marks for another number.
type CutStretch struct {
	Nth   int    // of the numbers of the problem, from 0
	Parts int64  // in one long stretch
	Each  Number // one part
	Long  Number // what is cut: a whole, a hundred
	Of    Number // the number that the line was cut for

	// Where the line is cut in larger parts already and these go into them, each
	// of those is cut: every fourth in 2 makes eighths. Into is 0 where not.
	Within Number
	Into   int64
}

// MarkOnLine counts parts from the left end and marks the point they reach.
type MarkOnLine struct {
	Nth    int
	Number Number
	From   Number // where the count begins: the left end of the line
	Counts []Count
}

// Count is so many lengths of one size.
type Count struct {
	Times int64
	Each  Number
}

// LookAtPoints compares the points of two numbers: which is farther right, and
// how far apart they are (0 when it is one point with two names).
type LookAtPoints struct {
	First, Second     Number
	FirstAs, SecondAs Number   // both in common parts, where one of them is not; else the zero value
	Relation          Relation // what truly stands between them
	Gap               Number
}

// Renamed reports whether the two are compared in other parts than they were
// written in.
func (m LookAtPoints) Renamed() bool { return m.FirstAs != Number{} }

// ReadPoints reads the points of a list from left to right.
type ReadPoints struct{ Order []Number }

// Mark is so many parts from 0 as a number: 3 fourths are 3/4.
func (c CutStretch) Mark(count int64) Number {
	n := c.Each
	n.Value = fraction.Must(count*n.Value.Num(), n.Value.Den())
	if c.Of.Form == Mixed {
		return AsMixed(n.Value)
	}
	return n
}

func (DrawStretch) move()  {}
func (CutStretch) move()   {}
func (MarkOnLine) move()   {}
func (LookAtPoints) move() {}
func (ReadPoints) move()   {}

// PlaceOnLine works a Show, an Ordering, or a Comparison or Claim of two numbers
// by marking the numbers on one number line, and says which stretch of the line
// to draw. room is how many units can be told apart across it. Its error is
// [ErrOverflow] when the numbers have no common unit that can be counted.
func PlaceOnLine(p Problem, room int64) (Working, Stretch, error) {
	numbers := p.List
	switch p.Kind {
	case Show:
		n, ok := p.Left.(Number)
		if !ok {
			return Working{}, Stretch{}, errNotOnLine
		}
		numbers = []Number{n}
	case Comparison, Claim:
		a, b, ok := p.Operands()
		if !ok {
			return Working{}, Stretch{}, errNotOnLine
		}
		numbers = []Number{a, b}
	}
	t, err := stretchFor(numbers, room)
	if err != nil {
		return Working{}, t, err
	}
	s := t.Scale
	w := Working{Problem: p, Moves: []Move{DrawStretch{s.WriteShort(t.Lo), s.WriteShort(t.Hi)}}}
	var cuts []CutStretch
	for i, n := range numbers {
		if c, ok := cutFor(t, i, n); ok && (p.Kind == Ordering || !alreadyCut(cuts, c)) {
			// The marks for a number of a list go when it is placed.
			if p.Kind != Ordering {
				c.Within, c.Into = finer(cuts, c)
			}
			cuts = append(cuts, c)
			w.Moves = append(w.Moves, c)
		}
		w.Moves = append(w.Moves, MarkOnLine{i, n, s.WriteShort(t.Lo), counts(t, n)})
	}
	return answerPlaced(w, s, numbers), t, nil
}

func alreadyCut(cuts []CutStretch, c CutStretch) bool {
	for _, was := range cuts {
		if was.Parts == c.Parts {
			return true
		}
	}
	return false
}

// finer is the finest part already cut into which the new parts go evenly, and
// how many of them it holds.
func finer(cuts []CutStretch, c CutStretch) (within Number, into int64) {
	for _, was := range cuts {
		if n := c.Parts / was.Parts; c.Parts%was.Parts == 0 && was.Long == c.Long && (into == 0 || n < into) {
			within, into = was.Each, n
		}
	}
	return within, into
}

// stretchFor chooses the scale and the stretch. Where the written parts are too
// fine to draw, the amounts are placed by their simplest parts.
func stretchFor(numbers []Number, room int64) (Stretch, error) {
	s, err := CommonScale(numbers...)
	var t Stretch
	if err == nil {
		if t = stretchOf(s, unitsOf(s, numbers), room); t.Exact(room) || s.Form != Common && s.Form != Mixed {
			return t, nil
		}
	}
	simple := make([]Number, len(numbers))
	for i, n := range numbers {
		simple[i] = Number{Value: n.Value.Simplest(), Form: Mixed}
	}
	s, err = CommonScale(simple...)
	if err != nil {
		return t, err
	}
	s.Form = Mixed
	return stretchOf(s, unitsOf(s, simple), room), nil
}

func unitsOf(s Scale, numbers []Number) []int64 {
	units := make([]int64, len(numbers))
	for i, n := range numbers {
		units[i] = s.Count(n)
	}
	return units
}

// cutFor is how the line is cut to find a number: a fraction in its own parts, a
// decimal or a whole number by the small marks. ok is false when the parts are
// too many to mark.
func cutFor(t Stretch, nth int, n Number) (c CutStretch, ok bool) {
	if den := n.Value.Den(); n.Form == Common || n.Form == Mixed {
		if den == 1 || t.Scale.Parts%den != 0 || (t.Hi-t.Lo)/(t.Scale.Parts/den) > finestMarks {
			return c, false
		}
		return CutStretch{Nth: nth, Parts: den, Each: Frac(fraction.Must(1, den)), Long: Int(1), Of: n}, true
	}
	if t.Scale.Form == Common || t.Scale.Form == Mixed {
		if den := n.Value.Den(); den > 1 && t.Scale.Parts%den == 0 && (t.Hi-t.Lo)/(t.Scale.Parts/den) <= finestMarks {
			return CutStretch{Nth: nth, Parts: den, Each: InPlaces(1, n.Places), Long: Int(1), Of: n}, true
		}
		return c, false
	}
	if inOwnParts(t, n) {
		return CutStretch{Nth: nth, Parts: n.Value.Den(), Each: InPlaces(1, n.Places), Long: Int(1), Of: n}, true
	}
	if t.Mark == 0 {
		return c, false
	}
	return CutStretch{Nth: nth, Parts: t.Long / t.Mark, Each: t.Scale.WriteShort(t.Mark), Long: t.Scale.WriteShort(t.Long), Of: n}, true
}

// inOwnParts reports whether a decimal that ends in 0 is counted in the parts that
// its last place names: 0.30 in 30 hundredths, and not in 3 tenths, which are 0.3.
func inOwnParts(t Stretch, n Number) bool {
	return n.Form == Decimal && t.Scale.Form == Decimal && t.Lo == 0 && n.Value.Sign() > 0 && n.Value.Num()%10 == 0 &&
		t.Hi/t.Scale.Parts*n.Value.Den() <= finestMarks
}

// fewLengths is how many equal lengths are still counted one by one.
const fewLengths = 12

// counts are the lengths that lead from the left end to a number: wholes and
// then its own parts for a mixed number, its parts for a fraction, one length
// for each place of any other.
func counts(t Stretch, n Number) []Count {
	var list []Count
	add := func(times int64, each Number) {
		if times > 0 {
			list = append(list, Count{times, each})
		}
	}
	den := n.Value.Den()
	switch n.Form {
	case Mixed:
		wholes, part := n.Value.Mixed()
		add(wholes-t.Lo/t.Scale.Parts, Int(1))
		add(part.Num(), Frac(fraction.Must(1, den)))
		return list
	case Common:
		left := n.Value.Num() - t.Lo/t.Scale.Parts*den
		if left > fewLengths && den > 1 {
			add(left/den, Frac(fraction.Must(den, den)))
			left %= den
		}
		add(left, Frac(fraction.Must(1, den)))
		return list
	}
	if inOwnParts(t, n) {
		add(n.Value.Num(), InPlaces(1, n.Places))
		return list
	}
	own := Scale{Parts: den, Form: n.Form, Places: n.Places}
	left := own.Count(n) - t.Lo/t.Scale.Parts*own.Parts
	if t.Scale.Parts == own.Parts {
		left = own.Count(n) - t.Lo
	}
	parts := cutAt(left, 10)
	if len(parts) == 1 {
		// One place alone is counted: a length of 0.3 would say nothing new of 0.3.
		place := roundest(parts)
		add(parts[0]/place, own.WriteShort(place))
		return list
	}
	for _, part := range parts {
		add(1, own.WriteShort(part))
	}
	return list
}

func answerPlaced(w Working, s Scale, numbers []Number) Working {
	switch w.Problem.Kind {
	case Show:
		return w.ends(numbers[0])
	case Ordering:
		order := make([]Number, len(numbers))
		copy(order, numbers)
		sortNumbers(order)
		w.Answer.Order = order
		w.Moves = append(w.Moves, ReadPoints{order})
		return w
	}
	look := compareEndsOf(s, numbers[0], numbers[1])
	w.Moves = append(w.Moves, look)
	w.Answer.Relation, w.Answer.Gap = look.Relation, look.Gap.Value
	w.Answer.True = w.Problem.Kind == Claim && look.Relation == w.Problem.Rel
	return w
}
