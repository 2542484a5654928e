package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// decimal is a decimal in the table while it is told. A point stands between the
// ones and the tenths.
//
//	 ones    tenths  hundredths
//	+-----+ +------+------+
//	|     | | ooo  | oooo |
//	+-----+ +------+------+
//	   0   .   3       4
type decimal struct {
	arithmetic.Working
	digits arithmetic.DecimalDigits
	table  table
	said   []string // how the number is said, in lines under its digits
	lit    int      // the index of the column that is marked, or -1
	role   scene.Role
}

// fitsDecimal is about what is told of one decimal.
func fitsDecimal(p arithmetic.Problem) error {
	n, _ := p.Left.(arithmetic.Number)
	switch {
	case n.Places > arithmetic.MostDecimalPlaces:
		return words.PlacesFine
	case n.Value.Num() >= 1_000*n.Value.Den():
		return words.PlacesWide
	}
	if _, err := arithmetic.WorkDecimalDigits(p); err != nil {
		return words.BlocksNoPlace
	}
	return nil
}

// isDecimal reports whether a problem asks something of one decimal.
func isDecimal(p arithmetic.Problem) bool {
	switch p.Kind {
	case arithmetic.Show, arithmetic.InWords, arithmetic.ExpandedForm, arithmetic.PlaceValue:
		n, ok := p.Left.(arithmetic.Number)
		return ok && n.Form == arithmetic.Decimal
	}
	return false
}

func tellDecimal(p arithmetic.Problem) telling.Telling {
	k := &decimal{Working: mustWork(arithmetic.WorkDecimalDigits(p)), lit: -1}
	switch m := k.Moves[0].(type) {
	case arithmetic.LayDigit:
		k.digits = m.Digits
	case arithmetic.LayDigits:
		k.digits = m.Digits
	}
	k.table = layTable(demand{top: k.digits.Top, places: k.digits.Places, slots: []arithmetic.Counts{k.digits.Counts}})
	k.layWords()
	out := telling.Telling{Answer: k.Answer, Pieces: pieces(k.table.top, k.digits.Counts)}
	title := words.PlacesDecimalTitle(p, k.Answer, k.equation(true).Text())
	var desc scene.Telling
	for _, move := range k.Moves {
		told, lines := k.tell(move)
		s := k.table.base(k.rows())
		now, on, lowest := -1, k.digits.Counts, 0
		if m, ok := move.(arithmetic.LayDigit); ok {
			now, on, lowest = m.Index, m.On, m.Index
		}
		k.draw(s, on, lowest, now)
		if _, ok := move.(arithmetic.SayDecimal); ok {
			k.say(s)
		}
		s.Title, s.Desc, desc = title, told.Desc, told.Desc
		out.Steps = append(out.Steps, telling.Step{Title: told.Title, Hands: told.Hands, Ask: told.Ask, Scene: s, Symbols: notation.Lines(lines...)})
	}
	out.Whole = k.table.base(k.rows())
	k.draw(out.Whole, k.digits.Counts, 0, -1)
	k.say(out.Whole)
	out.Whole.Title, out.Whole.Desc = title, desc
	telling.Equation(out.Whole, k.table.rowsEnd(k.rows()), k.equation(false), k.equation(true))
	return out
}

// layWords breaks what is said in lines that have room.
func (k *decimal) layWords() {
	if k.Problem.Kind != arithmetic.InWords {
		return
	}
	wide := func(lines []string) bool {
		return scene.Advance(lines[0], scene.Small, false) > scene.PaperW-2*scene.Margin
	}
	k.said = words.PlacesSaidLines(k.digits.Number, false)
	if wide(k.said) {
		k.said = words.PlacesSaidLines(k.digits.Number, true)
	}
}

// rows are the digits and what is said.
func (k *decimal) rows() int { return 1 + len(k.said) }

// say writes how the number is said, while the answer is shown.
func (k *decimal) say(s *scene.Scene) {
	shown := &scene.Scene{}
	for i, line := range k.said {
		shown.Add(telling.Text(scene.Result, scene.PaperW/2, k.table.row(1+i), scene.Small, line))
	}
	telling.AddPart(s, scene.ShownOnly, shown)
}

