package arithmetic

import (
	"math/big"
	"testing"
)

func run(from, by int64, op Op, terms int) Problem {
	return Problem{Kind: Counting, Run: Run{From: from, By: by, Op: op, Terms: terms}}
}

func table(op Op, by int64, list ...int64) Problem {
	p := Problem{Kind: RuleTable, Run: Run{Op: op, By: by}}
	for _, n := range list {
		p.List = append(p.List, Int(n))
	}
	return p
}

func TestProblemsThatAskOfNumbersAreCheckedForAnAnswer(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want error
	}{
		{run(0, 5, Add, 11), nil},
		{run(10, 3, Subtract, 4), nil},
		{run(10, 3, Subtract, 5), ErrNegative},
		{run(9_999_990, 5, Add, 2), nil},
		{run(9_999_990, 5, Add, 3), ErrOverflow},
		{run(3, 2, Multiply, 24), ErrOverflow}, // 25,165,824
		{run(1, 9_999_999, Multiply, 24), ErrOverflow},
		{run(1, 1, Add, MaxTerms), nil},
		{run(1, 1, Add, MaxTerms+1), ErrOverflow},
		{table(Multiply, 3, 1, 2, 3), nil},
		{table(Subtract, 5, 8, 3), ErrNegative},
		{table(Divide, 0, 8), ErrDivideByZero},
		{Problem{Kind: Multiples, Left: Int(6), Run: Run{Terms: 10}}, nil},
		{Problem{Kind: Multiples, Left: Int(0), Run: Run{Terms: 10}}, ErrDivideByZero},
		{Problem{Kind: Primality, Left: Int(0)}, ErrDivideByZero},
		{Problem{Kind: CommonFactors, Left: Int(12), Right: Int(18)}, nil},
		{Problem{Kind: CommonFactors, Left: Int(12), Right: Int(0)}, ErrDivideByZero},
		{Problem{Kind: CommonMultiples, Left: Int(0), Right: Int(4)}, ErrDivideByZero},
		{Problem{Kind: FactFamily, Left: Operation{Add, Int(0), Int(5)}}, nil},
		{Problem{Kind: FactFamily, Left: Operation{Multiply, Int(0), Int(5)}}, ErrDivideByZero},
		{Problem{Kind: Estimate, Left: Operation{Subtract, Int(17), Int(398)}, To: 10}, ErrNegative},
		{Problem{Kind: Estimate, Left: Operation{Divide, Int(398), Int(4)}, To: 10}, ErrDivideByZero},
		{Problem{Kind: Estimate, Left: Operation{Divide, Int(398), Int(5)}, To: 10}, nil},
		{Problem{Kind: Subtraction, Story: HowManyMore, Left: Operation{Subtract, Int(9), Int(12)}}, ErrNegative},
	} {
		if got := Check(c.p); got != c.want {
			t.Errorf("Check(%s) = %v, want %v", c.p, got, c.want)
		}
	}
}

// A run that passes is worked again with big numbers.
func TestARunIsWhatItsStepMakesOfIt(t *testing.T) {
	for _, p := range []Problem{run(0, 5, Add, 11), run(120, 10, Subtract, 13), run(3, 2, Multiply, 20), run(0, 9_999_999, Add, 2), run(1, 10, Multiply, 7)} {
		n, by := big.NewInt(p.Run.From), big.NewInt(p.Run.By)
		list := p.Run.List()
		if len(list) != p.Run.Terms {
			t.Errorf("%s has %d numbers, want %d", p, len(list), p.Run.Terms)
		}
		for i, got := range list {
			if n.Cmp(big.NewInt(got)) != 0 {
				t.Errorf("number %d of %s is %d, want %s", i+1, p, got, n)
			}
			switch p.Run.Op {
			case Add:
				n.Add(n, by)
			case Subtract:
				n.Sub(n, by)
			default:
				n.Mul(n, by)
			}
		}
	}
}

// What is offered near a problem, and after it, asks the same kind of thing.
func TestNearAndNextKeepTheKind(t *testing.T) {
	asked := []Problem{
		{Kind: PlaceValue, Left: Int(4_873_456), To: 100}, {Kind: ExpandedForm, Left: Int(1_000_347)}, {Kind: InWords, Left: Int(50_347)},
		{Kind: Parity, Left: Int(314)}, {Kind: WaysToMake, Left: Int(47)}, {Kind: Primality, Left: Int(1_017)},
		{Kind: Multiples, Left: Int(160), Run: Run{Terms: 10}}, {Kind: CommonMultiples, Left: Int(40), Right: Int(160)},
		{Kind: CommonFactors, Left: Int(1_200), Right: Int(18)}, run(7, 5, Add, 20), run(300, 25, Subtract, 11), run(3, 4, Multiply, 8),
		table(Multiply, 30, 1, 2, 3), table(Subtract, 5, 3, 8), table(Divide, 7, 70, 14),
		{Kind: Estimate, Left: Operation{Add, Int(39_800), Int(1_700)}, To: 1000}, {Kind: FactFamily, Left: Operation{Multiply, Int(30), Int(12)}},
	}
	for _, p := range asked {
		near := Nearby(p)
		if len(near) == 0 {
			t.Errorf("nothing is near %s", p)
		}
		for _, q := range near {
			if q.Kind != p.Kind || q.String() == p.String() {
				t.Errorf("near %s is %s %s", p, q.Kind, q)
			}
			if err := Check(q); err != nil {
				t.Errorf("near %s is %s: %v", p, q, err)
			}
			if q.Kind == PlaceValue && q.Left.(Number).Value.Num() < q.To {
				t.Errorf("near %s is %s, which has no such place", p, q)
			}
		}
		next, ok := Next(p)
		if !ok || next.Kind != p.Kind || next.String() == p.String() {
			t.Errorf("next after %s is %s, %v", p, next, ok)
		}
	}
}

func TestADivisionThatDoesNotComeOutHasOneNearThatDoes(t *testing.T) {
	of := func(a, b int64, rest Rest, story Story) Problem {
		return Problem{Kind: Division, Rest: rest, Story: story, Left: Operation{Divide, Int(a), Int(b)}}
	}
	for _, c := range []struct {
		p    Problem
		want string
	}{
		{of(25, 3, LeftOver, TimesAsMany), "24 is 3 times as many as ?"},
		{of(10, 3, AsDecimal, NoStory), "10 ÷ 3 as a mixed number"},
		{of(98, 0, AsDecimal, NoStory), "98 ÷ 1 as a decimal"},
	} {
		if near := Nearby(c.p); len(near) == 0 || near[0].String() != c.want {
			t.Errorf("near %s are %v, want %s first", c.p, near, c.want)
		}
	}
	turned := Problem{Kind: Subtraction, Story: HowManyMore, Left: Operation{Subtract, Int(9), Int(12)}}
	if near := Nearby(turned); len(near) == 0 || near[0].String() != "how many more is 12 than 9" {
		t.Errorf("near %s are %v", turned, near)
	}
}
