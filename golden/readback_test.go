package golden

import (
	"fmt"
	"math/big"
	"slices"
	"testing"

	"modeler/arithmetic"
	"modeler/golden/laws"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// readings says how the whole story of each model is read back from its bytes.
// A model that is not here fails the test.
var readings = map[string]func(sight, problems.Truth) error{
	"base-ten-blocks": readBlocks,
	"array":           readArray,
	"fraction-bars":   readBars,
	"number-line":     readLine,
}

// sight is a file that was measured, with the problem that it is to show. paint
// says which fills mean which role; nothing else of the scene is known.
type sight struct {
	measure.Drawing
	problem arithmetic.Problem
	paint   palette
}

// palette is the fills of a role's surfaces and of its solid marks, and the edge
// of its outlines.
type palette map[scene.Role][3]string

// paints learns the palette from a drawn sample of every role.
func paints(t *testing.T) palette {
	t.Helper()
	p := palette{}
	for _, role := range []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved, scene.Gone, scene.Tray} {
		s := &scene.Scene{W: 100, H: 100}
		s.Draw(role, scene.Plain, scene.Rect{W: 10, H: 10})
		s.Draw(role, scene.Deep, scene.Rect{W: 10, H: 10})
		d, err := measure.Read(svg.Render(s, svg.Options{}))
		if err != nil || len(d.Rects) != 3 {
			t.Fatalf("%d rectangles: %v", len(d.Rects), err)
		}
		p[role] = [3]string{d.Rects[1].Fill, d.Rects[2].Fill, d.Rects[1].Stroke}
	}
	return p
}

// is reports whether a surface is painted in one of the roles.
func (s sight) is(p measure.Paint, roles ...scene.Role) bool {
	for _, role := range roles {
		if pair := s.paint[role]; p.Fill == pair[0] || p.Fill == pair[1] {
			return true
		}
	}
	return false
}

// ghost reports whether a shape is only the outline of something gone.
func (s sight) ghost(p measure.Paint) bool { return s.empty(p, scene.Gone) }

// empty reports whether a shape is only an outline in one of the roles.
func (s sight) empty(p measure.Paint, roles ...scene.Role) bool {
	return !p.Filled() && slices.ContainsFunc(roles, func(r scene.Role) bool { return p.Stroke == s.paint[r][2] })
}

// TestReadingBack measures the whole story of every example and of random
// problems, and compares what it finds with the exact answer.
func TestReadingBack(t *testing.T) {
	paint := paints(t)
	told := map[string]int{}
	read := func(m *models.Model, p arithmetic.Problem) {
		l, err := laws.Tell(m, p)
		if err != nil {
			t.Error(err)
			return
		}
		d, err := measure.Read(svg.Render(l.Whole, svg.Options{}))
		if err != nil {
			t.Errorf("%s: %s: %v", m.Name, p, err)
			return
		}
		reading := readings[m.Name]
		if reading == nil {
			t.Errorf("nothing reads the pictures of %s back", m.Name)
			return
		}
		switch err := reading(sight{d, p, paint}, l.Truth); err {
		case nil:
			told[m.Name+", "+string(p.Kind)]++
		case errUnread:
			told[m.Name+", "+string(p.Kind)+" (not read)"]++
		default:
			t.Errorf("%s: %s: %v", m.Name, p, err)
		}
	}
	for _, l := range lessons(t) {
		read(l.model, l.reading.Problem)
	}
	d := problems.Deal(2)
	for range 2000 {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) == nil {
				read(m, p)
			}
		}
	}
	var names []string
	for name := range told {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		t.Logf("%5d  %s", told[name], name)
	}
}

// errUnread says that a picture of this kind is not read back yet.
var errUnread = fmt.Errorf("not read back yet")

func whole(n int64) *big.Rat { return big.NewRat(n, 1) }

// agree compares what was found with what is true.
func agree(what string, found, want *big.Rat) error {
	if found.Cmp(want) != 0 {
		return fmt.Errorf("%s: %s in the picture, %s in truth", what, found.RatString(), want.RatString())
	}
	return nil
}