// draw draws the counters and the digits under them, down to one column. Where the
// number is what is asked, its digits are left out while the answer is hidden.
func (k *decimal) draw(s *scene.Scene, on arithmetic.Counts, lowest, now int) {
	t, digits := &k.table, &scene.Scene{}
	for index := t.top; index >= lowest; index-- {
		as := ofFirst
		switch index {
		case now:
			as = as.moved()
		case k.lit:
			as.role = k.role
			t.light(s, index, k.role)
		}
		t.layPlace(s, index, 0, 0, on[index], as)
		t.write(digits, index, 0, digit(on[index], as.role))
	}
	if lowest < k.digits.Places {
		ones, tenths := t.columns[k.digits.Places], t.columns[k.digits.Places-1]
		digits.Add(telling.Text(scene.Ink, (ones.Right()+tenths.X)/2, t.row(0), scene.Middle, "."))
	}
	when := scene.Always
	if k.Problem.Kind == arithmetic.Show {
		when = scene.ShownOnly
	}
	telling.AddPart(s, when, digits)
}

// tell is one move in words and symbols.
func (k *decimal) tell(move arithmetic.Move) (words.Told, []notation.Line) {
	number := telling.Numeral(k.digits.Number, scene.First)
	switch m := move.(type) {
	case arithmetic.LayDigit:
		count := telling.Join(digit(m.Count, scene.First), notation.W(words.DecimalColumn(m.Digits.Places, m.Index)))
		return words.PlacesLayDigit(m), []notation.Line{telling.Join(count, "=", telling.Numeral(m.Worth, scene.First))}
	case arithmetic.LayDigits:
		return words.PlacesLayDigits(m.Digits), []notation.Line{number}
	case arithmetic.WriteDigits:
		return words.PlacesWriteDigits(k.Problem, m, k.equation(true).Text()), []notation.Line{k.equation(true)}
	case arithmetic.PointAtDigit:
		k.lit, k.role = m.Index, scene.Moved
		return words.PlacesPoint(m), []notation.Line{telling.Join(digit(m.Digit, scene.Moved), notation.W(words.DecimalColumn(m.Digits.Places, m.Index)))}
	case arithmetic.WorthOfDigit:
		k.role = scene.Result
		told := words.PlacesWorth(k.digits, m)
		asked := words.PlacesDecimal(k.digits) + " " + words.PlacesPointed(k.Moves[1].(arithmetic.PointAtDigit))
		told.Desc = scene.Telling{Shown: asked + " " + words.PlacesWorthOf(k.digits, m), Hidden: asked + " " + words.PlacesHowMuch()}
		return told, []notation.Line{telling.Join(digit(m.Digit, scene.Result), "×", telling.Numeral(m.Each, scene.Ink), "=", telling.Numeral(m.Worth, scene.Result))}
	}
	said := move.(arithmetic.SayDecimal)
	return words.PlacesSay(said), []notation.Line{telling.Join(number, "="), {notation.W(words.DecimalName(said.Digits.Number))}}
}

// equation stands at the foot.
func (k *decimal) equation(answered bool) notation.Line {
	number := telling.Numeral(k.digits.Number, scene.First)
	fill := notation.Line{telling.Unknown()}
	switch m := k.Moves[len(k.Moves)-1].(type) {
	case arithmetic.WriteDigits:
		var parts []notation.Line
		for _, part := range m.Parts {
			parts = append(parts, telling.Numeral(part, scene.Result))
		}
		switch {
		case answered:
			fill = telling.Chain("+", parts...)
		case k.Problem.Kind == arithmetic.Show:
			return notation.Line{notation.W(words.PlacesQuestion())}
		}
		return shortened(telling.Join(number, "=", fill), number)
	case arithmetic.WorthOfDigit:
		in, the, is := words.BlocksDigitWorth()
		if answered {
			fill = telling.Numeral(m.Worth, scene.Result)
		}
		return telling.Join(notation.W(in), number, notation.W(the), digit(m.Digit, scene.Result), notation.W(is), fill)
	}
	return number
}
