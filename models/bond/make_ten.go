package bond

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Making ten is a bond under one of the addends. The plate of the other has ten
// places, and the first part fills it up:
//
//	┌───────────┐   ┌───────────┐
//	│     8     │ + │     6     │
//	│ ●●●●● ●●●○○│   │ ●●●●● ●   │
//	└───────────┘   └──┬─────┬──┘
//	 8 + 2 = 10     ┌──┴──┐┌─┴───┐
//	          ······│  2  ││  4  │
//	                │ ●●  ││ ●●●●│
//	                └─────┘└─────┘
type ten struct {
	drawing
	split arithmetic.SplitNumber
	kept  scene.Rect
}

const smallWide = 166 // a plate with up to five counters in a row

func layTen(s arithmetic.SplitNumber) *ten {
	d := &ten{split: s}
	d.counted = true
	const edge = scene.PaperW / 2
	h := numeralTall + 20 + step
	plates := [2]scene.Rect{
		{X: edge - 24 - plateWide, Y: scene.Margin, W: plateWide, H: h, Round: 20},
		{X: edge + 24, Y: scene.Margin, W: plateWide, H: h, Round: 20},
	}
	d.whole, d.kept = plates[s.At], plates[1-s.At]
	low := h
	if max(s.Need, s.Rest) > 5 {
		low += step
	}
	y := scene.Margin + h + between
	d.parts[0] = scene.Rect{X: d.whole.X, Y: y, W: smallWide, H: low, Round: 20}
	d.parts[1] = scene.Rect{X: d.whole.X + d.whole.W - smallWide, Y: y, W: smallWide, H: low, Round: 20}
	if s.At == 0 { // the part that goes over stands next to the plate that it fills
		d.parts[0], d.parts[1] = d.parts[1], d.parts[0]
	}
	d.below = y + low
	return d
}

// few are the counters of a small plate, five in a row.
func (d *ten) few(r scene.Rect, n int64, role scene.Role, of scene.Of) []scene.Item {
	list := d.counters(r, n, role, of)
	for i, it := range list {
		c := it.Shape.(scene.Circle)
		c.X = r.X + (r.W-int(min(n, 5))*step)/2 + step/2 + i%5*step
		c.Y = r.Y + numeralTall + 10 + i/5*step + step/2
		list[i].Shape = c
	}
	return list
}

// places are the empty places of the plate that is filled up to ten.
func (d *ten) places(from int64) []scene.Item {
	var list []scene.Item
	for i := from; i < inRow; i++ {
		x, y := place(d.kept, int(i), inRow)
		list = append(list, scene.Item{Shape: scene.Circle{X: x, Y: y, R: radius}, Role: scene.Guide, Finish: scene.Outline})
	}
	return list
}

func tellTen(w arithmetic.Working) telling.Telling {
	s := w.Moves[2].(arithmetic.SplitNumber)
	fill := w.Moves[3].(arithmetic.FillTen)
	add := w.Moves[4].(arithmetic.AddToTen)
	d := layTen(s)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	keptNth, splitNth := 1-s.At, s.At
	role, of := telling.RoleOf(splitNth), telling.OfPlace(splitNth)
	rects := [2]scene.Rect{d.kept, d.whole}
	if s.At == 0 {
		rects = [2]scene.Rect{d.whole, d.kept}
	}
	d.Add(0, telling.Text(scene.Ink, scene.PaperW/2, rects[0].Y+rects[0].H/2, scene.Large, "+"))
	d.Until(0, 1, unfilled(rects[1]))
	d.plate(0, rects[0], arithmetic.Amount{N: w.Moves[0].(arithmetic.LayAmount).Amount.N, Nth: 0})
	d.plate(1, rects[1], arithmetic.Amount{N: w.Moves[1].(arithmetic.LayAmount).Amount.N, Nth: 1})
	d.Add(keptNth, d.some(d.kept, 0, s.Kept, inRow, telling.RoleOf(keptNth), telling.OfPlace(keptNth))...)
	d.Until(keptNth, 3, d.places(s.Kept)...)
	d.Until(splitNth, 2, d.counters(d.whole, s.Split, role, of)...)
	d.Until(2, 3, d.counters(d.whole, s.Split, scene.Gone, scene.OfNothing)...)

	need, rest := arithmetic.Amount{N: s.Need, Nth: splitNth}, arithmetic.Amount{N: s.Rest, Nth: splitNth}
	d.Add(2, d.joins()...)
	d.plate(2, d.parts[0], need)
	d.plate(2, d.parts[1], rest)
	d.Until(2, 3, d.few(d.parts[0], s.Need, role, of)...)
	d.Add(3, d.few(d.parts[0], s.Need, scene.Gone, scene.OfNothing)...)
	d.Add(2, d.few(d.parts[1], s.Rest, role, of)...)
	d.Add(3, d.some(d.kept, s.Kept, s.Need, inRow, role, of)...)
	made := telling.Join(telling.Count(s.Kept, telling.RoleOf(keptNth)), "+", telling.Count(fill.Need, role), "=", telling.Count(inRow, scene.Ink))
	d.Add(3, scene.Item{Shape: scene.Text{X: d.kept.X + d.kept.W/2, Y: d.kept.Y + d.kept.H + between/2 + 8, Size: scene.Middle, Bold: true, Runs: made.Runs()}})

	sum := telling.Join(telling.Count(inRow, scene.Ink), "+", telling.Count(add.Rest, role))
	problem := t.Asked()
	t.Step(words.TenLay(w.Moves[0].(arithmetic.LayAmount), s), notation.Line{telling.Count(w.Moves[0].(arithmetic.LayAmount).Amount.N, scene.First)})
	t.Step(words.TenLay(w.Moves[1].(arithmetic.LayAmount), s), problem)
	t.Step(words.TenSplit(s), telling.Join(telling.Count(s.Split, role), "=", telling.Count(s.Need, role), "+", telling.Count(s.Rest, role)))
	t.Step(words.TenFill(fill, s), made)
	t.Step(words.TenAdd(add, s), telling.Join(sum, "=", telling.Count(add.Sum, scene.Result)), t.Answered())
	told := t.Pictures(&d.Story, d.below, scene.Telling{Shown: t.Answered().Text(), Hidden: words.Asked(w.Problem)}, words.TenWhole(w.Problem, s, add))
	stem := problem[:len(problem)-1]
	telling.Equation(told.Whole, d.below, problem, telling.Join(stem, sum, "=", telling.Count(add.Sum, scene.Result)))
	return told
}
