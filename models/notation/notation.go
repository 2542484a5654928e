// Package notation is what is written beside a move, as data: equations with
// stacked fractions, and column layouts with small digits above and struck ones.
// It is told as plain text for a terminal and as MathML for a page.
package notation

import (
	"slices"
	"strings"

	"modeler/models/scene"
)

// Term is one piece of a line. Exactly one of Text and Den is set, or neither
// for an empty cell of a column layout.
type Term struct {
	Text     string // a number, a sign, a word
	Num, Den string // a fraction with a bar
	Kind     TermKind
	Role     scene.Role
	Struck   bool // crossed out: a digit that was traded
	Small    bool // a small digit above a column
	Over     bool // of a cell in a column layout: a rule runs over it
}

// TermKind says how a text is typeset and spoken.
type TermKind uint8

const (
	Num  TermKind = iota // a numeral
	Sign                 // + − × ÷ = < >
	Word                 // ordinary text
)

// Line is one line of terms; in a column layout each term is a cell.
type Line []Term

// Block is what is written beside one move. The zero value is nothing.
type Block struct {
	Lines   []Line
	Columns bool   // the cells of all lines stand right-aligned under each other
	Rule    int    // of a column layout: the line before which a rule is drawn; 0 for none
	Rules   []int  // of a column layout with more than one: the lines before which the others are drawn
	Beside  []Line // of a column layout: equations that stand under it
}

// Ruled reports whether a rule is drawn before a line.
func (b Block) Ruled(line int) bool {
	return line > 0 && (line == b.Rule || slices.Contains(b.Rules, line))
}

// N is a numeral in a role.
func N(text string, role scene.Role) Term { return Term{Text: text, Role: role} }

// F is a fraction with a bar in a role.
func F(num, den string, role scene.Role) Term { return Term{Num: num, Den: den, Role: role} }

// S is a sign.
func S(sign string) Term { return Term{Text: sign, Kind: Sign} }

// W is a word or a few.
func W(text string) Term { return Term{Text: text, Kind: Word} }

// Lines is a block of equations under each other.
func Lines(lines ...Line) Block { return Block{Lines: lines} }

// tight reports whether no space stands between term i and the one before it:
// inside brackets and before a comma.
func (l Line) tight(i int) bool {
	return i == 0 || l[i-1].Text == "(" || l[i].Text == ")" || l[i].Text == ","
}

// mixed reports whether term i is the fraction of a mixed number, whose wholes
// stand before it.
func (l Line) mixed(i int) bool {
	if i == 0 || l[i].Den == "" {
		return false
	}
	wholes := l[i-1]
	return wholes.Den == "" && wholes.Kind == Num && wholes.Role == l[i].Role && wholes.Text != "" &&
		strings.Trim(wholes.Text, "0123456789,") == ""
}

// Runs are the terms as runs of a scene's text, with spaces as a book sets them:
// none inside a mixed number. Words and what touches are one run; a number and a
// sign are each their own, so that the gaps between them come out even.
func (l Line) Runs() []scene.Run {
	var runs []scene.Run
	for i, t := range l {
		space := ""
		if !l.tight(i) && !l.mixed(i) {
			space = " "
		}
		run := scene.Run{Text: t.Text, Num: t.Num, Den: t.Den, Role: t.Role, Struck: t.Struck}
		last := len(runs) - 1
		switch {
		case last >= 0 && run.Text == "," && runs[last].Den == "" && !runs[last].Struck:
			runs[last].Text += run.Text // whatever its role: apart from its number it is lost
			continue
		case last >= 0 && (space == "" || t.Kind == Word && l[i-1].Kind == Word) &&
			run.Den == "" && runs[last].Den == "" && run.Role == runs[last].Role && !run.Struck && !runs[last].Struck:
			runs[last].Text += space + run.Text
			continue
		case space == "":
		case run.Den == "":
			run.Text = space + run.Text
		case last >= 0 && runs[last].Den == "":
			runs[last].Text += space
		default:
			runs = append(runs, scene.Run{Text: space})
		}
		runs = append(runs, run)
	}
	return runs
}

// Text writes the line for a terminal: fractions with a slash.
func (l Line) Text() string {
	var b strings.Builder
	for i, t := range l {
		if !l.tight(i) {
			b.WriteByte(' ')
		}
		b.WriteString(t.text())
	}
	return b.String()
}

func (t Term) text() string {
	if t.Den != "" {
		return t.Num + "/" + t.Den
	}
	return t.Text
}
