package golden

import (
	"errors"
	"fmt"
	"math"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// finest is how many parts of a disc there are at most.
const finest = 24

// disc is a heavy outline and what is shaded on it, by role; Gone are the ghosts.
type disc struct {
	measure.Circle
	has map[scene.Role]*big.Rat
}

// cluster is discs that stand close together: one amount.
type cluster []disc

func (c cluster) sum(roles ...scene.Role) *big.Rat {
	sum := new(big.Rat)
	for _, d := range c {
		for _, role := range roles {
			if v := d.has[role]; v != nil {
				sum.Add(sum, v)
			}
		}
	}
	return sum
}

var shadings = []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved, scene.Gone}

// roleOf is whose a shape is: by its fill, or as a ghost.
func (s sight) roleOf(p measure.Paint) (scene.Role, bool) {
	if p.Dash != "" && s.ghost(p) {
		return scene.Gone, true
	}
	for _, role := range shadings[:4] {
		if p.Filled() && s.is(p, role) {
			return role, true
		}
	}
	return 0, false
}

// clusters are the discs of a picture in rows, from the top and from the left. All
// are of one size, and on each the parts are equal and lie side by side.
func (s sight) clusters() ([]cluster, error) {
	var discs []disc
	for _, c := range s.Circles {
		if !c.Filled() && c.Width == "5" && c.Stroke == s.paint[scene.Ink][2] {
			d := disc{c, map[scene.Role]*big.Rat{}}
			if err := s.shade(&d); err != nil {
				return nil, err
			}
			discs = append(discs, d)
		}
	}
	if len(discs) == 0 {
		return nil, errors.New("no whole is marked")
	}
	slices.SortFunc(discs, func(a, b disc) int {
		if a.Y != b.Y {
			return a.Y - b.Y
		}
		return a.X - b.X
	})
	var list []cluster
	for i, d := range discs {
		if d.R != discs[0].R {
			return nil, fmt.Errorf("wholes with the radius %d and %d", discs[0].R, d.R)
		}
		const near = 30 // between the discs of one amount
		if i > 0 && d.Y == discs[i-1].Y && d.X-discs[i-1].X < 2*d.R+near {
			list[len(list)-1] = append(list[len(list)-1], d)
			continue
		}
		list = append(list, cluster{d})
	}
	return list, s.onDiscs(discs)
}

// shade finds what is shaded on a disc.
func (s sight) shade(d *disc) error {
	add := func(role scene.Role, v *big.Rat) {
		if d.has[role] == nil {
			d.has[role] = new(big.Rat)
		}
		d.has[role].Add(d.has[role], v)
	}
	for _, c := range s.Circles {
		if role, is := s.roleOf(c.Paint); is && c.X == d.X && c.Y == d.Y && c.R == d.R {
			add(role, whole(1))
		}
	}
	size := 0
	covered := map[int]bool{}
	for _, w := range s.Wedges {
		if w.X != d.X || w.Y != d.Y || w.R != d.R || w.Width == "5" {
			continue
		}
		from, count, parts, ok := w.Parts(finest)
		switch {
		case !ok || parts%count != 0:
			return fmt.Errorf("a wedge from %v to %v is not one of equal parts", w.From, w.To)
		case size == 0:
			size = parts / count
		case parts/count != size:
			return fmt.Errorf("a disc has parts of which %d make a whole and others of which %d do", size, parts/count)
		}
		at, role, is := from/count, scene.Role(0), false
		if role, is = s.roleOf(w.Paint); is {
			add(role, big.NewRat(1, int64(size)))
		} else if w.Filled() || !s.empty(w.Paint, scene.Guide) {
			return errors.New("a wedge is neither shaded nor empty")
		}
		if from%count != 0 || covered[at] {
			return fmt.Errorf("two parts lie at cut %d of %d", at, size)
		}
		covered[at] = true
	}
	if len(covered) != size {
		return fmt.Errorf("a disc has %d parts of which %d make a whole", len(covered), size)
	}
	return nil
}

// onDiscs: everything shaded lies on a disc.
func (s sight) onDiscs(discs []disc) error {
	on := func(x, y, r int) bool {
		return slices.ContainsFunc(discs, func(d disc) bool { return d.X == x && d.Y == y && d.R == r })
	}
	for _, w := range s.Wedges {
		if !on(w.X, w.Y, w.R) {
			return errors.New("a wedge lies on no disc")
		}
	}
	for _, c := range s.Circles {
		if _, is := s.roleOf(c.Paint); is && !on(c.X, c.Y, c.R) {
			return errors.New("a whole lies on no disc")
		}
	}
	return nil
}

