package api

import (
	"strings"

	"modeler/models/scene"
)

// scene draws the trouble, for where a picture was asked for: what is wrong, the
// text with the characters at fault marked, what to do, what would work.
//
//	there is no sign between the two numbers
//
//	    23 45
//	    ─────
//	put + or − between them
//	try 23 + 45
func (t *Trouble) scene() *scene.Scene {
	const (
		left  = 2 * scene.Margin
		room  = scene.PaperW - left - scene.Margin
		gap   = 20              // between paragraphs
		above = scene.Large / 2 // from the top of the text's line to its middle
		below = scene.Large     // and to its foot, with the mark
	)
	s := &scene.Scene{W: scene.PaperW, Title: scene.Same(printable(t.Message)), Desc: scene.Same(t.spoken())}
	y := scene.Margin // the top of what comes next
	paragraph := func(role scene.Role, size int, bold bool, text string) {
		for _, l := range wrap(printable(text), size, bold, room) {
			s.Add(scene.Item{Role: role, Shape: scene.Text{
				X: left, Y: y + size*6/10, Anchor: scene.Left, Size: size, Bold: bold, Runs: []scene.Run{{Text: l}},
			}})
			y += size * 13 / 10
		}
		y += gap
	}
	paragraph(scene.Ink, scene.Middle, true, t.Message)
	if t.Text != "" {
		t.fault(s, left, y+above, room)
		y += above + below + gap
	}
	paragraph(scene.Note, scene.Small, false, t.Hint)
	if t.Try != "" {
		try := t.Try
		if t.Parameter != "problem" {
			try = t.Parameter + "=" + try
		}
		paragraph(scene.First, scene.Middle, false, "try "+try)
	}
	s.H = y - gap + scene.Margin
	s.Add(scene.Item{Role: scene.Gone, Finish: scene.Bold,
		Shape: scene.Line{X1: scene.Margin, Y1: scene.Margin, X2: scene.Margin, Y2: s.H - scene.Margin}})
	return s
}

// fault draws the part of the text round the characters at fault that has room,
// with a line under them.
func (t *Trouble) fault(s *scene.Scene, left, y, room int) {
	const (
		size   = scene.Large
		under  = size * 7 / 10
		narrow = size / 2 // a mark with no characters over it: something is missing there
	)
	before, at, after := t.around(size, room)
	text := scene.Text{X: left, Y: y, Anchor: scene.Left, Size: size}
	for _, part := range []struct {
		text string
		role scene.Role
	}{{before, scene.Ink}, {at, scene.Gone}, {after, scene.Ink}} {
		// A space at the end of a run would be dropped and move the rest.
		for i, word := range strings.Split(part.text, " ") {
			if i > 0 {
				text.Runs = append(text.Runs, scene.Run{Text: " "})
			}
			if word != "" {
				text.Runs = append(text.Runs, scene.Run{Text: word, Role: part.role})
			}
		}
	}
	from, to := left, left+scene.Advance(at, size, false)
	if before != "" {
		from, to = faulty(text, left+scene.Advance(before, size, false))
	}
	to = max(to, from+narrow)
	s.Add(scene.Item{Shape: text},
		scene.Item{Role: scene.Gone, Finish: scene.Bold, Shape: scene.Line{X1: from, Y1: y + under, X2: to, Y2: y + under}})
}

// faulty is where the characters at fault begin and end in a typeset text; both
// are missing when there are none.
func faulty(text scene.Text, missing int) (from, to int) {
	glyphs, _ := text.Typeset()
	for _, g := range glyphs {
		if half := scene.Advance(g.Text, text.Size, text.Bold) / 2; g.Role == scene.Gone {
			if to == 0 {
				from = g.X - half
			}
			to = g.X + half
		}
	}
	if to == 0 {
		return missing, missing
	}
	return from, to
}

// around cuts the text to what has room: the characters at fault, or their
// beginning, and as much before and after them as fits.
func (t *Trouble) around(size, room int) (before, at, after string) {
	r := []rune(printable(t.Text))
	start := min(max(t.Start, 0), len(r))
	end := min(max(t.End, start), len(r))
	fits := func(a, b, c string) bool { return scene.Advance(a+b+c, size, false) <= room }
	cut := func(from, to int) (string, string, string) {
		b, a, c := string(r[from:start]), string(r[start:min(to, end)]), string(r[min(to, end):to])
		if from > 0 {
			b = "…" + b
		}
		if to < len(r) {
			c += "…"
		}
		return b, a, c
	}
	from, to := start, start
	for grew := true; grew; {
		grew = false
		if to < len(r) && fits(cut(from, to+1)) {
			to, grew = to+1, true
		}
		// What stands before the fault matters once the fault itself is shown.
		if from > 0 && (to >= end || to == len(r)) && fits(cut(from-1, to)) {
			from, grew = from-1, true
		}
	}
	return cut(from, to)
}

// spoken is the trouble in sentences.
func (t *Trouble) spoken() string {
	said := t.Message + "."
	if t.Text != "" {
		said += " Given: " + Clip(t.Text) + "."
	}
	if t.Hint != "" {
		said += " Hint: " + t.Hint + "."
	}
	if t.Try != "" {
		said += " Try: " + t.Try + "."
	}
	return printable(said)
}

// wrap breaks a text into lines that have room, at spaces where it can.
func wrap(text string, size int, bold bool, room int) []string {
	var lines []string
	line := ""
	fits := func(s string) bool { return scene.Advance(s, size, bold) <= room }
	for word := range strings.FieldsSeq(text) {
		if line != "" && fits(line+" "+word) {
			line += " " + word
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		line = ""
		for _, r := range word {
			if !fits(line + string(r)) {
				lines = append(lines, line)
				line = ""
			}
			line += string(r)
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
