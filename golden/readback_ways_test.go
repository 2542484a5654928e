package golden

import (
	"errors"
	"fmt"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readTen reads a sum that makes ten: two addends, and a bond under one of them. Ten
// counters are together, and the rest is apart.
func (s sight) readTen(list []onPlate, t problems.Truth) error {
	for i, p := range list[:2] {
		if err := agree("an addend", whole(p.n), t.Numbers[i]); err != nil {
			return err
		}
	}
	at := 0
	if s.joined(list[1].Box, list[2].Box) {
		at = 1
	}
	split, kept := list[at], list[1-at]
	if !s.joined(split.Box, list[2].Box) || !s.joined(split.Box, list[3].Box) || list[2].n+list[3].n != split.n {
		return errors.New("the parts under an addend do not make it")
	}
	need, rest := list[2], list[3]
	if at == 0 {
		need, rest = rest, need
	}
	roles := []scene.Role{scene.First, scene.Second}
	if kept.counters[roles[1-at]] != kept.n || kept.counters[roles[at]]+kept.counters[scene.Moved] != need.n || kept.all() != 10 {
		return errors.New("the plate is not filled up to ten")
	}
	if need.all() != 0 || need.gone != need.n || rest.counters[roles[at]] != rest.n || rest.all() != rest.n || split.all() != 0 {
		return errors.New("the parts do not have their counters")
	}
	return agree("all counters", whole(kept.all()+rest.all()), t.Value)
}

// readWays reads a row of counters for every way, with the numbers of its parts at
// both ends.
func (s sight) readWays(t problems.Truth, all bool) error {
	rows := map[int]*onPlate{}
	for _, c := range s.Circles {
		if rows[c.Y] == nil {
			rows[c.Y] = &onPlate{counters: map[scene.Role]int64{}, rows: map[int][]int{}}
		}
		rows[c.Y].rows[0] = append(rows[c.Y].rows[0], c.X)
		for _, role := range []scene.Role{scene.First, scene.Second, scene.Moved} {
			if s.is(c.Paint, role) {
				rows[c.Y].counters[role]++
			}
		}
	}
	numbers := map[int][]int64{}
	marks := s.bare()
	slices.SortStableFunc(marks, func(a, b measure.Mark) int { return a.X - b.X })
	for _, m := range marks {
		numbers[m.Y] = append(numbers[m.Y], m.Value.Num().Int64())
	}
	var pairs [][2]int64
	for y, pair := range numbers {
		if len(pair) != 2 {
			return fmt.Errorf("the numbers %v in a row", pair)
		}
		pairs = append(pairs, [2]int64{pair[0], pair[1]})
		row := rows[y]
		if row == nil {
			row = &onPlate{counters: map[scene.Role]int64{}}
		}
		first, second := row.counters[scene.First], row.counters[scene.Second]
		if row.counters[scene.Moved] == 0 && (first != pair[0] || second != pair[1]) || row.all() != pair[0]+pair[1] {
			return fmt.Errorf("a row with %d and %d counters is called %v", first, second, pair)
		}
	}
	for y, row := range rows {
		if pair := numbers[y]; len(pair) == 2 {
			if err := row.split(int(pair[0])); err != nil {
				return err
			}
		}
		if err := agree("the counters in a row", whole(row.all()), t.Numbers[0]); err != nil && row.all() > 0 {
			return err
		}
	}
	slices.SortFunc(pairs, func(a, b [2]int64) int { return int(a[0] - b[0]) })
	if all && !slices.Equal(pairs, t.Pairs) {
		return fmt.Errorf("the ways are %v, not %v", pairs, t.Pairs)
	}
	return s.readPairsMake(t)
}

// split: the counters of a way are equally far apart but for one gap, behind so many.
func (p onPlate) split(after int) error {
	xs := slices.Clone(p.rows[0])
	slices.Sort(xs)
	const step, gap = 28, 12
	for i := range len(xs) - 1 {
		want := step
		if i+1 == after {
			want += gap
		}
		if xs[i+1]-xs[i] != want {
			return fmt.Errorf("counters %d and %d of a row are %d apart", i+1, i+2, xs[i+1]-xs[i])
		}
	}
	return nil
}

// readPairsMake: the line at the foot says how many pairs there are, and what they
// make.
func (s sight) readPairsMake(t problems.Truth) error {
	var foot []measure.Text
	for _, text := range s.Texts {
		if text.Size == scene.Large && (len(foot) == 0 || text.Y >= foot[0].Y) {
			if len(foot) > 0 && text.Y > foot[0].Y {
				foot = nil
			}
			foot = append(foot, text)
		}
	}
	if len(foot) != 3 {
		return nil // a step has no such line
	}
	want := []string{arithmetic.Grouped(int64(len(t.Pairs))), t.Numbers[0].Num().String()}
	if foot[0].Words != want[0] || foot[2].Words != want[1] {
		return fmt.Errorf("%s %s %s, where %v are right", foot[0].Words, foot[1].Words, foot[2].Words, want)
	}
	return nil
}
