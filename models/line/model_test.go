package line

import (
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models/scene"
	"modeler/models/telling"
)

func onLine(t *testing.T, text string) telling.Telling {
	t.Helper()
	r, err := reading.Read(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	if err := Model.Fits(r.Problem); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return Model.Tell(r.Problem)
}

func hops(s *scene.Scene) []scene.Hop {
	var list []scene.Hop
	for _, it := range s.Items {
		if h, ok := it.Shape.(scene.Hop); ok && it.When.Visible(false) {
			list = append(list, h)
		}
	}
	return list
}

// CCSS 3.NF.A.2b: 3/4 is marked off as 3 lengths of 1/4 from 0.
func TestAFractionIsEqualLengthsFromZero(t *testing.T) {
	list := hops(onLine(t, "3/4").Whole)
	if len(list) != 3 {
		t.Fatalf("%d hops, want 3", len(list))
	}
	for i, h := range list {
		if h.X2-h.X1 != list[0].X2-list[0].X1 || i > 0 && h.X1 != list[i-1].X2 {
			t.Errorf("hop %d goes from %d to %d; the first from %d to %d", i+1, h.X1, h.X2, list[0].X1, list[0].X2)
		}
	}
}

// CCSS 2.MD.B.6: the points of a number line are equally spaced.
func TestMarksAreEquallySpaced(t *testing.T) {
	for _, at := range []int64{0, 1, 7, 10} {
		r := rulerFor(arithmetic.Stretch{Hi: 10, Unit: 1}, [2]int{})
		if got, want := r.x(at)-r.x(0), int(at)*(r.x(1)-r.x(0)); got != want {
			t.Errorf("%d stands at %d, want %d", at, got, want)
		}
	}
}

// A hop back is drawn to the left (Teppo and van den Heuvel-Panhuizen 2014 saw
// it drawn forward).
func TestAHopBackGoesToTheLeft(t *testing.T) {
	for _, text := range []string{"402 − 178", "13 − 4", "11 − ? = 8", "5 = ? − 3", "2 1/4 − 3/4"} {
		for _, h := range hops(onLine(t, text).Whole) {
			if h.X2 >= h.X1 {
				t.Errorf("%s: a hop goes from %d to %d", text, h.X1, h.X2)
			}
		}
	}
}

func TestOneIsNamedOnEveryLineOfFractions(t *testing.T) {
	for _, text := range []string{"3/4", "11/4", "3/4 = 6/8", "7/8 < 13/12", "1/2 + 1/3", "7/5 + 4/5", "19/20 + 3/25", "0.62", "0.3 + 0.45", "order 3/4; 5/4; 1/2"} {
		named := map[string]bool{}
		for _, it := range onLine(t, text).Whole.Items {
			if l, ok := it.Shape.(scene.Text); ok && len(l.Runs) == 1 {
				named[l.Runs[0].Text] = true
			}
		}
		if !named["0"] || !named["1"] {
			t.Errorf("%s: 0 is named: %v, 1 is named: %v", text, named["0"], named["1"])
		}
	}
}

func TestALineThatIsNotToScaleSaysSo(t *testing.T) {
	for text, uneven := range map[string]bool{"345 + 278": false, "3,456 + 2,789": true, "$5.00 − $3.27": true, "48 + 27": false} {
		whole, says := onLine(t, text).Whole, false
		for _, it := range whole.Items {
			if l, ok := it.Shape.(scene.Text); ok && l.Runs[0].Text == "not to scale" {
				says = true
			}
		}
		if says != uneven || strings.Contains(whole.Desc.Shown, "not to scale") != uneven {
			t.Errorf("%s: the picture says it: %v, the description: %q, want %v", text, says, whole.Desc.Shown, uneven)
		}
	}
}

func TestWhatDoesNotFitIsRefusedWithAReason(t *testing.T) {
	for _, text := range []string{"7 × 0", "2 in groups of 5", "12 ÷ 3", "13 × 4", "0.5 + 1/2", "8 + ? = 5", "8 × ? = 48", "1/997", "compare 2/3 and 67/100", "1/3 + 1/997", "1/24 + 1/25", "2 + 0 + 3", "1/2 + 1/3 + 1/4"} {
		r, err := reading.Read(text)
		if err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		if err := Model.Fits(r.Problem); err == nil || err.Error() == "" {
			t.Errorf("%s: it fits", text)
		}
	}
}

// Equal numbers are one point with two names; numbers that differ are two.
func TestEqualNumbersAreOnePoint(t *testing.T) {
	for text, one := range map[string]bool{"3/4 = 6/8": true, "compare 0.5 and 1/2": true, "4/4 = 1": true, "5/8 > 2/3": false, "compare 0.3 and 0.25": false} {
		places := map[int]bool{}
		for _, it := range onLine(t, text).Whole.Items {
			if c, ok := it.Shape.(scene.Circle); ok {
				places[c.X] = true
			}
		}
		if (len(places) == 1) != one {
			t.Errorf("%s: %d points", text, len(places))
		}
	}
}

func TestAWrongClaimSaysWhatIsTrue(t *testing.T) {
	told := onLine(t, "5/8 > 2/3")
	if told.Answer.True || told.Answer.Relation != arithmetic.Less {
		t.Errorf("5/8 > 2/3: true is %v, the relation is %s", told.Answer.True, told.Answer.Relation)
	}
	if want := "5/8 > 2/3 is false: 5/8 < 2/3"; told.Whole.Title.Shown != want {
		t.Errorf("got %q, want %q", told.Whole.Title.Shown, want)
	}
	// 2/3 − 5/8 = 16/24 − 15/24.
	if !strings.Contains(told.Why.String(), "1/24 more") {
		t.Errorf("why: %q", told.Why)
	}
}

// Wholes stand where they belong also where the parts are too many to be cut.
func TestWholesAreEquallyFarApart(t *testing.T) {
	for _, text := range []string{"6/9 + 4/5", "7/5 + 4/5", "19/20 + 3/25"} {
		at := map[string]int{}
		for _, it := range onLine(t, text).Whole.Items {
			if l, ok := it.Shape.(scene.Text); ok && len(l.Runs) == 1 && l.Size == scene.Small {
				at[l.Runs[0].Text] = l.X
			}
		}
		if d, e := at["1"]-at["0"], at["2"]-at["1"]; at["1"] == 0 || at["2"] == 0 || abs(d-e) > 16 {
			t.Errorf("%s: 0, 1 and 2 stand at %d, %d and %d", text, at["0"], at["1"], at["2"])
		}
	}
}
