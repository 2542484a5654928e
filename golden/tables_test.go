package golden

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models"
)

type tables struct {
	Divisors struct {
		Source string
		Rows   []struct {
			N        int64
			D        int
			Divisors []int64
		}
	}
}

// TestFactorPairsAgreeWithTheDivisorTables: Abramowitz & Stegun, table 24.6.
func TestFactorPairsAgreeWithTheDivisorTables(t *testing.T) {
	var tab tables
	load(t, "testdata/tables.json", &tab)
	if len(tab.Divisors.Rows) != 120 {
		t.Fatalf("the table has %d rows", len(tab.Divisors.Rows))
	}
	told := 0
	for _, row := range tab.Divisors.Rows {
		p := arithmetic.Problem{Kind: arithmetic.Factors, Left: arithmetic.Int(row.N)}
		fit, _ := models.Fitting(p)
		for _, m := range fit {
			told++
			pairs := m.Tell(p).Answer.Pairs
			var rows []int64
			for _, pair := range pairs {
				rows = append(rows, pair[0])
				if pair[0]*pair[1] != row.N {
					t.Errorf("%s: %d is not %d × %d", m.Name, row.N, pair[0], pair[1])
				}
			}
			if !slices.Equal(rows, row.Divisors) || len(rows) != row.D {
				t.Errorf("%s: the divisors of %d are %v, got %v", m.Name, row.N, row.Divisors, rows)
			}
		}
	}
	if told < 100 && len(models.All) > 0 {
		t.Errorf("only %d of 120 numbers were told", told)
	}
	t.Logf("%d told", told)
}

// TestOrderingPutsFareySequencesInOrder: the sequences of order 5 to 8 by their
// definition, lengths OEIS A005728. A window of each is dealt in a mixed order.
func TestOrderingPutsFareySequencesInOrder(t *testing.T) {
	var tab struct{ Farey map[string]any }
	load(t, "testdata/tables.json", &tab)
	told := 0
	for _, name := range []string{"F5", "F6", "F8"} {
		terms := tab.Farey[name].([]any)
		for at := 1; at+4 < len(terms); at++ {
			var sorted []string
			for _, term := range terms[at : at+4] {
				sorted = append(sorted, term.(string))
			}
			p := arithmetic.Problem{Kind: arithmetic.Ordering}
			for _, i := range []int{2, 0, 3, 1} {
				p.List = append(p.List, common(t, sorted[i]))
			}
			fit, _ := models.Fitting(p)
			for _, m := range fit {
				told++
				var got []string
				for _, n := range m.Tell(p).Answer.Order {
					got = append(got, n.String())
				}
				if !slices.Equal(got, sorted) {
					t.Errorf("%s: %s: got %v, want %v", m.Name, p, got, sorted)
				}
			}
		}
	}
	if told < 20 && len(models.All) > 0 {
		t.Errorf("only %d windows were told", told)
	}
	t.Logf("%d told", told)
}

func common(t *testing.T, text string) arithmetic.Number {
	t.Helper()
	a, b, _ := strings.Cut(text, "/")
	num, errNum := strconv.ParseInt(a, 10, 64)
	den, errDen := strconv.ParseInt(b, 10, 64)
	if errNum != nil || errDen != nil {
		t.Fatalf("%q is not a fraction", text)
	}
	return arithmetic.Frac(fraction.Must(num, den))
}
