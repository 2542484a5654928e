package reading

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// dealer deals problems of every kind that can be read, within all bounds.
type dealer struct{ *rand.Rand }

func (d dealer) upTo(n int64) int64 { return d.Int64N(n) + 1 }

func (d dealer) whole() arithmetic.Number {
	return arithmetic.Int(d.Int64N([]int64{10, 100, 1000, MaxWhole + 1}[d.IntN(4)]))
}

func (d dealer) fraction() arithmetic.Number {
	return arithmetic.Frac(fraction.Must(d.Int64N(2*MaxParts), d.upTo([]int64{12, MaxParts}[d.IntN(2)])))
}

func (d dealer) number() arithmetic.Number {
	switch d.IntN(9) {
	case 8:
		places := d.IntN(MaxPlaces + 1)
		return arithmetic.InPercent(d.Int64N((MaxWhole+1)*arithmetic.Power10(places)), places)
	case 0, 1:
		return d.fraction()
	case 2:
		den := d.upTo(MaxParts-1) + 1
		num := d.upTo(9999)*den + d.upTo(den-1)
		return arithmetic.Number{Value: fraction.Must(num, den), Form: arithmetic.Mixed}
	case 3:
		places := int(d.upTo(MaxPlaces))
		return arithmetic.InPlaces(d.Int64N((MaxWhole+1)*arithmetic.Power10(places)), places)
	case 4:
		m := arithmetic.InPlaces(d.Int64N(100*(MaxWhole+1)), 2)
		m.Form = arithmetic.Money
		return m
	case 5:
		m := d.whole()
		m.Form = arithmetic.Money
		return m
	}
	return d.whole()
}

// expr deals an expression of at most n numbers.
func (d dealer) expr(n int) arithmetic.Expr {
	if n < 2 || d.IntN(3) == 0 {
		return d.number()
	}
	o := arithmetic.Operation{Op: arithmetic.Op(d.IntN(5)), Left: d.expr(n / 2), Right: d.expr(n - n/2)}
	if o.Op == arithmetic.Of {
		o.Left = d.fraction()
	}
	return o
}

// blanked is an expression with one of its numbers left out.
func (d dealer) blanked(e arithmetic.Expr) arithmetic.Expr {
	o, ok := e.(arithmetic.Operation)
	if !ok {
		return arithmetic.Unknown{}
	}
	if d.IntN(2) == 0 {
		o.Left = d.blanked(o.Left)
	} else {
		o.Right = d.blanked(o.Right)
	}
	return o
}

