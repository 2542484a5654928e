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

// wallRow is a row of a wall: a whole cut in equal parts, of which some are shaded
// from its left edge on.
type wallRow struct {
	measure.Box
	parts  int64
	shaded int64
	role   scene.Role // of what is shaded
}

// name is the row's shaded parts as a fraction is written.
func (r wallRow) name() string {
	return strconv.FormatInt(r.shaded, 10) + "/" + strconv.FormatInt(r.parts, 10)
}

// wallRows are the rows of a wall from the top. They are of one size, begin at one
// edge, touch each other and are cut in more and more equal parts.
func (s sight) wallRows() ([]wallRow, error) {
	var rows []wallRow
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == "5" && !slices.ContainsFunc(rows, func(w wallRow) bool { return w.Box == r.Box }) {
			rows = append(rows, wallRow{Box: r.Box})
		}
	}
	if len(rows) == 0 {
		return nil, errors.New("no whole is marked")
	}
	slices.SortFunc(rows, func(a, b wallRow) int { return a.Y - b.Y })
	for i := range rows {
		r := &rows[i]
		if first := rows[0]; r.X != first.X || r.W != first.W || r.H != first.H || r.Y != first.Y+i*first.H {
			return nil, fmt.Errorf("the row at %v does not stand under the row at %v", r.Box, first.Box)
		}
		for _, f := range s.Faces() {
			if f.Box == r.Box && f.Width != "5" && !f.Filled() && f.Dash == "" {
				r.parts = int64(f.Cols())
			}
		}
		if r.parts == 0 || i > 0 && r.parts <= rows[i-1].parts {
			return nil, fmt.Errorf("row %d has %d equal parts", i+1, r.parts)
		}
		if err := s.shadeRow(r); err != nil {
			return nil, err
		}
	}
	return rows, nil
}

// shadeRow counts what is shaded in a row.
func (s sight) shadeRow(r *wallRow) error {
	var parts []measure.Face
	for _, f := range s.pieces() {
		if r.Contains(f.Box) {
			parts = append(parts, f)
		}
	}
	slices.SortFunc(parts, func(a, b measure.Face) int { return a.X - b.X })
	for i, f := range parts {
		wide := r.W / int(r.parts)
		if r.W%int(r.parts) != 0 || f.W != wide || f.H != r.H || f.X != r.X+i*wide {
			return fmt.Errorf("a shaded part at %v in a row of %d parts at %v", f.Box, r.parts, r.Box)
		}
		role, known := s.roleOf(f.Paint)
		if !known || i > 0 && role != r.role {
			return errors.New("a row is shaded in two ways")
		}
		r.role = role
	}
	r.shaded = int64(len(parts))
	return nil
}

// readWall reads the whole story of a wall.
func readWall(s sight, t problems.Truth) error {
	rows, err := s.wallRows()
	if err != nil {
		return err
	}
	v := t.Numbers[0]
	if err := both(s.readEndLine(rows, v), both(s.besideRows(rows), s.readFractionNames(t))); err != nil {
		return err
	}
	given := s.problem.Left.String()
	var lit []string
	for _, r := range rows {
		if r.shaded == 0 {
			continue
		}
		if err := agree("a row of the wall", big.NewRat(r.shaded, r.parts), v); err != nil {
			return err
		}
		if (r.name() == given) != (r.role == scene.First) {
			return fmt.Errorf("%s is shaded as the wrong number", r.name())
		}
		lit = append(lit, r.name())
	}
	want, err := wallNames(s.problem, t, given)
	if err == nil && !slices.Equal(lit, want) {
		err = fmt.Errorf("the rows that are lit are %v, not %v", lit, want)
	}
	return err
}

// wallNames are the names that are to be lit, fewest parts first.
func wallNames(p arithmetic.Problem, t problems.Truth, given string) ([]string, error) {
	if p.Kind == arithmetic.EqualNames {
		return t.Names, nil
	}
	v := t.Numbers[0]
	other := v.RatString()
	if p.Kind == arithmetic.Renaming {
		fill := problems.Blank(p)
		if fill == nil {
			return nil, errors.New("the blank cannot be filled")
		}
		num, den := fill.String(), strconv.FormatInt(p.Blank.Den, 10)
		if p.Blank.Num > 0 {
			num, den = strconv.FormatInt(p.Blank.Num, 10), fill.String()
		}
		other = num + "/" + den
	}
	den := func(name string) int {
		var a, b int
		fmt.Sscanf(name, "%d/%d", &a, &b)
		return b
	}
	names := []string{given, other}
	slices.SortFunc(names, func(a, b string) int { return den(a) - den(b) })
	return names, nil
}

// readEndLine: one heavy line goes upright through all rows, right where the number
// ends.
func (s sight) readEndLine(rows []wallRow, v *big.Rat) error {
	first, last := rows[0], rows[len(rows)-1]
	end := new(big.Rat).Mul(v, big.NewRat(int64(first.W), 1))
	end.Add(end, big.NewRat(int64(first.X), 1))
	found := 0
	for _, p := range s.Paths {
		// In the step in which it comes it is drawn as what has just moved.
		if p.Stroke != s.paint[scene.First][2] && p.Stroke != s.paint[scene.Moved][2] || len(p.Points) != 2 || p.Points[0].X != p.Points[1].X {
			continue
		}
		b := p.Box()
		if err := agree("the line", big.NewRat(int64(b.X), 1), end); err != nil {
			return err
		}
		if b.Y >= first.Y || b.Bottom() <= last.Bottom() {
			return fmt.Errorf("the line reaches from %d to %d", b.Y, b.Bottom())
		}
		found++
	}
	if found != 1 {
		return fmt.Errorf("%d lines", found)
	}
	return nil
}

// besideRows: the fraction at the left of a row is what is shaded in it, and the one
// inside is one of its parts.
func (s sight) besideRows(rows []wallRow) error {
	for _, line := range s.Lines() {
		for _, w := range line {
			for _, r := range rows {
				middle := w.Y - w.Size*36/100
				part := "1/" + strconv.FormatInt(r.parts, 10)
				if r.parts == 1 {
					part = "1"
				}
				switch {
				case middle <= r.Y || middle >= r.Bottom():
				case w.Left > r.X && w.Text != part:
					return fmt.Errorf("%s stands in a row of %s", w.Text, part)
				case w.Right < r.X && r.shaded > 0 && w.Text != r.name():
					return fmt.Errorf("%s stands beside %s", w.Text, r.name())
				}
			}
		}
	}
	return nil
}

// stepsOfWall: nothing is shaded on the new wall; then one row after the other is,
// each as long as the number.
func stepsOfWall(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		rows, err := s.wallRows()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		lit := 0
		for _, r := range rows {
			if r.shaded == 0 {
				continue
			}
			lit++
			if err := agree(fmt.Sprintf("step %d: a row", i+1), big.NewRat(r.shaded, r.parts), t.Numbers[0]); err != nil {
				return err
			}
		}
		want := i
		if last := i == len(steps)-1; last && s.problem.Kind == arithmetic.EqualNames {
			want = i - 1 // all are read
		}
		if lit != want {
			return fmt.Errorf("step %d: %d rows are lit, not %d", i+1, lit, want)
		}
		if i > 0 {
			if err := both(s.readEndLine(rows, t.Numbers[0]), s.besideRows(rows)); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
	}
	return nil
}
