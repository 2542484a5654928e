package arithmetic

import (
	"slices"

	"modeler/fraction"
)

// Stretch is the part of a number line that is drawn, in units of its scale.
type Stretch struct {
	Scale  Scale
	Lo, Hi int64 // the ends; Lo is 0 where the line can begin there
	Mark   int64 // units from one small mark to the next; 0 when there are none
	Long   int64 // units from one long mark to the next, counted from 0
	Unit   int64 // every mark and number is a multiple of so many units from Lo; 0 is 1
}

// Exact reports whether the stretch can be drawn on so many steps with every
// mark and number on a step.
func (t Stretch) Exact(room int64) bool { return (t.Hi-t.Lo)/max(t.Unit, 1) <= room }

// mostMarks is how many intervals of a line can still be counted, fewMarks how
// many are enough for whole numbers, and finestMarks how many can still be seen.
const (
	mostMarks   = 60
	fewMarks    = 24
	finestMarks = 100
)

// mostWholes is how many wholes a line of fractions shows from 0 before it begins
// at a later whole.
const mostWholes = 6

// stretchOf chooses the stretch of line that shows the numbers best: from 0 where
// there is room, else from a round number below them to a round number above.
// room is how many units can be told apart across the whole line.
func stretchOf(s Scale, units []int64, room int64) Stretch {
	if s.Form == Common || s.Form == Mixed {
		return wholesAround(s, units, room)
	}
	lo, hi := slices.Min(units), slices.Max(units)
	step := roundest(append([]int64{s.Parts}, units...))
	if s.Parts == 1 {
		step = roundest(units)
	}
	if s.Parts > 1 && s.Form == Decimal {
		end := max(1, (hi+s.Parts-1)/s.Parts) * s.Parts
		if end/step <= 100 {
			return marked(Stretch{Scale: s, Hi: end, Long: s.Parts, Mark: step})
		}
	}
	for _, end := range []int64{10, 20} {
		if hi <= end*step {
			return Stretch{Scale: s, Hi: end * step, Mark: step, Long: max(5*step, s.Parts)}
		}
	}
	if len(units) == 1 || apart(units) >= 2*step {
		if hi <= 100*step {
			return Stretch{Scale: s, Hi: 100 * step, Mark: 10 * step, Long: 50 * step}
		}
	}
	for size := 10 * step; ; size *= 10 {
		from, to := lo/size*size, (hi+size-1)/size*size
		if from == to {
			to += size
		}
		if len(units) == 1 && size == 10*step {
			continue // one number is shown among the hundred around it
		}
		if (to-from)/size <= 10 {
			return marked(Stretch{Scale: s, Lo: from, Hi: to, Mark: size / 10, Long: size})
		}
	}
}

// wholesAround is the stretch for fractions: whole numbers at both ends.
func wholesAround(s Scale, units []int64, room int64) Stretch {
	lo, hi := slices.Min(units)/s.Parts, (slices.Max(units)+s.Parts-1)/s.Parts
	t := Stretch{Scale: s, Hi: max(hi, 1) * s.Parts, Mark: 1, Long: s.Parts}
	if hi > mostWholes && (hi > 20 || t.Hi > room || t.Hi > mostMarks) && lo > 0 {
		t.Lo = lo * s.Parts
		if lo == hi {
			t.Hi += s.Parts
		}
	}
	return marked(t)
}

// marked drops the small marks where there would be too many to count, keeping
// the halves of wholes.
func marked(t Stretch) Stretch {
	most := int64(fewMarks)
	if t.Scale.Form == Common || t.Scale.Form == Mixed || t.Scale.Form == Decimal {
		most = mostMarks
	}
	if (t.Hi-t.Lo)/t.Mark <= most {
		return t
	}
	t.Mark = 0
	for _, parts := range []int64{10, 2} {
		if t.Long%parts == 0 && (t.Hi-t.Lo)/(t.Long/parts) <= most {
			t.Mark = t.Long / parts
			break
		}
	}
	return t
}