// readBlocks counts blocks by their size in ones: filled ones by their fill, and
// empty ones, which are gone or traded, by their edge.
func readBlocks(s sight, t problems.Truth) error {
	one := 0
	var faces []measure.Face
	for _, f := range s.Faces() {
		if !s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) && !s.ghost(f.Paint) && !s.empty(f.Paint, scene.First, scene.Second, scene.Moved) {
			continue
		}
		faces = append(faces, f)
		if f.Cells() > 1 {
			one = f.W / f.Cols()
		}
	}
	for _, f := range faces {
		if one == 0 || f.W < one {
			one = f.W // ones only, or ones beside what is gone
		}
	}
	sum := func(choose func(measure.Face) bool) *big.Rat {
		total := whole(0)
		for _, f := range faces {
			if choose(f) {
				worth := whole(int64(f.Area() / (one * one)))
				if s.Cube(f) {
					worth.Mul(worth, whole(10))
				}
				total.Add(total, worth)
			}
		}
		return total
	}
	for _, f := range faces {
		if n := f.Area() / (one * one); f.Area()%(one*one) != 0 || n != 1 && n != 10 && n != 100 {
			return fmt.Errorf("a block of %d × %d, with ones of %d", f.W, f.H, one)
		}
		if n := f.Cells(); n != 1 && n*one*one != f.Area() {
			return fmt.Errorf("a block of %d × %d is ruled in %d", f.W, f.H, n)
		}
	}
	of := func(roles ...scene.Role) *big.Rat {
		return sum(func(f measure.Face) bool { return s.is(f.Paint, roles...) })
	}
	switch s.problem.Kind {
	case arithmetic.Show:
		return agree("the number", of(scene.First), t.Numbers[0])
	case arithmetic.Addition:
		both := func(role scene.Role) *big.Rat {
			return sum(func(f measure.Face) bool { return s.is(f.Paint, role) || s.empty(f.Paint, role) })
		}
		if err := agree("the first, with what was traded", both(scene.First), t.Numbers[0]); err != nil {
			return err
		}
		if err := agree("the second, with what was traded", both(scene.Second), t.Numbers[1]); err != nil {
			return err
		}
		return agree("what is solid", of(scene.First, scene.Second, scene.Moved), t.Value)
	case arithmetic.Claim, arithmetic.Comparison:
		if err := agree("the first", of(scene.First), t.Numbers[0]); err != nil {
			return err
		}
		return agree("the second", of(scene.Second), t.Numbers[1])
	case arithmetic.Subtraction:
		if err := agree("what is left", of(scene.First, scene.Result), t.Value); err != nil {
			return err
		}
		return agree("what is gone", sum(func(f measure.Face) bool { return s.ghost(f.Paint) }), t.Numbers[1])
	}
	return errUnread
}

// readBars reads every row of bars as a length in wholes: a whole is a heavy
// outline, what is shaded on it counts.
func readBars(s sight, t problems.Truth) error {
	const heavy = "5"
	wholeLen := 0
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == heavy {
			if wholeLen != 0 && wholeLen != r.W {
				return fmt.Errorf("wholes of %d and of %d", wholeLen, r.W)
			}
			wholeLen = r.W
		}
	}
	if wholeLen == 0 {
		return fmt.Errorf("no whole is marked")
	}
	// rows are the lengths of one fill, row by row from the top.
	rows := func(role scene.Role) []*big.Rat {
		at := map[int]int{}
		var ys []int
		for _, r := range s.Rects {
			if r.Filled() && s.is(r.Paint, role) {
				if at[r.Y] == 0 {
					ys = append(ys, r.Y)
				}
				at[r.Y] += r.W
			}
		}
		slices.Sort(ys)
		var sums []*big.Rat
		for _, y := range ys {
			sums = append(sums, big.NewRat(int64(at[y]), int64(wholeLen)))
		}
		return sums
	}
	if err := s.tiled(); err != nil {
		return err
	}
	first, second := rows(scene.First), rows(scene.Second)
	each := func(what string, found []*big.Rat, want *big.Rat) error {
		if len(found) == 0 && want.Sign() != 0 {
			return fmt.Errorf("%s is not there", what)
		}
		for _, f := range found {
			if err := agree(what, f, want); err != nil {
				return err
			}
		}
		return nil
	}
	switch s.problem.Kind {
	case arithmetic.Addition:
		if err := each("the sum", rows(scene.Result), t.Value); err != nil {
			return err
		}
		fallthrough
	case arithmetic.Claim, arithmetic.Comparison:
		if err := each("the first", first, t.Numbers[0]); err != nil {
			return err
		}
		if s.problem.Kind != arithmetic.Addition && len(t.Numbers) == 3 {
			if err := each("the third", rows(scene.Result), t.Numbers[2]); err != nil {
				return err
			}
		}
		return each("the second", second, t.Numbers[1])
	case arithmetic.Subtraction:
		if err := each("what is left", append(first, rows(scene.Result)...), t.Value); err != nil {
			return err
		}
		return each("what is gone", second, t.Numbers[1])
	case arithmetic.Ordering:
		if len(first) != len(t.Sorted) {
			return fmt.Errorf("%d bars for %d numbers", len(first), len(t.Sorted))
		}
		for i, want := range t.Sorted {
			if err := agree("the bars from the top", first[i], want); err != nil {
				return err
			}
		}
		return nil
	case arithmetic.Show:
		return each("the number", first, t.Numbers[0])
	case arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming:
		if err := each("the number", first, t.Numbers[0]); err != nil {
			return err
		}
		return each("its other name", rows(scene.Result), t.Numbers[0])
	}
	return errUnread
}

// tiled: in every row the shaded parts lie end to end.
func (s sight) tiled() error {
	rows := map[int][]measure.Box{}
	for _, f := range s.Faces() {
		if f.Filled() && s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			rows[f.Y] = append(rows[f.Y], f.Box)
		}
	}
	for _, row := range rows {
		slices.SortFunc(row, func(a, b measure.Box) int { return a.X - b.X })
		for i := range row[1:] {
			if row[i].Right() != row[i+1].X || row[i].H != row[i+1].H {
				return fmt.Errorf("the parts at %v and %v do not lie end to end", row[i], row[i+1])
			}
		}
	}
	return nil
}
