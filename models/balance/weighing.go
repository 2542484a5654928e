package balance

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// weighing is a claim or a comparison while it is told.
type weighing struct {
	*picture
	problem arithmetic.Problem
	look    arithmetic.Weigh
	lower   int // how far the left pan sinks when the beam is let go
}

// tellWeighed loads both pans while the beam is held, and lets it go. With the
// answer hidden it stays held.
func tellWeighed(p arithmetic.Problem, w arithmetic.Working, l layout) telling.Telling {
	look := w.Moves[2].(arithmetic.Weigh)
	counted := worked(look.Left) || worked(look.Right)
	k := &weighing{place(l, counted, true), p, look, 0}
	switch look.Relation {
	case arithmetic.Greater:
		k.lower = tilt
	case arithmetic.Less:
		k.lower = -tilt
	}
	t := telling.Telling{Answer: w.Answer, Why: words.BalanceWhy(p, look), Pieces: pieces(max(look.Left.Laid(), 1)+look.Right.Laid(), l.cube > 0, false)}
	title := words.LineClaimTitle(p, w.Answer)
	for _, m := range w.Moves {
		var step telling.Step
		var told words.BalanceTold
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.LoadPan:
			told = words.BalanceLoad(m, l.cube > 0)
			step.Symbols = notation.Lines(countedLine(m.Pan))
			k.held(s, scene.Always, m.Side, true)
		case arithmetic.Weigh:
			told = words.BalanceLetGo(p, m)
			step.Symbols = notation.Lines(k.totalsLine(), k.truth())
			k.free(s)
			k.held(s, scene.HiddenOnly, 1, false)
			k.addSign(s, "?", scene.Hidden, scene.HiddenOnly)
		}
		step.Title, step.Hands, step.Ask = told.Title, told.Hands, told.Ask
		s.Title, s.Desc = title, told.Desc
		k.close(s)
		step.Scene = s
		t.Steps = append(t.Steps, step)
	}
	t.Whole = &scene.Scene{Title: title, Desc: words.BalanceDesc(p, look)}
	k.free(t.Whole)
	k.held(t.Whole, scene.HiddenOnly, 1, false)
	k.addSign(t.Whole, "?", scene.Hidden, scene.HiddenOnly)
	telling.Equation(t.Whole, k.table, k.asked(), k.truth())
	return t
}

// side is how a pan is loaded for good.
func (k *weighing) side(side int) loaded {
	pan, of := k.look.Left, scene.OfLeft
	if side == 1 {
		pan, of = k.look.Right, scene.OfRight
	}
	if !worked(k.look.Left) && !worked(k.look.Right) {
		of = scene.OfNth(side) // two numbers, and not two sides
	}
	own := make([]owner, len(pan.Groups))
	for i := range own {
		own[i] = owner{roleOf(side), of}
	}
	return loaded{side: side, owners: own}
}

// held draws the beam held, with the pans loaded up to one of them; moved marks
// that one as just loaded.
func (k *weighing) held(s *scene.Scene, when scene.When, last int, moved bool) {
	k.addBalance(s, 0, true, when)
	for side := range last + 1 {
		p := k.side(side)
		p.when = when
		if moved && side == last {
			for i := range p.owners {
				p.owners[i].role = scene.Moved
			}
		}
		k.addPieces(s, p)
		k.addNames(s, p)
	}
}

// free draws the beam let go, for the version with the answer.
func (k *weighing) free(s *scene.Scene) {
	k.addBalance(s, k.lower, false, scene.ShownOnly)
	for side, lower := range []int{k.lower, -k.lower} {
		p := k.side(side)
		p.when, p.lower = scene.ShownOnly, lower
		k.addPieces(s, p)
		k.addNames(s, p)
		if pan := [...]arithmetic.Pan{k.look.Left, k.look.Right}[side]; worked(pan) {
			k.addTotal(s, p, pan.Value, roleOf(side))
		}
	}
	k.addSign(s, k.look.Relation.String(), scene.Result, scene.ShownOnly)
}

// truth is what truly stands between both sides, as they are written.
func (k *weighing) truth() notation.Line {
	left, right := sideLine(k.look.Left, scene.First, nil), sideLine(k.look.Right, scene.Second, nil)
	return telling.Join(left, k.look.Relation.String(), right)
}

func (k *weighing) asked() notation.Line {
	left, right := sideLine(k.look.Left, scene.First, nil), sideLine(k.look.Right, scene.Second, nil)
	if k.problem.Kind == arithmetic.Claim {
		return telling.Join(notation.W(words.LineIs), left, k.problem.Rel.String(), right, "?")
	}
	return telling.Join(left, telling.Unknown(), right)
}

// totalsLine compares what lies on both pans: 5 < 7.
func (k *weighing) totalsLine() notation.Line {
	return telling.Join(telling.Count(k.look.Left.Value, scene.First), k.look.Relation.String(), telling.Count(k.look.Right.Value, scene.Second))
}

// countedLine is a side and what it comes to: 4 + 1 = 5.
func countedLine(p arithmetic.Pan) notation.Line {
	line := sideLine(p, roleOf(p.Side), nil)
	if !worked(p) {
		return line
	}
	return telling.Join(line, "=", telling.Count(p.Value, roleOf(p.Side)))
}

// pieces are what a lesson needs.
func pieces(count int64, cubes, bag bool) []telling.Piece {
	list := []telling.Piece{{Name: words.BalanceItself, Count: 1}}
	list = append(list, telling.Piece{Name: words.BalancePieces(cubes, count), Count: count})
	if bag {
		list = append(list, telling.Piece{Name: words.BalanceBag, Count: 1})
	}
	return list
}
