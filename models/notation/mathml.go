package notation

import (
	"html"
	"strings"

	"modeler/models/scene"
)

// MathML writes the block as presentation MathML (MathML Core: mrow, mn, mo,
// mtext, mfrac, mtable). A role is a class, so that a page's style sheet gives
// the same colour here as in the picture; struck and small digits and the rule
// are classes too.
func (b Block) MathML() string {
	if len(b.Lines) == 0 {
		return ""
	}
	var m strings.Builder
	m.WriteString(`<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">`)
	switch {
	case !b.Columns && len(b.Lines) == 1:
		b.Lines[0].mathML(&m)
	case !b.Columns:
		m.WriteString(`<mtable class="lines">`)
		rows(&m, b.Lines)
		m.WriteString("</mtable>")
	default:
		if len(b.Beside) > 0 {
			m.WriteString(`<mtable class="lines"><mtr><mtd>`)
		}
		m.WriteString(`<mtable class="columns">`)
		for i, l := range b.Lines {
			if b.Ruled(i) {
				m.WriteString(`<mtr class="rule">`)
			} else {
				m.WriteString("<mtr>")
			}
			for _, t := range l {
				if t.Over {
					m.WriteString(`<mtd class="over">`)
				} else {
					m.WriteString("<mtd>")
				}
				t.mathML(&m)
				m.WriteString("</mtd>")
			}
			m.WriteString("</mtr>")
		}
		m.WriteString("</mtable>")
		if len(b.Beside) > 0 {
			m.WriteString("</mtd></mtr>")
			rows(&m, b.Beside)
			m.WriteString("</mtable>")
		}
	}
	m.WriteString("</math>")
	return m.String()
}

// rows writes lines as rows of one cell.
func rows(m *strings.Builder, lines []Line) {
	for _, l := range lines {
		m.WriteString("<mtr><mtd>")
		l.mathML(m)
		m.WriteString("</mtd></mtr>")
	}
}

func (l Line) mathML(m *strings.Builder) {
	m.WriteString("<mrow>")
	for i, t := range l {
		// A browser puts room round operators only.
		if i > 0 && !l.tight(i) && !l.mixed(i) && !l[i-1].isOperator() && !t.isOperator() {
			m.WriteString(`<mspace width="0.28em"></mspace>`)
		}
		t.mathML(m)
	}
	m.WriteString("</mrow>")
}

// isOperator reports whether a browser has a rule for the room round a term. It
// has none for a question mark in place of a sign.
func (t Term) isOperator() bool { return t.Kind == Sign && t.Text != "?" }

func (t Term) mathML(m *strings.Builder) {
	class := t.class()
	if t.Den != "" {
		m.WriteString("<mfrac" + class + "><mn>" + html.EscapeString(t.Num) + "</mn><mn>" + html.EscapeString(t.Den) + "</mn></mfrac>")
		return
	}
	if t.Text == "" {
		return
	}
	tag := [...]string{Num: "mn", Sign: "mo", Word: "mtext"}[t.Kind]
	m.WriteString("<" + tag + class + ">" + html.EscapeString(t.Text) + "</" + tag + ">")
}

// class names the role and the marks of a term for a style sheet.
func (t Term) class() string {
	var names []string
	if t.Role != scene.Ink {
		names = append(names, t.Role.String())
	}
	if t.Struck {
		names = append(names, "struck")
	}
	if t.Small {
		names = append(names, "small")
	}
	if len(names) == 0 {
		return ""
	}
	return ` class="` + strings.Join(names, " ") + `"`
}
