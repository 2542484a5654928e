package discs

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// showing tells what a fraction is: discs cut in equal parts, some shaded.
//
//	   1 whole
//	 / \1/4/ \
//	|1/4 X 1/4|
//	 \ /1/4\ /
//	    3/4
type showing struct {
	sheet
	working arithmetic.Working
	cut     arithmetic.CutWholes
	laid    arithmetic.LayStrips
}

func tellShown(w arithmetic.Working) telling.Telling {
	e, _ := extentOf(w)
	n := showing{layDiscs(e.den, e.discs[0]), w, w.Moves[0].(arithmetic.CutWholes), w.Moves[1].(arithmetic.LayStrips)}
	t := telling.Telling{Pieces: paper(e.discs[0]), Whole: n.picture(true, true), Steps: []telling.Step{
		{
			Title: words.DiscPrepareTitle(n.cut), Hands: words.DiscPrepare(n.cut), Ask: words.BarAskPrepare(n.cut),
			Scene: n.picture(false, false), Symbols: notation.Lines(telling.OnePart(n.cut.Den)),
		},
		{
			Title: words.DiscShadeTitle(n.laid.Strips), Hands: words.DiscShade(n.laid.Number, n.laid.Strips), Ask: words.BarAskShade(n.laid.Strips),
			Scene: n.picture(true, false), Symbols: notation.Lines(telling.PartByPart(n.laid)),
		},
	}}
	asked := telling.Join(telling.Unknown())
	if w.Problem.Kind == arithmetic.ShapePart {
		asked = telling.Numeral(n.laid.Number, scene.First)
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, telling.PartByPart(n.laid))
	return t
}

// picture draws the discs before or after some parts are shaded. Of a number the
// hidden version asks which one it is; of a part of a circle, to shade it.
func (n showing) picture(shaded, story bool) *scene.Scene {
	asked := n.working.Problem.Kind == arithmetic.ShapePart
	s := &scene.Scene{
		W: scene.PaperW, H: n.bottom + scene.Margin,
		Title: words.DiscShownTitle(n.working.Problem, n.laid.Number),
		Desc:  words.DiscShownDesc(n.working.Problem, n.laid.Number, n.cut, n.laid.Strips, shaded),
	}
	g := n.groups[0]
	n.wholeMark(s, 0)
	p := n.pictured(n.laid.Strips, scene.First, scene.OfFirst)
	bare := picture{cut: p.cut}
	name := telling.Numeral(n.laid.Number, scene.First)
	switch {
	case !shaded:
		n.draw(s, g, bare, scene.Always)
	case asked:
		n.draw(s, g, bare, scene.HiddenOnly)
		n.draw(s, g, p, scene.ShownOnly)
	default:
		n.draw(s, g, p, scene.Always)
	}
	if shaded {
		g.name(s, scene.First, name, scene.ShownOnly)
		if !story { // the equation asks there
			g.name(s, scene.Hidden, telling.Join(telling.Unknown()), scene.HiddenOnly)
		}
	}
	if !shaded { // on shading a name would be hard to read
		n.nameParts(s, p)
	}
	return s
}

// nameParts writes in every part of a disc in parts what it is, where there is room.
func (n showing) nameParts(s *scene.Scene, p picture) {
	const most = 6 // parts of a disc of the usual size that a name fits in
	if p.cut < 2 || p.cut > most || n.r < mostR {
		return
	}
	spot := n.groups[0].spots[0]
	for i := range int(p.cut) {
		at := scene.NearRim(spot.X, spot.Y, n.r*64/100, 2*i+1, 2*int(p.cut))
		part := scene.Text{X: at.X, Y: at.Y, Size: scene.Small, Runs: []scene.Run{{Num: "1", Den: strconv.FormatInt(p.cut, 10)}}}
		const air = 4
		b := part.Box() // on a surface of its own, so that no hatching runs through it
		plate := scene.Rect{X: b.X - air, Y: b.Y, W: b.W + 2*air, H: b.H, Round: 10}
		s.Add(scene.Item{Shape: plate, Role: scene.Tray, When: scene.ShownOnly}, scene.Item{Shape: part, Role: scene.Note, When: scene.ShownOnly})
	}
}
