package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// The rows under what one digit is worth: the digits, and the arrow from a place to
// the one that is worth 10 times as much.
const (
	rowDigits = iota
	rowTenTimes
	rowsOfDigit
)

// pointing is what one digit is worth while it is told: the column of the digit is
// lit, and held beside the next one.
type pointing struct {
	problem arithmetic.Problem
	table   table
	laid    arithmetic.LayOut
	found   arithmetic.FindDigit
	counted arithmetic.CountDigit
	beside  *arithmetic.LookBeside // nil where there is nothing to hold beside
}

func tellDigit(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.WorthBesideNext(p))
	k := &pointing{problem: p, laid: w.Moves[0].(arithmetic.LayOut), found: w.Moves[1].(arithmetic.FindDigit), counted: w.Moves[2].(arithmetic.CountDigit)}
	if look, ok := w.Moves[len(w.Moves)-1].(arithmetic.LookBeside); ok {
		k.beside = &look
	}
	k.table = layTable(demand{top: k.laid.Counts.Top(), slots: []arithmetic.Counts{k.laid.Counts}})
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, k.laid.Counts)}
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.table.base(k.rows())}
		desc := words.PlacesDescDigit(k.laid, k.found)
		hidden := desc
		role := scene.Result
		switch move := move.(type) {
		case arithmetic.LayOut:
			role = scene.First
			step.Symbols = notation.Lines(number(move.Number, scene.First))
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(move)
			desc = words.PlacesDescLaid(move)
			hidden = desc
		case arithmetic.FindDigit:
			role = scene.Moved
			step.Symbols = notation.Lines(telling.Join(digit(move.Digit, scene.Moved), notation.W(words.Place(move.Power, move.Digit))))
			step.Title, step.Hands, step.Ask = words.PlacesFindDigit(move)
		case arithmetic.CountDigit:
			step.Symbols = notation.Lines(k.reckoned())
			step.Title, step.Hands, step.Ask = words.BlocksCountDigit(move)
			desc = words.Sentences(desc, words.BlocksWorth(move))
			hidden = words.Sentences(hidden, words.PlacesHowMuch())
		case arithmetic.LookBeside:
			k.tenTimes(step.Scene)
			step.Symbols = notation.Lines(k.reckoned(), telling.Join(number(move.Ten, scene.Ink), "×", number(move.Smaller, besideRole(move, move.Smaller)), "=", number(move.Larger, besideRole(move, move.Larger))))
			step.Title, step.Hands, step.Ask = words.PlacesBeside(move)
			desc = words.Sentences(desc, words.BlocksWorth(k.counted), words.PlacesDescBeside(move))
			hidden = words.Sentences(hidden, words.PlacesDescBeside(move), words.PlacesHowMuch())
		}
		k.lit(step.Scene, role)
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Telling{Shown: desc, Hidden: hidden}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

// besideRole is that of the answer for what the digit is worth in its own place.
func besideRole(m arithmetic.LookBeside, n int64) scene.Role {
	if n == m.Worth {
		return scene.Result
	}
	return scene.Ink
}

func (k *pointing) rows() int {
	if k.beside == nil {
		return rowsOfDigit - 1
	}
	return rowsOfDigit
}

// lit draws the counters and digits, those of the place in another role, and a
// line round its column.
func (k *pointing) lit(s *scene.Scene, role scene.Role) {
	t := &k.table
	for power := t.top; power >= 0; power-- {
		as := ofFirst
		if power == k.found.Power {
			as.role = role
			if role != scene.First {
				t.light(s, power, role)
			}
		}
		t.layPlace(s, power, 0, 0, k.laid.Counts[power], as)
		t.write(s, power, rowDigits, digit(k.laid.Counts[power], as.role))
	}
}

// tenTimes draws an arrow under the digits from the smaller of two places to the
// larger.
//
//	2      7
//	^      |
//	+------+
//	10 times
func (k *pointing) tenTimes(s *scene.Scene) {
	const under, deep, label = 24, 50, 74 // below the middle of the digits
	t := &k.table
	small := min(k.beside.Power, k.beside.Beside)
	from, to, y := t.middle(small), t.middle(small+1), t.row(rowDigits)
	s.Draw(scene.Note, scene.Plain, scene.Polyline{{X: from, Y: y + under}, {X: from, Y: y + deep}, {X: to, Y: y + deep}, {X: to, Y: y + under + head}})
	s.Draw(scene.Note, scene.Deep, scene.Polygon{{X: to, Y: y + under}, {X: to - head/2, Y: y + under + head}, {X: to + head/2, Y: y + under + head}})
	text := scene.Words((from+to)/2, y+label, scene.Small, words.PlacesTenTimes())
	s.Add(scene.Item{Shape: telling.OnPaper(text), Role: scene.Note})
}

// reckoned is 4 hundreds = 400.
func (k *pointing) reckoned() notation.Line {
	return telling.Join(digit(k.found.Digit, scene.Result), notation.W(words.Place(k.found.Power, k.found.Digit)), "=", number(k.counted.Worth, scene.Result))
}

func (k *pointing) whole() *scene.Scene {
	s := k.table.base(k.rows())
	k.lit(s, scene.Result)
	end := k.table.rowsEnd(1)
	if k.beside != nil {
		k.tenTimes(s)
		end = k.table.rowsEnd(rowsOfDigit) + scene.Small
	}
	in, the, is := words.BlocksDigitWorth()
	line := telling.Join(notation.W(in), number(k.found.Number, scene.First), notation.W(the), digit(k.found.Digit, scene.Result), notation.W(is))
	telling.Equation(s, end, telling.Join(line, telling.Unknown()), telling.Join(line, number(k.counted.Worth, scene.Result)))
	s.Title = scene.Telling{Shown: words.BlocksDigitTitle(k.problem, k.counted), Hidden: words.Asked(k.problem)}
	desc := words.PlacesDescDigit(k.laid, k.found)
	ten := ""
	if k.beside != nil {
		ten = words.PlacesDescBeside(*k.beside)
	}
	s.Desc = scene.Telling{Shown: words.Sentences(desc, words.BlocksWorth(k.counted), ten), Hidden: words.Sentences(desc, ten, words.PlacesHowMuch())}
	return s
}
