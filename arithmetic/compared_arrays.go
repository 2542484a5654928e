package arithmetic

// ArraySide is one side of a statement: a product as an array, or a number. Where
// the side itself splits the array, as 8 × 5 + 8 × 2 and 8 × (5 + 2) do,
// RowParts or ColParts are the parts of that side and Parts what they come to.
type ArraySide struct {
	IsArray            bool
	Rows, Cols         int64
	Total              int64
	RowParts, ColParts []int64 // of an array: one part where the side is whole
	Parts              []int64 // of an array in parts
}

// Split reports whether the side is an array in parts.
func (s ArraySide) Split() bool { return len(s.Parts) > 0 }

// LayArrays lays the arrays of both sides beside each other.
type LayArrays struct{ Sides [2]ArraySide }

// TurnArray turns the first array on its side: it becomes the second.
type TurnArray struct{ From, To ArraySide }

// CutArray cuts the array that is whole where the other one, with as many rows of
// as many, is in parts: they are the same.
type CutArray struct{ Sides [2]ArraySide }

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
func (CutArray) move()    {}
func (CountArrays) move() {}
func (JudgeArrays) move() {}

// CompareProducts works a claim or a comparison of which one side is a product of
// whole numbers, and the other too or a whole number: 3 × 4 = 4 × 3, 7 × 8 = 54
// (CCSS 1.OA.D.7, 3.OA.B.5). A side may be an array in two parts: 8 × 7 = 8 × 5 +
// 8 × 2 (CCSS 3.MD.C.7c). Anything else is [ErrNotWhole].
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
	asOne := !first.Split() && !second.Split()
	if asOne && first.IsArray && second.IsArray && first.Rows == second.Cols && first.Cols == second.Rows && first.Rows != first.Cols {
		w.Moves = append(w.Moves, TurnArray{first, second})
	}
	if first.Split() != second.Split() && first.Rows == second.Rows && first.Cols == second.Cols {
		w.Moves = append(w.Moves, CutArray(lay))
	}
	w.Moves = append(w.Moves, CountArrays(lay), JudgeArrays{answer.Relation, answer.Gap.Num()})
	return w, nil
}

func arraySide(e Expr) (ArraySide, error) {
	if n, ok := wholeNumber(e); ok {
		return ArraySide{Total: n}, nil
	}
	if s, ok := sides(e); ok && s.rows != nil {
		product, err := times(*s.rows, *s.cols)
		return ArraySide{IsArray: true, Rows: *s.rows, Cols: *s.cols, Total: product, RowParts: []int64{*s.rows}, ColParts: []int64{*s.cols}}, err
	}
	w, ok, err := DistributeArray(Problem{Kind: Expression, Left: e})
	if !ok {
		return ArraySide{}, ErrNotWhole
	}
	if err != nil {
		return ArraySide{}, err
	}
	split := w.Moves[0].(SplitSides)
	join := w.Moves[len(w.Moves)-2].(JoinParts)
	lay := w.Moves[len(w.Moves)-1].(LayRows)
	return ArraySide{true, lay.Rows, lay.Cols, join.Sum, split.Rows, split.Cols, join.Parts}, nil
}
