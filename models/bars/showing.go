package bars

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellShown tells what a fraction is: strips cut in equal parts, some shaded.
//
//	     |<-------- 1 whole --------->|
//	3    +------+------+------+-------+
//	-    |//////|//////|//////|       |
//	4    +------+------+------+-------+
//	       1/4    1/4    1/4    1/4
func tellShown(w arithmetic.Working) telling.Telling {
	cut, laid := w.Moves[0].(arithmetic.CutWholes), w.Moves[1].(arithmetic.LayStrips)
	den, wholes, _, _ := extent(w)
	name := telling.Numeral(laid.Number, scene.First)
	s := layStrip(den, wholes, besideRoom(name))
	picture := func(shaded bool) *scene.Scene {
		const (
			top   = scene.Margin + 48
			tall  = 84
			below = 76 // room for the names of the parts
		)
		sc := &scene.Scene{
			W: scene.PaperW, H: top + tall + below + scene.Margin,
			Title: words.BarShownTitle(laid.Number),
			Desc:  words.BarShownDesc(laid.Number, cut, laid.Strips, shaded),
		}
		s.wholeMark(sc)
		b := s.shaded(top, tall, laid.Strips, scene.First, scene.OfFirst)
		if !shaded {
			b.runs = nil
		}
		s.draw(sc, b, scene.Always)
		if shaded {
			s.beside(sc, top+tall/2, scene.First, name, scene.ShownOnly)
			s.beside(sc, top+tall/2, scene.Hidden, telling.Join(telling.Unknown()), scene.HiddenOnly)
		}
		s.nameParts(sc, b, top+tall+8)
		return sc
	}
	t := telling.Telling{Pieces: stripPieces(laid.Strips), Whole: picture(true), Steps: []telling.Step{
		{
			Title: words.BarPrepareTitle(cut), Hands: words.BarPrepare(cut), Ask: words.BarAskPrepare(cut),
			Scene: picture(false), Symbols: notation.Lines(telling.OnePart(cut.Den)),
		},
		{
			Title: words.BarShadeTitle(laid.Strips), Hands: words.BarShade(laid.Number, laid.Strips), Ask: words.BarAskShade(laid.Strips),
			Scene: picture(true), Symbols: notation.Lines(telling.PartByPart(laid)),
		},
	}}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(telling.Unknown()), telling.PartByPart(laid))
	return t
}

// nameParts writes under every part what it is, where there is room.
func (s strip) nameParts(sc *scene.Scene, b bar, y int) {
	if b.cut < 2 {
		return
	}
	part := scene.Text{Size: scene.Small, Runs: []scene.Run{{Num: "1", Den: strconv.FormatInt(b.cut, 10)}}}
	wide := s.unit * int(s.each(b.cut))
	if part.Width()+12 > wide {
		return
	}
	for k := range s.wholes {
		if !b.open[k] {
			continue
		}
		for i := range b.cut {
			part.X = s.at(k*s.den+i*s.each(b.cut)) + wide/2
			part.Y = y + part.Box().H/2
			sc.Add(scene.Item{Shape: part, Role: scene.Note, When: scene.ShownOnly})
		}
	}
}
