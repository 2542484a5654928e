// Package bars draws fractions as shaded parts of bars that share one whole.
package bars

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows fractions as shaded parts of equal bars: what a fraction is,
// whether two are equal, which is more, sums and differences, and other names
// for one amount. (CCSS 3.NF.A.1, 3.NF.A.3, 4.NF.A, 4.NF.B.3, 5.NF.A)
var Model = &telling.Model{
	Name:  "fraction-bars",
	Title: "Fraction bars",
	Doc:   "Fractions as parts of bars with one left edge and one whole: equal or not, more or less, added, taken away and renamed.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Claim,
		arithmetic.Comparison,
		arithmetic.Ordering,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.MixedForm,
		arithmetic.FractionForm,
		arithmetic.SimplestForm,
		arithmetic.Renaming,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.AsSum,
		arithmetic.Expression,
	},
	Examples: []string{
		"3/4", "2 3/4", "3/4 = 6/8", "3/4 = 5/8", "5/8 > 2/3", "1/2 + 1/4 = 3/4", "1/2 + 1/3 = 2/5", "compare 2/5 and 2/7", "order 2/3; 1/2; 5/6; 1/4",
		"1/4 + 2/4", "3/4 + 3/4", "1/2 + 1/3", "1 1/2 + 3/4", "7/8 − 3/8", "3/4 − 1/3", "2 1/4 − 3/4",
		"7/4 as a mixed number", "2 1/4 as a fraction", "6/8 in simplest form", "1/2 = ?/8",
		"5 × 1/4", "3 × 2/5",
		"4 ÷ 1/5", "3/4 ÷ 1/8", "2/3 ÷ 1/4", "1/3 ÷ 4", "3 ÷ 10 as a fraction",
		"3 × 2/5 = 6 × 1/5", "1/2 + 1/3 + 1/6", "3/8 as a sum", "2 1/8 as a sum",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// leads is the turn of fractions alone.
var leads = telling.LeadsFor(arithmetic.Show, arithmetic.Claim, arithmetic.Comparison, arithmetic.Ordering, arithmetic.Addition, arithmetic.Subtraction, arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming, arithmetic.Product, arithmetic.Division, arithmetic.AsSum)

// turn follows where a fraction is compared with a decimal: a picture in hundredths
// shows both as they are written.
func turn(p arithmetic.Problem) int {
	if a, b, ok := p.Operands(); ok && (p.Kind == arithmetic.Claim || p.Kind == arithmetic.Comparison) &&
		(a.Form == arithmetic.Decimal || b.Form == arithmetic.Decimal) {
		return telling.Follows
	}
	if a, _, ok := p.Operands(); ok && p.Kind == arithmetic.Division && sharesWholes(p, a) {
		return telling.Follows // plates and paper circles tell who gets what
	}
	return leads(p)
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic(err) // fits has worked it
	}
	var t telling.Telling
	_, sum := arithmetic.OneSum(p)
	_, copied := arithmetic.CopiesClaim(p)
	switch p.Kind {
	case arithmetic.Show:
		t = tellShown(w)
	case arithmetic.Claim, arithmetic.Comparison:
		switch {
		case sum:
			t = tellSumClaim(w)
		case copied:
			t = tellCopiesClaim(w)
		default:
			t = tellCompared(w)
		}
	case arithmetic.Product:
		t = tellCopies(w)
	case arithmetic.Division:
		if _, b, _ := p.Operands(); isFraction(b) {
			t = tellMeasured(w)
		} else {
			t = tellShared(w)
		}
	case arithmetic.AsSum:
		t = tellApart(w)
	case arithmetic.Expression:
		t = tellChain(w)
	case arithmetic.Ordering:
		t = tellOrdered(w)
	case arithmetic.Addition, arithmetic.Subtraction:
		t = tellSum(w)
	default:
		t = tellNamed(w)
	}
	t.Answer = w.Answer
	return t
}

// stripPieces are the strips of paper that amounts are laid out with.
func stripPieces(laid ...arithmetic.Strips) []telling.Piece {
	count := int64(0)
	for _, a := range laid {
		count += words.BarStripsOf(a)
	}
	if count == 0 {
		return nil
	}
	return []telling.Piece{{Name: words.BarStrips(count), Count: count, Cut: true}}
}
