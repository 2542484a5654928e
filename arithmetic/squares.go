package arithmetic

import "modeler/fraction"

// A square of ten columns with ten small squares each is one whole: a column is a
// tenth of it and a small square a hundredth (CCSS 4.NF.C.5, 4.NF.C.6). Amounts on
// it are counted in hundredths.

// RuleSquares draws squares and cuts each in equal parts: 1 leaves them whole, 10
// makes columns, 100 makes small squares.
type RuleSquares struct{ Squares, Parts int64 }

// ShadeDigit shades what one digit of a number is worth.
type ShadeDigit struct {
	Number      Number
	Power       int   // 2 for whole squares, 1 for columns, 0 for small squares
	Count, Each int64 // how many, and how many hundredths each is
	Total       int64 // hundredths shaded now
}

// ShadeSquares shades a whole number of the problem on squares that are cut in
// Parts.
type ShadeSquares struct {
	Nth    int
	Number Number
	Parts  int64
	Total  int64  // hundredths
	Counts Counts // small squares, columns, whole squares
}

// ShadeOn shades a second number where the first one ended: small squares that fill
// a column, then columns, then small squares again.
type ShadeOn struct {
	Number        Number
	From, Count   int64 // hundredths shaded before, and how many come
	Fill, Columns int64 // small squares that fill the column, and columns after them
	Rest          int64 // small squares after the columns
	Total         int64
}

// CutSquares cuts the parts of one number finer, into small squares.
type CutSquares struct {
	Nth         int
	Number      Number
	Parts, Each int64 // parts of a whole before, and small squares in each
	Count       int64 // parts that are shaded
	Total       int64 // small squares that they are
}

// CrossSquares crosses out what is taken away, from the end of what is shaded.
type CrossSquares struct {
	Number      Number
	From, Count int64
	Counts      Counts // of what is crossed out
	Left        int64
}

// CompareSquares holds two amounts beside each other.
type CompareSquares struct {
	First, Second int64 // how many parts are shaded
	Parts         int64 // of which so many make a whole
	Relation      Relation
	Gap           int64 // parts
}

// ReadSquares counts what is shaded, or what is left.
type ReadSquares struct {
	Total  int64 // hundredths
	Counts Counts
	Number Number // what is read
	Parts  int64  // in how many a whole is cut
	Shaded int64  // how many of those are shaded
}

func (RuleSquares) move()    {}
func (ShadeDigit) move()     {}
func (ShadeSquares) move()   {}
func (ShadeOn) move()        {}
func (CutSquares) move()     {}
func (CrossSquares) move()   {}
func (CompareSquares) move() {}
func (ReadSquares) move()    {}

// HundredthsOf is how many hundredths a number is. Its error is [ErrUneven] for one
// that is not a whole number of them, [ErrNegative] and [ErrOverflow].
func HundredthsOf(n Number) (int64, error) {
	if n.Value.Sign() < 0 {
		return 0, ErrNegative
	}
	times, err := n.Value.Mul(fraction.Whole(100))
	if err != nil {
		return 0, ErrOverflow
	}
	if !times.IsWhole() {
		return 0, ErrUneven
	}
	count := times.Num() / times.Den()
	if count > MaxPlaced {
		return 0, ErrOverflow
	}
	return count, nil
}

// cutsOf is in how many parts a number cuts a whole as it is written: 10 for 0.3 and
// for 3/10, 100 for 0.30 and 30%, 1 for a whole number.
func cutsOf(n Number) int64 {
	switch n.Form {
	case Whole:
		return 1
	case Decimal:
		return Power10(min(n.Places, 2))
	case Common, Mixed:
		if den := n.Value.Den(); den == 1 || den == 10 {
			return den
		}
	}
	return 100
}

// onSquares is a number of a problem shaded on squares cut in parts.
func onSquares(nth int, n Number, parts int64) (ShadeSquares, error) {
	total, err := HundredthsOf(n)
	if err != nil {
		return ShadeSquares{}, err
	}
	counts, err := inSquares(total)
	return ShadeSquares{nth, n, parts, total, counts}, err
}

// inSquares is an amount in small squares, columns and whole squares.
func inSquares(total int64) (Counts, error) {
	c, err := Places(total)
	for power := len(c) - 1; power > 2; power-- {
		c[power-1], c[power] = c[power-1]+10*c[power], 0
	}
	return c, err
}

// squaresFor is how many squares amounts need, at least one.
func squaresFor(most int64) int64 { return max(1, (most+99)/100) }

// wholePair are the two numbers of a problem in hundredths.
func wholePair(p Problem) (a, b Number, first, second int64, err error) {
	a, b, two := p.Operands()
	if !two {
		return a, b, 0, 0, ErrUneven
	}
	if first, err = HundredthsOf(a); err != nil {
		return
	}
	second, err = HundredthsOf(b)
	return
}

