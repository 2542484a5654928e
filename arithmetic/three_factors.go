package arithmetic

// Three factors are equal blocks of rows: the first says how many blocks there
// are, the second how many rows each of them has, the third how many are in a
// row. Whichever two are multiplied first, the same things are counted (the
// associative property, CCSS 3.OA.B.5).

// Blocks is so many equal arrays of rows.
type Blocks struct{ Blocks, Rows, Cols int64 }

// LayBlocks lays out the blocks of three factors.
type LayBlocks struct{ Blocks }

// Pair says which two of three factors are multiplied first.
type Pair uint8

const (
	RowsInAll Pair = iota // blocks times rows: the rows of all blocks together
	InABlock              // rows times columns: what one block holds
	InALine               // blocks times columns: one row of every block
)

// PairFactors multiplies two of three factors first.
type PairFactors struct {
	Pair
	First, Second, Product int64
}

// CountPairs multiplies what came first by the third factor: Times of Each.
type CountPairs struct {
	Pair
	Times, Each, Product int64
}

// EasierPair does the same again in an order in which the first step makes tens:
// First × Second is Easy, and Times of Easy are the Product.
type EasierPair struct {
	Pair
	First, Second, Easy int64
	Times, Product      int64
}

// CompareBlocks says what truly stands between two sides of three factors.
type CompareBlocks struct {
	Sides    [2]BlockSide
	Relation Relation
	Gap      int64
}

// BlockSide is one side of a claim: three factors, and which two of them its
// brackets put first; of one product it is one block.
type BlockSide struct {
	Blocks
	Three   bool
	Pair    PairFactors
	Product int64
}

func (LayBlocks) move()     {}
func (PairFactors) move()   {}
func (CountPairs) move()    {}
func (EasierPair) move()    {}
func (CompareBlocks) move() {}

// ThreeFactors works a product of three whole numbers in the order of its
// brackets, and again in an easier order where there is one: 3 × 7 × 10 is as easy
// as it stands, and of 7 × 6 × 5 it is 6 × 5 that makes tens. ok is false for any
// other problem. A factor 0 is [ErrNothing].
func ThreeFactors(p Problem) (w Working, ok bool, err error) {
	b, pair, ok := threeFactors(p.Left)
	if !ok || p.Kind != Expression {
		return Working{}, false, nil
	}
	first, count, err := b.work(pair)
	if err != nil {
		return Working{}, true, err
	}
	w = Working{Problem: p, Answer: whole(count.Product), Moves: []Move{LayBlocks{b}, first, count}}
	for _, other := range []Pair{InABlock, RowsInAll, InALine} {
		easy, rest, err := b.work(other)
		if err != nil {
			return Working{}, true, err
		}
		if makesTens(first) || other == pair || !makesTens(easy) || easy.Product == rest.Product {
			continue
		}
		w.Moves = append(w.Moves, EasierPair{other, easy.First, easy.Second, easy.Product, rest.Times, rest.Product})
		break
	}
	return w, true, nil
}

// makesTens reports whether two factors make tens that neither of them has.
func makesTens(m PairFactors) bool {
	return m.Product%10 == 0 && m.First%10 != 0 && m.Second%10 != 0
}

// work multiplies two of the factors, and then by the third.
func (b Blocks) work(pair Pair) (first PairFactors, count CountPairs, err error) {
	if b.Blocks == 0 || b.Rows == 0 || b.Cols == 0 {
		return first, count, ErrNothing
	}
	first, count = PairFactors{Pair: pair}, CountPairs{Pair: pair}
	third := int64(0)
	switch pair {
	case RowsInAll:
		first.First, first.Second, third = b.Blocks, b.Rows, b.Cols
	case InABlock:
		first.First, first.Second, third = b.Rows, b.Cols, b.Blocks
	default:
		first.First, first.Second, third = b.Blocks, b.Cols, b.Rows
	}
	if first.Product, err = times(first.First, first.Second); err != nil {
		return first, count, err
	}
	count.Times, count.Each = third, first.Product
	if pair == RowsInAll {
		count.Times, count.Each = first.Product, third
	}
	count.Product, err = times(first.Product, third)
	return first, count, err
}

// threeFactors are the factors of a × b × c and a × (b × c), and which two come
// first.
func threeFactors(e Expr) (b Blocks, pair Pair, ok bool) {
	o, is := e.(Operation)
	if !is || o.Op != Multiply {
		return b, pair, false
	}
	if left, two := twoFactors(o.Left); two {
		n, alone := wholeNumber(o.Right)
		return Blocks{left[0], left[1], n}, RowsInAll, alone
	}
	right, two := twoFactors(o.Right)
	n, alone := wholeNumber(o.Left)
	return Blocks{n, right[0], right[1]}, InABlock, alone && two
}

// twoFactors are the factors of a product of two whole numbers.
func twoFactors(e Expr) (factors [2]int64, ok bool) {
	s, ok := sides(e)
	if !ok || s.rows == nil {
		return factors, false
	}
	return [2]int64{*s.rows, *s.cols}, true
}

// AssociateClaim works a claim of which one side is a product of three whole
// numbers, and the other likewise or a product of two: (2 × 3) × 4 = 2 × (3 × 4)
// (CCSS 3.OA.B.5). ok is false for any other problem.
func AssociateClaim(p Problem) (w Working, ok bool, err error) {
	if p.Kind != Claim && p.Kind != Comparison {
		return w, false, nil
	}
	var sides [2]BlockSide
	for i, e := range [2]Expr{p.Left, p.Right} {
		if sides[i], ok, err = blockSide(e); !ok || err != nil {
			return w, ok, err
		}
	}
	if !sides[0].Three && !sides[1].Three {
		return w, false, nil
	}
	answer, err := Judge(p)
	if err != nil {
		return w, true, err
	}
	w = Working{Problem: p, Answer: answer}
	for _, s := range sides {
		w.Moves = append(w.Moves, LayBlocks{s.Blocks})
	}
	w.Moves = append(w.Moves, CompareBlocks{sides, answer.Relation, answer.Gap.Num()})
	return w, true, nil
}

func blockSide(e Expr) (s BlockSide, ok bool, err error) {
	b, pair, ok := threeFactors(e)
	if two, is := twoFactors(e); is {
		b, pair, ok = Blocks{1, two[0], two[1]}, InABlock, true
	} else {
		s.Three = ok
	}
	if !ok {
		return s, false, nil
	}
	first, count, err := b.work(pair)
	s.Blocks, s.Pair, s.Product = b, first, count.Product
	return s, true, err
}
