package arithmetic

// Fact is a product or a quotient of two whole numbers and what it comes to.
type Fact struct {
	Op                  Op
	Left, Right, Result int64
}

// ReadFact reads one fact off an array of Rows by Cols: as rows, as columns, shared
// among the rows, or shared among the columns.
type ReadFact struct {
	Rows, Cols int64
	Fact
}

func (ReadFact) move() {}

// ProductFamily works a FactFamily of a product: one array read as two products
// and two divisions, or as one of each where its sides are equal (CCSS 3.OA.B.6).
// ok is false where Left is no product of whole numbers; a factor 0 is
// [ErrNothing], since nothing can be divided by it.
func ProductFamily(p Problem) (w Working, ok bool, err error) {
	two, ok := twoFactors(p.Left)
	if !ok || p.Kind != FactFamily {
		return w, false, nil
	}
	a, b := two[0], two[1]
	all, err := times(a, b)
	if err != nil {
		return w, true, err
	}
	if all == 0 {
		return w, true, ErrNothing
	}
	w = Working{Problem: p, Answer: whole(all), Moves: []Move{LayRows{a, b}}}
	facts := []Fact{{Multiply, a, b, all}, {Multiply, b, a, all}, {Divide, all, a, b}, {Divide, all, b, a}}
	if a == b {
		facts = []Fact{facts[0], facts[2]}
	}
	for _, f := range facts {
		w.Moves = append(w.Moves, ReadFact{a, b, f})
	}
	return w, true, nil
}
