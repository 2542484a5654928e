package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// What is left over is cut, and shown again larger under the array: a strip for
// each thing, and the part of each that goes to one row.
//
//	2 left over, each cut in 4
//	▨▢▢▢   ▨▢▢▢              2/4 for each row

// cutting are the moves that go on after the side was read.
type cutting struct {
	cut    *arithmetic.CutRest
	trades []arithmetic.TradeRest
	more   *arithmetic.OneMoreLine
}

// quotient is what a division comes to: with what is left over beside it, or with
// the last name of a mixed number.
func quotient(w arithmetic.Working, answer notation.Line) notation.Line {
	if last := w.Answer.Simplest; last.String() != w.Answer.Number.String() && last != (arithmetic.Number{}) {
		return telling.Join(answer, "=", telling.Numeral(last, scene.Result))
	}
	return answer
}

// roundedUp is 17 ÷ 5 = 3 r 2 → 4.
func roundedUp(stem notation.Line, m arithmetic.OneMoreLine, answer notation.Line) notation.Line {
	return telling.Join(stem, "=", number(m.Full), notation.W("r"), telling.Count(m.Left, scene.First), "→", answer)
}

// goesOn reports whether something is done with what is left over.
func (d *division) goesOn() bool { return d.cut != nil || len(d.trades) > 0 || d.more != nil }

const (
	stripTall  = 34
	stripApart = 16
	stripName  = 46 // the name over a line of strips
	stripUnder = 72 // of what a row gets, with room for a fraction
	stripsEach = 4  // beside each other
	stripsEnd  = 18
)

// stripsTall is the room under the array for all strips.
func (d *division) stripsTall() int {
	tall := 0
	if d.cut != nil {
		tall = stripsHigh(d.cut.Left)
	}
	for _, m := range d.trades {
		tall += stripsHigh(m.From)
	}
	return tall
}

func stripsHigh(count int64) int {
	lines := (int(count) + stripsEach - 1) / stripsEach
	return stripName + lines*(stripTall+stripApart) + stripUnder
}

// restStep tells one move after the side was read; traded counts the trades told.
func (d *division) restStep(m arithmetic.Move, traded *int) telling.Step {
	var st telling.Step
	s := &scene.Scene{Title: d.title, W: scene.PaperW}
	switch m := m.(type) {
	case arithmetic.CutRest:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Cut(m, d.read, d.lines)
		st.Symbols = notation.Lines(telling.Join(number(m.Left), "÷", number(m.Parts), "=", telling.Numeral(m.Share, scene.Result)), d.answered)
	case arithmetic.TradeRest:
		*traded++
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Traded(m, d.trades[:*traded], d.read, d.lines)
		fact := telling.Join(number(m.Traded), "÷", number(d.set.Side), "=", telling.Count(m.Each, scene.Result))
		if m.Left > 0 {
			fact = telling.Join(fact, notation.W("r"), number(m.Left))
		}
		st.Symbols = notation.Lines(fact, d.answered)
		if *traded < len(d.trades) {
			st.Symbols = notation.Lines(fact)
		}
	case arithmetic.OneMoreLine:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.More(m, d.read, d.lines)
		st.Symbols = notation.Lines(telling.Join(telling.Count(d.read.Found, scene.Ink), "+", number(1), "=", telling.Count(m.Found, scene.Result)), d.answered)
	}
	d.known(s)
	d.done(s)
	d.rest(s, d.read.Left, true)
	d.check(s)
	d.after(s, d.stripsTop(), *traded)
	s.H = d.stepFoot()
	st.Scene = s
	return st
}

// stripsTop is where the strips of the steps begin.
func (d *division) stripsTop() int { return d.stepFoot() - scene.Margin - d.stripsTall() }

