package array

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

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
	case arithmetic.CommonFactors:
		return arithmetic.SharedFactors(p)
	case arithmetic.Primality:
		return arithmetic.PrimeByArrays(p)
	case arithmetic.Claim, arithmetic.Comparison:
		if w, ok, err := arithmetic.AssociateClaim(p); ok {
			return w, err
		}
		return arithmetic.CompareProducts(p)
	case arithmetic.FactFamily:
		return first(p, arithmetic.ProductFamily)
	case arithmetic.Expression:
		return first(p, arithmetic.DistributeArray, arithmetic.TakeFromArray, arithmetic.ThreeFactors, arithmetic.AddTerms)
	}
	return arithmetic.Working{}, words.ErrNoArray
}

// first has the first procedure that is for the problem work it.
func first(p arithmetic.Problem, procedures ...func(arithmetic.Problem) (arithmetic.Working, bool, error)) (arithmetic.Working, error) {
	for _, procedure := range procedures {
		if w, ok, err := procedure(p); ok {
			return w, err
		}
	}
	return arithmetic.Working{}, words.ErrNoArray
}

// tell tells a problem that fits, by what its working begins with.
func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("array: a problem that does not fit: " + err.Error())
	}
	lines := state(p, w)
	switch first := w.Moves[0].(type) {
	case arithmetic.LayArrays:
		return tellClaim(w)
	case arithmetic.SetOut:
		if p.Kind == arithmetic.PartOf {
			return tellPartOf(w, fractionOf(p), lines)
		}
		return tellDivision(w, first, lines)
	case arithmetic.FindPair:
		return tellFactors(w, lines)
	case arithmetic.FindArrays:
		return tellCommon(w)
	case arithmetic.LayLines:
		return tellTaking(w, lines)
	case arithmetic.LayTerms:
		return tellAdding(w, lines)
	case arithmetic.LayBlocks:
		if p.Kind == arithmetic.Expression {
			return tellThreeFactors(w, lines)
		}
		return tellBlocksClaim(w)
	}
	if p.Kind == arithmetic.FactFamily {
		return tellFamily(w)
	}
	return tellProduct(w, lines)
}
