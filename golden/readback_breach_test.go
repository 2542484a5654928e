package golden

import (
	"slices"
	"testing"

	"modeler/golden/laws"
	"modeler/golden/measure"
	"modeler/models/scene"
	"modeler/svg"
)

// breach spoils a drawing in one place; ok is false where there is nothing to
// spoil.
type breach struct {
	name  string
	spoil func(s *sight) (ok bool)
}

// A piece left out, a piece too wide, a point too far along, a jump that lands
// elsewhere: each is a picture that says something false.
var breaches = []breach{
	{"the last piece is left out", func(s *sight) bool {
		for i := len(s.Rects) - 1; i >= 0; i-- {
			if s.is(s.Rects[i].Paint, scene.First, scene.Second, scene.Result) {
				s.Rects = slices.Delete(s.Rects, i, i+1)
				return len(s.Circles) == 0 // beside the points of a line a strip says nothing more
			}
		}
		return false
	}},
	{"the last piece is wider", func(s *sight) bool {
		for i := len(s.Rects) - 1; i >= 0; i-- {
			if s.is(s.Rects[i].Paint, scene.First, scene.Second, scene.Result) {
				s.Rects[i].W++
				if len(s.Circles) > 0 {
					s.Rects[i].W += 5 // along a line the ends are rounded
				}
				return true
			}
		}
		return false
	}},
	{"the last counter is left out", func(s *sight) bool {
		n := len(s.Circles)
		if n > 0 {
			s.Circles = s.Circles[:n-1]
		}
		return n > 0
	}},
	{"the first point is elsewhere", func(s *sight) bool {
		if len(s.Circles) > 0 {
			s.Circles[0].X += 12
		}
		return len(s.Circles) > 0
	}},
	{"the last jump lands elsewhere", func(s *sight) bool {
		for i := len(s.Paths) - 1; i >= 0; i-- {
			if p := s.Paths[i]; len(p.Curves) == 1 {
				s.Paths[i].Curves = [][4]measure.Point{{p.Curves[0][0], p.Curves[0][1], p.Curves[0][2], {X: p.Curves[0][3].X + 12, Y: p.Curves[0][3].Y}}}
				return true
			}
		}
		return false
	}},
}

// TestReadingBackNoticesBreaches spoils the first example of every model that
// has what is to be spoiled, and looks whether the reading fails.
func TestReadingBackNoticesBreaches(t *testing.T) {
	paint := paints(t)
	noticed := map[string]int{}
	for _, l := range lessons(t) {
		told, err := laws.Tell(l.model, l.reading.Problem)
		if err != nil {
			t.Error(err)
			continue
		}
		body := svg.Render(told.Whole, svg.Options{})
		for _, b := range breaches {
			d, err := measure.Read(body)
			if err != nil {
				t.Fatal(err)
			}
			s := sight{d, l.reading.Problem, paint}
			read := readings[l.model.Name]
			if read(s, told.Truth) != nil || !b.spoil(&s) {
				continue
			}
			switch err := read(s, told.Truth); err {
			case errUnread: // the spoiled picture says less than is needed
			case nil:
				t.Errorf("%s: %s: %s, and it is not noticed", l.model.Name, l.example, b.name)
			default:
				noticed[b.name]++
			}
		}
	}
	for _, b := range breaches {
		if noticed[b.name] == 0 {
			t.Errorf("%s: nowhere to be noticed", b.name)
		}
	}
	t.Logf("%v", noticed)
}