func (d dealer) problem() arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.Show, Left: d.number()}
	switch d.IntN(24) {
	case 20, 21:
		return d.parts()
	case 22:
		return d.coins()
	case 23:
		return d.places()
	case 0, 1, 2, 3:
		op := []arithmetic.Op{arithmetic.Add, arithmetic.Subtract, arithmetic.Multiply, arithmetic.Divide, arithmetic.Of}[d.IntN(5)]
		o := arithmetic.Operation{Op: op, Left: d.number(), Right: d.number()}
		p.Kind = map[arithmetic.Op]arithmetic.Kind{arithmetic.Add: arithmetic.Addition, arithmetic.Subtract: arithmetic.Subtraction,
			arithmetic.Multiply: arithmetic.Product, arithmetic.Divide: arithmetic.Division, arithmetic.Of: arithmetic.PartOf}[op]
		switch op {
		case arithmetic.Of:
			o.Left = d.fraction()
		case arithmetic.Divide:
			p.Grouping = o.Right.(arithmetic.Number).Form != arithmetic.Whole || d.IntN(2) == 0
		}
		p.Left = o
		if p.Kind == arithmetic.Division && !p.Grouping && arithmetic.IsPartOfOne(o) {
			p.Rest = arithmetic.Rest(d.IntN(2))
		}
	case 4:
		o := arithmetic.Operation{Op: arithmetic.Op(d.IntN(4)), Left: d.expr(6), Right: d.expr(6)}
		o.Left = arithmetic.Operation{Op: arithmetic.Op(d.IntN(4)), Left: d.number(), Right: d.expr(5)}
		p = arithmetic.Problem{Kind: arithmetic.Expression, Left: o}
	case 5:
		o := arithmetic.Operation{Op: arithmetic.Op(d.IntN(4)), Left: d.expr(3), Right: d.expr(3)}
		p = arithmetic.Problem{Kind: arithmetic.Missing, Left: d.blanked(o), Rel: arithmetic.Equal, Right: d.expr(6)}
		if d.IntN(2) == 0 {
			p.Left, p.Right = p.Right, p.Left
		}
	case 6:
		p = arithmetic.Problem{Kind: arithmetic.Claim, Left: d.expr(6), Rel: arithmetic.Relation(d.IntN(3) + 1), Right: d.expr(6)}
	case 7:
		p = arithmetic.Problem{Kind: arithmetic.Comparison, Left: d.expr(6), Right: d.expr(6)}
	case 8:
		p = arithmetic.Problem{Kind: arithmetic.Ordering}
		for range 2 + d.IntN(MaxList-1) {
			p.List = append(p.List, d.number())
		}
	case 9:
		p.Kind, p.To = arithmetic.Rounding, arithmetic.Power10(1+d.IntN(6))
	case 10:
		p.Kind = []arithmetic.Kind{arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm}[d.IntN(3)]
		if d.IntN(3) == 0 {
			p = arithmetic.Problem{Kind: arithmetic.Factors, Left: arithmetic.Int(d.upTo(MaxWhole))}
		}
	case 11:
		p.Kind, p.Blank = arithmetic.Renaming, arithmetic.Blank{Den: d.upTo(MaxParts), First: d.IntN(2) == 0}
		if d.IntN(2) == 0 {
			p.Blank = arithmetic.Blank{Num: d.upTo(MaxWhole), First: d.IntN(2) == 0}
		}
	case 12, 13:
		return d.aboutOne()
	case 14, 15:
		return d.run()
	case 16:
		return d.told()
	}
	return p
}

// parted deals a fraction or a mixed number.
func (d dealer) parted() arithmetic.Number {
	if d.IntN(2) == 0 {
		return d.fraction()
	}
	den := d.upTo(MaxParts-1) + 1
	return arithmetic.AsMixed(fraction.Must(d.upTo(99)*den+d.upTo(den-1), den))
}

func (d dealer) decimal() arithmetic.Number {
	places := int(d.upTo(MaxPlaces))
	return arithmetic.InPlaces(d.Int64N((MaxWhole+1)*arithmetic.Power10(places)), places)
}

// parts deals a question about a fraction.
func (d dealer) parts() arithmetic.Problem {
	p := arithmetic.Problem{Left: d.parted()}
	switch d.IntN(7) {
	case 0:
		p.Kind = arithmetic.ShapePart
		p.Shape = []arithmetic.Shape{arithmetic.Circle, arithmetic.Square, arithmetic.Rectangle, arithmetic.Triangle, arithmetic.Pentagon, arithmetic.Hexagon, arithmetic.Octagon}[d.IntN(7)]
	case 1:
		p.Kind = arithmetic.AsSum
	case 2:
		p.Kind = arithmetic.EqualNames
	case 3:
		p.Kind, p.To, p.Left, p.Right = arithmetic.Closer, d.Int64N(2), d.number(), d.number()
	case 4:
		p.Kind = arithmetic.DecimalForm
	case 5:
		p.Kind = arithmetic.PercentForm
	case 6:
		for {
			parts := d.upTo(MaxParts-1) + 1
			p.Run = arithmetic.Run{From: d.Int64N(20 * parts), By: d.upTo(2 * parts), Op: arithmetic.Op(d.IntN(2)), Terms: 2 + d.IntN(MaxTerms-1), Parts: parts}
			if list := p.Run.List(); len(list) == p.Run.Terms {
				p.Kind, p.Left = arithmetic.Counting, nil
				return p
			}
		}
	}
	return p
}

