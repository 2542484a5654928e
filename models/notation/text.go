package notation

import (
	"strings"
	"unicode/utf8"
)

// Text writes the block for a terminal, one line each, columns aligned. A struck
// digit has a stroke after it: 4̸.
func (b Block) Text() string {
	var out []string
	if !b.Columns {
		for _, l := range b.Lines {
			out = append(out, l.Text())
		}
		return strings.Join(out, "\n")
	}
	widths := b.widths()
	for i, l := range b.Lines {
		if b.Ruled(i) {
			total := len(widths) - 1
			for _, w := range widths {
				total += w
			}
			out = append(out, strings.Repeat("─", total))
		}
		if over := l.over(widths); over != "" {
			out = append(out, over)
		}
		var row strings.Builder
		for c, t := range l {
			if c > 0 {
				row.WriteByte(' ')
			}
			cell := t.text()
			row.WriteString(strings.Repeat(" ", widths[c]-utf8.RuneCountInString(cell)))
			for _, r := range cell {
				row.WriteRune(r)
				if t.Struck {
					row.WriteRune('\u0338')
				}
			}
		}
		out = append(out, strings.TrimRight(row.String(), " "))
	}
	if len(b.Beside) > 0 {
		if out[len(out)-1] != "" {
			out = append(out, "")
		}
		out = append(out, Lines(b.Beside...).Text())
	}
	return strings.Join(out, "\n")
}

// over is the row of rules over the cells that have one, in one stroke where they
// stand side by side; "" when none has.
func (l Line) over(widths []int) string {
	var row strings.Builder
	for c, t := range l {
		fill := " "
		if t.Over {
			fill = "─"
		}
		if c > 0 {
			gap := " "
			if t.Over && l[c-1].Over {
				gap = "─"
			}
			row.WriteString(gap)
		}
		row.WriteString(strings.Repeat(fill, widths[c]))
	}
	return strings.TrimRight(row.String(), " ")
}

func (b Block) widths() []int {
	var widths []int
	for _, l := range b.Lines {
		for c, t := range l {
			if c == len(widths) {
				widths = append(widths, 1)
			}
			widths[c] = max(widths[c], utf8.RuneCountInString(t.text()))
		}
	}
	return widths
}
