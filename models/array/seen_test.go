package array

import (
	"reflect"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
)

func divided(total, side int64, grouping bool) arithmetic.Problem {
	p := problem(arithmetic.Division, arithmetic.Divide, arithmetic.Int(total), arithmetic.Int(side))
	p.Grouping = grouping
	return p
}

// With the answer hidden the outline of what is asked has one width, whatever the
// answer, and the places of a sharing are as long for 3 as for 9 in each row.
func TestAHiddenSideCannotBeMeasured(t *testing.T) {
	widths, places := map[int]bool{}, map[int]bool{}
	for _, p := range []arithmetic.Problem{
		divided(24, 8, false), divided(56, 8, false), divided(72, 8, false), divided(96, 8, false), divided(425, 3, false),
		divided(24, 8, true), divided(57, 8, true), divided(769, 12, true),
	} {
		told := Model.Tell(p)
		for _, it := range told.Whole.View(true).Items {
			if line, is := it.Shape.(scene.Polyline); is && it.Finish == scene.Dashed {
				widths[line.Box().W] = true
			}
		}
	}
	if len(widths) != 1 {
		t.Errorf("the outlines of what is asked are %v wide", widths)
	}
	for _, total := range []int64{55, 56, 80} { // 11 rows of 5; 8 rows of 7 and of 10
		told := Model.Tell(divided(total, 8, false))
		step := 0
		for _, it := range told.Steps[1].Scene.Items {
			if c, is := it.Shape.(scene.Circle); is {
				step = 2 * c.R
			}
		}
		for _, it := range told.Steps[0].Scene.Items {
			if r, is := it.Shape.(scene.Rect); is && it.Role == scene.Note {
				places[(r.W-2*bandEdge)/(step+8)] = true
			}
		}
	}
	if len(places) != 1 || !places[10] {
		t.Errorf("the places have room for %v", places)
	}
}

// What waits and what is left over in the end look the same, and not like what
// has been placed.
func TestWhatIsLeftOverKeepsItsLook(t *testing.T) {
	told := Model.Tell(divided(57, 8, true))
	for k, st := range told.Steps {
		apart := 0
		for _, it := range st.Scene.View(false).Items {
			if _, is := it.Shape.(scene.Circle); is && it.Role == scene.First && it.Finish == scene.Plain {
				apart++
			}
		}
		if want := []int{57, 49, 1, 1}[k]; apart != want {
			t.Errorf("step %d has %d counters apart, want %d", k+1, apart, want)
		}
	}
}

// A sketch is not to scale, but hundreds are wider than tens and tens than ones.
func TestASketchKeepsTheOrderOfSizes(t *testing.T) {
	product := func(a, b int64) arithmetic.Problem {
		return problem(arithmetic.Product, arithmetic.Multiply, arithmetic.Int(a), arithmetic.Int(b))
	}
	for _, p := range []arithmetic.Problem{product(125, 125), product(365, 24), product(8, 1234), divided(425, 3, false), divided(966, 7, false)} {
		told := Model.Tell(p)
		var areas []scene.Box
		for _, it := range told.Whole.View(false).Items {
			if r, is := it.Shape.(scene.Rect); is && it.Worth.Sign() > 0 {
				areas = append(areas, r.Box())
			}
		}
		for i, a := range areas[:max(0, len(areas)-1)] {
			if b := areas[i+1]; a.Y == b.Y && a.W <= b.W || a.X == b.X && a.H <= b.H {
				t.Errorf("%v: %v is not larger than %v", p, a, b)
			}
		}
	}
}

// Every partial product stands on a plate, and the parts are added at the foot.
func TestEveryPartialProductStandsOnAPlate(t *testing.T) {
	for a := int64(12); a < 100; a += 11 {
		for b := int64(13); b < 100; b += 7 {
			told := Model.Tell(problem(arithmetic.Product, arithmetic.Multiply, arithmetic.Int(a), arithmetic.Int(b)))
			plates, sum := 0, ""
			for _, it := range told.Whole.View(false).Items {
				switch sh := it.Shape.(type) {
				case scene.Rect:
					if it.Role == scene.Note && sh.H == plateTall {
						plates++
					}
				case scene.Text:
					if len(sh.Runs) > 1 {
						sum += sh.Runs[0].Text
						for _, r := range sh.Runs[1:] {
							sum += r.Text
						}
					}
				}
			}
			if parts := 4; a%10 > 0 && b%10 > 0 && (plates != parts || strings.Count(sum, "+") != parts-1) {
				t.Errorf("%d × %d has %d plates and the sum %q", a, b, plates, sum)
			}
		}
	}
}

// A step that changes nothing in the picture tells nothing.
func TestEveryStepOfAnArrayChangesThePicture(t *testing.T) {
	for _, p := range append(problems(), mixed()...) {
		if Model.Fits(p) != nil {
			continue
		}
		steps := Model.Tell(p).Steps
		for k := range steps[:len(steps)-1] {
			if reflect.DeepEqual(steps[k].Scene.View(false).Items, steps[k+1].Scene.View(false).Items) {
				t.Errorf("%v: steps %d and %d look alike", p, k+1, k+2)
			}
		}
	}
}
