package arithmetic

import "errors"

// Judge is the answer of a [Claim] or a [Comparison] without its moves: what truly
// stands between the two sides, and how far apart they are. It is for claims that
// are too large to be shown. Its errors are those of [Evaluate].
func Judge(p Problem) (Answer, error) {
	if p.Kind != Claim && p.Kind != Comparison {
		return Answer{}, errors.New("arithmetic: neither a claim nor a comparison")
	}
	left, err := Evaluate(p.Left)
	if err != nil {
		return Answer{}, err
	}
	right, err := Evaluate(p.Right)
	if err != nil {
		return Answer{}, err
	}
	a := Answer{Relation: [...]Relation{Less, Equal, Greater}[left.Cmp(right)+1]}
	a.True = p.Kind == Claim && p.Rel == a.Relation
	if left.Cmp(right) < 0 {
		left, right = right, left
	}
	if a.Gap, err = left.Sub(right); err != nil {
		return Answer{}, ErrOverflow
	}
	return a, nil
}
