package chart

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellCommon tells the multiples of two numbers with two marks that are told apart
// by their shape: a lit cell and a ring. What has both is a common multiple.
//
//	[ 4 ]  ( 6 )  [(12)]
func tellCommon(w arithmetic.Working) telling.Telling {
	const keyTall, ring = 92, 25 // the line under the chart; the radius of a ring
	b := lay(false)
	met := w.Moves[len(w.Moves)-1].(arithmetic.Meet)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.ChartPair{Problem: w.Problem, Meet: met, List: w.Answer.List}
	rows := met.Rows
	t.Step(said.Start(), telling.Join(telling.Count(rows[0].By, scene.First), ",", telling.Count(rows[1].By, scene.Second)))
	for i, row := range rows {
		role := telling.RoleOf(i)
		var list []int64
		for nth := int64(1); nth <= row.Count; nth++ {
			n := row.Land(nth)
			list = append(list, n)
			if i == 0 {
				b.under.Add(1, b.tile(n, scene.First, scene.OfLeft, row.By))
				continue
			}
			x, y := middle(b.box(n))
			b.under.Add(2, scene.Item{Shape: ringAround(n, x, y, ring), Role: scene.Second, Finish: scene.Outline, Of: scene.OfRight, Worth: fraction.Whole(row.By)})
		}
		t.Step(said.Mark(row), fewOf(list, role))
	}
	for _, n := range met.At {
		b.bold[n], b.veiled[n] = 3+1, true
	}
	least := b.frame(met.At[0], scene.Result)
	least.When = scene.ShownOnly
	b.over.Add(3, least)
	t.Step(said.Both(), telling.Join(telling.Counts(",", scene.Result, w.Answer.List...), ",", notation.W("…")))
	b.key(rows, b.bottom()+keyTall-ring-10, ring)
	asked := telling.Join(telling.Unknown(), ",", telling.Unknown(), ",", telling.Unknown(), ",", notation.W("…"))
	told := closed(t, b.story(false), b.bottom()+keyTall, said.Title(), said.Whole(), asked, telling.Join(telling.Counts(",", scene.Result, w.Answer.List...), ",", notation.W("…")))
	told.Pieces = []telling.Piece{{Name: words.ChartPencils, Count: 2}}
	return told
}

// ringAround is the ring around a number; three digits need a longer one.
func ringAround(n int64, x, y, ring int) scene.Shape {
	const longer = 6
	if n < 100 {
		return scene.Circle{X: x, Y: y, R: ring}
	}
	return scene.Rect{X: x - ring - longer, Y: y - ring, W: 2 * (ring + longer), H: 2 * ring, Round: ring}
}

// fewOf is a list of numbers, or its first ones: 4, 8, 12, 16, 20, …
func fewOf(list []int64, role scene.Role) notation.Line {
	const few = 5
	line := telling.Counts(",", role, list[:min(len(list), few)]...)
	if len(list) > few {
		line = telling.Join(line, ",", notation.W("…"))
	}
	return line
}

// key says under the chart what the two marks are.
func (b *board) key(rows [2]arithmetic.HopRow, y, ring int) {
	const mark, air = 54, 14
	for i, row := range rows {
		text := scene.Words(0, y, scene.Small, words.ChartKey(row.By))
		text.Anchor = scene.Left
		x := scene.PaperW*(1+2*i)/4 - (mark+air+text.Width())/2
		text.X = x + mark + air
		cell := scene.Item{Shape: corners(scene.Box{X: x, Y: y - mark/2, W: mark, H: mark}, 3), Role: scene.First}
		if i == 1 {
			cell = scene.Item{Shape: scene.Circle{X: x + mark/2, Y: y, R: ring}, Role: scene.Second, Finish: scene.Outline}
		}
		b.over.Add(0, cell, scene.Item{Shape: text, Role: telling.RoleOf(i)})
	}
}
