package line

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

// rowHeights are how far the labels of each row reach up and down.
type rowHeights [2]struct{ up, down int }

func heights(labels []*label) (h rowHeights) {
	for _, l := range labels {
		up, down, _ := l.reach()
		if l.row == 0 && l.also != nil {
			// The other names are in the second row.
			up, down, _ = l.first().reach()
			half := (l.beyond() + 1) / 2
			h[1].up, h[1].down = max(h[1].up, half), max(h[1].down, half)
		}
		h[l.row].up, h[l.row].down = max(h[l.row].up, up), max(h[l.row].down, down)
	}
	return h
}

const rowGap = 10

func (h rowHeights) total() int {
	t := h[0].up + h[0].down
	if second := h[1].up + h[1].down; second > 0 {
		t += rowGap + second
	}
	return t
}

// drawLabels draws labels and their leaders: above the hops when down is -1, and
// below the marks when it is 1. Distances are measured from the axis.
func (k *sketch) drawLabels(st *story, labels []*label, rows rowHeights, axis, down int) {
	edge := k.reachDown() + 4 // where leaders may begin to slant
	near := [2]int{k.reachDown() + leaderLow}
	if down < 0 {
		edge, near[0] = k.reachUp()+4, k.reachUp()+leaderUp
	}
	tall := rows[0].up + rows[0].down
	near[1] = near[0] + tall + rowGap
	for _, l := range labels {
		in, out, _ := l.first().reach() // towards the line, and away from it
		middles := [2]int{near[0] + rows[0].up, near[1] + rows[1].up}
		if down < 0 {
			in, out = out, in
			middles = [2]int{near[0] + rows[0].down, near[1] + rows[1].down}
		}
		middle, other := middles[l.row], middles[1]
		if l.row == 1 {
			other = middle + out + nameGap + l.beyond()/2
		}
		end := middle - in
		k.drawLabel(st, l, l.text(l.centre, axis+down*middle))
		k.drawOthers(st, l, l.alsoAt(l.centre, axis+down*other))
		if l.row == 0 && l.start >= edge-10 && abs(l.centre-l.x) <= unled {
			continue // it stands right at what it names
		}
		at := func(x, distance int) scene.Point { return scene.Point{X: x, Y: axis + down*distance} }
		leader := scene.Polyline{at(l.x, l.start), at(l.x, edge)}
		if l.row == 1 {
			leader = append(leader, at(l.pass, near[0]), at(l.pass, near[0]+tall))
		}
		leader = append(leader, at(l.centre, near[l.row]), at(l.centre, end))
		st.add(l.from, l.until, scene.Item{Shape: leader, Role: scene.Guide, Finish: scene.Fine, When: l.when})
	}
}

// atPlace is how far beside its place a number is still taken to stand at it.
const atPlace = 4

// unled is how far a number may stand beside its place without a leader: ticks are
// often twelve units apart, and it must not stand at the next.
const unled = 8

// drawOthers draws the other names of a label.
func (k *sketch) drawOthers(st *story, l *label, texts []scene.Text) {
	for i, t := range texts {
		n := l.also[i]
		st.add(max(l.from, n.from), l.until, scene.Item{Shape: t, Role: n.role, When: n.when})
	}
}

// drawLabel draws a label; one that is asked for is a question mark in a dashed
// frame while the answer is hidden.
func (k *sketch) drawLabel(st *story, l *label, t scene.Text) {
	name := scene.Item{Shape: t, Role: l.role, When: l.when}
	if l.asked {
		name.When = scene.ShownOnly
	}
	if l.before != nil && l.from > 0 && l.row == 0 && abs(l.centre-l.x) <= atPlace {
		mark := scene.Item{Shape: scene.Text{X: t.X, Y: t.Y, Size: scene.Small, Runs: l.before}, Role: scene.Note, When: name.When}
		st.add(0, l.from, mark)
	}
	if l.turn > 0 {
		st.add(l.from, l.turn, name)
		t.Bold, name.Role = true, l.turned
		name.Shape = t
		st.add(l.turn, l.until, name)
	} else {
		st.add(l.from, l.until, name)
	}
	if !l.asked {
		return
	}
	from := l.from
	if l.posed > 0 {
		from = 0
		for _, it := range askedFor(t.X, t.Y) {
			it.When = scene.ShownOnly
			st.add(0, l.posed, it)
		}
	}
	st.add(from, l.until, askedFor(t.X, t.Y)...)
}

// askedFor is the dashed frame with a question mark that stands for what is not
// known yet.
func askedFor(x, y int) []scene.Item {
	return []scene.Item{
		{Shape: scene.Rect{X: x - askedSide/2, Y: y - askedSide/2, W: askedSide, H: askedSide, Round: 8},
			Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly},
		telling.Question(x, y),
	}
}

// runsOf is a number as a label, with a sign before it. A mixed number is set
// close.
func runsOf(sign string, n arithmetic.Number) []scene.Run {
	var runs []scene.Run
	for _, t := range telling.Numeral(n, scene.Ink) {
		runs = append(runs, scene.Run{Text: t.Text, Num: t.Num, Den: t.Den})
	}
	if sign != "" && runs[0].Den == "" {
		runs[0].Text = sign + runs[0].Text
	} else if sign != "" {
		runs = append([]scene.Run{{Text: sign}}, runs...)
	}
	return runs
}

func abs(n int) int { return max(n, -n) }