// roundest is the largest power of ten of which all the counts are multiples.
func roundest(units []int64) int64 {
	g := int64(0)
	for _, u := range units {
		if u != 0 {
			g = fraction.GCD(g, u)
		}
	}
	step := int64(1)
	for g > 0 && g%(10*step) == 0 {
		step *= 10
	}
	return step
}

// apart is the smallest distance between two counts that differ.
func apart(units []int64) int64 {
	list := slices.Sorted(slices.Values(units))
	gap := int64(0)
	for i := range list[1:] {
		if d := list[i+1] - list[i]; d > 0 && (gap == 0 || d < gap) {
			gap = d
		}
	}
	return gap
}

// RowStretch is [JumpStretch] for a row of equal hops: where the row is far from 0,
// the line begins at its lowest number.
func RowStretch(s Scale, stops []int64, from, room, narrowest int64) (Stretch, bool) {
	lo, hi := slices.Min(stops), slices.Max(stops)
	if s.Parts == 1 && lo > 0 && hi-lo < lo*2 {
		unit := apart(stops)
		for _, at := range stops {
			unit = fraction.GCD(unit, at-lo)
		}
		t := Stretch{Scale: s, Lo: lo, Hi: hi, Unit: unit}
		return t, room/((hi-lo)/unit) >= narrowest
	}
	return JumpStretch(s, stops, from, room, narrowest)
}

// JumpStretch chooses the stretch of line on which hops between the stops can be
// drawn to scale, with every stop on one of room steps (from steps where the line
// begins at 0) and no hop narrower than narrowest of them. It begins at 0 where
// the numbers are small, at a whole number for fractions, and else at the lowest
// stop. ok is false when there is none: the hops are too uneven.
func JumpStretch(s Scale, stops []int64, from, room, narrowest int64) (t Stretch, ok bool) {
	lo, hi := slices.Min(stops), slices.Max(stops)
	step, whole := roundest(stops), s.Parts
	var tries []Stretch
	switch wholes := max(1, (hi+whole-1)/whole); {
	case (s.Form == Common || s.Form == Mixed) && (wholes <= mostWholes || lo < whole):
		tries = append(tries, marked(Stretch{Scale: s, Hi: wholes * whole, Mark: 1, Long: whole}))
	case s.Form == Decimal && wholes*10 <= 20:
		tries = append(tries, Stretch{Scale: s, Hi: wholes * whole, Mark: whole / 10, Long: whole})
	}
	for _, end := range []int64{10, 12, 15, 20} {
		if hi <= end*step && step >= whole && s.Form != Decimal {
			tries = append(tries, Stretch{Scale: s, Hi: end * step, Mark: step, Long: 5 * step})
		}
	}
	if lo == hi {
		lo -= lo % (10 * step)
		return Stretch{Scale: s, Lo: lo, Hi: lo + 10*step, Mark: step, Long: 5 * step, Unit: step}, true
	}
	if s.Form == Common || s.Form == Mixed {
		tries = append(tries, marked(Stretch{Scale: s, Lo: lo - lo%whole, Hi: (hi + whole - 1) / whole * whole, Mark: 1, Long: whole}))
	}
	if s.Form != Common && s.Form != Mixed {
		tries = append(tries, Stretch{Scale: s, Lo: lo, Hi: hi})
	}
	for _, t := range tries {
		room := room
		if t.Lo == 0 {
			room = from
		}
		t.Unit = t.Hi - t.Lo
		for _, at := range append([]int64{t.Lo + t.Mark, t.Lo + t.Long}, stops...) {
			t.Unit = fraction.GCD(t.Unit, at-t.Lo)
		}
		if t.Hi-t.Lo <= room && (s.Form == Common || s.Form == Mixed) {
			t.Unit = 1 // so that the line can be cut in these parts
		}
		if room/((t.Hi-t.Lo)/t.Unit)*(apart(stops)/t.Unit) >= narrowest {
			return t, true
		}
	}
	return t, false
}
