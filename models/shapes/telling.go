package shapes

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// part tells a part of a shape, cut one way and where it can be in another way too.
//
//	  1 whole
//	+----+----+        +--+--+--+--+
//	|////|////|        |//|//|//|  |
//	+----+----+   =    |//|//|//|  |
//	|////|    |        |//|//|//|  |
//	+----+----+        +--+--+--+--+
//	    3/4                 3/4
type part struct {
	problem arithmetic.Problem
	number  arithmetic.Number
	cuts    []arithmetic.ShapeCut
	figures []figure
	label   int // the middle of the labels
}

// shown is how far the picture has come.
type shown struct{ cut, shaded int } // how many shapes are cut, and how many of these are shaded

const (
	wholeRoom = 52  // over the shapes, for the words that name the whole
	nameGap   = 16  // from a shape to the room of its label
	nameHalf  = 36  // half the height of a label: a fraction
	between   = 184 // from the middle of the paper to the center of each of two shapes
)

func tell(p arithmetic.Problem) telling.Telling {
	w, err := arithmetic.ShadeShape(p)
	if err != nil {
		panic(err) // fits has worked it
	}
	d := part{problem: p, number: w.Answer.Number}
	for _, move := range w.Moves {
		if m, ok := move.(arithmetic.CutShape); ok {
			d.cuts = append(d.cuts, m.Cut)
		}
	}
	d.lay()
	t := telling.Telling{Answer: w.Answer, Pieces: []telling.Piece{{Name: words.ShapePaper(p.Shape, len(d.cuts)), Count: int64(len(d.cuts)), Cut: true}}}
	var now shown
	for _, move := range w.Moves {
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.CutShape:
			now.cut++
			step = telling.Step{Title: words.ShapeCutTitle(m), Hands: words.ShapeCutHands(p.Shape, m), Ask: words.ShapeAskCut(m),
				Symbols: notation.Lines(telling.OnePart(m.Cut.Parts))}
		case arithmetic.ShadeShapeParts:
			now.shaded++
			step = telling.Step{Title: words.ShapeShadeTitle(m), Hands: words.ShapeShade(p.Shape, m), Ask: words.ShapeAskShade(p.Shape, m),
				Symbols: notation.Lines(telling.PartByPart(laid(m)))}
		}
		step.Scene = d.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	t.Whole = d.picture(now, true)
	built := telling.PartByPart(laid(w.Moves[1].(arithmetic.ShadeShapeParts)))
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Numeral(d.number, scene.First), built)
	return t
}

// laid is shaded parts as an amount of parts.
func laid(m arithmetic.ShadeShapeParts) arithmetic.LayStrips {
	return arithmetic.LayStrips{Number: m.Number, Strips: arithmetic.StripsOf(m.Number)}
}

// lay places the shapes in the middle of the paper.
func (d *part) lay() {
	f := figureOf(d.problem.Shape, d.cuts[0].Parts)
	up, down := f.reach()
	y := scene.Margin + wholeRoom + up
	d.figures = []figure{f.at(scene.PaperW/2, y)}
	if len(d.cuts) > 1 {
		d.figures = []figure{f.at(scene.PaperW/2-between, y), f.at(scene.PaperW/2+between, y)}
	}
	d.label = y + down + nameGap + nameHalf
}

// picture draws the shapes that are cut, and shades the first of them. With the answer
// hidden the whole story leaves the shading to the child.
func (d *part) picture(now shown, story bool) *scene.Scene {
	s := &scene.Scene{
		W: scene.PaperW, H: d.label + nameHalf + scene.Margin,
		Title: scene.Same(d.problem.String()),
		Desc:  words.ShapeDesc(d.problem, d.number, d.cuts[:now.cut], now.shaded),
	}
	const up = 28 // from a shape to the middle of the words over it
	top := d.figures[0].outline().Box()
	s.Add(telling.Text(scene.Note, d.figures[0].x, top.Y-up, scene.Small, words.BarWhole))
	for i, f := range d.figures[:now.cut] {
		shaded := scene.ShownOnly
		if now.shaded <= i {
			d.draw(s, i, 0, scene.Always)
			continue
		}
		if story || i == now.shaded-1 {
			d.draw(s, i, 0, scene.HiddenOnly)
		} else {
			shaded = scene.Always
		}
		d.draw(s, i, d.number.Value.Num(), shaded)
		name := telling.Numeral(d.number, scene.First)
		s.Add(scene.Item{Shape: scene.Text{X: f.x, Y: d.label, Size: scene.Middle, Runs: name.Runs()}, Role: scene.First, When: shaded})
		if i == 1 {
			sign := scene.Text{X: scene.PaperW / 2, Y: d.label, Size: scene.Middle, Runs: []scene.Run{{Text: "="}}}
			s.Add(scene.Item{Shape: sign, Role: scene.Ink, When: shaded})
		}
	}
	return s
}

// draw draws a shape with its parts, the first so many of them shaded.
func (d *part) draw(s *scene.Scene, nth int, count int64, when scene.When) {
	f, cut := d.figures[nth], d.cuts[nth]
	item := scene.Item{Role: scene.First, Of: [...]scene.Of{scene.OfFirst, scene.OfAnswer}[nth], Worth: fraction.Must(1, cut.Parts), When: when}
	for i := range cut.Parts {
		part := f.part(cut, int(i))
		if i < count {
			item.Shape = part
			s.Add(item)
			continue
		}
		s.Add(scene.Item{Shape: part, Role: scene.Guide, Finish: scene.Fine, When: when})
	}
	s.Add(scene.Item{Shape: f.outline(), Role: scene.Ink, Finish: scene.Bold, When: when})
	if count == 0 { // on shading a name would be hard to read
		d.nameParts(s, f, cut, when)
	}
}

// nameParts writes in every part what it is, where there is room.
func (d *part) nameParts(s *scene.Scene, f figure, cut arithmetic.ShapeCut, when scene.When) {
	label := scene.Text{Size: scene.Small, Runs: []scene.Run{{Num: "1", Den: strconv.FormatInt(cut.Parts, 10)}}}
	const air, most = 12, 6 // more names would be a crowd
	if cut.Parts > most {
		return
	}
	for i := range int(cut.Parts) {
		r, ok := f.part(cut, i).(scene.Rect)
		if !ok || r.W < label.Width()+air || r.H < label.Box().H+air {
			return
		}
		label.X, label.Y = r.X+r.W/2, r.Y+r.H/2
		s.Add(scene.Item{Shape: label, Role: scene.Note, When: when})
	}
}
