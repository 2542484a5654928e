package arithmetic

import "modeler/fraction"

// SplitSquare cuts one whole of a hundred small squares in equal parts.
type SplitSquare struct {
	Squares     int64
	Parts, Each int64 // Each is how many small squares a part has
}

// ShadeParts shades some of those parts.
type ShadeParts struct {
	Number      Number
	Count, Each int64
	Total       int64 // small squares
}

// JoinSquares joins small squares in columns, ten in each.
type JoinSquares struct {
	Number                Number
	Total, Columns, Parts int64
}

func (SplitSquare) move() {}
func (ShadeParts) move()  {}
func (JoinSquares) move() {}

// RenameOnSquares writes an amount in another form: a decimal or percent as a
// fraction, a fraction as a decimal or a percent, tenths as hundredths and back
// (CCSS 4.NF.C.5, 4.NF.C.6; percents: National curriculum in England, year 5). The
// problem is a FractionForm, DecimalForm, PercentForm or Renaming of one number.
// Its errors are those of [HundredthsOf], and [ErrSame].
func RenameOnSquares(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, ErrUneven
	}
	total, err := HundredthsOf(n)
	if err != nil {
		return Working{}, err
	}
	shade, err := onSquares(0, n, cutsOf(n))
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Moves: []Move{RuleSquares{squaresFor(total), shade.Parts}, shade}}
	if den := n.Value.Den(); n.Form == Common && den != 10 && den != 100 && den != 1 {
		each := 100 / n.Value.Simplest().Den()
		if 100%den == 0 {
			each = 100 / den
		}
		w.Moves = []Move{SplitSquare{squaresFor(total), 100 / each, each}, ShadeParts{n, total / each, each, total}}
		shade.Parts = 100
	}
	switch p.Kind {
	case FractionForm:
		return w.asFraction(n, shade)
	case DecimalForm:
		d, err := DecimalOf(n)
		if err != nil || n.Form == Decimal {
			return Working{}, ErrSame
		}
		return w.readAs(d, shade), nil
	case PercentForm:
		percent, err := PercentOf(n)
		if err != nil || n.Form == Percent {
			return Working{}, ErrSame
		}
		w.cutFiner(n, &shade)
		return w.readAs(percent, shade), nil
	}
	return w.renamed(p, n, shade)
}

// asFraction reads a decimal or a percent as so many of the parts in which it is
// shaded, and the simplest name of that.
func (w Working) asFraction(n Number, shade ShadeSquares) (Working, error) {
	if inParts(n) || n.Form == Whole {
		return Working{}, ErrSame
	}
	f := Frac(fraction.Must(shade.Total*shade.Parts/100, shade.Parts))
	w = w.readAs(f, shade)
	w.Answer.Simplest = Frac(f.Value.Simplest())
	return w, nil
}

// cutFiner cuts what is shaded in small squares, unless it is.
func (w *Working) cutFiner(n Number, shade *ShadeSquares) {
	if shade.Parts == 100 {
		return
	}
	each := 100 / shade.Parts
	w.Moves = append(w.Moves, CutSquares{0, n, shade.Parts, each, shade.Total / each, shade.Total})
	shade.Parts = 100
}

// renamed fills the blank of tenths that are to be hundredths, or the other way.
func (w Working) renamed(p Problem, n Number, shade ShadeSquares) (Working, error) {
	den := p.Blank.Den
	if den == 0 && shade.Total > 0 {
		if whole, err := fraction.Whole(100 * p.Blank.Num).Div(fraction.Whole(shade.Total)); err == nil && whole.IsWhole() {
			den = whole.Num() / whole.Den()
		}
	}
	if (den != 10 && den != 100) || shade.Total*den%100 != 0 {
		return Working{}, ErrUneven
	}
	f := Frac(fraction.Must(shade.Total*den/100, den))
	switch {
	case den == shade.Parts && n.Form == Common && n.Value.Den() == den:
		return Working{}, ErrSame
	case den == 100:
		w.cutFiner(n, &shade)
	case shade.Parts == 100:
		w.Moves = append(w.Moves, JoinSquares{n, shade.Total, shade.Total / 10, 10})
		shade.Parts = 10
	}
	w = w.readAs(f, shade)
	w.Answer.Simplest = f
	return w, nil
}

// readAs ends a working with the number that is read.
func (w Working) readAs(n Number, shade ShadeSquares) Working {
	w.Answer = Answer{Number: n, Simplest: n}
	w.Moves = append(w.Moves, ReadSquares{shade.Total, shade.Counts, n, shade.Parts, shade.Total * shade.Parts / 100})
	return w
}
