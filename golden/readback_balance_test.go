package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// scales is a balance as it was measured: its two pans from the left, and how far
// the left end of the beam lies under the right one.
type scales struct {
	sight
	pans [2]measure.Rect
	lean int
	held bool // a prop stands under each pan, and the beam says nothing
}

func (s sight) scales() (scales, error) {
	b := scales{sight: s}
	pans := s.trays()
	if len(pans) != 2 || pans[0].W != pans[1].W {
		return b, fmt.Errorf("%d pans", len(pans))
	}
	b.pans = [2]measure.Rect{pans[0], pans[1]}
	posts := [2]int{pans[0].X + pans[0].W/2, pans[1].X + pans[1].W/2}
	found := false
	for _, p := range s.Paths {
		if len(p.Points) != 2 {
			continue
		}
		q, r := p.Points[0], p.Points[1]
		if q.X > r.X {
			q, r = r, q
		}
		if q.X == posts[0] && r.X == posts[1] {
			b.lean, found = q.Y-r.Y, true
		}
	}
	if !found {
		return b, errors.New("there is no beam from pan to pan")
	}
	for _, c := range s.Circles {
		if c.X*2 != posts[0]+posts[1] {
			return b, errors.New("the beam does not turn in its middle")
		}
	}
	for _, r := range s.Rects {
		below := r.Y > max(pans[0].Bottom(), pans[1].Bottom())
		b.held = b.held || below && r.Dash != ""
	}
	if lean := pans[0].Y - pans[1].Y; lean != b.lean {
		return b, fmt.Errorf("the beam leans by %d and the pans by %d", b.lean, lean)
	}
	return b, nil
}

// on are the areas of the pieces on a pan, by whether they are there or gone, and
// the number of pieces that are there.
func (b scales) on(pan int) (there, gone, count int, err error) {
	p := b.pans[pan]
	for _, r := range b.Rects {
		over := r.X >= p.X && r.Right() <= p.Right() && r.Bottom() <= p.Y
		filled := b.is(r.Paint, scene.First, scene.Second, scene.Result, scene.Moved) && r.Filled()
		switch {
		case over && filled && !b.rests(r, p):
			return 0, 0, 0, fmt.Errorf("the piece at %v hangs in the air", r.Box)
		case over && filled && b.is(r.Paint, [...]scene.Role{scene.Second, scene.First}[pan]):
			return 0, 0, 0, fmt.Errorf("the piece at %v is in the color of the other side", r.Box)
		case over && filled:
			there, count = there+r.Area(), count+1
		case over && b.ghost(r.Paint):
			gone += r.Area()
		}
	}
	return there, gone, count, nil
}

// rests reports whether a piece stands on its pan, or on another piece.
func (b scales) rests(r, pan measure.Rect) bool {
	const air = 6
	if pan.Y-r.Bottom() <= air {
		return true
	}
	return slices.ContainsFunc(b.Rects, func(o measure.Rect) bool {
		return o.X == r.X && o.W == r.W && o.Y > r.Y && o.Y-r.Bottom() <= air
	})
}

// cubes is the area of one where all pieces are equal squares, and not bars.
func (b scales) cubes() int {
	const barHigh = 44
	size := 0
	for _, r := range b.Rects {
		if !b.is(r.Paint, scene.First, scene.Second, scene.Result, scene.Moved) || !r.Filled() {
			continue
		}
		if r.W != r.H || r.H == barHigh || size != 0 && r.Area() != size {
			return 0
		}
		size = r.Area()
	}
	return size
}

