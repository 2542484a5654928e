package fraction

import (
	"encoding/json"
	"math/big"
	"math/rand/v2"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
)

func TestWorkedExamples(t *testing.T) {
	for _, c := range []struct {
		name   string
		got    func(f, g Fraction) (Fraction, error)
		f, g   Fraction
		want   Fraction // as counted, not simplified
		source string
	}{
		{"+", Fraction.Add, Must(3, 10), Must(4, 100), Must(34, 100), "CCSS 4.NF.C.5"},
		{"+", Fraction.Add, Must(2, 3), Must(5, 4), Must(23, 12), "CCSS 5.NF.A.1"},
		{"+", Fraction.Add, Must(2, 5), Must(1, 2), Must(9, 10), "CCSS 5.NF.A.2: 3/7 is the incorrect result"},
		{"+", Fraction.Add, Must(5, 7), Must(1, 7), Must(6, 7), "National curriculum in England, Year 3"},
		{"+", Fraction.Add, Must(2, 5), Must(4, 5), Must(6, 5), "National curriculum in England, Year 5"},
		{"+", Fraction.Add, Must(7, 5), Must(4, 5), Must(11, 5), "NF Progression, grade 4 (from memory)"},
		{"−", Fraction.Sub, Must(3, 8), Must(1, 8), Must(2, 8), "CCSS 4.NF.B.3b: 3/8 = 1/8 + 2/8"},
		{"−", Fraction.Sub, Must(1, 2), Must(3, 4), Must(-1, 4), "no source"},
		{"×", Fraction.Mul, Must(2, 3), Must(4, 5), Must(8, 15), "CCSS 5.NF.B.4a"},
		{"×", Fraction.Mul, Must(2, 3), Whole(4), Must(8, 3), "CCSS 5.NF.B.4a"},
		{"×", Fraction.Mul, Whole(5), Must(1, 4), Must(5, 4), "CCSS 4.NF.B.4a"},
		{"×", Fraction.Mul, Whole(3), Must(2, 5), Must(6, 5), "CCSS 4.NF.B.4b"},
		{"×", Fraction.Mul, Must(1, 4), Must(1, 2), Must(1, 8), "National curriculum in England, Year 6"},
		{"×", Fraction.Mul, Must(2, 3), Must(5, 2), Must(10, 6), "NF Progression, grade 5 (from memory)"},
		{"of", Fraction.Of, Must(1, 2), Whole(6), Must(6, 2), "National curriculum in England, Year 2: 1/2 of 6 = 3"},
		{"÷", Fraction.Div, Must(1, 3), Whole(4), Must(1, 12), "CCSS 5.NF.B.7a"},
		{"÷", Fraction.Div, Whole(4), Must(1, 5), Whole(20), "CCSS 5.NF.B.7b"},
		{"÷", Fraction.Div, Must(1, 2), Whole(3), Must(1, 6), "CCSS 5.NF.B.7c: 1/2 lb of chocolate among 3"},
		{"÷", Fraction.Div, Must(1, 3), Whole(2), Must(1, 6), "National curriculum in England, Year 6"},
		{"÷", Fraction.Div, Whole(3), Whole(4), Must(3, 4), "CCSS 5.NF.B.3"},
		{"÷", Fraction.Div, Must(1, 2), Must(-3, 4), Must(-4, 6), "no source"},
	} {
		got, err := c.got(c.f, c.g)
		if err != nil || got != c.want {
			t.Errorf("%s %s %s is %s, %v, want %s (%s)", c.f, c.name, c.g, got, err, c.want, c.source)
		}
	}
}

