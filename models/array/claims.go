package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// claim is two arrays beside each other, with the same counters:
//
//	       4                       3
//	   ┌───────┐                 ┌─────┐
//	3  ( o o o o )           4   ( o o o )
//	   ( o o o o )               ( o o o )
//	   ( o o o o )               ( o o o )
//	                             ( o o o )
//	   3 × 4 = 12                4 × 3 = 12
type claim struct {
	title scene.Telling
	sides [2]arithmetic.ArraySide
	plots [2]plot
}

const (
	claimRows  = 12  // of either array
	claimCols  = 20  // of both together
	claimSide  = 180 // room for a side that is a number
	claimNames = 76  // for the number of rows beside an array
)

// tellClaim tells a claim or a comparison of products.
func tellClaim(w arithmetic.Working) telling.Telling {
	a := &claim{title: words.BarVerdict(w.Problem, w.Answer), sides: w.Moves[0].(arithmetic.LayArrays).Sides}
	a.place()
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	for _, m := range w.Moves {
		var st telling.Step
		counted := false
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.LayArrays:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayBoth(m)
			st.Symbols = notation.Lines(a.side(0, scene.First), a.side(1, scene.Second))
		case arithmetic.TurnArray:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayTurned(m)
			st.Symbols = notation.Lines(telling.Join(a.side(0, scene.First), "→", a.side(1, scene.Second)))
		case arithmetic.CountArrays:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCounted(m)
			counted = true
			for i, side := range m.Sides {
				if side.IsArray {
					st.Symbols.Lines = append(st.Symbols.Lines, telling.Join(a.side(i, claimRole(i)), "=", a.total(i)))
				}
			}
		case arithmetic.JudgeArrays:
			st.Title, st.Hands, st.Ask, s.Desc, t.Why = words.ArrayJudged(w.Problem, a.sides, m)
			counted = true
			st.Symbols = notation.Lines(a.chain(w.Problem, m))
			t.Whole = &scene.Scene{Title: a.title, Desc: s.Desc}
			a.draw(t.Whole, true, false, scene.ShownOnly)
			asked := telling.Join(a.side(0, scene.First), telling.Unknown(), a.side(1, scene.Second))
			if w.Problem.Kind == arithmetic.Claim {
				asked = telling.Join(a.side(0, scene.First), w.Problem.Rel.String(), a.side(1, scene.Second), telling.Unknown())
			}
			telling.Equation(t.Whole, a.bottom(), asked, a.chain(w.Problem, m))
		}
		s.Title, s.W, s.H = a.title, scene.PaperW, a.bottom()+scene.Margin
		_, turned := m.(arithmetic.TurnArray)
		a.draw(s, counted, turned, scene.Always)
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	return t
}

func claimRole(i int) scene.Role { return [2]scene.Role{scene.First, scene.Second}[i] }

// place gives both arrays the largest counters with which they and their names
// stand beside each other.
func (a *claim) place() {
	const largest, least, apart, height = 56, 16, 8, 420
	rows := 1
	for _, s := range a.sides {
		rows = max(rows, int(s.Rows))
	}
	avail := scene.PaperW - 2*scene.Margin
	size := min(largest, height/rows-apart-rowGap) &^ 1
	for size > least && a.width(size, apart) > avail {
		size -= 2
	}
	left := scene.Margin + (avail-a.width(size, apart))/2
	for i, s := range a.sides {
		p, wide := &a.plots[i], a.sideWidth(i)
		if s.IsArray {
			p.place(left + claimNames + (wide-claimNames-p.width())/2)
		} else {
			p.x, p.w = []int{left}, []int{wide}
		}
		left += wide + factGap
	}
}

// width sizes both arrays and is the room that they take.
func (a *claim) width(size, apart int) int {
	sum := factGap
	for i, s := range a.sides {
		if s.IsArray {
			a.plots[i] = plot{
				look: inCounters, value: 1, size: size, step: size + apart, rise: size + apart + rowGap,
				rows: []int64{s.Rows}, cols: []int64{s.Cols}, parts: []int64{s.Total},
			}
			a.plots[i].measure(size+apart, size+apart+rowGap)
		}
		sum += a.sideWidth(i)
	}
	return sum
}

