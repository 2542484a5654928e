package words

import "strings"

// Row is a row of a column layout: its cells from the left, and whether a rule runs
// over it.
type Row struct {
	Ruled bool
	Cells []Cell
}

// Cell is what stands in one cell: a digit or a sign, or "".
type Cell struct {
	Text          string
	Struck, Small bool
}

// Columns says what stands in a column layout, from the top, for who cannot see it:
// read cell by cell, small digits and crossed-out ones would be no different from the
// others.
func Columns(rows []Row) string {
	var lines []string
	for _, r := range rows {
		var cells []string
		for _, c := range r.Cells {
			if c.Text != "" {
				cells = append(cells, c.said())
			}
		}
		line := strings.Join(cells, " ")
		switch {
		case line == "":
			continue
		case r.Ruled:
			line = "line, " + line
		}
		lines = append(lines, line)
	}
	if len(lines) == 0 {
		return ""
	}
	text := strings.Join(lines, "; ") + "."
	if text[0] >= 'a' && text[0] <= 'z' {
		return upper(text)
	}
	return text
}

var signNames = map[string]string{"+": "plus", "−": "minus", "×": "times", "÷": "divided by", ")": "into", "?": "unknown"}

func (c Cell) said() string {
	text := c.Text
	if name, sign := signNames[text]; sign {
		text = name
	}
	switch {
	case c.Struck:
		return text + " crossed out"
	case c.Small:
		return "small " + text
	}
	return text
}
