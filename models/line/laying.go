package line

import (
	"errors"
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/words"
)

// lay chooses the stretch of line for all the stops of the working and begins the
// sketch, to scale where the narrowest hop can be seen.
func (pl *plan) lay(s arithmetic.Scale, ends ...arithmetic.Number) (*sketch, error) {
	var stops []int64
	needs := map[int64]int{}
	for _, m := range pl.working.Moves {
		switch m := m.(type) {
		case arithmetic.StartAt:
			stops = append(stops, s.Count(m.At))
		case arithmetic.LookFor:
			stops = append(stops, s.Count(m.Total))
			if !m.Start {
				stops = append(stops, s.Count(m.Known))
			}
		case arithmetic.Jump:
			stops = append(stops, s.Count(m.From), s.Count(m.To))
			label := scene.Text{Size: scene.Small, Runs: runsOf("+", m.By)}
			needs[s.Count(m.By)] = label.Width() + labelGap
		}
	}
	t, ok := arithmetic.JumpStretch(s, stops, lineRoom, brokenRoom, leastHop)
	if ok && !(pl.open && !fractional(s)) {
		return &sketch{ruler: rulerFor(t, endSides(t)), mark: t.Mark, long: t.Long, numbered: t.Long, scale: s, hush: -1}, nil
	}
	if s.Form == arithmetic.Common || s.Form == arithmetic.Mixed {
		return nil, errors.New(words.LineFine)
	}
	pl.uneven = true
	sorted := slices.Compact(slices.Sorted(slices.Values(stops)))
	for i := range len(sorted) - 1 {
		// Where a hop comes back a stretch may be no hop of its own; it still counts.
		if way := sorted[i+1] - sorted[i]; needs[way] == 0 {
			needs[way] = 1
		}
	}
	lo, hi := slices.Min(stops), slices.Max(stops)
	return &sketch{ruler: unevenRuler(stops, needs, endSides(arithmetic.Stretch{Scale: s, Lo: lo, Hi: hi})), scale: s, hush: -1}, nil
}

// fromZero marks a number as the length from 0, where the line begins there, or
// else as a point.
func (k *sketch) fromZero(n arithmetic.Number, role scene.Role, of scene.Of) stop {
	at := k.scale.Count(n)
	point := stop{at: at, label: runsOf("", n), also: wholeToo(n), role: role, of: of, dot: true}
	if !k.broken && k.lo == 0 && at > 0 && !k.uneven() {
		k.lengths = append(k.lengths, length{to: at, role: role, of: of, worth: n.Value})
		return point
	}
	point.worth = n.Value
	return point
}

// wholeToo is the other name of a fraction that is a whole number, since wholes
// are always named: 12/12 is 1.
func wholeToo(n arithmetic.Number) []name {
	if v, ok := n.Int64(); ok && n.Form == arithmetic.Common {
		return []name{{runs: runsOf("", arithmetic.Int(v)), role: scene.Note}}
	}
	return nil
}

// nameWholes names the wholes on a line of fractions or decimals: all where there
// is room for it, or else 0 and 1.
func (k *sketch) nameWholes() {
	if k.uneven() || k.scale.Parts == 1 || k.scale.Form == arithmetic.Money {
		return
	}
	every, last := k.scale.Parts, k.hi
	all := (k.hi-k.lo)/every <= scene.PaperW && k.fits(every)
	if !all { // the loop must not run as long as the number is large
		last = min(last, every)
	}
	for at := (k.lo + every - 1) / every * every; at <= last; at += every {
		if all || !k.broken {
			k.addStop(stop{at: at, label: runsOf("", k.scale.WriteShort(at)), role: scene.Note})
		}
	}
}

// addStop adds a stop; where one stands already the first one stays, and what is
// to be added is the number of the mark up to the step of the first.
func (k *sketch) addStop(s stop) {
	for i, other := range k.stops {
		if other.at != s.at || other.side < 0 && s.side == 0 {
			continue // a name above the line leaves room for one below
		}
		if other.step > 0 && s.step == 0 && other.label != nil && other.posed == 0 {
			k.stops[i].before = s.label
		}
		return
	}
	k.stops = append(k.stops, s)
}

// layPoints lays a stretch on the paper for points on it. Where two points, or a
// point and an end, would be too close to tell apart, the line is not to scale.
func (pl *plan) layPoints(t arithmetic.Stretch, points ...arithmetic.Number) *sketch {
	sides := endSides(t)
	if k := pl.problem.Kind; k == arithmetic.Rounding || k == arithmetic.Estimate {
		sides = [2]int{max(sides[0], askedSide/2), max(sides[1], askedSide/2)} // its ends are asked for
	}
	k := &sketch{ruler: rulerFor(t, sides), mark: t.Mark, long: t.Long, scale: t.Scale, numbered: t.Long, hush: -1}
	stops := []int64{t.Lo, t.Hi}
	for _, n := range points {
		stops = append(stops, t.Scale.Count(n))
	}
	if k.apart(stops) < leastApart {
		pl.uneven = true
		*k = sketch{ruler: unevenRuler(stops, map[int64]int{0: 1}, sides), scale: t.Scale, hush: -1}
		k.broken = t.Lo != 0
	}
	return k
}

// apart is the smallest distance on the paper between two counts that differ.
func (r ruler) apart(counts []int64) int {
	list := slices.Compact(slices.Sorted(slices.Values(counts)))
	gap := r.width
	for i := range list[1:] {
		gap = min(gap, r.x(list[i+1])-r.x(list[i]))
	}
	return gap
}

// ends names both ends of a stretch.
func (k *sketch) ends(m arithmetic.DrawStretch) {
	for _, n := range []arithmetic.Number{m.Lo, m.Hi} {
		k.addStop(stop{at: k.scale.Count(n), label: runsOf("", n), size: scene.Middle})
	}
}

// liftEnds puts the name of an end above the line where the name of a point stands
// in its place below.
func (k *sketch) liftEnds() {
	taken := func(end stop, side int) bool {
		for _, s := range k.stops {
			room := scene.Text{Size: scene.Middle, Runs: s.label}.Width() + scene.Text{Size: scene.Middle, Runs: end.label}.Width()
			if s.dot && s.at != end.at && s.label != nil && (s.side < 0) == (side < 0) && abs(k.x(s.at)-k.x(end.at)) < room/2+labelGap {
				return true
			}
		}
		return false
	}
	for i, s := range k.stops {
		if !s.dot && taken(s, 1) && !taken(s, -1) {
			k.stops[i].side = -1
		}
	}
}

// name adds a point; a second one in the same place gives the first another name.
func (k *sketch) name(s stop) {
	for i, other := range k.stops {
		if other.at == s.at && other.label != nil && s.label != nil {
			k.stops[i].also = append(k.stops[i].also, name{s.label, s.role, s.when, s.step})
			s.label = nil
		}
	}
	k.stops = append(k.stops, s)
}
