package groups

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// statement is what is written of a problem, and which of its numbers the counters
// are.
type statement struct {
	title           scene.Telling
	asked, answered notation.Line
	of              scene.Of
	fraction        fraction.Fraction // of a part of an amount
}

// statementOf writes the problem with and without its answer.
func statementOf(p arithmetic.Problem, w arithmetic.Working) statement {
	a := statement{of: scene.OfAnswer}
	answer := telling.Numeral(w.Answer.Number, scene.Result)
	switch p.Kind {
	case arithmetic.Missing:
		a.asked = telling.Join(telling.Plain(p.Left, telling.Unknown()), "=", telling.Plain(p.Right, telling.Unknown()))
		a.answered = telling.Join(telling.Plain(p.Left, answer[0]), "=", telling.Plain(p.Right, answer[0]))
		a.title = scene.Telling{Shown: a.answered.Text(), Hidden: a.asked.Text()}
		a.of = telling.TotalOf(p)
		return a
	case arithmetic.Parity:
		a.of = scene.OfFirst
		n := telling.Plain(p.Left, notation.Term{})
		a.asked = notation.Line{notation.W(words.GroupsParity(w.Moves[0].(arithmetic.SetGroups).Total))}
		a.answered = telling.Join(n, notation.W("is"), notation.Term{Text: words.EvenOrOdd(w.Answer.Even), Kind: notation.Word, Role: scene.Result})
		a.title = scene.Telling{Shown: a.answered.Text(), Hidden: words.Asked(p)}
		return a
	case arithmetic.Division:
		a.of = scene.OfFirst
		answer = quotient(p, w, answer)
	case arithmetic.PartOf:
		a.of = scene.OfSecond
		a.fraction = p.Left.(arithmetic.Operation).Left.(arithmetic.Number).Value
	}
	stem := telling.Plain(p.Left, notation.Term{})
	a.asked, a.answered = telling.Join(stem, "=", telling.Unknown()), telling.Join(stem, "=", answer)
	a.title = scene.Telling{Shown: a.answered.Text(), Hidden: words.Asked(p)}
	if p.Rest == arithmetic.OneMore {
		a.asked = telling.Join(stem, "→", telling.Unknown()) // 17 ÷ 5 is not 4
	}
	return a
}

// quotient is what stands after the equal sign of a division: 3 r 2, 3 2/4 = 3 1/2,
// or 3 r 2 → 4.
func quotient(p arithmetic.Problem, w arithmetic.Working, answer notation.Line) notation.Line {
	if w.Answer.Remainder > 0 {
		return telling.Join(answer, notation.W("r"), telling.Count(w.Answer.Remainder, scene.First))
	}
	read, _ := w.Moves[len(w.Moves)-1].(arithmetic.ReadGroups)
	switch {
	case p.Rest == arithmetic.AsPart && w.Answer.Simplest != w.Answer.Number:
		return telling.Join(answer, "=", telling.Numeral(w.Answer.Simplest, scene.Result))
	case p.Rest == arithmetic.OneMore && read.Left > 0:
		full := read.Each
		if read.Story == arithmetic.Measuring {
			full = read.Groups
		}
		return telling.Join(telling.Count(full, scene.Ink), notation.W("r"), telling.Count(read.Left, scene.First), "→", answer)
	}
	return answer
}
