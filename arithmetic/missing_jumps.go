package arithmetic

// LookFor is the first move of a problem with a number missing: what is known,
// where it is, and what is asked.
type LookFor struct {
	Op      Op     // Add or Subtract
	Known   Number // the number beside the blank
	Total   Number // what both together come to
	Start   bool   // the blank stands first: it is where the hop begins, not the hop
	OnRight bool   // the operation stands right of the equal sign
}

// CheckJump is the hop of the problem, made from the number that was found.
type CheckJump struct{ Jump }

func (LookFor) move() {}

// FindByJumps works a Missing that has one addition or subtraction with the blank
// on one side and a number on the other. A missing hop is counted up between the
// two known numbers, to the right or to the left; a missing start is found by
// undoing the hop from where it lands, and then checked (CCSS 1.OA.D.8). Its
// error is [ErrNegative] when the missing number would be less than 0.
func FindByJumps(p Problem) (Working, error) {
	look, ok := lookFor(p)
	if !ok {
		return Working{}, errNotOnLine
	}
	s, err := CommonScale(look.Known, look.Total)
	if err != nil {
		return Working{}, err
	}
	known, total := s.Count(look.Known), s.Count(look.Total)
	if known+total < known {
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Moves: []Move{look}}
	if look.Start {
		return findStart(w, s, look, known, total)
	}
	if look.Op == Add && known > total || look.Op == Subtract && known < total {
		return Working{}, ErrNegative
	}
	moves := upTo(s, min(known, total), max(known, total))
	if look.Op == Subtract && len(moves) > 0 {
		moves = turned(moves)
	}
	w.Moves = append(w.Moves, moves...)
	return w.ends(s.Write(max(known, total) - min(known, total))), nil
}

func findStart(w Working, s Scale, look LookFor, known, total int64) (Working, error) {
	undoBack := look.Op == Add
	start := total + known
	if undoBack {
		start = total - known
	}
	if start < 0 {
		return Working{}, ErrNegative
	}
	w.Moves = append(w.Moves, trace(s, total, splitJump(s, total, known, undoBack), undoBack)...)
	w.Moves = append(w.Moves, CheckJump{Jump{From: s.Write(start), By: look.Known, To: look.Total, Back: !undoBack}})
	return w.ends(s.Write(start)), nil
}

// turned makes the hops that count up between two numbers into hops that count
// back: from the far end, in the other order.
func turned(moves []Move) []Move {
	var back []Move
	var hops []Number
	for i := len(moves) - 1; i >= 0; i-- {
		if m, ok := moves[i].(Jump); ok {
			back = append(back, Jump{From: m.To, By: m.By, To: m.From, Back: true, Round: len(back) < len(moves)-2})
			hops = append(hops, m.By)
		}
	}
	if sum, ok := moves[len(moves)-1].(AddJumps); ok {
		back = append(back, AddJumps{hops, sum.Sum})
	}
	return back
}

func lookFor(p Problem) (LookFor, bool) {
	op, isOp := p.Left.(Operation)
	total, isNumber := p.Right.(Number)
	right := false
	if !isOp {
		op, isOp = p.Right.(Operation)
		total, isNumber = p.Left.(Number)
		right = true
	}
	if p.Kind != Missing || !isOp || !isNumber || op.Op != Add && op.Op != Subtract {
		return LookFor{}, false
	}
	look := LookFor{Op: op.Op, Total: total, OnRight: right}
	if known, ok := op.Left.(Number); ok {
		look.Known = known
		_, ok = op.Right.(Unknown)
		return look, ok
	}
	known, ok := op.Right.(Number)
	_, blank := op.Left.(Unknown)
	look.Known, look.Start = known, true
	return look, ok && blank
}