func TestOperationsAgreeWithBigRat(t *testing.T) {
	r := source()
	operations := []struct {
		name  string
		got   func(f, g Fraction) (Fraction, error)
		exact func(z, f, g *big.Rat) *big.Rat
		fits  func(f, g Fraction) bool // whether no step can overflow
	}{
		{"+", Fraction.Add, (*big.Rat).Add, func(f, g Fraction) bool { return countable(f, g, 1) }},
		{"−", Fraction.Sub, (*big.Rat).Sub, func(f, g Fraction) bool { return countable(f, g, -1) }},
		{"×", Fraction.Mul, (*big.Rat).Mul, func(f, g Fraction) bool { return holds(product(f.num, g.num)) && holds(product(f.Den(), g.Den())) }},
		{"÷", Fraction.Div, (*big.Rat).Quo, func(f, g Fraction) bool { return holds(product(f.num, g.Den())) && holds(product(f.Den(), g.num)) }},
	}
	worked := 0
	for range 50_000 {
		f, g := anyFraction(r), anyFraction(r)
		for _, o := range operations {
			if o.name == "÷" && g.Sign() == 0 {
				continue
			}
			got, err := o.got(f, g)
			if err != nil {
				if o.fits(f, g) {
					t.Fatalf("%s %s %s: %v", f, o.name, g, err)
				}
				continue
			}
			worked++
			if want := o.exact(new(big.Rat), rat(f), rat(g)); rat(got).Cmp(want) != 0 {
				t.Fatalf("%s %s %s is %s, want %s", f, o.name, g, got, want)
			}
		}
	}
	if worked < 10_000 {
		t.Errorf("only %d operations fitted", worked)
	}
}

func product(a, b int64) *big.Int { return new(big.Int).Mul(big.NewInt(a), big.NewInt(b)) }

// countable reports whether f and g, and f plus or minus g, can be counted in
// their common unit within 64 bits.
func countable(f, g Fraction, sign int64) bool {
	unit := new(big.Int).GCD(nil, nil, big.NewInt(f.Den()), big.NewInt(g.Den()))
	unit.Quo(product(f.Den(), g.Den()), unit)
	a := new(big.Int).Quo(unit, big.NewInt(f.Den()))
	b := new(big.Int).Quo(unit, big.NewInt(g.Den()))
	a.Mul(a, big.NewInt(f.num))
	b.Mul(b, big.NewInt(g.num))
	sum := new(big.Int).Add(a, new(big.Int).Mul(b, big.NewInt(sign)))
	return holds(unit) && holds(a) && holds(b) && holds(sum)
}

// tables are the outside tables in testdata, each with its source.
type tables struct {
	Farey struct {
		Lengths     []int
		F5, F8, F12 []string
	}
	Decimals struct {
		Rows []struct {
			Value, Decimal string
			Terminates     bool
		}
	} `json:"unit_fraction_decimals"`
	Tiles struct {
		Denominators []int64
		LCM          int64
		Points       []struct {
			Value string
			Ticks int64 `json:"ticks_of_120"`
			Names []string
		}
	} `json:"fraction_tile_order"`
}

