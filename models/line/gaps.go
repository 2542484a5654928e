package line

import (
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// A gap has a row of its own beyond the names, where a brace says how long it is.
const (
	braceAway = 10 // from the names to the brace
	braceHigh = 10
	braceText = 6 // from the brace to its text
)

// braceLine is the text of a brace: 0.05 more.
func braceLine(g gap) scene.Text {
	runs, said := runsOf("", g.size), words.LineMore
	if g.words != "" {
		said = g.words
	}
	if last := &runs[len(runs)-1]; last.Den == "" {
		last.Text += " " + said
	} else {
		runs = append(runs, scene.Run{Text: " " + said})
	}
	return scene.Text{Size: scene.Small, Runs: runs}
}

// braceRooms are how much room the braces need above and below.
func (k *sketch) braceRooms() (up, down int) {
	for _, g := range k.gaps {
		room := braceAway + braceHigh + braceText + braceLine(g).Box().H
		if g.side < 0 {
			up = room
		} else {
			down = room
		}
	}
	return up, down
}

// drawBrace says how long a gap is, on the far side of the names that end at
// height y.
//
//	0.25     0.3
//	  |_______|
//	  0.05 more
func (k *sketch) drawBrace(st *story, g gap, y, down int) {
	near, far := y+down*braceAway, y+down*(braceAway+braceHigh)
	x1, x2 := k.x(g.from), k.x(g.to)
	brace := scene.Polyline{{X: x1, Y: near}, {X: x1, Y: far}, {X: x2, Y: far}, {X: x2, Y: near}}
	text := braceLine(g)
	b := text.Box()
	text.X, text.Y = (x1+x2)/2, far+braceText-b.Y
	if down < 0 {
		text.Y = far - braceText - b.Bottom()
	}
	for _, shape := range []scene.Shape{brace, telling.OnPaper(text)} {
		st.add(g.step, 0, scene.Item{Shape: shape, Role: g.own(), When: scene.ShownOnly})
	}
}

// own is the role of a gap: that of the answer, where it has none of its own.
func (g gap) own() scene.Role {
	if g.role == scene.Ink {
		return scene.Result
	}
	return g.role
}

// drawGap draws the length that one side lacks as a dashed outline.
func (k *sketch) drawGap(st *story, g gap, axis int) {
	if g.covered {
		return
	}
	y, high := axis-7, 14
	switch {
	case g.role != scene.Ink:
	case g.side < 0:
		y, high = axis-bandHigh, bandHigh
	case g.side > 0:
		y, high = axis, bandHigh
	}
	st.add(g.step, 0, scene.Item{Shape: scene.Rect{X: k.x(g.from), Y: y, W: k.x(g.to) - k.x(g.from), H: high},
		Role: g.own(), Finish: scene.Dashed, Of: g.of, Worth: g.worth, When: scene.ShownOnly})
}
