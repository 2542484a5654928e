package bond

import (
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

func problem(kind arithmetic.Kind, op arithmetic.Op, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}}
}

func TestLimitsAreSaid(t *testing.T) {
	for _, c := range []struct {
		p    arithmetic.Problem
		want string // "" fits
	}{
		{problem(arithmetic.Addition, arithmetic.Add, 99, 1), ""},
		{problem(arithmetic.Addition, arithmetic.Add, 99, 2), "wholes up to 100"},
		{problem(arithmetic.Addition, arithmetic.Add, 0, 0), ""},
		{problem(arithmetic.FactFamily, arithmetic.Add, 60, 40), ""},
		{problem(arithmetic.FactFamily, arithmetic.Add, 60, 41), "wholes up to 100"},
		{problem(arithmetic.FactFamily, arithmetic.Multiply, 12, 12), ""},
		{problem(arithmetic.FactFamily, arithmetic.Multiply, 13, 2), "up to 12"},
		{problem(arithmetic.FactFamily, arithmetic.Multiply, 0, 2), "no division facts"},
		{arithmetic.Problem{Kind: arithmetic.WaysToMake, Left: arithmetic.Int(20)}, ""},
		{arithmetic.Problem{Kind: arithmetic.WaysToMake, Left: arithmetic.Int(21)}, "up to 20"},
		{arithmetic.Problem{Kind: arithmetic.ExpandedForm, Left: arithmetic.Int(40)}, "from 11 to 99"},
	} {
		err := fits(c.p)
		if c.want == "" && err != nil || c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)) {
			t.Errorf("%s: %v, want %q", c.p, err, c.want)
		}
	}
}

func TestTurns(t *testing.T) {
	missing := func(total int64) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Right: arithmetic.Int(total),
			Left: arithmetic.Operation{Op: arithmetic.Add, Left: arithmetic.Int(8), Right: arithmetic.Unknown{}}}
	}
	for _, c := range []struct {
		p    arithmetic.Problem
		want int
	}{
		{problem(arithmetic.FactFamily, arithmetic.Add, 3, 5), telling.Leads},
		{problem(arithmetic.FactFamily, arithmetic.Multiply, 3, 5), telling.Follows},
		{arithmetic.Problem{Kind: arithmetic.WaysToMake, Left: arithmetic.Int(5)}, telling.Leads},
		{missing(20), telling.Follows},
		{missing(21), telling.Serves},
		{problem(arithmetic.Addition, arithmetic.Add, 3, 5), telling.Serves},
	} {
		if got := turn(c.p); got != c.want {
			t.Errorf("%s: turn %d, want %d", c.p, got, c.want)
		}
	}
}

// Every plate of one bond is as large as the others: its size says nothing. Up to 20
// the counters on each are as many as its number.
func TestPlatesAreOfOneSize(t *testing.T) {
	for a := int64(0); a <= 20; a++ {
		for b := int64(0); a+b <= 20; b++ {
			s := tell(problem(arithmetic.FactFamily, arithmetic.Add, a, b)).Whole
			var plates []scene.Rect
			counters := int64(0)
			for _, it := range s.View(false).Items {
				switch sh := it.Shape.(type) {
				case scene.Rect:
					plates = append(plates, sh)
				case scene.Circle:
					counters++
				}
			}
			if len(plates) != 3 || counters != 2*(a+b) {
				t.Fatalf("%d and %d: %d plates, %d counters", a, b, len(plates), counters)
			}
			for _, p := range plates {
				if p.W != plates[0].W || p.H != plates[0].H {
					t.Errorf("%d and %d: plates of %d × %d and %d × %d", a, b, plates[0].W, plates[0].H, p.W, p.H)
				}
			}
		}
	}
}
