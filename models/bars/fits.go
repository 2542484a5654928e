package bars

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

const (
	mostWholes = 8   // wholes in a row; more would be too short to read
	mostParts  = 100 // parts in a row: each is then 6 units wide or more
	mostCopied = 50  // parts in a row of copies, whose ends must be seen too
	mostListed = 8   // numbers in an ordering: as many as can be read
)

// fits refuses what has no fraction in it, what needs other pictures and what
// would be too fine or too long to see.
func fits(p arithmetic.Problem) error {
	numbers, ok := numbersOf(p)
	if !ok {
		return telling.NotMine(errors.New(words.BarsOtherKind()))
	}
	fractions := 0
	for _, n := range numbers {
		switch n.Form {
		case arithmetic.Money, arithmetic.Percent:
			return telling.NotMine(errors.New(words.BarsOtherKind()))
		case arithmetic.Common, arithmetic.Mixed:
			fractions++
		}
	}
	if fractions == 0 && p.Kind != arithmetic.FractionForm && p.Kind != arithmetic.Renaming && p.Kind != arithmetic.Division {
		return telling.NotMine(errors.New(words.BarsNoFraction()))
	}
	if len(numbers) > mostListed {
		return errors.New(words.BarsTooMany(mostListed))
	}
	switch {
	case p.Kind == arithmetic.Product:
		numbers = numbers[1:] // the first counts copies
	case p.Kind == arithmetic.Division && numbers[1].Form == arithmetic.Whole:
		numbers = numbers[:1] // the second counts shares
	}
	for _, n := range numbers {
		if n.Value.Sign() < 0 || n.Value.Cmp(fraction.Whole(mostWholes)) > 0 {
			return errors.New(words.BarsTooLong(mostWholes))
		}
	}
	w, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrSame):
		return errors.New(words.BarsSame(p))
	case errors.Is(err, arithmetic.ErrUneven):
		return errors.New(words.BarsUneven(p))
	case errors.Is(err, arithmetic.ErrNoGroup):
		return errors.New(words.BarsNoGroup(p))
	case errors.Is(err, arithmetic.ErrNothing):
		return errors.New(words.BarsNothing())
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New(words.BarsNegative())
	case err != nil:
		return errors.New(words.BarsTooFine(0, 1))
	}
	return fitsPaper(w)
}

// fitsPaper refuses a working whose parts cannot be seen.
func fitsPaper(w arithmetic.Working) error {
	den, wholes, cut, err := extent(w)
	switch {
	case err != nil:
		return errors.New(words.BarsTooFine(0, 1))
	case wholes > mostWholes:
		return errors.New(words.BarsTooLong(mostWholes))
	case (w.Problem.Kind == arithmetic.Product || w.Problem.Kind == arithmetic.Division) && den*wholes > mostCopied:
		return errors.New(words.BarsTooFine(den, wholes))
	case cut*wholes > mostParts, layStrip(min(den, 1000), wholes, widestLabel).length() < narrowest:
		return errors.New(words.BarsTooFine(den, wholes))
	}
	return nil
}

const (
	widestLabel = 110 // room for the widest number beside a bar
	narrowest   = 540 // a row of wholes is at least so long
)

// extent is how many units make a whole so that all parts of a working are whole
// units, how many wholes it needs, and the finest cut it makes.
func extent(w arithmetic.Working) (den, wholes, cut int64, err error) {
	den, wholes, cut = 1, 1, 1
	see := func(list ...arithmetic.Strips) {
		for _, a := range list {
			v, bad := a.Value()
			if bad == nil {
				den, bad = fraction.LCM(den, a.Part.Den())
			}
			if bad != nil {
				err, den = bad, 1
				return
			}
			full, rest := v.Mixed()
			if rest.Num() > 0 {
				full++
			}
			wholes, cut = max(wholes, full), max(cut, a.Part.Den())
		}
	}
	for _, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayStrips:
			see(m.Strips)
		case arithmetic.LayAll:
			see(m.Strips...)
		case arithmetic.CutAll:
			see(m.To...)
		case arithmetic.CutParts:
			see(m.To)
		case arithmetic.MeasureOff:
			see(m.From)
		case arithmetic.LayCopies:
			see(m.Total)
		case arithmetic.ShareParts:
			see(m.From)
		case arithmetic.CountParts:
			see(m.Total)
		case arithmetic.JoinCopies:
			see(m.Total)
		case arithmetic.CompareEnds:
			see(m.First, m.Second)
		}
	}
	return den, wholes, cut, err
}
