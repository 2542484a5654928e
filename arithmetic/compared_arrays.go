package arithmetic

// ArraySide is one side of a statement: a product as an array, or a number.
type ArraySide struct {
	IsArray    bool
	Rows, Cols int64
	Total      int64
}

// LayArrays lays the arrays of both sides beside each other.
type LayArrays struct{ Sides [2]ArraySide }

// TurnArray turns the first array on its side: it becomes the second.
type TurnArray struct{ From, To ArraySide }

// CountArrays counts both sides.
type CountArrays struct{ Sides [2]ArraySide }

// JudgeArrays says what truly stands between the two sides, and how far apart
// they are.
type JudgeArrays struct {
	Relation Relation
	Gap      int64
}

func (LayArrays) move()   {}
func (TurnArray) move()   {}
func (CountArrays) move() {}
func (JudgeArrays) move() {}

// CompareProducts works a claim or a comparison of which one side is a product of
// whole numbers, and the other too or a whole number: 3 × 4 = 4 × 3, 7 × 8 = 54
// (CCSS 1.OA.D.7, 3.OA.B.5). Anything else is [ErrNotWhole].
func CompareProducts(p Problem) (Working, error) {
	answer, err := Judge(p)
	if err != nil {
		return Working{}, err
	}
	var lay LayArrays
	for i, e := range [2]Expr{p.Left, p.Right} {
		if lay.Sides[i], err = arraySide(e); err != nil {
			return Working{}, err
		}
	}
	first, second := lay.Sides[0], lay.Sides[1]
	if !first.IsArray && !second.IsArray {
		return Working{}, ErrNotWhole
	}
	w := Working{Problem: p, Answer: answer, Moves: []Move{lay}}
	if first.IsArray && second.IsArray && first.Rows == second.Cols && first.Cols == second.Rows && first.Rows != first.Cols {
		w.Moves = append(w.Moves, TurnArray{first, second})
	}
	w.Moves = append(w.Moves, CountArrays(lay), JudgeArrays{answer.Relation, answer.Gap.Num()})
	return w, nil
}

func arraySide(e Expr) (ArraySide, error) {
	if n, ok := wholeNumber(e); ok {
		return ArraySide{Total: n}, nil
	}
	s, ok := sides(e)
	if !ok || s.rows == nil {
		return ArraySide{}, ErrNotWhole
	}
	product, err := times(*s.rows, *s.cols)
	return ArraySide{true, *s.rows, *s.cols, product}, err
}
