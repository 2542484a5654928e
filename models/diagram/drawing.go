package diagram

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// A bar is a row of pieces end to end, with the number of each on a plate and a
// measure over what they make together:
//
//	|──────────── 623 ────────────|   measure
//	┌────────────────┬────────────┐
//	│     [345]      │   [278]    │   pieces, barTall high
//	└────────────────┴──────┬─────┘
//	                      [ 5 ]       a plate led out of a piece too short for it

const (
	full      = scene.PaperW - 2*scene.Margin // the longest bar
	barTall   = 84
	measureUp = 22 // from the edge of a bar to the measure beside it
	lineTall  = 38 // the height of a number
	labelTall = 32 // the height of a word
	plateTall = 44
	plateEdge = 10              // from a number to the edge of its plate
	aside     = lineTall/2 + 14 // from a measure to a number that has no room in it
	leader    = 18              // from a piece to a plate under it
	row       = 26              // between two bars
	least     = 12              // the shortest piece that can be seen
)

// drawing is what all bar diagrams draw on.
type drawing struct {
	telling.Story
	scaled bool // pieces are as long as their numbers say
	note   bool // the note under the diagram that they are not
}

// shown and hidden give an item to one version of the picture.
func shown(it scene.Item) scene.Item  { it.When = scene.ShownOnly; return it }
func hidden(it scene.Item) scene.Item { it.When = scene.HiddenOnly; return it }

// box is a piece of a bar, worth an amount of a number of the problem.
func box(role scene.Role, of scene.Of, n int64, x, y, w int) scene.Item {
	it := scene.Item{Shape: scene.Rect{X: x, Y: y, W: w, H: barTall}, Role: role}
	if n > 0 {
		it.Of, it.Worth = of, fraction.Whole(n)
	}
	return it
}

// unknown is the outline of a piece that is not known yet.
func unknown(x, y, w int) scene.Item {
	return scene.Item{Shape: scene.Rect{X: x, Y: y, W: w, H: barTall}, Role: scene.Hidden, Finish: scene.Dashed}
}

// number is a numeral in its role; question is what stands for it.
func number(nth int, n int64) scene.Text {
	return scene.Text{Size: scene.Middle, Bold: true, Runs: []scene.Run{{Text: arithmetic.Grouped(n), Role: telling.RoleOf(nth)}}}
}

func question() scene.Text {
	return scene.Text{Size: scene.Middle, Bold: true, Runs: []scene.Run{{Text: "?", Role: scene.Hidden}}}
}

// measured is a measure from x1 to x2 at height y with texts of one width in it, or
// beside it, under it where down, when there is no room in it.
func measured(x1, x2, y, wide int, down bool, texts ...scene.Item) []scene.Item {
	const tick, air = 11, 12
	mid, half := (x1+x2)/2, (wide+1)/2+air
	line := func(x1, y1, x2, y2 int) scene.Item {
		return scene.Item{Shape: scene.Line{X1: x1, Y1: y1, X2: x2, Y2: y2}, Role: scene.Guide}
	}
	list := []scene.Item{line(x1, y-tick, x1, y+tick), line(x2, y-tick, x2, y+tick)}
	at := y
	switch {
	case narrow(x1, x2, wide) && down:
		list, at = append(list, line(x1, y, x2, y)), y+aside
	case narrow(x1, x2, wide):
		list, at = append(list, line(x1, y, x2, y)), y-aside
	default:
		list = append(list, line(x1, y, mid-half, y), line(mid+half, y, x2, y))
	}
	for _, it := range texts {
		t := it.Shape.(scene.Text)
		t.X, t.Y = mid, at
		it.Shape = telling.OnPaper(t)
		list = append(list, it)
	}
	return list
}

// narrow reports whether a text has no room in a measure.
func narrow(x1, x2, wide int) bool { return x2-x1 < wide+44 }

// measureRoom is the height that a measure takes beside a bar.
func measureRoom(x1, x2, wide int) int {
	if narrow(x1, x2, wide) {
		return measureUp + aside + lineTall/2
	}
	return measureUp + lineTall/2
}

// plate is a text on paper of its own, so that nothing lies under it.
func plate(t scene.Text) []scene.Item {
	b := t.Box()
	return []scene.Item{
		{Shape: scene.Rect{X: b.X - plateEdge, Y: t.Y - plateTall/2, W: b.W + 2*plateEdge, H: plateTall, Round: 10}, Role: scene.Note},
		{Shape: t},
	}
}

// inside reports whether a text on its plate has room in a piece.
func inside(t scene.Text, w int) bool { return t.Width()+2*plateEdge+8 <= w }

// led draws a line from a piece with its top at y down to a plate under it.
func led(x, y, toX int) []scene.Item {
	const dot = 5
	from, edge := y+barTall*3/4, y+barTall
	return []scene.Item{
		{Shape: scene.Polyline{{X: x, Y: from}, {X: x, Y: edge}, {X: toX, Y: edge + leader}}, Role: scene.Ink, Finish: scene.Fine},
		{Shape: scene.Polygon{{X: x - dot, Y: from}, {X: x, Y: from - dot}, {X: x + dot, Y: from}, {X: x, Y: from + dot}}, Role: scene.Ink, Finish: scene.Deep},
	}
}

// notToScale says under a diagram that its pieces are not as long as their numbers
// say. It returns where the note ends.
func (d *drawing) notToScale(y int) int {
	if d.scaled {
		return y
	}
	d.Add(0, telling.Text(scene.Note, scene.PaperW/2, y+labelTall/2+4, scene.Small, words.DiagramNotToScale))
	return y + labelTall + 4
}
