package golden

import (
	"errors"
	"fmt"
	"math/big"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// equalTruth is what a bar of equal parts must show.
type equalTruth struct{ count, size, total, left int64 }

func equalTruthOf(p arithmetic.Problem, t problems.Truth) (e equalTruth) {
	n := func(v *big.Rat) int64 { return v.Num().Int64() }
	switch {
	case p.Kind == arithmetic.Product:
		e = equalTruth{n(t.Numbers[0]), n(t.Numbers[1]), n(t.Value), 0}
	case p.Kind == arithmetic.PartOf:
		e.count, e.total = p.Left.(arithmetic.Operation).Left.(arithmetic.Number).Value.Den(), n(t.Numbers[1])
		e.size = e.total / e.count
	case p.Grouping:
		e = equalTruth{t.Quotient.Int64(), n(t.Numbers[1]), n(t.Numbers[0]), t.Remainder.Int64()}
	default:
		e = equalTruth{n(t.Numbers[1]), t.Quotient.Int64(), n(t.Numbers[0]), t.Remainder.Int64()}
	}
	return e
}

// readEqualBars: the last row has as many pieces of one length as it says, each of
// the right size, what is left over behind them, and the total over all.
func (s sight) readEqualBars(d diagram, t problems.Truth) error {
	e := equalTruthOf(s.problem, t)
	row := d.rows[len(d.rows)-1]
	pieces := row
	if e.left > 0 {
		pieces = row[:len(row)-1]
		rest := row[len(row)-1]
		if rest.X <= pieces[len(pieces)-1].Right() {
			return errors.New("what is left over does not stand apart")
		}
		if !s.saysLeft(rest, e.left) {
			return fmt.Errorf("%d left over is not said of the last piece", e.left)
		}
		if err := s.ratio(rest.W, e.left, row[0].W, e.size); err != nil {
			return err
		}
	}
	if int64(len(pieces)) != e.count {
		return fmt.Errorf("%d equal parts, not %d", len(pieces), e.count)
	}
	named, names := false, 0
	for i, b := range pieces {
		if b.W != pieces[0].W || i > 0 && b.X != pieces[i-1].Right() {
			return errors.New("the parts are not equal, or not end to end")
		}
		if named = named || b.n > 0; b.n > 0 && b.n != e.size {
			return fmt.Errorf("a part of %d is called %d", e.size, b.n)
		}
		if b.n > 0 {
			names++
		}
	}
	if names > 1 && names < len(pieces) || names == 1 && pieces[0].n == 0 {
		return errors.New("some parts have a number and some have none")
	}
	if n, said := s.counted(); said && n != e.count {
		return fmt.Errorf("%d parts are called %d", e.count, n)
	}
	if len(d.measures) == 0 || d.measures[0].n != e.total || d.measures[0].X != row[0].X || d.measures[0].Right() != row[len(row)-1].Right() {
		return errors.New("the total is not over the whole bar")
	}
	if s.problem.Kind == arithmetic.PartOf {
		return s.readTaken(d, pieces, t)
	}
	if unit := s.problem.Story == arithmetic.TimesAsMany; unit != (len(d.rows) == 2) {
		return fmt.Errorf("%d rows", len(d.rows))
	} else if unit {
		one := d.rows[0][0]
		if one.X != row[0].X || one.W != row[0].W {
			return errors.New("the bar of one part is not as long as a part")
		}
		named = named || one.n == e.size || s.behind(one, e.size)
	}
	return errIf(!named, "no part has its number")
}

// readTaken: the parts that are taken are as many as the fraction asks for, and the
// measure under them says what they come to.
func (s sight) readTaken(d diagram, pieces []stretch, t problems.Truth) error {
	taken := t.Numbers[0].Num().Int64() * int64(len(pieces)) / t.Numbers[0].Denom().Int64()
	marked := int64(0)
	for _, r := range s.Rects {
		if r.H == diagramRow && s.is(r.Paint, scene.Result) {
			marked++
		}
	}
	if err := agree("the parts that are taken", whole(marked), whole(taken)); err != nil {
		return err
	}
	if len(d.measures) != 2 {
		return errors.New("what the parts come to is not measured")
	}
	m := d.measures[1]
	if m.X != pieces[0].X || m.Right() != pieces[taken-1].Right() {
		return errors.New("the measure is not under the parts that are taken")
	}
	return agree("what the parts come to", whole(m.n), t.Value)
}

// saysLeft reports whether a plate led out of a piece says how much is left over.
func (s sight) saysLeft(b stretch, left int64) bool {
	number, words := false, false
	for _, t := range s.Texts {
		number = number || t.Words == arithmetic.Grouped(left) && t.Y > b.Bottom()
		words = words || t.Words == "left over" && t.Y > b.Bottom()
	}
	for _, p := range s.Paths {
		if len(p.Points) == 3 && b.Contains(measure.Box{X: p.Points[0].X, Y: p.Points[0].Y}) {
			return number && words
		}
	}
	return false
}

// behind reports whether a number stands to the right of a bar.
func (s sight) behind(b stretch, n int64) bool {
	for _, t := range s.Texts {
		if t.Words == arithmetic.Grouped(n) && t.X > b.Right() && t.Y > b.Y && t.Y < b.Bottom() {
			return true
		}
	}
	return false
}

// stepsOfDiagram: whatever a step shows already is as long as it says, and the last
// step is the whole story.
func stepsOfDiagram(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		d, err := s.readDiagramParts()
		if err == nil {
			err = s.oneScale(d)
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return readDiagram(steps[len(steps)-1], t)
}

// oneScale: all pieces and measures with a number have one scale.
func (s sight) oneScale(d diagram) error {
	var longest stretch
	var all []stretch
	for _, row := range d.rows {
		all = append(all, row...)
	}
	const apart = 16 // before what is left over, which a measure spans too
	for _, m := range d.measures {
		for _, row := range d.rows {
			for i := range row {
				if i > 0 && row[i].X-row[i-1].Right() == apart && m.X <= row[0].X && m.Right() >= row[i].Right() {
					m.W -= apart
				}
			}
		}
		all = append(all, m)
	}
	for _, b := range all {
		if b.n > longest.n {
			longest = b
		}
	}
	for _, b := range all {
		if b.n == 0 {
			continue
		}
		if err := s.ratio(b.W, b.n, longest.W, longest.n); err != nil {
			return err
		}
	}
	return nil
}
