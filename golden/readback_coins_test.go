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

// pieceOfMoney is a disc or a slip with what stands on it.
type pieceOfMoney struct {
	measure.Box
	measure.Paint
	worth *big.Rat
}

// price is the amount that a text says: 25¢, $3.30.
func price(words string) (*big.Rat, bool) {
	if cents, ok := strings.CutSuffix(words, "¢"); ok {
		v, ok := new(big.Rat).SetString(cents)
		if !ok {
			return nil, false
		}
		return v.Quo(v, big.NewRat(100, 1)), true
	}
	if dollars, ok := strings.CutPrefix(words, "$"); ok {
		return new(big.Rat).SetString(dollars)
	}
	return nil, false
}

// inReading sorts things on the paper as they are read.
func inReading[T any](list []T, at func(T) (x, y int)) {
	slices.SortStableFunc(list, func(a, b T) int {
		ax, ay := at(a)
		bx, by := at(b)
		if off := ay - by; max(off, -off) > 20 {
			return off
		}
		return ax - bx
	})
}

// money are the coins and bills of a picture, and the amounts that stand beside
// them. All discs are of one size, all slips too, and each has its worth on it.
func (s sight) money() (pieces []pieceOfMoney, labels []measure.Text, err error) {
	for _, c := range s.Circles {
		pieces = append(pieces, pieceOfMoney{Box: measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}, Paint: c.Paint})
	}
	discs := len(pieces)
	for _, p := range s.Paths {
		if p.Filled() && len(p.Points) == 8 {
			pieces = append(pieces, pieceOfMoney{Box: p.Box(), Paint: p.Paint})
		}
	}
	for i, p := range pieces {
		if like := pieces[min(i/max(discs, 1), 1)*discs]; i < discs && p.W != pieces[0].W || i >= discs && (p.W != pieces[discs].W || p.H != pieces[discs].H) {
			return nil, nil, fmt.Errorf("a piece of %d × %d beside one of %d × %d", p.W, p.H, like.W, like.H)
		}
	}
	for _, text := range s.Texts {
		worth, ok := price(text.Words)
		if !ok {
			continue
		}
		at := slices.IndexFunc(pieces, func(p pieceOfMoney) bool {
			return p.X < text.X && text.X < p.Right() && p.Y < text.Y && text.Y < p.Bottom()
		})
		switch {
		case at >= 0 && pieces[at].worth != nil:
			return nil, nil, fmt.Errorf("two amounts stand on one piece")
		case at >= 0:
			pieces[at].worth = worth
			if round := at < discs; round != (worth.Cmp(whole(1)) < 0) {
				return nil, nil, fmt.Errorf("%s has the shape of another", text.Words)
			}
		case !text.Bold:
			labels = append(labels, text)
		}
	}
	if slices.ContainsFunc(pieces, func(p pieceOfMoney) bool { return p.worth == nil }) {
		return nil, nil, errors.New("a piece has no worth on it")
	}
	inReading(pieces, func(p pieceOfMoney) (x, y int) { return p.X, p.Y + p.H/2 })
	inReading(labels, func(t measure.Text) (x, y int) { return t.X, t.Y })
	return pieces, labels, coinRows(pieces)
}

// air is what lies between two pieces that are counted together; between others lies
// more.
const air = 10

// beside reports whether one piece stands beside another and is counted with it.
func (p pieceOfMoney) beside(q pieceOfMoney) bool {
	return q.Y+q.H/2 == p.Y+p.H/2 && q.X-p.Right() == air
}

// coinRows: pieces on a height stand exactly on it, close or well apart.
func coinRows(pieces []pieceOfMoney) error {
	for i := range max(0, len(pieces)-1) {
		p, q := pieces[i], pieces[i+1]
		off := q.Y + q.H/2 - p.Y - p.H/2
		if off > 60 {
			continue
		}
		if gap := q.X - p.Right(); off != 0 || gap != air && gap < 2*air {
			return fmt.Errorf("the pieces at %v and %v stand in no row", p.Box, q.Box)
		}
	}
	return nil
}

// centred: pieces under which nothing stands are in the middle of the paper, row by
// row.
func (s sight) centred(pieces []pieceOfMoney) error {
	for from := 0; from < len(pieces); {
		to := from
		for to < len(pieces) && pieces[to].Y+pieces[to].H/2 == pieces[from].Y+pieces[from].H/2 {
			to++
		}
		if off := pieces[from].X + pieces[to-1].Right() - s.W; max(off, -off) > 1 {
			return fmt.Errorf("the row from %v is not in the middle", pieces[from].Box)
		}
		from = to
	}
	return nil
}

// worth adds up the pieces in one of the roles.
func (s sight) worth(pieces []pieceOfMoney, roles ...scene.Role) *big.Rat {
	sum := new(big.Rat)
	for _, p := range pieces {
		if s.is(p.Paint, roles...) {
			sum.Add(sum, p.worth)
		}
	}
	return sum
}

