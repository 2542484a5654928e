package frames

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// statement is what is written of a problem.
type statement struct {
	title           scene.Telling
	asked, answered notation.Line
	stem            notation.Line // its side without the answer, in the roles of its numbers
}

// statementOf writes the problem with and without its answer. The answered line says
// on the way how it was worked: 8 + 6 = 8 + 2 + 4 = 14.
func statementOf(w arithmetic.Working) statement {
	p, a := w.Problem, statement{}
	answer := telling.Numeral(w.Answer.Number, scene.Result)
	nth := 0
	switch p.Kind {
	case arithmetic.Show:
		return shown(w)
	case arithmetic.Parity:
		n := written(p.Left, &nth, nil)
		a.asked = notation.Line{notation.W(words.GroupsParity(w.Moves[0].(arithmetic.PutCounters).Number))}
		a.answered = telling.Join(n, notation.W("is"), notation.Term{Text: words.EvenOrOdd(w.Answer.Even), Kind: notation.Word, Role: scene.Result})
		a.title = scene.Telling{Shown: a.answered.Text(), Hidden: words.Asked(p)}
		return a
	case arithmetic.Missing:
		sides := func(blank notation.Line) notation.Line {
			nth := 0
			left := written(p.Left, &nth, blank)
			return telling.Join(left, "=", written(p.Right, &nth, blank))
		}
		a.asked, a.answered = sides(notation.Line{telling.Unknown()}), sides(answer)
		a.title = scene.Telling{Shown: a.answered.Text(), Hidden: a.asked.Text()}
		return a
	}
	a.stem = written(p.Left, &nth, nil)
	a.asked = telling.Join(a.stem, "=", telling.Unknown())
	plain := telling.Join(a.stem, "=", answer)
	a.title = scene.Telling{Shown: plain.Text(), Hidden: words.Asked(p)}
	a.answered = plain
	if way := onTheWay(w.Moves); way != nil {
		a.answered = telling.Join(a.stem, "=", way, "=", answer)
	}
	return a
}

// shown writes a number as so many tens and ones, or as 5 and more.
func shown(w arithmetic.Working) statement {
	a := statement{asked: notation.Line{notation.W(words.FramesQuestion)}}
	first := w.Moves[0].(arithmetic.PutCounters)
	n := telling.Count(first.Number, scene.First)
	second, two := w.Moves[1].(arithmetic.PutCounters)
	read := w.Moves[len(w.Moves)-1].(arithmetic.ReadFrames)
	switch {
	case two:
		a.answered = telling.Join(n, "=", number(first.Count), "+", number(second.Count))
	case read.Full > 0:
		a.answered = telling.Join(n, "=", number(read.Full), notation.W(words.Place(1, read.Full)))
	default:
		a.answered = telling.Join(n, "=", number(read.Ones), notation.W(words.Place(0, read.Ones)))
	}
	a.title = scene.Telling{Shown: a.answered.Text(), Hidden: words.FramesQuestion}
	return a
}

func number(n int64) notation.Term { return telling.Count(n, scene.Ink) }

func of(n int64, nth int) notation.Term { return telling.Count(n, telling.RoleOf(nth)) }

// written is an expression as a line in the roles of its numbers.
func written(e arithmetic.Expr, nth *int, blank notation.Line) notation.Line {
	switch e := e.(type) {
	case arithmetic.Number:
		*nth++
		return telling.Numeral(e, telling.RoleOf(*nth-1))
	case arithmetic.Operation:
		left := written(e.Left, nth, blank)
		return telling.Join(left, e.Op.String(), written(e.Right, nth, blank))
	}
	return blank
}

