package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// framed is what lies in ten frames: in each of its cells, row by row, a role, and in
// all the counters of a role.
type framed struct {
	frames []measure.Face
	cells  [][10]scene.Role
	in     map[scene.Role]int64
}

// An empty cell, in place of a role, and one whose counter went or is missing.
const (
	emptyCell = scene.Ink
	ghostCell = scene.Gone
	loneCell  = scene.Note
)

// counted are the roles of a counter that is there.
var counted = []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved}

// frames finds the ten frames and puts every counter in its cell.
func (s sight) frames() (f framed, err error) {
	f.in = map[scene.Role]int64{}
	for _, face := range s.Faces() {
		if s.empty(face.Paint, scene.Guide) && face.Cols() == 5 && face.Rows() == 2 {
			if len(f.frames) > 0 && (face.W != f.frames[0].W || face.H != f.frames[0].H) {
				return f, errors.New("the frames are not of one size")
			}
			f.frames, f.cells = append(f.frames, face), append(f.cells, [10]scene.Role{})
		}
	}
	if len(f.frames) == 0 || f.frames[0].W*2 != f.frames[0].H*5 {
		return f, errors.New("there is no frame of two rows of five squares")
	}
	for _, c := range s.Circles {
		role := emptyCell
		for _, r := range counted {
			if s.is(c.Paint, r) {
				role = r
			}
		}
		switch {
		case role != emptyCell:
		case s.empty(c.Paint, scene.Moved) && c.R == s.Circles[0].R/2:
			continue // the ring in a counter that has just come
		case s.empty(c.Paint, scene.Gone) && c.Dash != "":
			role = ghostCell
		case s.empty(c.Paint, scene.Note) && c.Dash != "":
			role = loneCell
		default:
			return f, errors.New("a disc is neither a counter nor its ghost")
		}
		if c.R != s.Circles[0].R {
			return f, errors.New("the counters are not of one size")
		}
		if err := f.seat(c, role); err != nil {
			return f, err
		}
	}
	return f, f.inOrder()
}

// seat puts a counter in the cell in whose middle it lies.
func (f *framed) seat(c measure.Circle, role scene.Role) error {
	for i, face := range f.frames {
		side := face.W / 5
		if !face.Contains(measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}) {
			continue
		}
		col, row := (c.X-face.X)/side, (c.Y-face.Y)/side
		if face.X+col*side+side/2 != c.X || face.Y+row*side+side/2 != c.Y {
			return errors.New("a counter does not lie in the middle of a cell")
		}
		cell := &f.cells[i][row*5+col]
		if *cell != emptyCell {
			return errors.New("two counters lie in one cell")
		}
		*cell = role
		f.in[role]++
		return nil
	}
	return errors.New("a counter lies in no frame")
}

// inOrder: every row is filled from the left.
func (f framed) inOrder() error {
	for _, cells := range f.cells {
		for i := range cells {
			if i%5 > 0 && cells[i] != emptyCell && cells[i-1] == emptyCell {
				return errors.New("a row has a gap")
			}
		}
	}
	return nil
}

// all is how many counters there are.
func (f framed) all() (n int64) {
	for _, r := range counted {
		n += f.in[r]
	}
	return n
}

// readFrames compares a finished picture with the truth.
func readFrames(s sight, t problems.Truth) error {
	f, err := s.frames()
	if s.problem.Kind == arithmetic.WaysToMake {
		return both(err, s.readWayFrames(f, t, true))
	}
	if err == nil {
		err = both(s.readTallies(f), s.readRings(t))
	}
	if err != nil {
		return err
	}
	n := func(i int) *big.Rat { return t.Numbers[i] }
	is := func(what string, want *big.Rat, roles ...scene.Role) error {
		sum := int64(0)
		for _, r := range roles {
			sum += f.in[r]
		}
		return agree(what, whole(sum), want)
	}
	switch s.problem.Kind {
	case arithmetic.Show:
		return both(s.readTensFoot(n(0)), both(is("the number", n(0), scene.First), agree("all", whole(f.all()), n(0))))
	case arithmetic.Parity:
		lone := whole(n(0).Num().Int64() % 2)
		return both(is("the number", n(0), scene.First), is("what has no partner", lone, loneCell))
	case arithmetic.Subtraction:
		return both(s.readStruck(f), both(is("what is left", t.Value, scene.First, scene.Result), is("what is gone", n(1), ghostCell)))
	case arithmetic.Addition:
		return both(s.readFullFrame(f, t), both(is("the first", n(0), scene.First), is("the second", n(1), scene.Second)))
	case arithmetic.Expression:
		ends := new(big.Rat).Add(n(0), n(2))
		return both(is("the first and the third", ends, scene.First), is("the second", n(1), scene.Second))
	case arithmetic.Missing:
		total := n(1)
		if _, right := s.problem.Right.(arithmetic.Operation); right {
			total = n(0)
		}
		return both(is("the missing number", t.Value, scene.Result), agree("the total", whole(f.all()), total))
	}
	return errUnread
}

// readFullFrame: where two numbers lie in two frames, a full frame was made of the larger,
// and what came over left its places; or there is a double.
func (s sight) readFullFrame(f framed, t problems.Truth) error {
	a, b := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	if f.in[ghostCell] == 0 {
		return nil
	}
	if f.in[ghostCell] != 10-max(a, b) {
		return fmt.Errorf("%d went over from %d to %d", f.in[ghostCell], min(a, b), max(a, b))
	}
	for _, role := range f.cells[0] {
		if !slices.Contains(counted, role) {
			return errors.New("the first frame is not full")
		}
	}
	return nil
}

// stepsOfFrames follows what lies in the frames from step to step.
func stepsOfFrames(steps []sight, t problems.Truth) error {
	before := int64(0)
	for i, s := range steps {
		f, err := s.frames()
		now := f.all()
		if s.problem.Kind == arithmetic.WaysToMake {
			if err = both(err, s.readWayFrames(f, t, i == len(steps)-1)); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
			continue
		}
		if err == nil {
			err = both(s.readTallies(f), s.readRings(t))
		}
		if err == nil {
			switch s.problem.Kind {
			case arithmetic.Subtraction:
				if i > 0 && now+f.in[ghostCell] != before {
					err = fmt.Errorf("%d and %d that are taken away, and before there were %d", now, f.in[ghostCell], before)
				}
				err = both(err, s.readStruck(f))
			case arithmetic.Parity:
				err = agree("the number", whole(now), t.Numbers[0])
			default:
				if now < before {
					err = errors.New("there are fewer counters than before")
				}
			}
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		before = now
	}
	return stepsEnd(steps, t, before)
}

// stepsEnd: the first step has what is given, and the last the answer.
func stepsEnd(steps []sight, t problems.Truth, last int64) error {
	f, err := steps[0].frames()
	if err != nil {
		return err
	}
	first := whole(f.all())
	switch p := steps[0].problem; p.Kind {
	case arithmetic.Subtraction:
		return both(agree("the first number", first, t.Numbers[0]), agree("what is left", whole(last), t.Value))
	case arithmetic.Addition, arithmetic.Expression:
		if !slices.ContainsFunc(t.Numbers, func(n *big.Rat) bool { return n.Cmp(first) == 0 }) {
			return fmt.Errorf("the first step has %s counters", first.RatString())
		}
		return agree("the sum", whole(last), t.Value)
	case arithmetic.Missing, arithmetic.WaysToMake:
		return readFrames(steps[len(steps)-1], t)
	}
	return agree("the number", whole(last), t.Numbers[0])
}