// coins deals a question about money.
func (d dealer) coins() arithmetic.Problem {
	m := func() arithmetic.Number {
		n := arithmetic.InPlaces(d.Int64N(10_000), 2*d.IntN(2))
		n.Form = arithmetic.Money
		return n
	}
	switch d.IntN(3) {
	case 0:
		return arithmetic.Problem{Kind: arithmetic.Coins, Left: m()}
	case 1:
		return arithmetic.Problem{Kind: arithmetic.Subtraction, Story: arithmetic.Change,
			Left: arithmetic.Operation{Op: arithmetic.Subtract, Left: m(), Right: m()}}
	}
	p := arithmetic.Problem{Kind: arithmetic.CoinsWorth}
	all := []arithmetic.Coin{arithmetic.Penny, arithmetic.Nickel, arithmetic.Dime, arithmetic.Quarter, arithmetic.Dollar}
	for range d.upTo(MaxCoins) {
		p.List = append(p.List, all[d.IntN(len(all))].Money())
	}
	return p
}

// places deals a question about a decimal.
func (d dealer) places() arithmetic.Problem {
	n := d.decimal()
	p := arithmetic.Problem{Left: n, Kind: []arithmetic.Kind{arithmetic.ExpandedForm, arithmetic.InWords, arithmetic.PlaceValue, arithmetic.Rounding}[d.IntN(4)]}
	switch p.Kind {
	case arithmetic.PlaceValue:
		if p.Places = d.IntN(n.Places + 1); p.Places == 0 {
			p.To = 1
		}
	case arithmetic.Rounding:
		p.Places = int(d.upTo(MaxPlaces))
	}
	return p
}

// aboutOne deals a question about a whole number, or about two.
func (d dealer) aboutOne() arithmetic.Problem {
	n := arithmetic.Int(d.upTo([]int64{9, 99, 9999, MaxWhole}[d.IntN(4)]))
	p := arithmetic.Problem{Left: n}
	switch d.IntN(9) {
	case 0:
		p.Kind, p.To = arithmetic.PlaceValue, arithmetic.Power10(d.IntN(len(strings.ReplaceAll(n.String(), ",", ""))))
	case 1:
		p.Kind = arithmetic.ExpandedForm
	case 2:
		p.Kind = arithmetic.InWords
	case 3:
		p.Kind = arithmetic.Parity
	case 4:
		p.Kind = arithmetic.Primality
	case 5:
		p.Kind = arithmetic.WaysToMake
	case 6:
		p.Kind, p.Run.Terms = arithmetic.Multiples, int(d.upTo(MaxTerms))
	case 7:
		p.Kind, p.Right = arithmetic.CommonMultiples, arithmetic.Int(d.upTo(MaxWhole))
	case 8:
		p.Kind, p.Right = arithmetic.CommonFactors, arithmetic.Int(d.upTo(MaxWhole))
	}
	return p
}

// run deals a run of numbers or a rule table.
func (d dealer) run() arithmetic.Problem {
	if d.IntN(3) == 0 {
		p := arithmetic.Problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{Op: arithmetic.Op(d.IntN(4)), By: d.upTo(200)}}
		for range 1 + d.IntN(MaxList) {
			n := d.Int64N(1000)
			if p.Run.Op == arithmetic.Divide {
				n *= p.Run.By
			}
			p.List = append(p.List, arithmetic.Int(n))
		}
		return p
	}
	for {
		r := arithmetic.Run{From: d.Int64N([]int64{10, 1000, MaxWhole}[d.IntN(3)]), By: d.upTo(1000), Op: arithmetic.Op(d.IntN(3)), Terms: 2 + d.IntN(MaxTerms-1)}
		list := r.List()
		times := r.Op == arithmetic.Multiply
		if len(list) == r.Terms && list[r.Terms-1] <= MaxWhole && !(times && (r.From == 0 || r.By == 1)) {
			return arithmetic.Problem{Kind: arithmetic.Counting, Run: r}
		}
	}
}

