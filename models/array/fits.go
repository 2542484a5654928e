package array

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Bounds of what an array shows.
const (
	largestFactor  = 9_999 // of a product
	mostParts      = 9     // parts of a split array: three digits by three
	largestTotal   = 9_999 // of a division
	largestDivisor = 99
	largestCutter  = 9   // the divisor where what is left over is cut
	largestRows    = 12  // of a fraction of an amount
	largestPairs   = 200 // the number whose factors are all shown
	largestCommon  = 100 // of two numbers
	mostBlocks     = 30  // of three factors, and where they are only sketched
	mostSketched   = 12
	largestFamily  = 20 // the sides of a fact family
)

// fits says why a problem has no array: [telling.NotMine] where another kind of
// mostEmpty is the longest row that is drawn with nothing in it.
const mostEmpty = 12

// picture is meant.
func fits(p arithmetic.Problem) error {
	if p.Kind == arithmetic.Division && p.Story == arithmetic.TimesAsMany {
		return telling.NotMine(words.ErrNoArray)
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
		if why := bounded(p, m); why != nil {
			return why
		}
	}
	return roomy(w)
}

// bounded checks the numbers of one move.
func bounded(p arithmetic.Problem, m arithmetic.Move) error {
	switch m := m.(type) {
	case arithmetic.LayRows:
		if p.Kind == arithmetic.FactFamily {
			return words.ArrayTooLarge(largestFamily, m.Rows, m.Cols)
		}
		return words.ArrayTooLarge(largestFactor, m.Rows, m.Cols)
	case arithmetic.SplitSides:
		return words.ArrayTooManyParts(m.Rows, m.Cols, largestFactor, mostParts)
	case arithmetic.SetOut:
		most := int64(largestDivisor)
		if p.Kind == arithmetic.Division && p.Rest != arithmetic.LeftOver {
			most = largestCutter
		}
		if p.Kind == arithmetic.Division && p.Rest == arithmetic.AsDecimal && p.Grouping {
			return words.ErrArrayDecimalRows
		}
		if m.Total == 0 && m.Side > mostEmpty {
			return words.ErrArrayNothing
		}
		return words.ArrayTooMuch(p.Kind, m.Total, m.Side, largestTotal, most, largestRows)
	case arithmetic.LayArrays:
		return words.ArrayTooWide(m, claimRows, claimCols)
	case arithmetic.FindPair:
		return words.ArrayTooManyPairs(m.Rows*m.Cols, largestPairs)
	case arithmetic.FindArrays:
		return words.ArrayTooManyPairs(m.Number, largestCommon)
	case arithmetic.LayBlocks:
		return words.ArrayTooManyBlocks(m.Blocks.Blocks, mostBlocks, largestFactor, m.Rows, m.Cols)
	}
	return nil
}

// roomy reports whether what is drawn has room on the paper.
func roomy(w arithmetic.Working) error {
	switch first := w.Moves[0].(type) {
	case arithmetic.LayRows:
		if first.Rows*first.Cols > 0 && w.Problem.Kind != arithmetic.FactFamily && !planned(w) {
			return words.ErrArrayTooCrowded
		}
	case arithmetic.LayLines:
		a := &taking{}
		a.read(w)
		if max(first.Rows, first.Cols) > largestFactor {
			return words.ArrayTooLarge(largestFactor, first.Rows, first.Cols)
		}
		if a.plan(); !a.fits() {
			return words.ErrArrayTakingLarge
		}
	case arithmetic.LayTerms:
		a := &adding{}
		for _, t := range first.Terms {
			if why := words.ArrayTooLarge(largestFactor, t.Rows, t.Cols); why != nil {
				return why
			}
		}
		if a.plan(w); !a.fits() {
			return words.ErrArrayTermsLarge
		}
	case arithmetic.LayBlocks:
		if m, is := w.Moves[len(w.Moves)-1].(arithmetic.CompareBlocks); is {
			a := &blocksClaim{compare: m}
			if a.place(); !a.fits() {
				return words.ErrArrayBlocksLarge
			}
			return nil
		}
		a := &threeFactors{}
		if a.plan(w); a.look == inSketch {
			return words.ArrayTooManyBlocks(first.Blocks.Blocks, mostSketched, largestFactor, first.Rows, first.Cols)
		}
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

// turn is the place of the array among the pictures of a problem.
func turn(p arithmetic.Problem) int {
	// Dividends for which counters in groups, and beyond the facts blocks, lead.
	const shared, sharedByOne, fact = 40, 999, 12
	if arithmetic.ShiftsBeyondFacts(p) && p.Story == arithmetic.NoStory {
		return telling.Follows // its places are seen better in columns
	}
	switch p.Kind {
	case arithmetic.Product:
		if p.Story == arithmetic.TimesAsMany {
			return telling.Serves
		}
		return telling.Leads
	case arithmetic.Division:
		a, b, ok := p.Operands()
		total, okA := a.Int64()
		by, okB := b.Int64()
		if !ok || !okA || !okB || p.Story == arithmetic.TimesAsMany {
			return telling.Serves
		}
		if total <= shared || by < 10 && total <= sharedByOne && total > fact*by {
			return telling.Follows
		}
		return telling.Leads
	case arithmetic.Missing, arithmetic.Factors, arithmetic.PartOf, arithmetic.CommonFactors, arithmetic.Primality:
		return telling.Leads
	case arithmetic.FactFamily, arithmetic.Expression, arithmetic.Claim:
		if multiplies(p.Left) || multiplies(p.Right) {
			return telling.Leads
		}
	}
	return telling.Serves
}

// multiplies reports whether there is a product in an expression.
func multiplies(e arithmetic.Expr) bool {
	o, is := e.(arithmetic.Operation)
	return is && (o.Op == arithmetic.Multiply || multiplies(o.Left) || multiplies(o.Right))
}
