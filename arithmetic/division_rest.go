package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// What is left over when lines of equal length are made may be cut, or need a line
// of its own (National curriculum in England, 2013, year 5).

// CutRest cuts each of the Left things left over in Parts equal parts. Every row
// gets one part of each: Share, and All with the whole ones. In the story of rows
// of Parts, the things left over are that Share of one more row.
type CutRest struct {
	Left, Parts int64
	Share, All  Number
}

// TradeRest trades each of what is left over for 10 parts: tenths, then hundredths
// and thousandths. There are Traded of them, Unit to a whole; every row gets Each
// of them, and Left are left over again. All is what a row has then.
type TradeRest struct {
	From, Traded, Unit int64
	Each, Left         int64
	All                Number
}

// OneMoreLine gives what is left over a line of its own that is not full: Empty
// places stay free in it. There were Full lines, and there are Found with it.
type OneMoreLine struct{ Left, Empty, Full, Found int64 }

func (CutRest) move()     {}
func (TradeRest) move()   {}
func (OneMoreLine) move() {}

// ErrEndless says that a decimal does not end, or not after the three places that a
// division is carried to.
var ErrEndless = errors.New("arithmetic: the decimal does not end")

// rest goes on with a division after it was found that something is left over.
func (w Working) rest(side int64) (Working, error) {
	found, _ := w.Answer.Number.Int64()
	left := w.Answer.Remainder
	if left == 0 || w.Problem.Kind != Division {
		return w, nil
	}
	switch w.Problem.Rest {
	case AsPart:
		all, err := fraction.Whole(found).Add(fraction.Must(left, side))
		if err != nil {
			return w, ErrOverflow
		}
		cut := CutRest{left, side, Frac(fraction.Must(left, side)), AsMixed(all)}
		w.Answer = Answer{Number: cut.All, Simplest: FinalName(cut.All)}
		w.Moves = append(w.Moves, cut)
	case OneMore:
		w.Answer = whole(found + 1)
		w.Moves = append(w.Moves, OneMoreLine{left, side - left, found, found + 1})
	case AsDecimal:
		return w.trade(found, left, side)
	}
	return w, nil
}

// trade goes on in tenths, hundredths and thousandths until nothing is left over.
func (w Working) trade(found, left, side int64) (Working, error) {
	const most = 3
	all, unit := found, int64(1)
	for places := 1; left > 0; places++ {
		if places > most {
			return w, ErrEndless
		}
		traded, err := times(left, 10)
		if err != nil {
			return w, err
		}
		unit *= 10
		if all, err = times(all, 10); err != nil {
			return w, err
		}
		all += traded / side // one digit
		w.Moves = append(w.Moves, TradeRest{left, traded, unit, traded / side, traded % side, InPlaces(all, places)})
		w.Answer = Answer{Number: InPlaces(all, places), Simplest: InPlaces(all, places)}
		left = traded % side
	}
	return w, nil
}
