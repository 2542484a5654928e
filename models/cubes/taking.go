package cubes

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// stretch is a piece of a train, and the step in which it is taken away; 0 is never.
type stretch struct {
	row, from, n int64
	gone         int
}

// taking is a number in trains from which cubes are taken.
type taking struct {
	*story
	bench
	laid   arithmetic.LayTrains
	pieces []stretch
	rows   int64
}

// tellTaken lays out a number and takes the tens and the ones away.
func (k *story) tellTaken() telling.Telling {
	a := k.takingOf()
	k.told.Pieces = pieces(a.laid.Number)
	equation := a.operands("−")
	asked := telling.Join(equation, "=", telling.Unknown())
	var parts []int64
	for i, m := range k.work.Moves {
		s := &scene.Scene{}
		a.draw(s, i, false)
		switch m := m.(type) {
		case arithmetic.LayTrains:
			k.step(k.said.Lay(m, false), s, nil, asked)
		case arithmetic.TakeTrains:
			parts = append(parts, m.Worth)
			k.step(k.said.TakeTrains(m), s, nil, telling.Join(number(m.From), "−", telling.Count(m.Worth, scene.Moved), "=", number(m.Left)))
		case arithmetic.TakeCubes:
			if m.Count > 0 {
				parts = append(parts, m.Count)
			}
			k.step(k.said.TakeCubes(m), s, nil, telling.Join(number(m.From), "−", telling.Count(m.Count, scene.Moved), "=", number(m.Left)))
		case arithmetic.ReadTrains:
			answered := telling.Join(equation, "=", telling.Count(m.Total, scene.Result))
			t := k.said.Read(m)
			t.Desc = k.said.Ends(m, k.said.HowTaken(parts))
			left, all := &scene.Scene{}, &scene.Scene{}
			a.left(left)
			a.draw(all, len(k.work.Moves), true)
			k.step(t, left, a.posed(), answered)
			k.whole(all, a.posed(), a.bench.bottom(a.rows), t.Desc, asked, answered, answered.Text())
		}
	}
	return k.told
}

// takingOf cuts the trains where cubes will be taken off.
func (k *story) takingOf() *taking {
	a := &taking{story: k}
	gone := map[int64]stretch{} // by row
	for i, m := range k.work.Moves {
		switch m := m.(type) {
		case arithmetic.LayTrains:
			a.laid = m
		case arithmetic.TakeTrains:
			for row := m.Trains; row < m.Trains+m.Count; row++ {
				gone[row] = stretch{row, 0, arithmetic.CubeTrain, i}
			}
		case arithmetic.TakeCubes:
			row := m.Trains
			if !m.Breaks {
				row = a.laid.Tens
			}
			gone[row] = stretch{row, m.Stay, m.Count, i}
		}
	}
	a.rows = a.laid.Tens
	if a.laid.Ones > 0 {
		a.rows++
	}
	for row := range a.rows {
		n := int64(arithmetic.CubeTrain)
		if row == a.laid.Tens {
			n = a.laid.Ones
		}
		g, taken := gone[row]
		if !taken {
			g = stretch{row: row, from: n}
		}
		a.pieces = append(a.pieces, stretch{row: row, n: g.from}, g)
	}
	a.bench = column(a.rows, min(a.laid.Number, arithmetic.CubeTrain))
	k.tall = a.bench.bottom(a.rows) + scene.Margin
	return a
}

// draw draws what lies there after a step: what it takes away is a ghost. kept leaves
// all the ghosts, for the whole story.
func (a *taking) draw(s *scene.Scene, step int, kept bool) {
	for i := 0; i < len(a.pieces); i += 2 {
		stays, goes := a.pieces[i], a.pieces[i+1]
		if goes.n > 0 && step < goes.gone && !kept {
			a.train(s, goes.row, goes.from+goes.n, itemOf(0))
			continue
		}
		a.cubes(s, stays.row, stays.from, stays.n, itemOf(0))
		if goes.n > 0 && (kept || step == goes.gone) {
			a.ghost(s, goes.row, goes.from, goes.n)
			a.bench.label(s, goes.row, goes.from+goes.n, scene.Gone, notation.Line{notation.N("− "+telling.Digits(goes.n), scene.Gone)})
			continue
		}
		a.peg(s, stays.row, stays.n)
	}
}

// left draws what is left, as the answer.
func (a *taking) left(s *scene.Scene) {
	for i := 0; i < len(a.pieces); i += 2 {
		a.train(s, a.pieces[i].row, a.pieces[i].n, ofAnswer)
	}
}

func (a *taking) posed() *scene.Scene {
	s := &scene.Scene{}
	a.number(s, a.laid, itemOf(0))
	return s
}
