package chart

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellWalk tells a sum or difference as steps on the chart: a row for every ten, a
// cell for every one.
//
//	34
//	 v
//	44
//	 v
//	54 > 55 > 56 > 57 > 58 > 59
func tellWalk(w arithmetic.Working) telling.Telling {
	p := w.Problem
	find := w.Moves[0].(arithmetic.FindOnChart)
	end, _ := w.Answer.Number.Int64()
	zero := find.At == 0 || end == 0
	b := lay(zero)
	t := telling.Draft{Problem: p, Answer: w.Answer}
	said := words.ChartWalk{Problem: p, Find: find, End: end}
	b.light(0, find.At, scene.First, scene.OfFirst, find.At, false)
	t.Step(said.Start(), t.Asked())
	last := len(w.Moves) - 1
	for i, m := range w.Moves[1:] {
		step, walk := i+1, m.(arithmetic.WalkChart)
		var arrows []scene.Item
		at := walk.From
		for _, stop := range walk.Stops {
			arrows = append(arrows, b.arrow(at, stop, walk)...)
			at = stop
		}
		if step == last {
			b.light(step, walk.To, scene.Result, scene.OfAnswer, walk.To, true)
			when(scene.ShownOnly, arrows)
		} else {
			b.under.Until(step, step+1, b.tile(walk.To, scene.Moved, scene.OfNothing, 0))
		}
		b.over.Only(step, arrows...)
		when(scene.ShownOnly, arrows)
		b.over.Finally(arrows...)
		from := telling.Count(walk.From, scene.First)
		if step > 1 {
			from.Role = scene.Result
		}
		t.Step(said.Walk(walk, step == last), telling.Join(from, p.Left.(arithmetic.Operation).Op.String(), telling.Count(walk.By, scene.Second), "=", telling.Count(walk.To, scene.Result)))
	}
	told := t.Close(b.story(zero), b.bottom(), said.Whole(w))
	told.Pieces = []telling.Piece{{Name: words.Things(words.ChartCounter, 1), Count: 1}}
	return told
}

func when(w scene.When, items []scene.Item) {
	for i := range items {
		items[i].When = w
	}
}

// Sizes of the arrow from a number to the next one: it stands between the two.
const (
	headLong, headWide = 12, 8
	textDown, textUp   = 19, 16 // from the middle of a cell to where its number ends, down and up
	textSide           = 21     // and sideways, for two digits
	textWide           = 30     // and for 100
)

// arrow is one step of a walk. One along a row that goes over to the next row leaves
// at the edge of the chart and comes in again at the other; it is worth one all the
// same.
func (b *board) arrow(from, to int64, walk arithmetic.WalkChart) []scene.Item {
	x1, y1 := middle(b.box(from))
	x2, y2 := middle(b.box(to))
	worth := fraction.Whole(walk.Step)
	dir := 1
	if walk.Back {
		dir = -1
	}
	if walk.Step > 1 {
		down, up := textDown, textUp
		if walk.Back {
			down, up = textUp, textDown
		}
		return stroke(scene.Point{X: x1, Y: y1 + dir*down}, scene.Point{X: x2, Y: y2 - dir*up}, worth)
	}
	start, end := x1+dir*besides(from), x2-dir*besides(to)
	if y1 == y2 {
		return stroke(scene.Point{X: start, Y: y1}, scene.Point{X: end, Y: y2}, worth)
	}
	const past = 8 // the edge of the chart
	over := stroke(scene.Point{X: start, Y: y1}, scene.Point{X: x1 + dir*(cellW/2+past), Y: y1}, worth)
	return append(over, stroke(scene.Point{X: x2 - dir*(cellW/2+past), Y: y2}, scene.Point{X: end, Y: y2}, fraction.Fraction{})...)
}

func besides(n int64) int {
	if n == arithmetic.OnChart {
		return textWide
	}
	return textSide
}

// stroke is an arrow from one point to another, straight along or straight down.
func stroke(from, to scene.Point, worth fraction.Fraction) []scene.Item {
	dx, dy := sign(to.X-from.X), sign(to.Y-from.Y)
	base := scene.Point{X: to.X - dx*headLong, Y: to.Y - dy*headLong}
	it := scene.Item{Shape: scene.Line{X1: from.X, Y1: from.Y, X2: base.X, Y2: base.Y}, Role: scene.Second, Finish: scene.Bold, Of: scene.OfSecond, Worth: worth}
	if worth.Sign() == 0 {
		it.Of = scene.OfNothing
	}
	return []scene.Item{it, {
		Shape: scene.Polygon{to, {X: base.X - dy*headWide, Y: base.Y - dx*headWide}, {X: base.X + dy*headWide, Y: base.Y + dx*headWide}},
		Role:  scene.Second, Finish: scene.Deep,
	}}
}

func sign(n int) int {
	switch {
	case n < 0:
		return -1
	case n > 0:
		return 1
	}
	return 0
}