// told deals an estimate, a fact family, a story or a division that says what is
// done with what is left over.
func (d dealer) told() arithmetic.Problem {
	a, b := arithmetic.Int(d.upTo(MaxWhole)), arithmetic.Int(d.upTo(MaxWhole))
	with := func(kind arithmetic.Kind, o arithmetic.Op) arithmetic.Problem {
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: o, Left: a, Right: b}}
	}
	switch d.IntN(5) {
	case 0:
		p := with(arithmetic.Estimate, arithmetic.Op(d.IntN(4)))
		p.To = arithmetic.Power10(1 + d.IntN(6))
		return p
	case 1:
		return with(arithmetic.FactFamily, []arithmetic.Op{arithmetic.Add, arithmetic.Multiply}[d.IntN(2)])
	case 2:
		p := with(arithmetic.Product, arithmetic.Multiply)
		if p.Story = arithmetic.TimesAsMany; d.IntN(2) == 0 {
			p = with(arithmetic.Subtraction, arithmetic.Subtract)
			p.Story = arithmetic.HowManyMore
		}
		return p
	case 3:
		p := with(arithmetic.Division, arithmetic.Divide)
		p.Story, p.Grouping = arithmetic.TimesAsMany, d.IntN(2) == 0
		return p
	}
	p := with(arithmetic.Division, arithmetic.Divide)
	p.Rest, p.Grouping = arithmetic.Rest(d.IntN(4)), d.IntN(2) == 0
	return p
}

func TestReadingWhatAProblemWritesGivesTheProblem(t *testing.T) {
	d := dealer{rand.New(rand.NewPCG(402, 178))}
	seen := map[arithmetic.Kind]int{}
	for range 20_000 {
		p := d.problem()
		text := p.String()
		if len([]rune(text)) > MaxText {
			continue
		}
		seen[p.Kind]++
		r, err := Read(text)
		if err != nil {
			t.Fatalf("Read(%q): %v", text, err)
		}
		if !reflect.DeepEqual(r.Problem, p) {
			t.Fatalf("Read(%q) = %s %q %+v, want %s %+v", text, r.Problem.Kind, r.Problem, r.Problem, p.Kind, p)
		}
	}
	if len(seen) != 38 {
		t.Errorf("problems of %d kinds were dealt, want all 38: %v", len(seen), seen)
	}
}

// FuzzRead checks that a text either reads, and then what it reads as reads as
// the same, or gives a sound error whose mend reads.
func FuzzRead(f *testing.F) {
	for _, s := range slices.Concat(spellings, askedSpellings, partSpellings) {
		for _, text := range s.texts {
			f.Add(text)
		}
	}
	for _, text := range []string{"rond 347", "1,2,3", "2 7/4", "? - ? = 5", "(((", "<b>", "3 ≤ 4", "50%", "3:15", "-5", "half of half of"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		RestorePlus(text)
		r, err := Read(text)
		if err != nil {
			soundError(t, text, err)
			return
		}
		for _, p := range append(r.Also, r.Problem) {
			back, err := Read(p.String())
			if err != nil {
				t.Fatalf("Read(%q) = %q, which does not read: %v", text, p, err)
			}
			if !reflect.DeepEqual(back.Problem, p) {
				t.Fatalf("Read(%q) = %s %q, which reads as %s %q", text, p.Kind, p, back.Problem.Kind, back.Problem)
			}
		}
		n := len([]rune(text))
		for _, s := range r.Spans {
			if s.Start < 0 || s.End <= s.Start || s.End > n {
				t.Errorf("Read(%q): span %+v", text, s)
			}
		}
	})
}

func BenchmarkRead(b *testing.B) {
	for _, text := range []string{"402 - 178", "round 347 to the nearest ten", "is 3/4 equal to 6/8?", "rond 347"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, err := Read(text)
				if err != nil && err.(*Error).Try == "" {
					b.Fatal(err)
				}
			}
		})
	}
}
