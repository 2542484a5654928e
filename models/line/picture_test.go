package line

import (
	"strings"
	"testing"

	"modeler/models/scene"
)

// at lists where a number stands in a version of a picture, by its text: 2/3, 1 1/2.
func at(s *scene.Scene, hidden bool) map[string][]scene.Text {
	places := map[string][]scene.Text{}
	for _, it := range s.View(hidden).Items {
		t, ok := it.Shape.(scene.Text)
		if !ok || t.Size >= scene.Large {
			continue
		}
		var words []string
		for _, r := range t.Runs {
			if r.Den != "" {
				r.Text = r.Num + "/" + r.Den
			}
			words = append(words, strings.TrimSpace(r.Text))
		}
		name := strings.Join(words, " ")
		places[name] = append(places[name], t)
	}
	return places
}

func TestTwoNamesOfAPointStandUnderIt(t *testing.T) {
	for text, names := range map[string][2]string{
		"1 1/2 + 3/4": {"1 1/2", "1 2/4"}, "2/3 + 1/4": {"2/3", "8/12"}, "2 11/12 − 1 3/8": {"2 11/12", "2 22/24"}, "24/6": {"4", "24/6"},
	} {
		whole := at(onLine(t, text).Whole, false)
		a, b := whole[names[0]], whole[names[1]]
		if len(a) != 1 || len(b) != 1 || a[0].X != b[0].X || a[0].Y >= b[0].Y {
			t.Errorf("%s: %s and %s stand at %v and %v", text, names[0], names[1], a, b)
		}
	}
}

// With the answer hidden no fraction beside it has a name from which it could be
// read.
func TestHiddenNeighborsHaveNoNames(t *testing.T) {
	for text, names := range map[string][]string{"2/3 + 1/4": {"9/12", "10/12", "11/12"}, "3/4 − 1/3": {"4/12", "5/12", "6/12"}, "8 + 6": {"13", "14", "15"}} {
		told := onLine(t, text)
		for _, name := range names {
			if len(at(told.Whole, true)[name]) > 0 {
				t.Errorf("%s: %s is named while the answer is hidden", text, name)
			}
		}
	}
}

// Before an answer is found its mark has a name like the others.
func TestEveryMarkHasItsNameFromTheFirst(t *testing.T) {
	if step := at(onLine(t, "3/4 − 1/3").Steps[1].Scene, false); len(step["5/12"]) != 1 {
		t.Errorf("5/12 is named %d times", len(step["5/12"]))
	}
	if step := at(onLine(t, "0.3 + 0.45").Steps[0].Scene, false); len(step["0.7"]) != 1 || len(step["0.8"]) != 1 {
		t.Error("0.7 or 0.8 is not named")
	}
}

func TestBothLinesOfAStatementHaveTheirZeroAndWhatIsGiven(t *testing.T) {
	told := onLine(t, "402 − 178 = 376")
	for _, s := range []*scene.Scene{told.Whole, told.Steps[0].Scene} {
		zeros := at(s, true)["0"]
		if len(zeros) != 2 || zeros[0].X != zeros[1].X || zeros[0].Y == zeros[1].Y {
			t.Errorf("0 stands at %v", zeros)
		}
	}
	if given := at(told.Whole, true)["376"]; len(given) != 1 {
		t.Errorf("376 is given, and is named %d times", len(given))
	}
	if at(told.Whole, true)["224"] != nil {
		t.Error("224 is named while the answer is hidden")
	}
}

// What is in order is one list: one role, and no marks of different parts.
func TestAListHasOneRoleAndNoMixedMarks(t *testing.T) {
	whole := onLine(t, "order 2/3; 1/2; 5/6; 1/4").Whole
	ticks := 0
	for _, it := range whole.Items {
		switch sh := it.Shape.(type) {
		case scene.Circle:
			if it.Role != scene.First {
				t.Errorf("a point has the role %s", it.Role)
			}
		case scene.Line:
			if sh.X1 == sh.X2 && it.Finish == scene.Fine {
				ticks++
			}
		}
	}
	if ticks > 2 {
		t.Errorf("%d marks are left, want those of 0 and 1", ticks)
	}
}

func TestLongerJumpsAreWiderAlsoWhenNotToScale(t *testing.T) {
	list := hops(onLine(t, "$5.00 − $3.27").Whole) // 3 cents, 70 cents, 1 dollar
	if len(list) != 3 {
		t.Fatalf("%d hops, want 3", len(list))
	}
	const seen = 24
	for i := range list[1:] {
		if a, b := list[i].X2-list[i].X1, list[i+1].X2-list[i+1].X1; b < a+seen {
			t.Errorf("hop %d is %d wide, hop %d is %d wide", i+1, a, i+2, b)
		}
	}
}

func TestBothDistancesAreDrawnWhenRounding(t *testing.T) {
	for text, want := range map[string][2]string{"round 347 to the nearest ten": {"7 away", "3 away"}, "round 345 to the nearest ten": {"5 away", "5 away"}} {
		whole := at(onLine(t, text).Whole, false)
		if want[0] == want[1] && len(whole[want[0]]) != 2 || len(whole[want[0]]) == 0 || len(whole[want[1]]) == 0 {
			t.Errorf("%s: %s stands at %v, %s at %v", text, want[0], whole[want[0]], want[1], whole[want[1]])
		}
	}
	if n := len(onLine(t, "round 340 to the nearest ten").Steps); n != 1 {
		t.Errorf("a number that is round already takes %d steps", n)
	}
}

// A line on paper is marked; nothing is cut, and no scissors are needed.
func TestNothingIsCut(t *testing.T) {
	for _, text := range Model.Examples {
		for i, s := range onLine(t, text).Steps {
			if hands := strings.ToLower(s.Hands.String()); strings.Contains(hands, "cut ") {
				t.Errorf("%s, step %d: %s", text, i+1, hands)
			}
		}
	}
}

func TestTheReasonGivesTheSumFirst(t *testing.T) {
	for text, want := range map[string]string{
		"1/2 + 1/3 = 2/5": "1/2 + 1/3 is 5/6, and 5/6 is more than 2/5, so 1/2 + 1/3 = 2/5 is not true.",
		"1/4 + 2/4 = 3/8": "1/4 + 2/4 is 3/4, and 3/4 is more than 3/8, so 1/4 + 2/4 = 3/8 is not true.",
		"402 − 178 = 376": "402 − 178 is 224, and 224 is less than 376, so 402 − 178 = 376 is not true.",
		"8 + 4 = 7 + 5":   "8 + 4 is 12 and 7 + 5 is 12 too, so 8 + 4 = 7 + 5 is true.",
	} {
		if why := onLine(t, text).Why.String(); !strings.HasPrefix(why, want) {
			t.Errorf("%s: %q", text, why)
		}
	}
}
