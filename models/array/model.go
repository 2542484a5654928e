// Package array draws products, divisions and factors as rows of equal length.
package array

import (
	"errors"

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
	},
	Examples: []string{
		"7 × 8", "3 × 8", "5 × 60", "12 × 7", "23 × 14", "36 × 94", "8 × 549", "2 × (8 + 7)",
		"56 ÷ 8", "56 in groups of 8", "58 ÷ 8", "84 ÷ 6", "966 ÷ 7",
		"8 × ? = 48", "? × 8 = 48", "5 = ? ÷ 3", "1/3 of 12", "3/4 of 600", "factors of 24", "7 × 0",
		"6 × 4 = 4 × 6", "7 × 8 = 54", "8 × 7 = 8 × 5 + 8 × 2",
	},
	Fits: fits,
	Turn: telling.LeadsFor(arithmetic.Product, arithmetic.Division, arithmetic.Factors, arithmetic.Missing, arithmetic.Expression, arithmetic.PartOf),
	Tell: tell,
}

// Bounds of what an array shows.
const (
	largestFactor  = 9_999 // of a product
	mostParts      = 9     // parts of a split array: three digits by three
	largestTotal   = 9_999 // of a division
	largestDivisor = 99
	largestRows    = 12  // of a fraction of an amount
	largestPairs   = 200 // the number whose factors are all shown
)

func fits(p arithmetic.Problem) error {
	if p.Rest != arithmetic.LeftOver {
		return words.ErrArrayRest
	}
	w, err := work(p)
	if err != nil {
		why := words.ArrayMisfit(p, err)
		if why == words.ErrNoArray || errors.Is(err, arithmetic.ErrNotWhole) && p.Kind != arithmetic.PartOf {
			return telling.NotMine(why)
		}
		return why
	}
	for _, m := range w.Moves {
		var why error
		switch m := m.(type) {
		case arithmetic.LayRows:
			why = words.ArrayTooLarge(largestFactor, m.Rows, m.Cols)
		case arithmetic.SplitSides:
			why = words.ArrayTooManyParts(m.Rows, m.Cols, largestFactor, mostParts)
		case arithmetic.SetOut:
			why = words.ArrayTooMuch(p.Kind, m.Total, m.Side, largestTotal, largestDivisor, largestRows)
		case arithmetic.LayArrays:
			why = words.ArrayTooWide(m, claimRows, claimCols)
		case arithmetic.FindPair:
			why = words.ArrayTooManyPairs(m.Rows*m.Cols, largestPairs)
		}
		if why != nil {
			return why
		}
	}
	if first, isProduct := w.Moves[0].(arithmetic.LayRows); isProduct && first.Rows*first.Cols > 0 && !planned(w) {
		return words.ErrArrayTooCrowded
	}
	return nil
}

// planned reports whether the parts of a product, with their names, have room on
// the paper.
func planned(w arithmetic.Working) bool {
	a := &story{}
	a.plan(w)
	return len(a.x) > 0
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch p.Kind {
	case arithmetic.Product:
		return arithmetic.ProductByArray(p)
	case arithmetic.Division:
		return arithmetic.DivisionByArray(p)
	case arithmetic.Missing:
		return arithmetic.MissingFactor(p)
	case arithmetic.PartOf:
		return arithmetic.PartOfAmount(p)
	case arithmetic.Factors:
		return arithmetic.FactorPairs(p)
	case arithmetic.Claim, arithmetic.Comparison:
		return arithmetic.CompareProducts(p)
	case arithmetic.Expression:
		w, ok, err := arithmetic.DistributeArray(p)
		if err == nil && !ok {
			err = words.ErrNoArray
		}
		return w, err
	}
	return arithmetic.Working{}, words.ErrNoArray
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("array: a problem that does not fit: " + err.Error())
	}
	if _, isClaim := w.Moves[0].(arithmetic.LayArrays); isClaim {
		return tellClaim(w)
	}
	lines := state(p, w)
	switch first := w.Moves[0].(type) {
	case arithmetic.SetOut:
		if p.Kind == arithmetic.PartOf {
			return tellPartOf(w, fractionOf(p), lines)
		}
		return tellDivision(w, first, lines)
	case arithmetic.FindPair:
		return tellFactors(w, lines)
	}
	return tellProduct(w, lines)
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
		l.asked = telling.Join(written(p.Left, telling.Unknown()), "=", written(p.Right, telling.Unknown()))
		l.answered = telling.Join(written(p.Left, answer[0]), "=", written(p.Right, answer[0]))
		l.title = scene.Telling{Shown: l.answered.Text(), Hidden: l.asked.Text()}
		l.of = missingTotal(p)
		return l
	case arithmetic.Factors:
		l.title = words.ArrayFactorsTitle(p, w.Answer.Pairs)
		return l
	case arithmetic.Division:
		l.of = scene.OfFirst
	case arithmetic.PartOf:
		l.of = scene.OfSecond
	}
	stem := written(p.Left, notation.Term{})
	l.asked, l.answered = telling.Join(stem, "=", telling.Unknown()), telling.Join(stem, "=", answer)
	l.title = scene.Telling{Shown: l.answered.Text(), Hidden: words.Asked(p)}
	if p.Kind != arithmetic.PartOf {
		l.stem = stem
	}
	return l
}

// missingTotal says which number of the problem is the total of the array, in
// the order in which they are written. A blank total is the answer.
func missingTotal(p arithmetic.Problem) scene.Of {
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
		side := func(e2 arithmetic.Expr) notation.Line {
			line := written(e2, blank)
			if o, is := e2.(arithmetic.Operation); is && o.Op == arithmetic.Add && e.Op == arithmetic.Multiply {
				return telling.Join("(", line, ")")
			}
			return line
		}
		return telling.Join(side(e.Left), sign, side(e.Right))
	}
	return notation.Line{blank}
}

// fractionOf is the fraction of a fraction of an amount.
func fractionOf(p arithmetic.Problem) fraction.Fraction {
	o, _ := p.Left.(arithmetic.Operation)
	n, _ := o.Left.(arithmetic.Number)
	return n.Value
}