func outside(t *testing.T) tables {
	t.Helper()
	var out tables
	text, err := os.ReadFile("testdata/tables.json")
	if err == nil {
		err = json.Unmarshal(text, &out)
	}
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// written reads num/den or a whole number.
func written(t *testing.T, s string) Fraction {
	t.Helper()
	top, bottom, _ := strings.Cut(s+"/1", "/")
	num, err := strconv.ParseInt(top, 10, 64)
	den, err2 := strconv.ParseInt(strings.TrimSuffix(bottom, "/1"), 10, 64)
	if err != nil || err2 != nil {
		t.Fatalf("%q in the table is not a fraction", s)
	}
	return Must(num, den)
}

// farey is every fraction in simplest form from 0 to 1 with at most n parts, in
// the order in which they are made, which is not that of size.
func farey(n int64) []Fraction {
	list := []Fraction{Whole(0), Whole(1)}
	for den := int64(2); den <= n; den++ {
		for num := den - 1; num > 0; num-- {
			if f := Must(num, den); f.Simplest() == f {
				list = append(list, f)
			}
		}
	}
	return list
}

func TestOrderingGivesTheFareySequences(t *testing.T) {
	table := outside(t).Farey
	for n, want := range map[int64][]string{5: table.F5, 8: table.F8, 12: table.F12} {
		list := farey(n)
		Order(list)
		var got []string
		for _, f := range list {
			got = append(got, f.String())
		}
		if !slices.Equal(got, want) {
			t.Errorf("F%d is %v, want %v", n, got, want)
		}
	}
	for n, want := range table.Lengths {
		if n == 0 {
			continue
		}
		list := farey(int64(n))
		if len(list) != want {
			t.Errorf("F%d has %d terms, want %d", n, len(list), want)
		}
		Order(list)
		for i := 1; i < len(list); i++ { // neighbors a/b < c/d have bc - ad = 1 (Hardy and Wright, theorem 28; from memory)
			if f, g := list[i-1], list[i]; f.Den()*g.Num()-f.Num()*g.Den() != 1 {
				t.Errorf("F%d: %s and %s are not neighbors", n, f, g)
			}
		}
	}
}

func TestOrderingKeepsEqualAmountsAsTheyCame(t *testing.T) {
	list := []Fraction{Must(6, 8), Must(1, 2), Must(3, 4), Must(2, 4), Must(9, 12)}
	Order(list)
	if want := []Fraction{Must(1, 2), Must(2, 4), Must(6, 8), Must(3, 4), Must(9, 12)}; !slices.Equal(list, want) {
		t.Errorf("in order: %v, want %v", list, want)
	}
	r := rand.New(rand.NewPCG(5, 6))
	for range 200 {
		list := make([]Fraction, r.IntN(20))
		for i := range list {
			list[i] = anyFraction(r)
		}
		Order(list)
		for i := 1; i < len(list); i++ {
			if rat(list[i-1]).Cmp(rat(list[i])) > 0 {
				t.Fatalf("not in order: %v", list)
			}
		}
	}
}

func TestFractionTilesMeet(t *testing.T) {
	table := outside(t).Tiles
	unit := int64(1)
	for _, den := range table.Denominators {
		unit, _ = LCM(unit, den)
	}
	if unit != table.LCM {
		t.Errorf("the tiles have a common unit of 1/%d, want 1/%d", unit, table.LCM)
	}
	for _, p := range table.Points {
		for _, name := range p.Names {
			f := written(t, name)
			if f.Simplest().String() != p.Value {
				t.Errorf("%s in simplest form is %s, want %s", name, f.Simplest(), p.Value)
			}
			in, err := f.In(table.LCM)
			if err != nil || in.Num() != p.Ticks {
				t.Errorf("%s is %s, %v, want %d parts of 120", name, in, err, p.Ticks)
			}
		}
	}
}

func TestDecimals(t *testing.T) {
	for _, row := range outside(t).Decimals.Rows {
		got, ok := written(t, row.Value).Decimal()
		if ok != row.Terminates || ok && got != row.Decimal {
			t.Errorf("%s as a decimal is %q, %v, want %q, %v", row.Value, got, ok, row.Decimal, row.Terminates)
		}
	}
	for _, c := range []struct {
		f      Fraction
		want   string
		source string
	}{
		{Must(3, 8), "0.375", "National curriculum in England, Year 6"},
		{Must(62, 100), "0.62", "CCSS 4.NF.C.6"},
		{Must(71, 100), "0.71", "National curriculum in England, Year 5 (from memory)"},
		{Must(347392, 1000), "347.392", "CCSS 5.NBT.A.3a"},
		{Must(98, 4), "24.5", "National curriculum in England, appendix on methods"},
		{Must(30, 100), "0.3", "no source: the value has no places of its own"},
		{Must(8, 4), "2", "no source"}, {Whole(0), "0", "no source"}, {Must(-1, 4), "-0.25", "no source"},
		{Must(1, 1<<18), "0.000003814697265625", "2^-18 = 5^18 / 10^18, 18 places"},
		{Must(1, 1<<19), "", "19 places are too many"},
		{Must(1<<62, 1<<18), "17592186044416", "2^44"},
		{Must(1<<62-1, 1<<18), "", "does not fit in 64 bits"},
	} {
		if got, ok := c.f.Decimal(); got != c.want || ok != (c.want != "") {
			t.Errorf("%s as a decimal is %q, %v, want %q (%s)", c.f, got, ok, c.want, c.source)
		}
	}
	r := source()
	for range 20_000 {
		f := Must(anyInt(r)>>r.IntN(40), []int64{2, 4, 5, 8, 10, 16, 20, 25, 40, 100, 125, 1000, 3, 7, 12}[r.IntN(15)])
		got, ok := f.Decimal()
		if !ok {
			continue
		}
		back, read := new(big.Rat).SetString(got)
		if !read || back.Cmp(rat(f)) != 0 {
			t.Fatalf("%s as a decimal is %q", f, got)
		}
	}
}
