// Package array draws products, divisions and factors as rows of equal length.
package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows products and everything that undoes them: rows of equal length,
// counted by rows or by parts, with a side or the total unknown.
var Model = &telling.Model{
	Name:  "array",
	Title: "Array",
	Doc:   "Rows of equal length, split where the facts are known: multiplying, dividing and factors.",
	Kinds: []arithmetic.Kind{
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.Factors,
		arithmetic.Missing,
		arithmetic.Expression,
		arithmetic.PartOf,
		arithmetic.Claim,
		arithmetic.Comparison,
		arithmetic.CommonFactors,
		arithmetic.Primality,
		arithmetic.FactFamily,
	},
	Examples: []string{
		"7 × 8", "3 × 8", "5 × 60", "12 × 7", "23 × 14", "36 × 94", "8 × 549", "2 × (8 + 7)",
		"56 ÷ 8", "56 in groups of 8", "58 ÷ 8", "84 ÷ 6", "966 ÷ 7",
		"8 × ? = 48", "? × 8 = 48", "5 = ? ÷ 3", "1/3 of 12", "3/4 of 600", "factors of 24", "7 × 0",
		"6 × 4 = 4 × 6", "7 × 8 = 54", "8 × 7 = 8 × 5 + 8 × 2",
		"9 × 7", "3 × 5 × 2", "2 × (6 × 5)", "4 × 12 × 5", "(2 × 3) × 4 = 2 × (3 × 4)",
		"2 + 1 × 3", "3 × 4 + 2", "20 − 3 × 4", "8 × (10 − 2)", "50 + 3 × 20", "1,000 − 3 × 250",
		"98 ÷ 4 as a mixed number", "98 ÷ 4 as a decimal", "17 ÷ 5 rounded up", "612 ÷ 6",
		"common factors of 12 and 18", "is 13 prime", "is 15 prime", "fact family of 7 × 8",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// state writes the problem with and without its answer.
func state(p arithmetic.Problem, w arithmetic.Working) statement {
	l := statement{of: scene.OfAnswer}
	answer := telling.Numeral(w.Answer.Number, scene.Result)
	if w.Answer.Remainder > 0 {
		answer = telling.Join(answer, notation.W("r"), telling.Count(w.Answer.Remainder, scene.First))
	}
	switch p.Kind {
	case arithmetic.Missing:
		l.asked = telling.Join(telling.Plain(p.Left, telling.Unknown()), "=", telling.Plain(p.Right, telling.Unknown()))
		l.answered = telling.Join(telling.Plain(p.Left, answer[0]), "=", telling.Plain(p.Right, answer[0]))
		l.title = scene.Telling{Shown: l.answered.Text(), Hidden: l.asked.Text()}
		l.of = telling.TotalOf(p)
		return l
	case arithmetic.CommonFactors, arithmetic.FactFamily:
		return l
	case arithmetic.Primality:
		l.title = primeTitle(w)
		return l
	case arithmetic.Factors:
		l.title = words.ArrayFactorsTitle(p, w.Answer.Pairs)
		return l
	case arithmetic.Division:
		l.of = scene.OfFirst
		answer = quotient(w, answer)
	case arithmetic.PartOf:
		l.of = scene.OfSecond
	}
	stem := telling.Plain(p.Left, notation.Term{})
	l.asked, l.answered = telling.Join(stem, "=", telling.Unknown()), telling.Join(stem, "=", answer)
	l.title = scene.Telling{Shown: l.answered.Text(), Hidden: words.Asked(p)}
	if up, is := w.Moves[len(w.Moves)-1].(arithmetic.OneMoreLine); is {
		// 17 ÷ 5 = 4 would not be true.
		l.asked, l.answered = telling.Join(stem, "→", telling.Unknown()), roundedUp(stem, up, answer)
		l.title.Shown = words.ArrayRoundedUp(p, up)
	}
	if p.Kind != arithmetic.PartOf {
		l.stem = stem
	}
	return l
}

// fractionOf is the fraction of a fraction of an amount.
func fractionOf(p arithmetic.Problem) fraction.Fraction {
	o, _ := p.Left.(arithmetic.Operation)
	n, _ := o.Left.(arithmetic.Number)
	return n.Value
}
