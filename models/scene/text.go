package scene

import "strings"

// Sizes of text, in units. A picture is drawn PaperW wide, so that Small is
// still 11 pixels high when it is shown on a phone 320 pixels wide.
const (
	PaperW = 800
	Margin = 32
	Small  = 28 // labels of ticks, jumps, columns, rows
	Middle = 34 // numbers that carry the story
	Large  = 44 // the equation under the picture
)

// Anchor says which point of a text stands at its X.
type Anchor uint8

const (
	Centre Anchor = iota // the zero value: labels are centred on what they name
	Left
	Right
)

// Text is one typeset line: words, numerals and fractions with a bar. Y is the
// height of the middle of its digits, which is also the height of the bars.
type Text struct {
	X, Y   int
	Anchor Anchor
	Size   int
	Bold   bool
	Runs   []Run
}

// Run is a stretch of text in one role, or a fraction when Den is set. Role Ink
// takes the role of the item.
type Run struct {
	Text     string
	Num, Den string
	Role     Role
	Struck   bool
}

// Words is a text of one plain run.
func Words(x, y, size int, text string) Text {
	return Text{X: x, Y: y, Size: size, Runs: []Run{{Text: text}}}
}

// Glyphs is one placed piece of a text: characters on a baseline at Y.
type Glyphs struct {
	Text   string
	X, Y   int
	Anchor Anchor
	Role   Role
}

// Metrics of a typeset line, in hundredths of the size.
const (
	capHalf   = 36 // from the middle of a digit to its baseline: digits are 0.72 em high
	stack     = 60 // from the bar of a fraction to the middle of either number
	barReach  = 8  // a bar is wider than its numbers by this on each side
	lineUp    = 50 // from the middle of a digit to the top of the line's room
	lineDown  = 62 // and to its bottom, with room for descenders
	fracReach = 106
)

// Width is the room that the line takes.
func (t Text) Width() int {
	right := 0
	middles, widths := t.middles()
	for i, w := range widths {
		right = max(right, middles[i]+(w+1)/2)
	}
	return right
}

// Box is the room reserved for the line.
func (t Text) Box() Box {
	w, up, down := t.Width(), lineUp, lineDown
	for _, r := range t.Runs {
		if r.Den != "" {
			up, down = fracReach, fracReach
		}
	}
	up, down = up*t.Size/100, down*t.Size/100
	return Box{t.left(), t.Y - up, w, up + down}
}

func (t Text) left() int {
	switch t.Anchor {
	case Left:
		return t.X
	case Right:
		return t.X - t.Width()
	}
	return t.X - t.Width()/2
}

// Typeset places the line: its characters, the bars of its fractions and the
// strokes through what is struck. A line of one run keeps the text's anchor;
// in a longer line every run stands on its own middle.
func (t Text) Typeset() (glyphs []Glyphs, bars []Line) {
	base := t.Y + capHalf*t.Size/100
	if len(t.Runs) == 1 && t.Runs[0].Den == "" && !t.Runs[0].Struck {
		r := t.Runs[0]
		return []Glyphs{{r.Text, t.X, base, t.Anchor, r.Role}}, nil
	}
	left := t.left()
	middles, widths := t.middles()
	for i, r := range t.Runs {
		w, mid := widths[i], left+middles[i]
		switch text := strings.Trim(r.Text, " "); {
		case r.Den != "":
			half := w/2 - barReach*t.Size/200
			glyphs = append(glyphs,
				Glyphs{r.Num, mid, base - stack*t.Size/100, Centre, r.Role},
				Glyphs{r.Den, mid, base + stack*t.Size/100, Centre, r.Role})
			bars = append(bars, Line{mid - half, t.Y, mid + half, t.Y})
		case text != "":
			glyphs = append(glyphs, Glyphs{text, mid, base, Centre, r.Role})
		}
		if r.Struck {
			bars = append(bars, Line{mid - w/2, t.Y + t.Size/3, mid + w/2, t.Y - t.Size/3})
		}
	}
	return glyphs, bars
}