// after draws what was done with what is left over: the strips of the cut or of
// the first trades, or the places of the line that is not full.
func (d *division) after(s *scene.Scene, y, traded int) {
	if d.cut != nil {
		d.strips(s, y, d.cut.Left, d.cut.Parts, d.cut.Left, words.ArrayCutIn(d.cut.Left, d.cut.Parts), telling.Join(telling.Numeral(d.cut.Share, scene.Result), notation.W(words.ArrayShareOf(d.set))))
	}
	for _, m := range d.trades[:traded] {
		d.strips(s, y, m.From, 10, m.Each, words.ArrayTradedFor(m), telling.Join(telling.Count(m.Each, scene.Result), notation.W(words.ArrayPartsEach(m))))
		y += stripsHigh(m.From)
	}
	if d.more != nil {
		d.empties(s)
	}
}

// strips draws so many strips, each cut in parts. Marked are as many parts as one
// row gets: one of each strip, or the first ones of a trade.
func (d *division) strips(s *scene.Scene, y int, count, parts, marked int64, over string, under notation.Line) {
	each := min(int(count), stripsEach)
	room := (scene.PaperW - 2*scene.Margin - (each-1)*stripApart) / each
	unit := min(room/int(parts), 30)
	wide := unit * int(parts)
	left := (scene.PaperW - each*wide - (each-1)*stripApart) / 2
	s.Add(telling.Text(scene.Ink, scene.PaperW/2, y+stripName/2, scene.Small, over))
	y += stripName
	for k := range int(count) {
		x, top := left+k%stripsEach*(wide+stripApart), y+k/stripsEach*(stripTall+stripApart)
		s.Draw(scene.Tray, scene.Plain, scene.Grid{X: x, Y: top, W: wide, H: stripTall, Cols: int(parts), Rows: 1})
		s.Draw(scene.First, scene.Outline, scene.Rect{X: x, Y: top, W: wide, H: stripTall})
		own := 0 // parts marked on this strip
		switch {
		case marked == count && d.cut != nil:
			own = 1
		default:
			own = max(0, min(int(parts), int(marked)-k*int(parts)))
		}
		if own > 0 {
			s.Add(scene.Item{Shape: scene.Grid{X: x, Y: top, W: own * unit, H: stripTall, Cols: own, Rows: 1}, Role: scene.Result, When: scene.ShownOnly})
		}
	}
	y += (int(count)+stripsEach-1)/stripsEach*(stripTall+stripApart) - stripApart + stripUnder/2
	name := scene.Text{X: scene.PaperW / 2, Y: y, Size: scene.Small, Bold: true, Runs: under.Runs()}
	s.Add(scene.Item{Shape: name, Role: scene.Result, When: scene.ShownOnly}, captionAt(blanked("?"), scene.PaperW/2, y))
}

// empties draws the places that stay empty in a line of its own for what is left
// over.
func (d *division) empties(s *scene.Scene) {
	w := d.wait
	for k := int(d.more.Left); k < int(d.set.Side); k++ {
		switch {
		case w.bowl:
			at := d.looseSeat(k, int(d.set.Side))
			s.Draw(scene.Hidden, scene.Dashed, scene.Circle{X: at.X, Y: at.Y, R: looseAcross / 2})
		case d.look == inCounters:
			at := w.seat(k)
			s.Draw(scene.Hidden, scene.Dashed, scene.Circle{X: at.X, Y: at.Y, R: d.size / 2})
		default:
			u := d.plot.step
			s.Draw(scene.Hidden, scene.Dashed, scene.Rect{X: w.x + k*u, Y: w.y, W: u, H: u})
		}
	}
}

// told describes the whole story.
func (d *division) told() scene.Telling {
	var desc scene.Telling
	switch {
	case d.cut != nil:
		_, _, _, desc = d.said.Cut(*d.cut, d.read, d.lines)
	case len(d.trades) > 0:
		_, _, _, desc = d.said.Traded(d.trades[len(d.trades)-1], d.trades, d.read, d.lines)
	case d.more != nil:
		_, _, _, desc = d.said.More(*d.more, d.read, d.lines)
	default:
		desc = d.said.Story(d.read, d.lines)
	}
	return desc
}