// named: what each number of a pan brings stands over it. Ghosts stand there too.
func (b scales) named(pan int) error {
	const between = 12
	p, air := b.pans[pan], 2
	if strings.ContainsAny(b.name(pan), "×−") {
		air = 12 // the sign in the middle of 10 × 4 is not in its middle
	}
	var stacks [][2]int
	for _, r := range b.Rects {
		filled := b.is(r.Paint, scene.First, scene.Second, scene.Result, scene.Moved) && r.Filled()
		if r.X >= p.X && r.Right() <= p.Right() && r.Bottom() <= p.Y && (filled || b.ghost(r.Paint)) {
			stacks = append(stacks, [2]int{r.X, r.Right()})
		}
	}
	slices.SortFunc(stacks, func(q, r [2]int) int { return q[0] - r[0] })
	var joined [][2]int
	for _, st := range stacks {
		if n := len(joined); n > 0 && st[0]-joined[n-1][1] <= between {
			joined[n-1][1] = max(joined[n-1][1], st[1])
			continue
		}
		joined = append(joined, st)
	}
	for _, st := range joined {
		middle := (st[0] + st[1]) / 2
		off := p.W
		for _, t := range b.Texts {
			if t.Y > p.Y && t.Y <= p.Bottom() && t.Words != "+" {
				off = min(off, max(t.X-middle, middle-t.X))
			}
		}
		if off > air {
			return fmt.Errorf("what stands at %d is %d beside every number", middle, off)
		}
	}
	return nil
}

// spaced is an expression with brackets as words of their own.
func spaced(text string) string {
	return strings.NewReplacer("(", "( ", ")", " )").Replace(text)
}

