package api

import (
	"modeler/models"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// size names how large a lesson's symbols are set, so that the longest line of
// them has room beside the picture and all its moves are set alike. The style
// sheet has the sizes; the bounds are the room there divided by the size.
func size(steps []models.Step) string {
	widest := 0
	for _, s := range steps {
		widest = max(widest, hundredths(s.Symbols), hundredths(s.Europe))
	}
	switch {
	case widest <= 700:
		return ""
	case widest <= 980:
		return "long"
	case widest <= 1420:
		return "longer"
	}
	return "longest"
}

// hundredths is about how wide a block of symbols is, in hundredths of its size.
// The table of advances is that of the widest faces; in the usual ones a line is
// four fifths as wide, and where it is wider it can be scrolled.
func hundredths(b notation.Block) int {
	const (
		size    = 100
		padding = 40 // of a cell, both sides
		air     = 50 // round a sign or a fraction, both sides
	)
	wide := func(l notation.Line) int {
		sum := 0
		for _, t := range l {
			sum += max(scene.Advance(t.Text, size, true), scene.Advance(t.Num, size, true), scene.Advance(t.Den, size, true))
			if t.Kind == notation.Sign || t.Den != "" {
				sum += air
			}
		}
		return sum * 4 / 5
	}
	if !b.Columns {
		widest := 0
		for _, l := range b.Lines {
			widest = max(widest, wide(l))
		}
		return widest
	}
	var columns []int
	for _, l := range b.Lines {
		for i, cell := range l {
			if i == len(columns) {
				columns = append(columns, 0)
			}
			columns[i] = max(columns[i], wide(notation.Line{cell})+padding)
		}
	}
	sum := 0
	for _, c := range columns {
		sum += c
	}
	for _, l := range b.Beside {
		sum = max(sum, wide(l))
	}
	return sum
}

// spoken says what stands in a column layout. Of other symbols it is empty: a screen
// reader reads an equation as it is.
func spoken(b notation.Block) string {
	if !b.Columns {
		return ""
	}
	var rows []words.Row
	for i, l := range b.Lines {
		r := words.Row{Ruled: b.Ruled(i)}
		for _, t := range l {
			c := words.Cell{Text: t.Text, Struck: t.Struck, Small: t.Small}
			if t.Den != "" {
				c.Text = words.Aloud(t.Num + "/" + t.Den)
			}
			r.Ruled = r.Ruled || t.Over
			r.Cells = append(r.Cells, c)
		}
		rows = append(rows, r)
	}
	for _, l := range b.Beside {
		rows = append(rows, words.Row{Cells: []words.Cell{{Text: words.Aloud(l.Text())}}})
	}
	return words.Columns(rows)
}
