package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strconv"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// chain is a piece of a train: so many cubes of one role, or the ghost of them.
type chain struct {
	measure.Rect
	role scene.Role
	n    int64
}

// linked is a picture of trains: its pieces row by row from the left, the side of a
// cube, and how many cubes there are of a role.
type linked struct {
	side int
	rows [][]chain
	in   map[scene.Role]int64
}

// cubes measures the trains. All cubes are squares of one size.
func (s sight) cubes() (l linked, err error) {
	l.in = map[scene.Role]int64{}
	var list []chain
	for _, f := range s.Faces() {
		for _, role := range counted {
			if s.is(f.Paint, role) {
				list = append(list, chain{f.Rect, role, int64(f.Cols())})
				if l.side == 0 {
					l.side = f.H
				}
				if f.Rows() != 1 || f.H != l.side || f.W != f.Cols()*l.side {
					return l, fmt.Errorf("a train of %d by %d units is cut in %d by %d", f.W, f.H, f.Cols(), f.Rows())
				}
			}
		}
	}
	for _, f := range s.Faces() {
		if s.ghost(f.Paint) && f.Dash != "" {
			if l.side == 0 {
				l.side = f.H
			}
			list = append(list, chain{f.Rect, ghostCell, int64(f.W / l.side)})
			if f.H != l.side || f.W%l.side != 0 {
				return l, errors.New("a ghost is no whole number of cubes")
			}
		}
	}
	slices.SortFunc(list, func(a, b chain) int {
		if a.Y != b.Y {
			return a.Y - b.Y
		}
		return a.X - b.X
	})
	for i, c := range list {
		if i == 0 || c.Y != list[i-1].Y {
			l.rows = append(l.rows, nil)
		}
		last := len(l.rows) - 1
		l.rows[last] = append(l.rows[last], c)
		l.in[c.role] += c.n
	}
	return l, nil
}

func (l linked) all() (n int64) {
	for _, role := range counted {
		n += l.in[role]
	}
	return n
}

// trains joins the pieces that touch: where each train begins, and how many cubes it
// has with those that are taken off it.
func (l linked) trains() (list []chain) {
	for _, row := range l.rows {
		for i, c := range row {
			if i > 0 && row[i-1].Right() == c.X {
				list[len(list)-1].n += c.n
				list[len(list)-1].W += c.W
				continue
			}
			list = append(list, c)
		}
	}
	return list
}

// inTens: all trains of a column are of ten but the last, and they begin under each
// other.
func (l linked) inTens() error {
	columns := map[int][]chain{}
	for _, t := range l.trains() {
		columns[t.X] = append(columns[t.X], t)
	}
	if len(columns) > 2 {
		return errors.New("the trains do not begin under each other")
	}
	for _, list := range columns {
		for i, t := range list {
			if t.n != 10 && (i < len(list)-1 || t.n > 10) {
				return fmt.Errorf("a train has %d cubes", t.n)
			}
		}
	}
	return nil
}

// besideTrain are the words at the right of a train, on its height.
func (s sight) besideTrain(t chain) string {
	for _, text := range s.Texts {
		if text.Anchor == "start" && text.Y > t.Y && text.Y < t.Bottom()+4 && text.X > t.Right() && text.X < t.Right()+60 {
			return text.Words
		}
	}
	return ""
}

// readTrainNames: what stands beside a train is how many cubes there are as far as
// that train, or how many were taken off it.
func (s sight) readTrainNames(l linked) error {
	sum, named := int64(0), 0
	for _, row := range l.rows {
		last, gone := row[len(row)-1], int64(0)
		for _, c := range row {
			if c.role == ghostCell {
				gone += c.n
			} else {
				sum += c.n
			}
		}
		words := s.besideTrain(last)
		if words == "" {
			continue
		}
		named++
		want := strconv.FormatInt(sum, 10)
		if gone > 0 {
			want = "− " + strconv.FormatInt(gone, 10)
		}
		if words != want {
			return fmt.Errorf("%q stands beside a train, not %q", words, want)
		}
	}
	return nil
}