// sideWidth is the room for one side with its names.
func (a *claim) sideWidth(i int) int {
	if !a.sides[i].IsArray {
		return claimSide
	}
	return claimNames + max(a.plots[i].width()+2*bandEdge, a.factWidth(i))
}

// factWidth is the room for what an array comes to.
func (a *claim) factWidth(i int) int {
	s := a.sides[i]
	return scene.Advance(factOf(s.Rows, s.Cols, arithmetic.Grouped(s.Total)), scene.Middle, true)
}

// tall is the height of the higher array.
func (a *claim) tall() int {
	h := 0
	for i, s := range a.sides {
		if s.IsArray {
			h = max(h, a.plots[i].h[0])
		}
	}
	return h
}

func (a *claim) bottom() int { return plotTop + a.tall() + factsTall }

// draw draws both sides, and what they come to in the version of the picture
// that says so. Turned is set when the second array is what the first has just
// become.
func (a *claim) draw(s *scene.Scene, counted, turned bool, when scene.When) {
	y := plotTop + a.tall() + 8 + factsTall/2
	for i, side := range a.sides {
		p, role := &a.plots[i], claimRole(i)
		if !side.IsArray {
			s.Add(captionAt(caption{words: arithmetic.Grouped(side.Total), role: role}, p.x[0]+p.w[0]/2, plotTop+a.tall()/2))
			continue
		}
		b := p.box()
		p.bands(s, int(side.Rows))
		lies := role
		if turned && i == 1 {
			lies = scene.Moved
		}
		p.fill(s, 0, 0, scene.Item{Role: lies, Of: [2]scene.Of{scene.OfLeft, scene.OfRight}[i]})
		p.beside(s, b.Y, b.Bottom(), "", caption{words: arithmetic.Grouped(side.Rows)})
		p.above(s, b.X, b.Right(), scene.Middle, caption{words: arithmetic.Grouped(side.Cols)})
		if !counted {
			continue
		}
		fact := captionAt(caption{factOf(side.Rows, side.Cols, arithmetic.Grouped(side.Total)), role, when}, b.X+b.W/2, y)
		s.Add(fact)
		if when == scene.ShownOnly {
			s.Add(captionAt(caption{factOf(side.Rows, side.Cols, "?"), role, scene.HiddenOnly}, b.X+b.W/2, y))
		}
	}
}

func (a *claim) pieces() []telling.Piece {
	n := int64(0)
	for _, s := range a.sides {
		if s.IsArray {
			n += s.Total
		}
	}
	return []telling.Piece{{Name: words.Things(words.Counters, n), Count: n}}
}

// side writes one side as it stands in the problem.
func (a *claim) side(i int, role scene.Role) notation.Line {
	s := a.sides[i]
	if !s.IsArray {
		return notation.Line{telling.Count(s.Total, role)}
	}
	return telling.Join(telling.Count(s.Rows, role), "×", telling.Count(s.Cols, role))
}

func (a *claim) total(i int) notation.Term {
	return telling.Count(a.sides[i].Total, claimRole(i))
}

// chain is what is true of the two sides by way of what they come to, as in
// 3 × 4 = 12 < 14 = 2 × 7. Of an equality that is not true it says so.
func (a *claim) chain(p arithmetic.Problem, m arithmetic.JudgeArrays) notation.Line {
	if p.Kind == arithmetic.Claim && p.Rel == arithmetic.Equal && m.Relation != arithmetic.Equal {
		return telling.Join(a.side(0, scene.First), "≠", a.side(1, scene.Second))
	}
	line := a.side(0, scene.First)
	if a.sides[0].IsArray {
		line = telling.Join(line, "=", a.total(0))
	}
	if m.Relation != arithmetic.Equal {
		line = telling.Join(line, m.Relation.String(), a.total(1))
	}
	if a.sides[1].IsArray {
		line = telling.Join(line, "=", a.side(1, scene.Second))
	}
	return line
}
