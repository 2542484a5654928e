package arithmetic

// Rule is what is done to a number to get another one.
type Rule struct {
	Op Op
	By int64
}

// SayRule begins a table: the rule, and the numbers that go in. In a table of a run
// only its first number is known.
type SayRule struct {
	Rule
	In  []int64
	Run bool
}

// FillRow does what the rule says to one number. In a table of a run the number
// comes from the row above.
type FillRow struct {
	Rule
	Row     int // from 0; that of a run from 1, as its first number is given
	In, Out int64
}

// FillRows does the same for all the rows that are left.
type FillRows struct{ Rows []FillRow }

func (SayRule) move()  {}
func (FillRow) move()  {}
func (FillRows) move() {}

// A table of few rows is filled row by row. Of a longer one the first rows are,
// and then the others at once.
const (
	fewRows   = 6
	singleRow = 3
)

// FillTable works a [RuleTable], row by row (CCSS 4.OA.C.5, 5.OA.B.3), or
// [Counting] as a table of the numbers of a run. Its errors are [ErrNotWhole],
// [ErrNegative], [ErrOverflow], [ErrDivideByZero], and [ErrNothing] where no row
// is to be filled.
func FillTable(p Problem) (Working, error) {
	w := Working{Problem: p}
	rule := Rule{p.Run.Op, p.Run.By}
	say := SayRule{Rule: rule}
	var rows []FillRow
	switch p.Kind {
	case Counting:
		if p.Run.Parts > 1 {
			return w, ErrNotWhole
		}
		if err := p.Run.check(); err != nil {
			return w, err
		}
		w.Answer.List = p.Run.List()
		if len(w.Answer.List) < 2 {
			return w, ErrNothing
		}
		say.In, say.Run = w.Answer.List[:1], true
		for i, n := range w.Answer.List[1:] {
			rows = append(rows, FillRow{rule, i + 1, w.Answer.List[i], n})
		}
	case RuleTable:
		for i, n := range p.List {
			row, err := rule.do(n)
			if err != nil {
				return w, err
			}
			row.Row = i
			rows = append(rows, row)
			say.In, w.Answer.List = append(say.In, row.In), append(w.Answer.List, row.Out)
		}
	default:
		return w, ErrNotWhole
	}
	if len(rows) == 0 {
		return w, ErrNothing
	}
	w.Moves = []Move{say}
	for i, row := range rows {
		if len(rows) > fewRows && i == singleRow {
			w.Moves = append(w.Moves, FillRows{rows[i:]})
			break
		}
		w.Moves = append(w.Moves, row)
	}
	return w, nil
}

// do does what the rule says to a whole number.
func (r Rule) do(n Number) (FillRow, error) {
	in, ok := wholeNumber(n)
	if !ok {
		return FillRow{}, ErrNotWhole
	}
	out, err := Evaluate(Operation{r.Op, Int(in), Int(r.By)})
	switch {
	case err != nil:
		return FillRow{}, err
	case out.Sign() < 0:
		return FillRow{}, ErrNegative
	case !out.IsWhole():
		return FillRow{}, ErrNotWhole
	}
	return FillRow{Rule: r, In: in, Out: out.Num() / out.Den()}, nil // 54/6 as it stands
}
