package line

import "modeler/models/scene"

// number labels the marks of the line at height y where no label stands in the
// way: every small mark where there is room, or every long one, or fewer.
func (k *sketch) number(st *story, y int) {
	if k.numbered == 0 {
		return
	}
	every := k.numbered
	for _, wider := range []int64{2, 5, 10, 20, 50, 100} {
		if k.fits(every) {
			break
		}
		every = k.numbered * wider
	}
	if k.mark > 0 && k.fits(k.mark) && (k.mark == 1 || !fractional(k.scale)) {
		every = k.mark
	}
	for at := (k.lo + every - 1) / every * every; at <= k.hi; at += every {
		l := k.tickLabel(at)
		until, ok := k.free(k.below, l, k.x(at))
		if s := k.named(at); s != nil && ok {
			ok = s.step > 0 // its name stands on the other side, or in the second row
			if until == 0 || s.step < until {
				until = s.step
			}
		}
		if !ok {
			continue
		}
		k.placed = append(k.placed, l)
		when := scene.Always
		if at == k.hush || k.tells(at) {
			when = scene.ShownOnly
		}
		st.add(0, until, scene.Item{Shape: l.text(l.x, y), Role: scene.Note, When: when})
	}
}

// named is the stop with a name at a place, or nil.
func (k *sketch) named(at int64) *stop {
	for i := range k.stops {
		if s := &k.stops[i]; s.at == at && s.label != nil {
			return s
		}
	}
	return nil
}

// tells reports whether the number of a mark would tell where the answer is that
// is asked for: only long marks have numbers then, and none next to the answer.
func (k *sketch) tells(at int64) bool {
	for _, s := range k.stops {
		if s.asked && s.role == scene.Result {
			return k.long == 0 || at%k.long != 0 || k.mark > 0 && max(at-s.at, s.at-at) <= k.mark
		}
	}
	return false
}

// numberCut labels the marks of a cutting that are not long marks too, below the
// line or, for one that stands above it, above.
func (k *sketch) numberCut(st *story, c cut, below, above int) {
	y, labels := below, k.below
	if c.side < 0 {
		y, labels = above, k.above
	}
	if !c.named || c.side < 0 && len(k.above) == 0 || !k.fitsCut(c) {
		return
	}
	for at := (k.lo + c.every - 1) / c.every * c.every; at <= k.hi; at += c.every {
		l := &label{runs: runsOf("", c.move.Mark(at/c.every)), size: scene.Small}
		_, _, side := l.reach()
		until, ok := k.free(labels, l, k.x(at))
		if before, free := clear(k.placed, l.x, side); c.side >= 0 && (!free || before > 0) {
			ok = false
		}
		if at%k.long == 0 || !ok || until > 0 && until <= c.step {
			continue
		}
		when := scene.Always
		if k.tells(at) {
			when = scene.ShownOnly
		}
		st.add(c.step, until, scene.Item{Shape: l.text(l.x, y), Role: scene.Note, When: when})
	}
}

// fitsCut reports whether there is room for a label at every mark of a cutting.
func (k *sketch) fitsCut(c cut) bool {
	l := &label{runs: runsOf("", c.move.Mark(k.hi/c.every-1)), size: scene.Small}
	_, _, side := l.reach()
	return int64(k.width)*c.every/(k.hi-k.lo) >= int64(2*side+labelGap)
}

// free reports whether a label can stand at x in the first row, and up to which
// step: until another label comes there; 0 is for good.
func (k *sketch) free(labels []*label, l *label, x int) (until int, ok bool) {
	_, _, side := l.reach()
	l.x, l.centre = x, x
	const edge = scene.Margin - overEdge // the 0 of a line stands close to the margin
	if x-side < edge || x+side > scene.PaperW-edge {
		return 0, false
	}
	return clear(labels, x, side)
}

func (k *sketch) tickLabel(at int64) *label {
	return &label{runs: runsOf("", k.scale.WriteShort(at)), size: scene.Small}
}

// fits reports whether every so many units there is room for a label.
func (k *sketch) fits(every int64) bool {
	if every >= k.hi-k.lo {
		return true
	}
	_, _, side := k.tickLabel(k.hi - k.hi%every).reach()
	_, _, inner := k.tickLabel(k.hi - k.hi%every - every).reach()
	const gap = labelGap + 4
	return int64(k.width)*every/(k.hi-k.lo) >= int64(2*max(side, inner)+gap)
}

// clear reports whether a label of a half width can stand at x in the first row,
// and up to which step; 0 is for good.
func clear(labels []*label, x, side int) (until int, ok bool) {
	for _, other := range labels {
		_, _, room := other.reach()
		centre := other.centre
		if other.row == 1 {
			room, centre = leaderRoom, other.pass
		}
		if abs(centre-x) >= side+room+labelGap {
			continue
		}
		if other.from == 0 || other.before != nil || other.posed > 0 {
			return 0, false
		}
		if until == 0 || other.from < until {
			until = other.from
		}
	}
	return until, true
}