// readColumnNames: what stands under a column is how many cubes lie in it.
func (s sight) readColumnNames(l linked) error {
	foot, sums := 0, map[int]int64{}
	for _, t := range l.trains() {
		foot = max(foot, t.Bottom())
	}
	for _, row := range l.rows {
		for _, c := range row {
			if c.role != ghostCell {
				column := 0
				if c.X >= s.W/2 {
					column = 1
				}
				sums[column] += c.n
			}
		}
	}
	for _, t := range s.Texts {
		n, err := strconv.ParseInt(t.Words, 10, 64)
		if err != nil || t.Y < foot || t.Y > foot+70 || t.Size >= scene.Large {
			continue
		}
		column := 0
		if t.X > s.W/2 {
			column = 1
		}
		if sums[column] != n {
			return fmt.Errorf("%d stands under %d cubes", n, sums[column])
		}
	}
	return nil
}

// readCubes compares a finished picture with the truth.
func readCubes(s sight, t problems.Truth) error {
	l, err := s.cubes()
	if err != nil {
		return err
	}
	n := func(i int) *big.Rat { return t.Numbers[i] }
	is := func(what string, want *big.Rat, roles ...scene.Role) error {
		sum := int64(0)
		for _, r := range roles {
			sum += l.in[r]
		}
		return agree(what, whole(sum), want)
	}
	two := func() error {
		return both(is("the first", n(0), scene.First), is("the second", n(1), scene.Second))
	}
	switch p := s.problem; {
	case p.Kind == arithmetic.Show:
		return both(both(l.inTens(), s.readTrainNames(l)), both(s.readTensFoot(n(0)), is("the number", n(0), scene.First)))
	case p.Kind == arithmetic.Addition:
		return both(both(l.inTens(), both(s.readColumnNames(l), s.readSnapped(l))), two())
	case p.Kind == arithmetic.Subtraction && p.Story == arithmetic.NoStory:
		err := both(is("what is left", t.Value, scene.First, scene.Result), is("what is gone", n(1), ghostCell))
		return both(both(both(l.inTens(), s.readStrokes(l)), s.readTrainNames(l)), err)
	case p.Kind == arithmetic.Parity:
		return both(s.readTwoRows(l), is("the number", n(0), scene.First))
	case p.Kind == arithmetic.Product:
		for _, train := range l.trains() {
			if err := agree("a train", whole(train.n), n(1)); err != nil {
				return err
			}
		}
		return both(s.readTrainNames(l), agree("the trains", whole(int64(len(l.trains()))), n(0)))
	}
	return both(s.readMatch(l, true), two())
}

// stepsOfCubes follows the cubes from step to step.
func stepsOfCubes(steps []sight, t problems.Truth) error {
	before := int64(0)
	for i, s := range steps {
		l, err := s.cubes()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		now := l.all()
		switch p := s.problem; {
		case p.Kind == arithmetic.Subtraction && p.Story == arithmetic.NoStory:
			if i > 0 && now+l.in[ghostCell] != before {
				err = fmt.Errorf("%d and %d that are taken away, and before there were %d", now, l.in[ghostCell], before)
			}
			err = both(err, both(s.readStrokes(l), s.readTrainNames(l)))
		case p.Kind == arithmetic.Parity:
			err = agree("the number", whole(now), t.Numbers[0])
		case p.Kind == arithmetic.Addition:
			err = both(l.inTens(), s.readColumnNames(l))
		case p.Kind == arithmetic.Show, p.Kind == arithmetic.Product:
			err = s.readTrainNames(l)
		case now > 0:
			err = s.readMatch(l, false)
		}
		if err == nil && now < before && s.problem.Kind != arithmetic.Subtraction {
			err = errors.New("there are fewer cubes than before")
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		before = now
	}
	last := steps[len(steps)-1]
	switch p := last.problem; {
	case p.Kind == arithmetic.Addition, p.Kind == arithmetic.Product, p.Kind == arithmetic.Subtraction && p.Story == arithmetic.NoStory:
		return agree("the answer", whole(before), t.Value)
	}
	return readCubes(last, t)
}
