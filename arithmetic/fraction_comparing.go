package arithmetic

import (
	"slices"

	"modeler/fraction"
)

// CompareByCutting works a [Claim] or [Comparison] of two numbers of which at
// least one is a fraction: both are laid on the same whole, the parts are cut
// finer until both have the same, and the ends are compared. (CCSS 3.NF.A.3,
// 4.NF.A.1, 4.NF.A.2)
//
// When both have the same number of parts and equality is not claimed, nothing
// is cut: the larger parts reach farther. (CCSS 3.NF.A.3d) Nothing is cut either
// when both are the same number of wholes: 3/3 and 4/4. (CCSS 3.NF.A.3c)
func CompareByCutting(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok {
		return Working{}, errNotTwo
	}
	first, second := StripsOf(a), StripsOf(b)
	moves := []Move{LayStrips{0, a, first}, LayStrips{1, b, second}}
	same := p.Rel != Equal && sameCount([]Strips{first, second})
	if !same && !sameWholes(a, b) {
		cuts, cutFirst, cutSecond, err := cutAlike(first, second)
		if err != nil {
			return Working{}, err
		}
		moves, first, second = append(moves, cuts...), cutFirst, cutSecond
	}
	gap, err := a.Value.Sub(b.Value)
	if err != nil {
		return Working{}, ErrOverflow
	}
	answer := Answer{Relation: relationOf(a, b), Gap: magnitude(gap)}
	answer.True = p.Rel == answer.Relation
	ends := CompareEnds{First: first, Second: second, Relation: answer.Relation, Gap: answer.Gap, SameCount: same}
	if p.Kind == Claim && !answer.True {
		ends.Instead = nearestTrue(a, b, p.Rel)
	}
	return Working{p, answer, append(moves, ends)}, nil
}

// cutAlike cuts the parts of both amounts until as many make a whole, each cut a
// move of its own.
func cutAlike(first, second Strips) (moves []Move, cutFirst, cutSecond Strips, err error) {
	den, err := fraction.CommonUnit(first.Part, second.Part)
	if err != nil {
		return nil, first, second, ErrOverflow
	}
	to := [2]Strips{first, second}
	for nth, from := range to {
		move, cut, err := cutTo(nth, from, den)
		if err != nil {
			return nil, first, second, err
		}
		if cut {
			moves = append(moves, move)
		}
		to[nth] = move.To
	}
	return moves, to[0], to[1], nil
}

// sameWholes reports whether two numbers are the same whole number.
func sameWholes(a, b Number) bool { return a.Value.IsWhole() && a.Value.Equal(b.Value) }

// sameCount reports whether amounts differ in the size of their parts only.
func sameCount(list []Strips) bool {
	differ := false
	for _, s := range list[1:] {
		if s.Wholes != list[0].Wholes || s.Part.Num() != list[0].Part.Num() {
			return false
		}
		differ = differ || s.Part.Den() != list[0].Part.Den()
	}
	return differ && list[0].Part.Num() > 0
}

func relationOf(a, b Number) Relation {
	return [...]Relation{Less, Equal, Greater}[a.Value.Cmp(b.Value)+1]
}

func magnitude(f fraction.Fraction) fraction.Fraction {
	if f.Sign() < 0 {
		f = fraction.Must(-f.Num(), f.Den())
	}
	return f
}

// nearestTrue mends a false claim. An equality keeps one side and the parts of
// the other where that can be done (3/4 = 5/8 becomes 3/4 = 6/8); any other
// claim gets the sign that is true.
func nearestTrue(a, b Number, claimed Relation) Problem {
	if claimed == Equal {
		if right, ok := inPartsOf(a, b); ok {
			return Problem{Kind: Claim, Left: a, Rel: Equal, Right: right}
		}
		if left, ok := inPartsOf(b, a); ok {
			return Problem{Kind: Claim, Left: left, Rel: Equal, Right: b}
		}
	}
	return Problem{Kind: Claim, Left: a, Rel: relationOf(a, b), Right: b}
}

// inPartsOf writes the amount of n in the form and the parts of like.
func inPartsOf(n, like Number) (Number, bool) {
	v, err := n.Value.In(like.Value.Den())
	if err != nil {
		return Number{}, false
	}
	if like.Form == Mixed {
		return AsMixed(v), true
	}
	return Number{Value: v, Form: like.Form, Places: like.Places}, true
}

// OrderByCutting works an [Ordering] of fractions: all are laid on equal wholes,
// cut in the same parts unless they have as many parts already, and sorted by
// length.
func OrderByCutting(p Problem) (Working, error) {
	if len(p.List) < 2 {
		return Working{}, errNotTwo
	}
	laid := make([]Strips, len(p.List))
	den := int64(1)
	for i, n := range p.List {
		laid[i] = StripsOf(n)
		common, err := fraction.LCM(den, laid[i].Part.Den())
		if err != nil {
			return Working{}, ErrOverflow
		}
		den = common
	}
	moves := []Move{LayAll{laid}}
	same := sameCount(laid)
	if !same {
		cut := CutAll{From: laid, To: make([]Strips, len(laid)), Den: den}
		any := false
		for i, from := range laid {
			move, done, err := cutTo(i, from, den)
			if err != nil {
				return Working{}, err
			}
			cut.To[i], any = move.To, any || done
		}
		if any {
			moves = append(moves, cut)
		}
	}
	order := make([]int, len(p.List))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return p.List[i].Value.Cmp(p.List[j].Value) })
	sorted := make([]Number, len(order))
	for i, from := range order {
		sorted[i] = p.List[from]
	}
	return Working{p, Answer{Order: sorted}, append(moves, SortByLength{order, same})}, nil
}
