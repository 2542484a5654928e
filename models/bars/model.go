// Package bars draws fractions as shaded parts of bars that share one whole.
package bars

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows fractions as shaded parts of equal bars: what a fraction is,
// whether two are equal, which is more, sums and differences, and other names
// for one amount. (CCSS 3.NF.A.1, 3.NF.A.3, 4.NF.A, 4.NF.B.3, 5.NF.A)
var Model = &telling.Model{
	Name:  "fraction-bars",
	Title: "Fraction bars",
	Doc:   "Fractions as parts of bars with one left edge and one whole: equal or not, more or less, added, taken away and renamed.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Claim,
		arithmetic.Comparison,
		arithmetic.Ordering,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.MixedForm,
		arithmetic.FractionForm,
		arithmetic.SimplestForm,
		arithmetic.Renaming,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.AsSum,
		arithmetic.Expression,
	},
	Examples: []string{
		"3/4", "2 3/4", "3/4 = 6/8", "3/4 = 5/8", "5/8 > 2/3", "1/2 + 1/4 = 3/4", "1/2 + 1/3 = 2/5", "compare 2/5 and 2/7", "order 2/3; 1/2; 5/6; 1/4",
		"1/4 + 2/4", "3/4 + 3/4", "1/2 + 1/3", "1 1/2 + 3/4", "7/8 − 3/8", "3/4 − 1/3", "2 1/4 − 3/4",
		"7/4 as a mixed number", "2 1/4 as a fraction", "6/8 in simplest form", "1/2 = ?/8",
		"5 × 1/4", "3 × 2/5",
		"4 ÷ 1/5", "3/4 ÷ 1/8", "2/3 ÷ 1/4", "1/3 ÷ 4", "3 ÷ 10 as a fraction",
		"3 × 2/5 = 6 × 1/5", "1/2 + 1/3 + 1/6", "3/8 as a sum", "2 1/8 as a sum",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// leads is the turn of fractions alone.
var leads = telling.LeadsFor(arithmetic.Show, arithmetic.Claim, arithmetic.Comparison, arithmetic.Ordering, arithmetic.Addition, arithmetic.Subtraction, arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming, arithmetic.Product, arithmetic.Division, arithmetic.AsSum)

// turn follows where a fraction is compared with a decimal: a picture in hundredths
// shows both as they are written.
func turn(p arithmetic.Problem) int {
	if a, b, ok := p.Operands(); ok && (p.Kind == arithmetic.Claim || p.Kind == arithmetic.Comparison) &&
		(a.Form == arithmetic.Decimal || b.Form == arithmetic.Decimal) {
		return telling.Follows
	}
	if a, _, ok := p.Operands(); ok && p.Kind == arithmetic.Division && sharesWholes(p, a) {
		return telling.Follows // plates and paper circles tell who gets what
	}
	return leads(p)
}

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

// numbersOf are the numbers of a problem that fraction bars have moves for.
func numbersOf(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	if c, ok := arithmetic.OneSum(p); ok {
		return c.Numbers[:], true
	}
	if c, ok := arithmetic.CopiesClaim(p); ok {
		return []arithmetic.Number{c[0].Each, c[1].Each}, true
	}
	switch p.Kind {
	case arithmetic.Expression:
		w, ok, _ := arithmetic.AddEndToEnd(p)
		var list []arithmetic.Number
		for _, move := range w.Moves {
			if m, is := move.(arithmetic.LayStrips); is {
				list = append(list, m.Number)
			}
		}
		return list, ok
	case arithmetic.Ordering:
		return p.List, len(p.List) > 1
	case arithmetic.Product:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok && a.Form == arithmetic.Whole && b.Form == arithmetic.Common
	case arithmetic.Division:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok && p.Story == arithmetic.NoStory && (isFraction(b) || b.Form == arithmetic.Whole && (isFraction(a) || sharesWholes(p, a)))
	case arithmetic.Claim, arithmetic.Comparison, arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	case arithmetic.Show, arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming, arithmetic.AsSum:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	}
	return nil, false
}

// sharesWholes reports whether wholes are shared with what is left over cut up too.
func sharesWholes(p arithmetic.Problem, n arithmetic.Number) bool {
	return n.Form == arithmetic.Whole && p.Rest == arithmetic.AsPart && !p.Grouping
}

func isFraction(n arithmetic.Number) bool {
	return n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
}

func work(p arithmetic.Problem) (arithmetic.Working, error) {
	if _, ok := arithmetic.OneSum(p); ok {
		return arithmetic.CompareSumByCutting(p)
	}
	if _, ok := arithmetic.CopiesClaim(p); ok {
		return arithmetic.CompareCopies(p)
	}
	if w, ok, err := arithmetic.AddEndToEnd(p); ok {
		return w, err
	}
	switch p.Kind {
	case arithmetic.Show:
		return arithmetic.ShowByCutting(p)
	case arithmetic.Claim, arithmetic.Comparison:
		return arithmetic.CompareByCutting(p)
	case arithmetic.Product:
		return arithmetic.CopiesByJoining(p)
	case arithmetic.Division:
		if _, b, _ := p.Operands(); isFraction(b) {
			return arithmetic.MeasureByCutting(p)
		}
		return arithmetic.ShareByCutting(p)
	case arithmetic.AsSum:
		return arithmetic.TakeApart(p)
	case arithmetic.Ordering:
		return arithmetic.OrderByCutting(p)
	case arithmetic.Addition:
		return arithmetic.AddByCutting(p)
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
	_, sum := arithmetic.OneSum(p)
	_, copied := arithmetic.CopiesClaim(p)
	switch p.Kind {
	case arithmetic.Show:
		t = tellShown(w)
	case arithmetic.Claim, arithmetic.Comparison:
		switch {
		case sum:
			t = tellSumClaim(w)
		case copied:
			t = tellCopiesClaim(w)
		default:
			t = tellCompared(w)
		}
	case arithmetic.Product:
		t = tellCopies(w)
	case arithmetic.Division:
		if _, b, _ := p.Operands(); isFraction(b) {
			t = tellMeasured(w)
		} else {
			t = tellShared(w)
		}
	case arithmetic.AsSum:
		t = tellApart(w)
	case arithmetic.Expression:
		t = tellChain(w)
	case arithmetic.Ordering:
		t = tellOrdered(w)
	case arithmetic.Addition, arithmetic.Subtraction:
		t = tellSum(w)
	default:
		t = tellNamed(w)
	}
	t.Answer = w.Answer
	return t
}

// stripPieces are the strips of paper that amounts are laid out with.
func stripPieces(laid ...arithmetic.Strips) []telling.Piece {
	count := int64(0)
	for _, a := range laid {
		count += words.BarStripsOf(a)
	}
	if count == 0 {
		return nil
	}
	return []telling.Piece{{Name: words.BarStrips(count), Count: count, Cut: true}}
}