// onTheWay is the easier sum or difference that a problem was made into; nil where
// it was worked as it stands.
func onTheWay(moves []arithmetic.Move) notation.Line {
	var line notation.Line
	sign := ""
	add := func(n int64, nth int) {
		if sign != "" {
			line = append(line, notation.S(sign))
		}
		line = append(line, of(n, nth))
	}
	parts, first := 0, moves[0].(arithmetic.PutCounters)
	for _, m := range moves {
		switch m := m.(type) {
		case arithmetic.PutCounters:
			add(m.Count, m.Nth)
			sign = "+"
			parts++
		case arithmetic.FillFrame:
			return telling.Join(of(m.Large, first.Nth), "+", of(m.Need, m.Nth), "+", of(m.Rest, m.Nth))
		case arithmetic.SeeDouble:
			if m.Extra == 0 {
				return nil
			}
			return telling.Join(of(m.Each, 0), "+", of(m.Each, 1), "+", of(m.Extra, m.Nth))
		case arithmetic.TakeCounters:
			sign = "−"
			add(m.Count, 1)
			parts++
		}
	}
	if parts > 3 || parts == 3 && (sign == "−" || first.Ten > 0) {
		return line
	}
	return nil
}

// symbols is what is written beside a move.
func (k *story) symbols(m arithmetic.Move) notation.Block {
	switch m := m.(type) {
	case arithmetic.PutCounters:
		return notation.Lines(k.putting(m))
	case arithmetic.FillFrame:
		need, rest := telling.Count(m.Need, scene.Moved), of(m.Rest, m.Nth)
		return notation.Lines(
			telling.Join(number(m.Large), "+", need, "=", number(arithmetic.TenFrame)),
			telling.Join(k.stem, "=", number(m.Large), "+", need, "+", rest))
	case arithmetic.SeeDouble:
		if m.Extra == 0 {
			return notation.Lines(telling.Join(telling.Count(m.Each, scene.Moved), "+", telling.Count(m.Each, scene.Moved)))
		}
		return notation.Lines(telling.Join(k.stem, "=", telling.Count(m.Each, scene.Moved), "+", telling.Count(m.Each, scene.Moved), "+", of(m.Extra, m.Nth)))
	case arithmetic.AddToDouble:
		if m.Extra == 0 {
			return notation.Lines(k.answered)
		}
		return notation.Lines(
			telling.Join(number(m.Each), "+", number(m.Each), "=", number(m.Double)),
			telling.Join(number(m.Double), "+", number(m.Extra), "=", telling.Count(m.Total, scene.Result)),
			k.answered)
	case arithmetic.TakeCounters:
		return notation.Lines(telling.Join(number(m.From), "−", telling.Count(m.Count, scene.Moved), "=", number(m.Left)))
	case arithmetic.PairUp:
		return notation.Lines(pairsOf(m.Total, m.Pairs, m.Left))
	case arithmetic.ReadPairs:
		return notation.Lines(pairsOf(m.Total, m.Pairs, m.Left), k.answered)
	case arithmetic.ReadFilled:
		lines := []notation.Line{k.answered}
		if len(m.Parts) > 1 {
			sum := telling.Join(telling.Counts("+", scene.Ink, m.Parts...), "=", telling.Count(m.Sum, scene.Result))
			lines = []notation.Line{sum, k.answered}
		}
		return notation.Lines(lines...)
	case arithmetic.ReadFrames:
		if k.said.Kind == arithmetic.Addition && m.Full == 1 && m.Ones > 0 {
			ten := telling.Join(number(arithmetic.TenFrame), "+", number(m.Ones), "=", telling.Count(m.Total, scene.Result))
			return notation.Lines(ten, k.answered)
		}
	}
	return notation.Lines(k.answered)
}

// putting writes that counters are put in: 10 + 3 = 13.
func (k *story) putting(m arithmetic.PutCounters) notation.Line {
	switch {
	case k.said.Kind == arithmetic.Addition && m.Before > 0:
		return k.asked
	case m.Before == 0:
		return notation.Line{telling.Count(m.Count, telling.RoleOf(m.Nth))}
	}
	return telling.Join(number(m.Before), "+", telling.Count(m.Count, scene.Moved), "=", number(m.Now))
}

// pairsOf writes an even number as a sum of two equal addends, and an odd one as
// that and 1 (CCSS 2.OA.C.3).
func pairsOf(total, pairs, left int64) notation.Line {
	sum := telling.Join(number(total), "=", number(pairs), "+", number(pairs))
	if left > 0 {
		sum = telling.Join(sum, "+", telling.Count(left, scene.First))
	}
	return sum
}
