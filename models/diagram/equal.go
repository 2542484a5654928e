package diagram

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// equal is a bar of equal parts, and where one number is some times as many as
// another, a bar of one part above it:
//
//	┌───────┐
//	│  [6]  │
//	└───────┘
//	|────────────── 24 ─────────────|
//	┌───────┬───────┬───────┬───────┐
//	│  [6]  │  [6]  │  [6]  │  [6]  │   ┌──┐  what is left over stands apart
//	└───────┴───────┴───────┴───────┘   └──┘
//	          4 equal parts
type equal struct {
	drawing
	plan   arithmetic.EqualBars
	x, w   int  // of the first part
	left   int  // how long what is left over is
	y      int  // the top of the bar
	unitY  int  // the top of the bar of one part
	out    bool // the parts are too short for their number: the first is led out
	labelY int  // the middle of the words under the bar
	sumY   int  // the measure of the parts that are taken
	below  int
}

const apart = 16 // from the last part to what is left over

func layEqual(plan arithmetic.EqualBars) *equal {
	d := &equal{plan: plan}
	count := int(plan.Count.N)
	d.w, d.scaled = full/count, true
	if plan.Left > 0 {
		d.w, d.left, d.scaled = withRest(plan.Size.N, plan.Left, count)
	}
	d.x = start(d.length())
	d.y = scene.Margin + lineTall/2 + measureUp
	if plan.Unit {
		d.unitY = scene.Margin
		d.y += barTall + 14
	}
	d.below = d.y + barTall
	d.out = !inside(number(plan.Size.Nth, plan.Size.N), d.w)
	if d.out && !plan.Unit || plan.Left > 0 {
		d.below += leader + plateTall
	}
	d.labelY = d.below + 8 + labelTall/2
	if plan.Left > 0 && !d.out {
		d.labelY = d.y + barTall + leader + plateTall/2 // beside what is left over
		d.below -= 8 + labelTall
	}
	if d.below += 8 + labelTall; plan.Taken > 0 {
		d.sumY = d.below - labelTall - 8 + measureUp
		d.below = max(d.below, d.below-labelTall-8+measureRoom(d.x, d.at(int(plan.Taken)), number(0, plan.Sum).Width()))
	}
	return d
}

// withRest are the lengths of equal parts and of what is left over.
func withRest(size, left int64, count int) (w, rest int, scaled bool) {
	room := full - apart
	all := size*int64(count) + left
	if w = int(size * (int64(room) / all)); w*count*6 >= room*5 {
		rest = int(left * (int64(room) / all))
	} else {
		w = portion(size, all, room)
		for w*count+portion(left, all, room) > room {
			w--
		}
		rest = portion(left, size, w)
	}
	if rest >= least {
		return w, rest, true
	}
	const seen = 2 * least
	return (room - seen) / count, seen, false
}

// length is the bar from end to end, with what is left over apart.
func (d *equal) length() int {
	l := d.w * int(d.plan.Count.N)
	if d.left > 0 {
		l += apart + d.left
	}
	return l
}

func (d *equal) at(i int) int { return d.x + i*d.w }