// readTotals: the amounts that stand under pieces are met while those are counted
// from an amount on. Of coins that are only sorted, each amount is that of its own.
func readTotals(pieces []pieceOfMoney, labels []measure.Text, from *big.Rat, own bool) error {
	sum, at := new(big.Rat).Set(from), 0
	reached := new(big.Rat).Set(from)
	for _, label := range labels {
		v, _ := price(label.Words)
		if own {
			v = reached.Add(reached, v)
		}
		for sum.Cmp(v) < 0 && at < len(pieces) {
			sum.Add(sum, pieces[at].worth)
			at++
		}
		if sum.Cmp(v) != 0 {
			return fmt.Errorf("%s stands where the pieces come to %s", label.Words, sum.RatString())
		}
		if at > 0 {
			left := at - 1
			for left > 0 && pieces[left-1].beside(pieces[left]) {
				left--
			}
			if off := pieces[left].X + pieces[at-1].Right() - 2*label.X; max(off, -off) > 2 {
				return fmt.Errorf("%s does not stand under the middle of its pieces", label.Words)
			}
		}
		if p := pieces[max(0, at-1)]; at == 0 || label.Y < p.Bottom() || label.Y > p.Bottom()+60 || own && at < len(pieces) && pieces[at].worth.Cmp(p.worth) == 0 {
			return fmt.Errorf("%s does not stand under the pieces that come to it", label.Words)
		}
	}
	return nil
}

// readCoins counts the whole story.
func readCoins(s sight, t problems.Truth) error {
	pieces, labels, err := s.money()
	if err != nil {
		return err
	}
	first, rest := s.worth(pieces, scene.First), s.worth(pieces, scene.Result, scene.Moved)
	switch s.problem.Kind {
	case arithmetic.Coins:
		if len(pieces) != t.Fewest {
			return fmt.Errorf("%d pieces, where %d are enough", len(pieces), t.Fewest)
		}
		return both(agree("what lies there", rest, t.Value), s.readLabels(pieces, labels, t))
	case arithmetic.CoinsWorth:
		return both(s.readPurse(pieces, t), s.readLabels(pieces, labels, t))
	case arithmetic.Addition:
		if err := both(agree("the first", first, t.Numbers[0]), agree("the second", s.worth(pieces, scene.Second), t.Numbers[1])); err != nil {
			return err
		}
		return s.readLabels(pieces, labels, t)
	}
	if err := both(agree("what there is", first, t.Numbers[0]), agree("what was laid", rest, t.Value)); err != nil {
		return err
	}
	return s.readLabels(pieces, labels, t)
}

// readPurse: the coins are those of the problem.
func (s sight) readPurse(pieces []pieceOfMoney, t problems.Truth) error {
	left := slices.Clone(t.Numbers)
	for _, p := range pieces {
		at := slices.IndexFunc(left, func(v *big.Rat) bool { return v.Cmp(p.worth) == 0 })
		if at < 0 || !s.is(p.Paint, scene.First, scene.Moved) {
			return fmt.Errorf("a piece of %s too many, or in another color", p.worth.RatString())
		}
		left = slices.Delete(left, at, at+1)
	}
	if len(left) > 0 {
		return fmt.Errorf("a piece of %s is missing", left[0].RatString())
	}
	return nil
}

// readLabels: every amount beside the pieces is so.
func (s sight) readLabels(pieces []pieceOfMoney, labels []measure.Text, t problems.Truth) error {
	heads := 0
	switch s.problem.Kind {
	case arithmetic.Coins:
		return readTotals(pieces, labels, whole(0), true)
	case arithmetic.CoinsWorth:
		return readTotals(pieces, labels, whole(0), false)
	case arithmetic.Addition:
		heads = 2
	case arithmetic.Subtraction:
		heads = 2 // what there is, and the tag
	}
	var others []measure.Text
	for _, label := range labels {
		if v, _ := price(label.Words); heads > 0 && v.Cmp(t.Numbers[2-heads]) == 0 {
			heads--
			continue
		}
		others = append(others, label)
	}
	if heads == 2 {
		return errors.New("the first amount does not stand there")
	}
	own := slices.DeleteFunc(slices.Clone(pieces), func(p pieceOfMoney) bool { return !s.is(p.Paint, scene.First) })
	if err := s.centred(own); err != nil {
		return err
	}
	if s.problem.Kind == arithmetic.Addition {
		return readTotals(slices.DeleteFunc(slices.Clone(pieces), func(p pieceOfMoney) bool { return s.is(p.Paint, scene.First) }), others, t.Numbers[0], false)
	}
	return readTotals(slices.DeleteFunc(slices.Clone(pieces), func(p pieceOfMoney) bool { return s.is(p.Paint, scene.First) }), others, t.Numbers[1], false)
}

// stepsOfCoins follows what lies there: never less than before, to all of it.
func stepsOfCoins(steps []sight, t problems.Truth) error {
	before := new(big.Rat)
	for i, s := range steps {
		pieces, labels, err := s.money()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if err := s.readLabels(pieces, labels, t); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		first := s.worth(pieces, scene.First)
		now := s.worth(pieces, scene.First, scene.Second, scene.Result, scene.Moved)
		switch s.problem.Kind {
		case arithmetic.Addition, arithmetic.Subtraction:
			if err := agree("the first", first, t.Numbers[0]); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
			now.Sub(now, first)
		}
		if now.Cmp(before) < 0 {
			return fmt.Errorf("step %d: there is less than before", i+1)
		}
		before = now
	}
	last := t.Value
	if steps[0].problem.Kind == arithmetic.Addition {
		last = t.Numbers[1]
	}
	return agree("in the last step", before, last)
}
