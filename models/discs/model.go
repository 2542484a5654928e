// Package discs draws fractions as parts of discs of one size: each disc is one whole.
package discs

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows fractions as parts of discs, cut from the center: what a fraction is,
// whether two are equal, which is more, sums and differences, and other names for
// one amount. (CCSS 2.G.A.3, 3.NF.A, 4.NF.A, 4.NF.B.3, 5.NF.A)
var Model = &telling.Model{
	Name:  "fraction-circle",
	Title: "Fraction circles",
	Doc:   "Fractions as parts of circles of one size, cut from the center: shown, compared, added, taken away and renamed.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.ShapePart,
		arithmetic.Claim,
		arithmetic.Comparison,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.MixedForm,
		arithmetic.FractionForm,
		arithmetic.SimplestForm,
		arithmetic.Renaming,
	},
	Examples: []string{
		"3/4", "3/8 of a circle", "2/3 = 4/6", "compare 2/3 and 3/4", "1/2 + 1/3", "3/4 + 3/4", "2 1/4 − 3/4", "7/4 as a mixed number", "6/8 in simplest form",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn: a circle cut in parts is the first picture of a part of a circle and a good
// second one of a fraction of at most one whole; lengths go on beyond one whole.
func turn(p arithmetic.Problem) int {
	n, number := p.Left.(arithmetic.Number)
	switch {
	case p.Kind == arithmetic.ShapePart && p.Shape == arithmetic.Circle:
		return telling.Leads
	case p.Kind == arithmetic.Show && number && n.Value.Cmp(fraction.Whole(1)) <= 0:
		return telling.Follows
	}
	return telling.Serves
}

const (
	mostParts  = 24 // parts of a disc: each is then 13 units wide at the rim or more
	mostWholes = 3  // of a number
	mostSum    = 4  // of the sum of two
)

// fits refuses what has no fraction in it, what needs other pictures and what would
// be too fine or too much to see.
func fits(p arithmetic.Problem) error {
	numbers, ok := numbersOf(p)
	if !ok {
		return telling.NotMine(errors.New(words.DiscsOtherKind()))
	}
	fractions := 0
	for _, n := range numbers {
		switch n.Form {
		case arithmetic.Money:
			return telling.NotMine(errors.New(words.DiscsOtherKind()))
		case arithmetic.Common, arithmetic.Mixed:
			fractions++
		}
	}
	if fractions == 0 && p.Kind != arithmetic.FractionForm && p.Kind != arithmetic.Renaming {
		return telling.NotMine(errors.New(words.BarsNoFraction()))
	}
	for _, n := range numbers {
		if n.Value.Sign() < 0 || n.Value.Cmp(fraction.Whole(mostWholes)) > 0 {
			return errors.New(words.DiscsTooMany(mostWholes))
		}
	}
	w, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrSame):
		return errors.New(words.BarsSame(p))
	case errors.Is(err, arithmetic.ErrUneven):
		return errors.New(words.BarsUneven(p))
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New(words.BarsNegative())
	case err != nil:
		return errors.New(words.DiscsTooFine(mostParts))
	}
	return fitsPaper(w)
}

// fitsPaper refuses a working whose parts cannot be seen.
func fitsPaper(w arithmetic.Working) error {
	e, err := extentOf(w)
	switch {
	case err != nil || e.den > mostParts:
		return errors.New(words.DiscsTooFine(mostParts))
	case e.discs[2] > mostSum:
		return errors.New(words.DiscsTooMany(mostSum))
	}
	return nil
}

// extent is how many units make a whole, so that all parts of a working are whole
// units, and how many discs the first number, the second and the result need.
type extent struct {
	den   int64
	discs [3]int
}

func extentOf(w arithmetic.Working) (e extent, err error) {
	e = extent{den: 1, discs: [3]int{1, 1, 1}}
	see := func(nth int, a arithmetic.Strips) {
		v, bad := a.Value()
		if bad == nil {
			e.den, bad = fraction.LCM(e.den, a.Part.Den())
		}
		if bad != nil {
			err, e.den = bad, 1
			return
		}
		full, rest := v.Mixed()
		if rest.Num() > 0 {
			full++
		}
		e.discs[nth] = max(e.discs[nth], int(min(full, 100)))
	}
	for _, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayStrips:
			see(m.Nth, m.Strips)
		case arithmetic.CutParts:
			see(m.Nth, m.To)
		case arithmetic.CountParts:
			see(2, m.Total)
		case arithmetic.MakeWholes:
			see(2, m.To)
		case arithmetic.MergeParts:
			see(2, m.To)
		case arithmetic.OpenWholes:
			see(m.Nth, m.To)
		}
	}
	return e, err
}

// numbersOf are the numbers of a problem that discs have moves for.
func numbersOf(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	switch p.Kind {
	case arithmetic.Claim, arithmetic.Comparison, arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	case arithmetic.ShapePart:
		if p.Shape != arithmetic.Circle {
			return nil, false
		}
		fallthrough
	case arithmetic.Show, arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	}
	return nil, false
}

func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch p.Kind {
	case arithmetic.Show, arithmetic.ShapePart:
		return arithmetic.ShowByCutting(p)
	case arithmetic.Claim, arithmetic.Comparison:
		return arithmetic.CompareByCutting(p)
	case arithmetic.Addition:
		return arithmetic.AddByJoining(p)
	case arithmetic.Subtraction:
		return arithmetic.SubtractByCutting(p)
	}
	return arithmetic.NameByCutting(p)
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic(err) // fits has worked it
	}
	var t telling.Telling
	switch p.Kind {
	case arithmetic.Show, arithmetic.ShapePart:
		t = tellShown(w)
	case arithmetic.Claim, arithmetic.Comparison:
		t = tellCompared(w)
	case arithmetic.Addition, arithmetic.Subtraction:
		t = tellSum(w)
	default:
		t = tellNamed(w)
	}
	t.Answer = w.Answer
	return t
}

// paper are the paper circles that so many discs are cut from.
func paper(discs int) []telling.Piece {
	return []telling.Piece{{Name: words.DiscPaper(int64(discs)), Count: int64(discs), Cut: true}}
}
