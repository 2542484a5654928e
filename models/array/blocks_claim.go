package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// blocksClaim is two sides of three factors one above the other, each with what is
// multiplied first marked in it, and what it comes to beside the other:
//
//	┌─────┐ ┌─────┐
//	│ ooo │ │ ooo │        (2 × 3) × 4 = 6 × 4 = 24
//	└─────┘ └─────┘
//	┌─────┐ ┌─────┐
//	│ ooo │ │ ooo │        2 × (3 × 4) = 2 × 12 = 24
//	└─────┘ └─────┘
type blocksClaim struct {
	title   scene.Telling
	compare arithmetic.CompareBlocks
	written [2]notation.Line
	places  [2]blockPlaces
	lines   [2]int // the heights of what is written under each side
	bottom  int
}

// tellBlocksClaim tells a claim about three factors.
func tellBlocksClaim(w arithmetic.Working) telling.Telling {
	a := &blocksClaim{title: words.BarVerdict(w.Problem, w.Answer)}
	a.compare = w.Moves[len(w.Moves)-1].(arithmetic.CompareBlocks)
	for i, e := range [2]arithmetic.Expr{w.Problem.Left, w.Problem.Right} {
		a.written[i] = bracketedFactors(e)
	}
	a.place()
	said := words.ArrayBlocksClaim{Problem: w.Problem, Compare: a.compare}
	for i, l := range a.written {
		said.Written[i] = l.Text()
	}
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	side := 0
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW, H: a.bottom + judgedTall + scene.Margin}
		switch m := m.(type) {
		case arithmetic.LayBlocks:
			st.Title, st.Hands, st.Ask, s.Desc = said.Side(side)
			st.Symbols = notation.Lines(a.worked(side, false))
			a.draw(s, side+1, true, scene.Always)
			side++
		case arithmetic.CompareBlocks:
			st.Title, st.Hands, st.Ask, s.Desc, t.Why = said.Judged()
			st.Symbols = notation.Lines(a.chain(w.Problem))
			a.draw(s, 2, false, scene.Always)
			a.judged(s, m)
			t.Whole = a.whole(w.Problem, s.Desc)
		}
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	return t
}

// bracketedFactors is a product of three with its brackets written, also where
// they could be left out.
func bracketedFactors(e arithmetic.Expr) notation.Line {
	if o, is := e.(arithmetic.Operation); is {
		if left, is := o.Left.(arithmetic.Operation); is && left.Op == arithmetic.Multiply {
			return telling.Join("(", telling.Plain(o.Left, notation.Term{}), ")", o.Op.String(), telling.Plain(o.Right, notation.Term{}))
		}
	}
	return telling.Plain(e, notation.Term{})
}

func (a *blocksClaim) pieces() []telling.Piece {
	n := int64(0)
	for _, s := range a.compare.Sides {
		n += s.Product
	}
	return []telling.Piece{{Name: words.Things(words.Counters, n), Count: n}}
}

// place puts the second side under the first.
func (a *blocksClaim) place() {
	const each, largest = 320, 34
	top := scene.Margin
	for i, s := range a.compare.Sides {
		p := blockPlaces{Blocks: s.Blocks, role: claimRole(i), of: [2]scene.Of{scene.OfLeft, scene.OfRight}[i]}
		p.laidIn(scene.Box{X: scene.Margin, Y: top, W: scene.PaperW - 2*scene.Margin, H: each}, largest)
		a.places[i] = p
		a.lines[i] = p.bottom + blockFoot + factsTall/2 - 6
		top = a.lines[i] + factsTall/2
	}
	// Both sides have things of one size.
	if a.places[0].step != a.places[1].step || a.places[0].size != a.places[1].size {
		a.alike(min(a.places[0].size, a.places[1].size))
	}
	a.bottom = a.lines[1] + factsTall/2
}

// alike places both sides again with counters of one size.
func (a *blocksClaim) alike(size int) {
	const each = 320
	top := scene.Margin
	for i := range a.places {
		p := &a.places[i]
		p.laidIn(scene.Box{X: scene.Margin, Y: top, W: scene.PaperW - 2*scene.Margin, H: each}, size)
		a.lines[i] = p.bottom + blockFoot + factsTall/2 - 6
		top = a.lines[i] + factsTall/2
	}
}

