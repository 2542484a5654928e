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
		a.asked = telling.Join(written(p.Left, telling.Unknown()), "=", written(p.Right, telling.Unknown()))
		a.answered = telling.Join(written(p.Left, answer[0]), "=", written(p.Right, answer[0]))
		a.title = scene.Telling{Shown: a.answered.Text(), Hidden: a.asked.Text()}
		a.of = totalOf(p)
		return a
	case arithmetic.Parity:
		a.of = scene.OfFirst
		n := written(p.Left, notation.Term{})
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
	stem := written(p.Left, notation.Term{})
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

// written is an expression as a line, with a term in the place of the unknown.
func written(e arithmetic.Expr, blank notation.Term) notation.Line {
	switch e := e.(type) {
	case arithmetic.Number:
		return telling.Numeral(e, scene.Ink)
	case arithmetic.Operation:
		sign := notation.S(e.Op.String())
		if e.Op == arithmetic.Of {
			sign = notation.W("of")
		}
		return telling.Join(written(e.Left, blank), sign, written(e.Right, blank))
	}
	return notation.Line{blank}
}

// totalOf says which number of a problem with a blank is the total, in the order
// in which they are written. A blank total is the answer.
func totalOf(p arithmetic.Problem) scene.Of {
	o, right := p.Left.(arithmetic.Operation)
	if !right {
		o, _ = p.Right.(arithmetic.Operation)
	}
	_, blankFirst := o.Left.(arithmetic.Unknown)
	switch {
	case o.Op == arithmetic.Divide && blankFirst:
		return scene.OfAnswer
	case (o.Op == arithmetic.Divide) == right: // 48 ÷ ? = 8 and 48 = 8 × ?
		return scene.OfFirst
	}
	return scene.OfSecond
}
