package golden

import (
	"errors"
	"fmt"
	"slices"
	"strconv"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readWayFrames: every frame that is not empty has as many counters as the number, the
// two colors after each other, and under it stand both parts; all together are all the
// ways.
func (s sight) readWayFrames(f framed, t problems.Truth, all bool) error {
	n := t.Numbers[0].Num().Int64()
	var pairs [][2]int64
	for i, face := range f.frames {
		var parts [2]int64
		for _, role := range f.cells[i] {
			switch role {
			case scene.First, scene.Moved:
				if parts[1] > 0 {
					return errors.New("the colors of a frame are mixed")
				}
				parts[0]++
			case scene.Second:
				parts[1]++
			}
		}
		if lie := parts[0] + parts[1]; lie != n && lie > 0 {
			return fmt.Errorf("%d counters in a frame, for %d", lie, n)
		}
		label := ""
		for _, line := range s.Lines() {
			for _, w := range line {
				if w.X > face.X && w.X < face.Right() && w.Y > face.Bottom() && w.Y < face.Bottom()+60 && w.Size < scene.Large {
					label += w.Text
				}
			}
		}
		if label == "" {
			continue
		}
		if want := fmt.Sprintf("%d+%d", parts[0], parts[1]); label != want {
			return fmt.Errorf("%q stands under a frame with %s", label, want)
		}
		pairs = append(pairs, parts)
	}
	if all && !slices.Equal(pairs, t.Pairs) {
		return fmt.Errorf("the ways are %v, not %v", pairs, t.Pairs)
	}
	if all {
		return s.readPairsMake(t)
	}
	return nil
}

// readRings: every ring around a pair has two counters in it, and every double ring
// as many as the other.
func (s sight) readRings(t problems.Truth) error {
	var sizes []int
	for _, r := range s.Rects {
		if !s.empty(r.Paint, scene.Moved, scene.Result) || r.Dash != "" {
			continue
		}
		n := 0
		for _, c := range s.Circles {
			if r.Contains(measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}) && s.is(c.Paint, counted...) {
				n++
			}
		}
		sizes = append(sizes, n)
	}
	n := t.Numbers[0].Num().Int64()
	switch s.problem.Kind {
	case arithmetic.Parity:
		if len(sizes) > 0 && int64(len(sizes)) != n/2 || slices.ContainsFunc(sizes, func(n int) bool { return n != 2 }) {
			return fmt.Errorf("the pairs of %d are %v", n, sizes)
		}
	case arithmetic.Addition:
		if len(sizes) == 0 {
			return nil
		}
		each := min(n, t.Numbers[1].Num().Int64(), 5)
		if len(sizes) != 2 || int64(sizes[0]) != each || int64(sizes[1]) != each {
			return fmt.Errorf("what is marked as a double is %v", sizes)
		}
	default:
		if len(sizes) > 0 {
			return errors.New("there are rings around counters")
		}
	}
	return nil
}

// readStruck: each row of what was taken away has one stroke through all of it, and
// nothing else is struck.
func (s sight) readStruck(f framed) error {
	strokes := 0
	for _, p := range s.Paths {
		if p.Width == "5" && len(p.Points) == 2 && p.Points[0].Y != p.Points[1].Y {
			strokes++
		}
	}
	want := 0
	for i, face := range f.frames {
		side := face.W / 5
		for row := range 2 {
			first, last := -1, -1
			for col := range 5 {
				if f.cells[i][row*5+col] == ghostCell {
					last = col
					if first < 0 {
						first = col
					}
				}
			}
			if first < 0 {
				continue
			}
			want++
			left, right, y := face.X+first*side+side/2, face.X+last*side+side/2, face.Y+row*side+side/2
			if !slices.ContainsFunc(s.Paths, func(p measure.Path) bool {
				b := p.Box()
				return p.Width == "5" && len(p.Points) == 2 && b.X <= left && b.X > left-side/2 && b.Right() >= right && b.Right() < right+side/2 && b.Y < y && b.Bottom() > y
			}) {
				return errors.New("what is taken away is not crossed out")
			}
		}
	}
	if strokes != want {
		return fmt.Errorf("%d strokes for %d rows that are taken away", strokes, want)
	}
	return nil
}

// readTallies: what is written under a frame is so.
func (s sight) readTallies(f framed) error {
	for i, face := range f.frames {
		var lie, gone int64
		for _, role := range f.cells[i] {
			if slices.Contains(counted, role) {
				lie++
			}
			if role == ghostCell {
				gone++
			}
		}
		for _, t := range s.Texts {
			if t.X != face.X+face.W/2 || t.Y < face.Bottom() || t.Y > face.Bottom()+60 || t.Size >= scene.Large {
				continue
			}
			if t.Words == "?" {
				continue
			}
			want := []string{strconv.FormatInt(lie, 10), "− " + strconv.FormatInt(gone, 10), pairNames(lie)}
			if !slices.Contains(want, t.Words) {
				return fmt.Errorf("%q stands under a frame with %d counters", t.Words, lie)
			}
		}
	}
	return nil
}

func pairNames(n int64) string {
	text := fmt.Sprintf("%d pairs", n/2)
	if n/2 == 1 {
		text = "1 pair"
	}
	if n%2 == 1 {
		text += ", 1 left over"
	}
	return text
}