// ShowOnSquares shades a number digit by digit, the largest place first, and reads
// it (CCSS 4.NF.C.6). The problem is a Show. Its errors are those of [HundredthsOf].
func ShowOnSquares(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, ErrUneven
	}
	total, err := HundredthsOf(n)
	if err != nil {
		return Working{}, err
	}
	counts, err := inSquares(total)
	if err != nil {
		return Working{}, err
	}
	parts := cutsOf(n)
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}, Moves: []Move{RuleSquares{squaresFor(total), parts}}}
	sum := int64(0)
	for power := 2; power >= 0; power-- {
		each := Power10(power)
		if 100/each > parts || power == 2 && counts[2] == 0 {
			continue
		}
		sum += counts[power] * each
		w.Moves = append(w.Moves, ShadeDigit{n, power, counts[power], each, sum})
	}
	w.Moves = append(w.Moves, ReadSquares{total, counts, n, parts, total * parts / 100})
	return w, nil
}

// CompareOnSquares shades two numbers on two wholes of one size, cuts columns in
// small squares where the numbers are not written in the same parts, and compares
// how many are shaded (CCSS 4.NF.C.7). The problem is a Comparison or a Claim. Its
// errors are those of [HundredthsOf].
func CompareOnSquares(p Problem) (Working, error) {
	a, b, first, second, err := wholePair(p)
	if err != nil {
		return Working{}, err
	}
	answer, err := Judge(p)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: answer}
	finest := max(cutsOf(a), cutsOf(b))
	var cuts []Move
	for nth, n := range []Number{a, b} {
		shade, err := onSquares(nth, n, cutsOf(n))
		if err != nil {
			return Working{}, err
		}
		w.Moves = append(w.Moves, shade)
		if shade.Parts < finest {
			each := 100 / shade.Parts
			cuts = append(cuts, CutSquares{nth, n, shade.Parts, each * finest / 100, shade.Total / each, shade.Total * finest / 100})
		}
	}
	unit := 100 / finest
	w.Moves = append(w.Moves, cuts...)
	w.Moves = append(w.Moves, CompareSquares{first / unit, second / unit, finest, answer.Relation, max(first-second, second-first) / unit})
	return w, nil
}

// AddOnSquares shades the first number, goes on with the second where it ended and
// counts (CCSS 4.NF.C.5, 5.NBT.B.7). The problem is an Addition. Its errors are
// those of [HundredthsOf].
func AddOnSquares(p Problem) (Working, error) {
	a, b, first, second, err := wholePair(p)
	if err != nil {
		return Working{}, err
	}
	parts := max(10, cutsOf(a), cutsOf(b))
	shade, err := onSquares(0, a, parts)
	if err != nil {
		return Working{}, err
	}
	on := ShadeOn{Number: b, From: first, Count: second, Fill: min(second, (10-first%10)%10), Total: first + second}
	on.Columns, on.Rest = (second-on.Fill)/10, (second-on.Fill)%10
	w := Working{Problem: p, Moves: []Move{RuleSquares{squaresFor(on.Total), parts}, shade, on}}
	return w.readSquares(on.Total, parts)
}

// SubtractOnSquares shades the first number and crosses the second out of it, from
// the end (CCSS 5.NBT.B.7). The problem is a Subtraction. Its errors are those of
// [HundredthsOf], and [ErrNegative].
func SubtractOnSquares(p Problem) (Working, error) {
	a, b, first, second, err := wholePair(p)
	if err != nil {
		return Working{}, err
	}
	if second > first {
		return Working{}, ErrNegative
	}
	parts := max(10, cutsOf(a), cutsOf(b))
	shade, err := onSquares(0, a, parts)
	if err != nil {
		return Working{}, err
	}
	taken, err := inSquares(second)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Moves: []Move{RuleSquares{squaresFor(first), parts}, shade, CrossSquares{b, first, second, taken, first - second}}}
	return w.readSquares(first-second, parts)
}

// readSquares ends the working of a sum or a difference: what is shaded, in the
// parts or places in which the problem was written.
func (w Working) readSquares(total, parts int64) (Working, error) {
	counts, err := inSquares(total)
	if err != nil {
		return Working{}, err
	}
	a, b, _ := w.Problem.Operands()
	n := InPlaces(total*parts/100, max(a.Places, b.Places))
	last := n
	if inParts(a) || inParts(b) {
		n = Frac(fraction.Must(total*parts/100, parts))
		last = AsMixed(n.Value.Simplest())
	}
	w.Answer = Answer{Number: n, Simplest: last}
	w.Moves = append(w.Moves, ReadSquares{total, counts, n, parts, total * parts / 100})
	return w, nil
}
