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
			needs[s.Count(m.By)] = label.Width() + 2*labelGap
		}
	}
	t, ok := arithmetic.JumpStretch(s, stops, lineRoom, brokenRoom, leastHop)
	if ok {
		return &sketch{ruler: rulerFor(t), mark: t.Mark, long: t.Long, numbered: t.Long, scale: s, hush: -1}, nil
	}
	if s.Form == arithmetic.Common || s.Form == arithmetic.Mixed {
		return nil, errors.New(words.LineFine)
	}
	pl.uneven = true
	return &sketch{ruler: unevenRuler(stops, needs), scale: s, hush: -1}, nil
}

// fromZero marks a number as the length from 0, where the line begins there, or
// else as a point.
func (k *sketch) fromZero(n arithmetic.Number, role scene.Role, of scene.Of) stop {
	at := k.scale.Count(n)
	point := stop{at: at, label: wholeToo(n), role: role, of: of, dot: true}
	if !k.broken && k.lo == 0 && at > 0 && !k.uneven() {
		k.lengths = append(k.lengths, length{to: at, role: role, of: of, worth: n.Value})
		return point
	}
	point.worth = n.Value
	return point
}

// wholeToo is the label of a number; a fraction that is a whole number has that
// name as well, since wholes are always named: 12/12 = 1.
func wholeToo(n arithmetic.Number) []scene.Run {
	runs := runsOf("", n)
	if v, ok := n.Int64(); ok && n.Form == arithmetic.Common {
		runs = append(runs, scene.Run{Text: " = " + arithmetic.Grouped(v)})
	}
	return runs
}

// nameOne names 0 and 1 on a line of fractions or decimals that begins at 0.
func (k *sketch) nameOne() {
	if k.broken || k.uneven() || k.scale.Parts == 1 || k.scale.Form == arithmetic.Money {
		return
	}
	for _, at := range []int64{0, k.scale.Parts} {
		if at <= k.hi {
			k.addStop(stop{at: at, label: runsOf("", k.scale.WriteShort(at)), role: scene.Note})
		}
	}
}

// addStop adds a stop; where one stands already the first one stays.
func (k *sketch) addStop(s stop) {
	for _, other := range k.stops {
		if other.at == s.at {
			return
		}
	}
	k.stops = append(k.stops, s)
}

// layPoints lays a stretch on the paper for points on it. Where two points, or a
// point and an end, would be too close to tell apart, the line is not to scale.
func (pl *plan) layPoints(t arithmetic.Stretch, points ...arithmetic.Number) *sketch {
	k := &sketch{ruler: rulerFor(t), mark: t.Mark, long: t.Long, scale: t.Scale, numbered: t.Long, hush: -1}
	stops := []int64{t.Lo, t.Hi}
	for _, n := range points {
		stops = append(stops, t.Scale.Count(n))
	}
	if k.apart(stops) < leastApart {
		pl.uneven = true
		*k = sketch{ruler: unevenRuler(stops, map[int64]int{0: 1}), scale: t.Scale, hush: -1}
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

// name adds a point; a second one in the same place gives the first another name.
func (k *sketch) name(s stop) {
	for i, other := range k.stops {
		if other.at == s.at && other.label != nil {
			k.stops[i].label = append(append(append([]scene.Run{}, other.label...), scene.Run{Text: " = "}), s.label...)
			s.label = nil
		}
	}
	k.stops = append(k.stops, s)
}
