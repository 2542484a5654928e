package cubes

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

// sum is two numbers in trains, beside each other.
type sum struct {
	*story
	side [2]bench
	laid [2]arithmetic.LayTrains
	snap *arithmetic.SnapOnes
	rows int64
}

// tellAdded lays both numbers beside each other and snaps their ones together.
func (k *story) tellAdded() telling.Telling {
	a := k.sumOf()
	read := k.work.Moves[len(k.work.Moves)-1].(arithmetic.ReadTrains)
	k.told.Pieces = pieces(read.Total)
	equation := a.operands("+")
	asked := telling.Join(equation, "=", telling.Unknown())
	answered := telling.Join(equation, "=", telling.Count(read.Total, scene.Result))
	how := ""
	for _, m := range k.work.Moves {
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.LayTrains:
			a.lay(s, 0, itemOf(0))
			if m.Nth == 1 {
				a.lay(s, 1, arrived(itemOf(1)))
				a.label(s, 1, m.Number)
			}
			a.label(s, 0, a.laid[0].Number)
			line := count(a.laid[0].Number, scene.First)
			if m.Nth == 1 {
				line = asked
			}
			k.step(k.said.Lay(m, false), s, nil, line)
		case arithmetic.SnapOnes:
			how = k.said.HowSnapped(m)
			a.snapped(s, itemOf(0), itemOf(1), scene.Moved)
			k.step(k.said.Snap(m), s, a.posedAfter(m),
				telling.Join(number(m.First), "+", telling.Count(m.Over, scene.Moved), "=", number(m.Sum)),
				telling.Join(equation, "=", number(m.More), "+", number(m.Less)))
		case arithmetic.ReadTrains:
			a.ended(s, ofAnswer, ofAnswer)
			t := k.said.Read(m)
			t.Desc = k.said.Ends(m, how)
			k.step(t, s, a.posed(), answered)
		}
	}
	shown := &scene.Scene{}
	a.ended(shown, itemOf(0), itemOf(1))
	title := answered.Text()
	if a.snap != nil && a.snap.Less > 0 {
		answered = telling.Join(equation, "=", number(a.snap.More), "+", number(a.snap.Less), "=", telling.Count(read.Total, scene.Result))
	}
	k.whole(shown, a.posed(), a.bottom()-10, k.said.Ends(read, how), asked, answered, title)
	return k.told
}

// sumOf reads off the moves what there will be, and places it.
func (k *story) sumOf() *sum {
	a := &sum{story: k}
	for _, m := range k.work.Moves {
		switch m := m.(type) {
		case arithmetic.LayTrains:
			a.laid[m.Nth] = m
			rows := m.Tens
			if m.Ones > 0 {
				rows++
			}
			a.rows = max(a.rows, rows)
		case arithmetic.SnapOnes:
			a.snap = &m
		}
	}
	const side, gap = 34, 40
	wide := arithmetic.CubeTrain*side + pegWide
	left := scene.PaperW/2 - (2*wide+gap)/2
	for i := range a.side {
		a.side[i] = bench{x: left + i*(wide+gap), y: scene.Margin, side: side, pitch: side + trainGap - 2}
	}
	k.tall = a.bottom() + scene.Margin - 10
	return a
}

func (a *sum) bottom() int { return a.side[0].bottom(a.rows) + labelTall }

func (a *sum) lay(s *scene.Scene, nth int, it scene.Item) { a.side[nth].number(s, a.laid[nth], it) }

// snapped draws the trains with the ones of both numbers together.
func (a *sum) snapped(s *scene.Scene, first, second scene.Item, over scene.Role) {
	m, moved := a.snap, second
	if over == scene.Moved {
		moved = arrived(second)
	}
	for i, it := range []scene.Item{first, second} {
		for row := range a.laid[i].Tens {
			a.side[i].train(s, row, arithmetic.CubeTrain, it)
		}
	}
	left, right := a.side[0], a.side[1]
	row, beside := a.laid[0].Tens, a.laid[1].Tens
	left.cubes(s, row, 0, m.First, first)
	left.cubes(s, row, m.First, m.Over, moved)
	left.peg(s, row, m.Sum)
	right.train(s, beside, m.Rest, second)
	if first.Of != scene.OfAnswer {
		left.label(s, row, m.Sum, moved.Role, count(m.Over, moved.Role)) // without colors it says which are the second's
		right.cubes(s, beside, m.Rest, m.Over, scene.Item{Role: scene.Gone, Finish: scene.Dashed})
	}
	a.label(s, 0, m.More)
	a.label(s, 1, m.Less)
}

// ended draws the trains as they lie in the end.
func (a *sum) ended(s *scene.Scene, first, second scene.Item) {
	if a.snap != nil {
		a.snapped(s, first, second, second.Role)
		return
	}
	a.lay(s, 0, first)
	a.lay(s, 1, second)
	a.label(s, 0, a.laid[0].Number)
	a.label(s, 1, a.laid[1].Number)
}

func (a *sum) posed() *scene.Scene {
	s := &scene.Scene{}
	a.lay(s, 0, itemOf(0))
	a.lay(s, 1, itemOf(1))
	a.label(s, 0, a.laid[0].Number)
	a.label(s, 1, a.laid[1].Number)
	return s
}

// posedAfter is the problem where a step has brought all cubes together, and nil where
// it has not.
func (a *sum) posedAfter(m arithmetic.SnapOnes) *scene.Scene {
	if m.Less > 0 {
		return nil
	}
	return a.posed()
}

// label writes under the trains of a number how many cubes lie there.
func (a *sum) label(s *scene.Scene, nth int, n int64) {
	b := a.side[nth]
	x := b.x + arithmetic.CubeTrain*b.side/2
	s.Add(telling.Text(scene.Ink, x, b.bottom(a.rows)+labelTall/2, scene.Middle, telling.Digits(n)))
}
