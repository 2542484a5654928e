package blocks

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// largest is the largest number: above it there is no block to trade for.
const largest = 9_999

// mostGroups is how many groups have room: as many as one digit says. mostAddends
// is how many numbers of a list have.
const mostGroups, mostAddends = 9, 4

func fits(p arithmetic.Problem) error {
	numbers, ok := numbersOf(p)
	if !ok {
		return telling.NotMine(words.BlocksKind)
	}
	var values []int64
	for _, n := range numbers {
		v, whole := n.Int64()
		if !whole || n.Form != arithmetic.Whole || v < 0 {
			return telling.NotMine(words.BlocksWhole)
		}
		if v > largest {
			return words.BlocksLarge
		}
		values = append(values, v)
	}
	switch p.Kind {
	case arithmetic.Addition:
		if values[0]+values[1] > largest {
			return words.BlocksSum
		}
	case arithmetic.Subtraction:
		if p.Story != arithmetic.NoStory {
			return telling.NotMine(words.BlocksStories)
		}
		if values[0] < values[1] {
			return words.BlocksNegative
		}
	case arithmetic.PlaceValue:
		if _, err := arithmetic.WorthByPlace(p); err != nil {
			return words.BlocksNoPlace
		}
	case arithmetic.Expression:
		return listFits(p, values)
	case arithmetic.Product:
		return productFits(p, values[0], values[1])
	case arithmetic.Division:
		return sharingFits(p, values[1])
	}
	return nil
}

// numbersOf are the numbers of a problem of a kind that is told.
func numbersOf(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	switch p.Kind {
	case arithmetic.Show, arithmetic.ExpandedForm, arithmetic.PlaceValue:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division, arithmetic.Comparison, arithmetic.Claim:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	case arithmetic.Expression:
		return addends(p.Left)
	}
	return nil, false
}

// addends are the numbers of a sum without brackets.
func addends(e arithmetic.Expr) ([]arithmetic.Number, bool) {
	switch e := e.(type) {
	case arithmetic.Number:
		return []arithmetic.Number{e}, true
	case arithmetic.Operation:
		last, ok := e.Right.(arithmetic.Number)
		if !ok || e.Op != arithmetic.Add {
			return nil, false
		}
		list, ok := addends(e.Left)
		return append(list, last), ok
	}
	return nil, false
}

func listFits(p arithmetic.Problem, values []int64) error {
	if len(values) > mostAddends {
		return words.BlocksAddends
	}
	sum := int64(0)
	for _, v := range values {
		sum += v
	}
	if sum > largest {
		return words.BlocksSum
	}
	w, err := arithmetic.AddListByPlace(p)
	if err != nil {
		return telling.NotMine(words.BlocksKind)
	}
	if _, _, ok := listOf(w); !ok {
		return words.BlocksNoRoom
	}
	return nil
}

func productFits(p arithmetic.Problem, a, b int64) error {
	switch {
	case p.Story != arithmetic.NoStory:
		return telling.NotMine(words.BlocksStories)
	case a == 0 || b == 0:
		return words.BlocksNothing
	case min(a, b) > mostGroups:
		return words.BlocksFactors
	case a*b > largest:
		return words.BlocksProduct
	}
	w, err := arithmetic.MultiplyByPlace(p)
	if err != nil {
		return words.BlocksFactors
	}
	if _, _, ok := productOf(w); !ok {
		return words.BlocksNoRoom
	}
	return nil
}

func sharingFits(p arithmetic.Problem, groups int64) error {
	switch {
	case p.Story != arithmetic.NoStory:
		return telling.NotMine(words.BlocksStories)
	case p.Grouping:
		return telling.NotMine(words.BlocksGroups)
	case p.Rest != arithmetic.LeftOver:
		return telling.NotMine(words.BlocksNoRest)
	case groups < 1 || groups > mostGroups:
		return words.BlocksShares
	}
	w, err := arithmetic.ShareByPlace(p)
	if err != nil {
		return words.BlocksShares
	}
	if _, _, ok := sharingOf(w); !ok {
		return words.BlocksNoRoom
	}
	return nil
}
