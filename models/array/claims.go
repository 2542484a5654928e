package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// claim is two arrays beside each other, with the same counters, or one above the
// other:
//
//	       4                       3
//	   ┌───────┐                 ┌─────┐
//	3  ( o o o o )           4   ( o o o )
//	   ( o o o o )               ( o o o )
//	   ( o o o o )               ( o o o )
//	                             ( o o o )
//	   3 × 4 = 12                4 × 3 = 12
//
// A side that is a number stands on a card beside what the array comes to.
type claim struct {
	title   scene.Telling
	sides   [2]arithmetic.ArraySide
	written [2]notation.Line // the sides as they stand in the problem
	plots   [2]plot
	facts   [2]scene.Point // the middles of what the sides come to
	size    int            // of that
	cut     bool           // the array that is whole is split as the other one is
	bottom  int
}

// stage is what is to be seen of a claim.
type stage struct {
	counted bool       // what the sides come to
	turned  bool       // the second array is what the first has just become
	cutting bool       // the cut has just been made
	when    scene.When // in which version the counts are given
}

// tellClaim tells a claim or a comparison of products.
func tellClaim(w arithmetic.Working) telling.Telling {
	a := &claim{title: words.BarVerdict(w.Problem, w.Answer), sides: w.Moves[0].(arithmetic.LayArrays).Sides}
	for i, e := range [2]arithmetic.Expr{w.Problem.Left, w.Problem.Right} {
		a.written[i] = telling.Plain(e, notation.Term{})
	}
	a.place()
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	for _, m := range w.Moves {
		var st telling.Step
		now := stage{when: scene.Always}
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.LayArrays:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayBoth(m)
			st.Symbols = notation.Lines(a.side(0, scene.First), a.side(1, scene.Second))
		case arithmetic.TurnArray:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayTurned(m)
			st.Symbols = notation.Lines(telling.Join(a.side(0, scene.First), "→", a.side(1, scene.Second)))
			now.turned = true
		case arithmetic.CutArray:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCut(m)
			st.Symbols = notation.Lines(telling.Join(a.side(0, scene.First), "=", a.side(1, scene.Second)))
			a.cut, now.cutting = true, true
		case arithmetic.CountArrays:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCounted(m)
			now.counted = true
			for i, side := range m.Sides {
				if side.IsArray {
					st.Symbols.Lines = append(st.Symbols.Lines, a.worked(i))
				}
			}
		case arithmetic.JudgeArrays:
			st.Title, st.Hands, st.Ask, s.Desc, t.Why = words.ArrayJudged(w.Problem, a.sides, m)
			now.counted = true
			st.Symbols = notation.Lines(a.chain(w.Problem, m))
			t.Whole = &scene.Scene{Title: a.title, Desc: s.Desc}
			a.draw(t.Whole, stage{counted: true, when: scene.ShownOnly})
			asked := telling.Join(a.side(0, scene.First), telling.Unknown(), a.side(1, scene.Second))
			if w.Problem.Kind == arithmetic.Claim {
				asked = telling.Join(a.side(0, scene.First), w.Problem.Rel.String(), a.side(1, scene.Second), telling.Unknown())
			}
			telling.Equation(t.Whole, a.bottom, asked, a.chain(w.Problem, m))
		}
		s.Title, s.W, s.H = a.title, scene.PaperW, a.bottom+judgedTall+scene.Margin
		if m, judged := m.(arithmetic.JudgeArrays); judged {
			a.judged(s, m)
		}
		a.draw(s, now)
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	return t
}

func claimRole(i int) scene.Role { return [2]scene.Role{scene.First, scene.Second}[i] }

func (a *claim) pieces() []telling.Piece {
	n, straws := int64(0), int64(0)
	for i, s := range a.sides {
		if s.IsArray {
			n += s.Total
			straws += int64(len(a.plots[i].rows) + len(a.plots[i].cols) - 2)
		}
	}
	list := []telling.Piece{{Name: words.Things(words.Counters, n), Count: n}}
	if straws > 0 {
		list = append(list, telling.Piece{Name: words.Things("straw", straws), Count: straws})
	}
	return list
}

// side writes one side as it stands in the problem, in one role.
func (a *claim) side(i int, role scene.Role) notation.Line {
	line := slices.Clone(a.written[i])
	for k := range line {
		if line[k].Kind == notation.Num {
			line[k].Role = role
		}
	}
	return line
}

// worked writes what a side comes to, by way of its parts.
func (a *claim) worked(i int) notation.Line {
	line := a.side(i, claimRole(i))
	if s := a.sides[i]; s.Split() {
		line = telling.Join(line, "=", telling.Counts("+", claimRole(i), s.Parts...))
	}
	return telling.Join(line, "=", a.total(i))
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