// readDiscs reads every amount of a picture in wholes.
func readDiscs(s sight, t problems.Truth) error {
	list, err := s.clusters()
	if err != nil {
		return err
	}
	if err := both(s.readDiscSigns(list, t), both(s.readFractionNames(t), s.underDiscs(list))); err != nil {
		return err
	}
	check := func(what string, nth int, want *big.Rat, roles ...scene.Role) error {
		if nth >= len(list) {
			return fmt.Errorf("%s is not there", what)
		}
		if all := list[nth].sum(shadings...); all.Cmp(list[nth].sum(roles...)) != 0 {
			return fmt.Errorf("%s has parts of something else on it", what)
		}
		return agree(what, list[nth].sum(roles...), want)
	}
	amounts := 2
	switch s.problem.Kind {
	case arithmetic.Show, arithmetic.ShapePart:
		err, amounts = check("the number", 0, t.Numbers[0], scene.First), 1
	case arithmetic.Claim, arithmetic.Comparison:
		err = both(check("the first", 0, t.Numbers[0], scene.First), check("the second", 1, t.Numbers[1], scene.Second))
		err = both(err, s.readLack(list, t))
	case arithmetic.Addition:
		amounts = 3
		err = both(check("the first", 0, t.Numbers[0], scene.First), check("the second", 1, t.Numbers[1], scene.Second))
		err = both(err, check("the sum", 2, t.Value, scene.Result))
	case arithmetic.Subtraction:
		amounts = 3
		err = both(check("the first", 0, t.Numbers[0], scene.First, scene.Gone), check("the second", 1, t.Numbers[1], scene.Second))
		err = both(err, agree("what is crossed out", list[0].sum(scene.Gone), t.Numbers[1]))
		if err == nil {
			err = check("what is left", 2, t.Value, scene.Result)
		}
	default:
		err = both(check("the number", 0, t.Numbers[0], scene.First), check("its other name", 1, t.Numbers[0], scene.Result))
	}
	if err == nil && len(list) != amounts {
		err = fmt.Errorf("%d amounts on discs, want %d", len(list), amounts)
	}
	return err
}

// underDiscs: the number that stands under the discs of an amount is that amount.
func (s sight) underDiscs(list []cluster) error {
	for _, c := range list {
		first, last := c[0], c[len(c)-1]
		sum := c.sum(shadings...)
		for _, line := range s.Lines() {
			for _, w := range line {
				v, ok := w.Value()
				below := w.Y - (first.Y + first.R)
				const row = 80
				if !ok || w.Size != scene.Middle || below < 0 || below > row || w.X < first.X-first.R || w.X > last.X+last.R {
					continue
				}
				if err := agree("the number under the discs", v, sum); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

// readDiscSigns: between the discs stand the signs of the problem.
func (s sight) readDiscSigns(list []cluster, t problems.Truth) error {
	want := map[arithmetic.Kind]string{arithmetic.Show: "", arithmetic.ShapePart: "", arithmetic.Addition: "+ =", arithmetic.Subtraction: "− ="}
	signs, known := want[s.problem.Kind]
	if !known {
		signs = "="
		if k := s.problem.Kind; k == arithmetic.Claim || k == arithmetic.Comparison {
			signs = [...]string{"<", "=", ">"}[t.Order+1]
		}
	}
	var found []string
	for _, line := range s.Lines() {
		for _, w := range line {
			middle := w.Y - w.Size*36/100
			if w.Size == scene.Large && slices.ContainsFunc(list, func(c cluster) bool { return max(c[0].Y-middle, middle-c[0].Y) < 4 }) {
				found = append(found, w.Text)
			}
		}
	}
	if got := strings.Join(found, " "); got != signs {
		return fmt.Errorf("%q stands between the discs, not %q", got, signs)
	}
	return nil
}

// readLack: the heavy outline on the discs of the smaller number begins where that
// ends and is as much as the two differ.
func (s sight) readLack(list []cluster, t problems.Truth) error {
	gap := new(big.Rat).Sub(t.Sides[0], t.Sides[1])
	less := 0
	if gap.Sign() > 0 {
		less = 1
	}
	have, _ := t.Sides[less].Float64()
	want, _ := gap.Abs(gap).Float64()
	from, size := math.Inf(1), 0.0
	mine := func(p measure.Paint) bool {
		return !p.Filled() && p.Width == "5" && p.Stroke == s.paint[scene.Result][2]
	}
	for i, c := range list {
		for k, d := range c {
			for _, w := range s.Wedges {
				if mine(w.Paint) && w.X == d.X && w.Y == d.Y {
					a, b := w.Turn()
					if from, size = math.Min(from, a+float64(k)), size+b; i != less {
						return errors.New("what is missing is outlined on the larger number")
					}
				}
			}
			for _, o := range s.Circles {
				if mine(o.Paint) && o.X == d.X && o.Y == d.Y {
					from, size = math.Min(from, float64(k)), size+1
				}
			}
		}
	}
	const off = 0.002 // of a turn
	if math.Abs(size-want) > off || want > 0 && math.Abs(from-have) > off {
		return fmt.Errorf("%.3f of a whole is outlined from %.3f on, not %.3f from %.3f on", size, from, want, have)
	}
	return nil
}

// stepsOfDiscs: in every step each amount is one of the numbers, the answer, or
// nothing yet, and the number under it is right.
func stepsOfDiscs(steps []sight, t problems.Truth) error {
	amounts := append(slices.Clone(t.Numbers), new(big.Rat))
	if t.Value != nil {
		amounts = append(amounts, t.Value)
	}
	before := 0
	for i, s := range steps {
		list, err := s.clusters()
		if err == nil && len(list) < before {
			err = errors.New("an amount is gone")
		}
		for _, c := range list {
			sum := c.sum(shadings...)
			if err == nil && !slices.ContainsFunc(amounts, func(v *big.Rat) bool { return v.Cmp(sum) == 0 }) {
				err = fmt.Errorf("%s lies on some discs", sum.RatString())
			}
		}
		if err == nil {
			err = both(s.underDiscs(list), s.readFractionNames(t))
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		before = len(list)
	}
	return nil
}