// fits reports whether both sides have counters, all of one size.
func (a *blocksClaim) fits() bool {
	return a.places[0].look == inCounters && a.places[1].look == inCounters && a.places[0].size == a.places[1].size
}

// worked is (2 × 3) × 4 = 6 × 4 = 24, or ends in a question mark.
func (a *blocksClaim) worked(i int, asked bool) notation.Line {
	s, role := a.compare.Sides[i], claimRole(i)
	line := a.side(i)
	if s.Three {
		first, third := telling.Count(s.Pair.Product, role), telling.Count(s.Cols, role)
		if s.Pair.Pair == arithmetic.RowsInAll {
			line = telling.Join(line, "=", first, "×", third)
		} else {
			line = telling.Join(line, "=", telling.Count(s.Blocks.Blocks, role), "×", first)
		}
	}
	if asked {
		return telling.Join(line, "=", telling.Unknown())
	}
	return telling.Join(line, "=", telling.Count(s.Product, role))
}

// side is one side as it stands in the problem, in its role.
func (a *blocksClaim) side(i int) notation.Line {
	c := claim{written: a.written}
	return c.side(i, claimRole(i))
}

// draw draws the first sides and what they come to; marked are those things that
// are counted first on the newest of them.
func (a *blocksClaim) draw(s *scene.Scene, count int, marked bool, when scene.When) {
	for i := range count {
		mark := lit(noneLit)
		if three := a.compare.Sides[i]; marked && i == count-1 && three.Three {
			mark = litBy(three.Pair.Pair)
		}
		a.places[i].draw(s, mark)
		write := func(l notation.Line, when scene.When) {
			t := scene.Text{X: scene.PaperW / 2, Y: a.lines[i], Size: scene.Middle, Bold: true, Runs: l.Runs()}
			for t.Width() > scene.PaperW-2*scene.Margin && t.Size > scene.Small {
				t.Size--
			}
			s.Add(scene.Item{Shape: t, Role: claimRole(i), When: when})
		}
		write(a.worked(i, false), when)
		if when == scene.ShownOnly {
			write(a.worked(i, true), scene.HiddenOnly)
		}
	}
}

// judged writes what stands between what the two sides come to.
func (a *blocksClaim) judged(s *scene.Scene, m arithmetic.CompareBlocks) {
	left, right := telling.Count(m.Sides[0].Product, scene.First), telling.Count(m.Sides[1].Product, scene.Second)
	t := scene.Text{X: scene.PaperW / 2, Y: a.bottom + judgedTall/2, Size: scene.Middle, Bold: true}
	t.Runs = telling.Join(left, m.Relation.String(), right).Runs()
	s.Add(scene.Item{Shape: t, When: scene.ShownOnly})
	t.Runs = telling.Join(left, telling.Unknown(), right).Runs()
	s.Add(scene.Item{Shape: t, When: scene.HiddenOnly})
}

// chain is what is true of the two sides.
func (a *blocksClaim) chain(p arithmetic.Problem) notation.Line {
	sign := a.compare.Relation.String()
	if p.Kind == arithmetic.Claim && p.Rel == arithmetic.Equal && a.compare.Relation != arithmetic.Equal {
		sign = "≠"
	}
	return telling.Join(a.side(0), sign, a.side(1))
}

func (a *blocksClaim) whole(p arithmetic.Problem, desc scene.Telling) *scene.Scene {
	s := &scene.Scene{Title: a.title, Desc: desc}
	a.draw(s, 2, false, scene.ShownOnly)
	asked := telling.Join(a.side(0), telling.Unknown(), a.side(1))
	if p.Kind == arithmetic.Claim {
		asked = telling.Join(a.side(0), p.Rel.String(), a.side(1), telling.Unknown())
	}
	telling.Equation(s, a.bottom, asked, a.chain(p))
	return s
}
