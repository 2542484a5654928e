package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/golden/measure"
	"modeler/models/scene"
)

// readMatch: two trains begin at one end, each with its number in front, and what the
// longer has more is marked over it and beside the other.
func (s sight) readMatch(l linked, finished bool) error {
	trains := l.trains()
	var long, short *chain
	for i := range trains {
		t := &trains[i]
		if t.X != trains[0].X {
			return errors.New("the trains do not begin at one end")
		}
		if long == nil || t.n > long.n {
			long = t
		}
		name := ""
		for _, text := range s.Texts {
			if text.Anchor == "end" && text.Y > t.Y && text.Y < t.Bottom()+8 {
				name = text.Words
			}
		}
		if name != strconv.FormatInt(t.n, 10) {
			return fmt.Errorf("%q stands in front of a train of %d", name, t.n)
		}
	}
	for _, text := range s.Texts {
		beside := slices.ContainsFunc(trains, func(t chain) bool { return text.Y > t.Y && text.Y < t.Bottom()+8 })
		if text.Anchor == "end" && !beside && text.Words != "0" {
			return fmt.Errorf("%q stands in front of no train", text.Words)
		}
	}
	if long == nil {
		return errors.New("there is no train")
	}
	for i := range trains {
		if &trains[i] != long {
			short = &trains[i]
		}
	}
	gap, end := long.n, long.X
	if short != nil {
		gap, end = long.n-short.n, short.Right()
	}
	marked, missing, said := false, false, false
	for _, p := range s.Paths {
		b := p.Box()
		if p.Width == "5" && len(p.Points) == 4 {
			marked = true
			if b.X != end || b.Right() != long.Right() {
				return errors.New("the bracket is not as long as what is more")
			}
		}
	}
	for _, r := range s.Rects {
		if s.empty(r.Paint, scene.Result) && r.Dash != "" {
			missing = true
			if r.X != end || r.Right() != long.Right() || short != nil && r.Y != short.Y {
				return errors.New("the places that are free are not as many as what is more")
			}
		}
	}
	for _, t := range s.Texts {
		if n, more := strings.CutSuffix(t.Words, " more"); more {
			said = true
			if n != strconv.FormatInt(gap, 10) {
				return fmt.Errorf("%q is said of a gap of %d", t.Words, gap)
			}
		}
		if t.Words == "the same length" && gap != 0 {
			return errors.New("two trains are called equally long")
		}
	}
	if (finished || marked || missing || said) && (marked != (gap > 0) || missing != marked || said != marked) {
		return errors.New("what is more is not marked")
	}
	return nil
}

// readTwoRows: the rows begin under each other, the first has as many as the other or
// one more, and that one is said to be left over.
func (s sight) readTwoRows(l linked) error {
	var rows [2]int64
	for i, t := range l.trains() {
		if i > 1 || t.X != l.rows[0][0].X {
			return errors.New("the cubes do not lie in two rows")
		}
		rows[i] = t.n
	}
	if rows[0]-rows[1] != 0 && rows[0]-rows[1] != 1 {
		return fmt.Errorf("rows of %d and %d", rows[0], rows[1])
	}
	lone := 0
	for _, r := range s.Rects {
		if s.empty(r.Paint, scene.Note) && r.Dash != "" {
			lone++
		}
	}
	if int64(lone) != rows[0]-rows[1] || !s.Says(pairNames(rows[0]+rows[1])) {
		return errors.New("the pairs or what is left over are not said")
	}
	return nil
}

// readTensFoot: the line at the foot, which a step has not, says of a number how many
// tens or ones it has, where it does not say it as a sum.
func (s sight) readTensFoot(number *big.Rat) error {
	n := number.Num().Int64()
	var foot []string
	for _, line := range s.Lines() {
		for _, w := range line {
			if w.Size == scene.Large {
				foot = append(foot, w.Text)
			}
		}
	}
	said := strings.Join(foot, " ")
	units := func(count int64, one string) string {
		if count == 1 {
			return fmt.Sprintf("%d = 1 %s", n, one)
		}
		return fmt.Sprintf("%d = %d %ss", n, count, one)
	}
	if said == "" || strings.Contains(said, "+") || said == units(n, "one") || n > 0 && n%10 == 0 && said == units(n/10, "ten") {
		return nil
	}
	return fmt.Errorf("%q stands at the foot of a picture of %d", said, n)
}

// readStrokes: what is taken away has one stroke through it, and nothing else has.
func (s sight) readStrokes(l linked) error {
	var strokes []measure.Box
	for _, p := range s.Paths {
		if p.Width == "5" && len(p.Points) == 2 {
			strokes = append(strokes, p.Box())
		}
	}
	n := 0
	for _, row := range l.rows {
		for _, c := range row {
			if c.role != ghostCell {
				continue
			}
			n++
			if !slices.ContainsFunc(strokes, func(b measure.Box) bool { return c.Contains(b) && b.W > c.W-l.side }) {
				return errors.New("what is taken away is not crossed out")
			}
		}
	}
	if len(strokes) != n {
		return fmt.Errorf("%d strokes for %d pieces that are taken away", len(strokes), n)
	}
	return nil
}

// readSnapped: beside a train of two colors stands how many cubes were snapped to it.
func (s sight) readSnapped(l linked) error {
	for _, row := range l.rows {
		for i := 1; i < len(row); i++ {
			a, b := row[i-1], row[i]
			if a.Right() != b.X || a.role == b.role || a.role == ghostCell || b.role == ghostCell || b.role == scene.Result {
				continue
			}
			if words := s.besideTrain(b); words != strconv.FormatInt(b.n, 10) {
				return fmt.Errorf("%q stands beside %d cubes that were snapped on", words, b.n)
			}
		}
	}
	return nil
}
