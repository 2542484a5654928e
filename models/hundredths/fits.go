package hundredths

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

// mostSquares is how many wholes stand side by side with small squares that can
// still be seen.
const mostSquares = 3

func fits(p arithmetic.Problem) error {
	list, ok := numbersOf(p)
	if !ok || p.Story != arithmetic.NoStory {
		return telling.NotMine(words.SquaresKind)
	}
	if err := isMine(p, list); err != nil {
		return err
	}
	for _, n := range list {
		switch {
		case n.Places > 2 && n.Form == arithmetic.Decimal:
			return words.SquaresFine
		case n.Value.Sign() < 0, n.Value.Cmp(fraction.Whole(mostSquares)) > 0:
			return words.SquaresLarge
		}
	}
	w, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrSame):
		return words.SquaresSame
	case errors.Is(err, arithmetic.ErrNegative):
		return words.SquaresTaken
	case err != nil && p.Kind == arithmetic.Renaming:
		return telling.NotMine(words.SquaresBlank)
	case err != nil:
		return words.SquaresParts
	case w.Answer.Number.Value.Cmp(fraction.Whole(mostSquares)) > 0:
		return words.SquaresLarge
	}
	return nil
}

// isMine reports problems whose numbers have no tenths or hundredths to see. A
// fraction is shown here for its decimal, and in tenths and hundredths.
func isMine(p arithmetic.Problem, list []arithmetic.Number) error {
	decimals, tens, others := 0, 0, 0
	for _, n := range list {
		switch n.Form {
		case arithmetic.Decimal:
			decimals++
		case arithmetic.Percent:
			if p.Kind == arithmetic.Addition || p.Kind == arithmetic.Subtraction {
				return telling.NotMine(words.SquaresKind)
			}
			decimals++
		case arithmetic.Common:
			if den := n.Value.Den(); den == 10 || den == 100 {
				tens++
			} else {
				others++
			}
		case arithmetic.Whole:
		default:
			return telling.NotMine(words.SquaresKind)
		}
	}
	switch p.Kind {
	case arithmetic.DecimalForm, arithmetic.PercentForm:
		if list[0].Form == arithmetic.Whole {
			return telling.NotMine(words.SquaresDigits)
		}
		return nil
	case arithmetic.Addition, arithmetic.Subtraction:
		if others > 0 || decimals > 0 && tens > 0 {
			return telling.NotMine(words.SquaresKind)
		}
		if decimals == 0 && !mixesTens(list) {
			return telling.NotMine(words.SquaresDigits)
		}
		return nil
	case arithmetic.Renaming:
		if others > 0 || tens == 0 {
			return telling.NotMine(words.SquaresBlank)
		}
		return nil
	}
	if decimals == 0 || others > 0 {
		return telling.NotMine(words.SquaresDigits)
	}
	return nil
}

// mixesTens reports whether one of two fractions is in tenths and one in hundredths.
func mixesTens(list []arithmetic.Number) bool {
	return len(list) == 2 && list[0].Value.Den()*list[1].Value.Den() == 1000
}

func numbersOf(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	switch p.Kind {
	case arithmetic.Show, arithmetic.FractionForm, arithmetic.DecimalForm, arithmetic.PercentForm, arithmetic.Renaming:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	case arithmetic.Comparison, arithmetic.Claim, arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	}
	return nil, false
}
