package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// ErrNoArea says that a problem is not a product of two amounts of which one is in
// parts, or that one of them is 0.
var ErrNoArea = errors.New("arithmetic: not a product with parts")

// AreaSide is a factor as the side of a rectangle on unit squares.
type AreaSide struct {
	Number  Number
	Squares int64 // how many squares the side needs, the last of them perhaps not all
	Parts   fraction.Fraction
	Split   bool // it is written with wholes and a part, and the rectangle is split there
}

// Wholes and Part are the two pieces of a split side: 2 1/3 is 2 and 1/3.
func (s AreaSide) Wholes() int64 { w, _ := s.Parts.Mixed(); return w }

// Part is what is behind the wholes, in the parts of the side.
func (s AreaSide) Part() fraction.Fraction { _, part := s.Parts.Mixed(); return part }

// PartialProduct is one of the parts of a rectangle that is split at its wholes.
type PartialProduct struct{ Down, Across, Product Number }

// The moves by which a product is found as the area of a rectangle (CCSS 5.NF.B.4).
type (
	// LayRow lays the second factor along a row of unit squares, cut in upright
	// parts, and the same row Copies times.
	LayRow struct {
		Side   AreaSide
		Copies int64
	}

	// CutRows cuts the squares in Into level rows, those of the last copy only when
	// Last is set. Whole small parts make one square then.
	CutRows struct {
		Into, Whole int64
		Last        bool
	}

	// TakeRows takes as many of the rows as the first factor says.
	TakeRows struct {
		Side AreaSide
		Rows int64
	}

	// CountSmall counts the small parts that are in both: Rows of Columns, of which
	// Whole make one square.
	CountSmall struct {
		Rows, Columns, Count, Whole int64
		Product                     Number
	}

	// SplitArea splits the rectangle at the wholes of its sides.
	SplitArea struct{ Parts []PartialProduct }

	// AddAreas adds the parts: Wholes, and the others in their common parts.
	AddAreas struct {
		Parts  []PartialProduct
		Wholes int64
		Cut    []fraction.Fraction
		Sum    Number
	}

	// NameArea gives the product its last name: parts that fill Wholes become whole
	// ones, and every Every parts are one larger part. Every is 1 where the parts
	// stay.
	NameArea struct {
		From, To      Number
		Wholes, Every int64
	}
)

func (LayRow) move()     {}
func (CutRows) move()    {}
func (TakeRows) move()   {}
func (CountSmall) move() {}
func (SplitArea) move()  {}
func (AddAreas) move()   {}
func (NameArea) move()   {}

// MultiplyByArea works a [Product], or a [PartOf], of which one number is in parts,
// as the area of a rectangle: the second factor lies along the top and the first
// goes down. Where both are fractions the small parts in the rectangle are counted;
// where one is a mixed number the rectangle is split at the wholes and its parts are
// added (CCSS 5.NF.B.4b, 5.NF.B.6). Its errors are [ErrNoArea] and [ErrOverflow].
func MultiplyByArea(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok || p.Kind != Product && p.Kind != PartOf || a.Value.Sign() <= 0 || b.Value.Sign() <= 0 || a.Form == Whole && b.Form == Whole {
		return Working{}, ErrNoArea
	}
	down, across := sideOf(a), sideOf(b)
	product, err := down.Parts.Mul(across.Parts)
	if err != nil {
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Moves: []Move{LayRow{across, down.Squares}}}
	cols, rows := across.Parts.Den(), down.Parts.Den()
	if rows > 1 {
		w.Moves = append(w.Moves, CutRows{rows, rows * cols, down.Split}, TakeRows{down, down.Parts.Num()})
	}
	last := productName(a, b, product)
	if down.Split || across.Split {
		split := SplitArea{partialProducts(down, across)}
		add, err := addAreas(split.Parts, product)
		if err != nil {
			return Working{}, err
		}
		last = add.Sum
		w.Moves = append(w.Moves, split, add)
	} else {
		w.Moves = append(w.Moves, CountSmall{down.Parts.Num(), across.Parts.Num(), product.Num(), product.Den(), last})
	}
	w.Answer = Answer{Number: last, Simplest: last}
	if last.Form != Decimal && last.Form != Whole {
		w.Answer.Simplest = AsMixed(product.Simplest())
	}
	if w.Answer.Simplest != last {
		wholes, rest := product.Mixed()
		every := fraction.GCD(rest.Num(), rest.Den())
		if rest.Num() == 0 {
			every = 1
		}
		w.Moves = append(w.Moves, NameArea{last, w.Answer.Simplest, wholes, every})
	}
	return w, nil
}

// sideOf is a number as a side: a whole number is in parts of 1, a decimal in tenths
// or smaller.
func sideOf(n Number) AreaSide {
	s := AreaSide{Number: n, Parts: n.Value, Split: n.Form == Mixed}
	wholes, part := n.Value.Mixed()
	s.Squares = wholes
	if part.Num() > 0 {
		s.Squares++
	}
	return s
}

// productName is the product as it is counted: decimals make a decimal, a whole
// number of wholes stays one.
func productName(a, b Number, product fraction.Fraction) Number {
	switch {
	case a.Form == Decimal || b.Form == Decimal:
		if places := a.Places + b.Places; product.Den() == Power10(places) {
			return InPlaces(product.Num(), places)
		}
	case product.Den() == 1:
		return Int(product.Num())
	}
	return Frac(product)
}

// partialProducts are the parts of a rectangle, row by row. (CCSS 5.NF.B.6)
func partialProducts(down, across AreaSide) []PartialProduct {
	var list []PartialProduct
	for _, d := range down.pieces() {
		for _, a := range across.pieces() {
			product, _ := d.Value.Mul(a.Value) // no larger than that of the sides
			named := Frac(product)
			if product.Den() == 1 {
				named = Int(product.Num())
			}
			list = append(list, PartialProduct{d, a, named})
		}
	}
	return list
}

// pieces are the wholes and the part of a split side, or the side as it is.
func (s AreaSide) pieces() []Number {
	if !s.Split {
		return []Number{s.Number}
	}
	return []Number{Int(s.Wholes()), Frac(s.Part())}
}

func addAreas(parts []PartialProduct, product fraction.Fraction) (AddAreas, error) {
	add := AddAreas{Parts: parts, Sum: AsMixed(product)}
	for _, p := range parts {
		if n, whole := p.Product.Int64(); whole {
			add.Wholes += n
			continue
		}
		cut, err := p.Product.Value.In(product.Den())
		if err != nil {
			return add, ErrOverflow
		}
		add.Cut = append(add.Cut, cut)
	}
	return add, nil
}