// name is what is written on the front of a pan.
func (b scales) name(pan int) string {
	var list []measure.Word
	for _, line := range b.Lines() {
		for _, w := range line {
			if p := b.pans[pan]; w.X > p.X && w.X < p.Right() && w.Y > p.Y && w.Y <= p.Bottom() {
				list = append(list, w)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b measure.Word) int { return a.X - b.X })
	words := make([]string, len(list))
	for i, w := range list {
		words[i] = w.Text
	}
	return strings.Join(words, " ")
}

// readBalance reads the whole story: what stands on the pans weighs what the sides
// come to, and the beam leans to the heavier one.
func readBalance(s sight, t problems.Truth) error {
	b, err := s.scales()
	if err != nil {
		return err
	}
	if s.problem.Kind == arithmetic.Missing {
		return b.readFound(t)
	}
	if b.held {
		return errors.New("the whole story is told with the beam held")
	}
	return b.readWeighed(t)
}

func (b scales) readWeighed(t problems.Truth) error {
	for i, side := range []arithmetic.Expr{b.problem.Left, b.problem.Right} {
		if name := b.name(i); name != spaced(side.String()) {
			return fmt.Errorf("a pan is called %q and not %q", name, side)
		}
		if err := b.named(i); err != nil {
			return err
		}
	}
	if sign := (big.NewInt(int64(b.lean))).Sign(); sign != t.Order {
		return fmt.Errorf("the beam leans by %d where the order is %d", b.lean, t.Order)
	}
	for _, m := range b.bare() {
		pan := 0
		if m.X > b.pans[1].X {
			pan = 1
		}
		if m.Y >= b.pans[pan].Y {
			continue
		}
		if err := agree("the number over a pan", m.Value, t.Sides[pan]); err != nil {
			return err
		}
	}
	return b.weigh(t.Sides[0], t.Sides[1])
}

// weigh: what stands on the pans is as much as it should be: counted where it is
// cubes, in proportion where it is bars.
func (b scales) weigh(left, right *big.Rat) error {
	var areas [2]int
	for i, want := range []*big.Rat{left, right} {
		there, _, count, err := b.on(i)
		if err != nil {
			return err
		}
		areas[i] = there
		if b.cubes() > 0 {
			if err := agree("the cubes on a pan", whole(int64(count)), want); err != nil {
				return err
			}
		}
	}
	a, c := new(big.Rat).Mul(left, whole(int64(areas[1]))), new(big.Rat).Mul(right, whole(int64(areas[0])))
	if a.Cmp(c) != 0 || left.Sign() > 0 && areas[0] == 0 {
		return fmt.Errorf("areas of %d and %d for %s and %s", areas[0], areas[1], left.RatString(), right.RatString())
	}
	return nil
}

// readFound: the beam is level, what the bag holds is as much as stays on the other
// pan, and as much is gone from one pan as from the other.
func (b scales) readFound(t problems.Truth) error {
	for i, side := range []arithmetic.Expr{b.problem.Left, b.problem.Right} {
		name := strings.ReplaceAll(side.String(), "?", arithmetic.Grouped(t.Value.Num().Int64()))
		if b.name(i) != spaced(name) {
			return fmt.Errorf("a pan is called %q and not %q", b.name(i), name)
		}
		if err := b.named(i); err != nil {
			return err
		}
	}
	return b.readOpened(t, true)
}

// readOpened reads the pans once the bag is open. ghosts says whether what was
// taken can still be seen.
func (b scales) readOpened(t problems.Truth, ghosts bool) error {
	if b.lean != 0 || b.held {
		return errors.New("the beam is not level")
	}
	if err := b.weigh(t.Value, t.Value); err != nil || !ghosts {
		return err
	}
	sides := []arithmetic.Expr{b.problem.Left, b.problem.Right}
	var unit *big.Rat
	for i := range sides {
		there, gone, _, err := b.on(i)
		if err != nil {
			return err
		}
		laid := laidOn(sides[i], t.Value)
		if laid.Sign() == 0 {
			continue
		}
		each := new(big.Rat).Quo(whole(int64(there+gone)), laid)
		if unit != nil && unit.Cmp(each) != 0 {
			return fmt.Errorf("a one is %s on one pan and %s on the other", unit.RatString(), each.RatString())
		}
		unit = each
	}
	if there, _, _, _ := b.on(0); unit != nil {
		return agree("what the bag holds", new(big.Rat).Quo(whole(int64(there)), unit), t.Value)
	}
	return nil
}

// laidOn is how much is put on a pan in all: of a difference, what it begins with.
func laidOn(e arithmetic.Expr, blank *big.Rat) *big.Rat {
	switch e := e.(type) {
	case arithmetic.Number:
		return big.NewRat(e.Value.Num(), e.Value.Den())
	case arithmetic.Unknown:
		return blank
	}
	o := e.(arithmetic.Operation)
	a, b := laidOn(o.Left, blank), laidOn(o.Right, blank)
	switch o.Op {
	case arithmetic.Add:
		return new(big.Rat).Add(a, b)
	case arithmetic.Multiply:
		return new(big.Rat).Mul(a, b)
	}
	return a
}

// stepsOfBalance: pans are loaded one after the other while the beam is held, and
// then it leans to the heavier one; or it is level from the first to the last.
func stepsOfBalance(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		b, err := s.scales()
		last := i == len(steps)-1
		switch {
		case err != nil:
		case s.problem.Kind == arithmetic.Missing && last:
			err = b.readOpened(t, false)
		case s.problem.Kind == arithmetic.Missing && (b.lean != 0 || b.held):
			err = errors.New("the beam is not level")
		case s.problem.Kind == arithmetic.Missing:
			err = b.readClosed(t)
		case last:
			err = b.readWeighed(t)
		case !b.held || b.lean != 0:
			err = errors.New("the beam is not held")
		case i == 0:
			err = b.weigh(t.Sides[0], new(big.Rat))
		default:
			err = b.weigh(t.Sides[0], t.Sides[1])
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return nil
}

// readClosed: while the bag is closed, what stands on the pan without it is as much
// as what stands beside the bag and what the bag holds.
func (b scales) readClosed(t problems.Truth) error {
	sides := []arithmetic.Expr{b.problem.Left, b.problem.Right}
	bag := 0
	if strings.Contains(sides[1].String(), "?") {
		bag = 1
	}
	known, _, count, err := b.on(1 - bag)
	if err != nil {
		return err
	}
	beside, _, also, err := b.on(bag)
	if err != nil {
		return err
	}
	if b.cubes() > 0 {
		return agree("the cubes without the bag", whole(int64(count-also)), t.Value)
	}
	laid := laidOn(sides[bag], new(big.Rat))
	if laid.Sign() == 0 || beside == 0 {
		return nil
	}
	unit := new(big.Rat).Quo(whole(int64(beside)), laid)
	return agree("what stands there without the bag", new(big.Rat).Quo(whole(int64(known-beside)), unit), t.Value)
}
