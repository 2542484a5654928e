package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// gathering is a product or a sum of a list while it is told: what is in the boxes
// is brought together on the mat under them, place by place from the ones, and tens
// are traded there. The pieces of a place lie on the mat in this order: those that
// a trade has brought, then those of the boxes. The tens that are traded go first.
type gathering struct {
	problem arithmetic.Problem
	floor   floor
	boxes   []boxed
	names   []notation.Line // of the boxes
	trades  []arithmetic.TradeTens
	carried arithmetic.Counts // of each place, those that a trade has brought, in the end
	sums    arithmetic.Counts // of each place, all that ever lie on the mat
	read    arithmetic.ReadOff
	out     [places]bool      // places that have been gathered
	from    arithmetic.Counts // the first slot of each place in which a piece lies
	to      arithmetic.Counts // and the slot after the last
	written telling.Columns
	desc    string // the boxes before anything is brought together
}

// boxed is what lies in a box, and how it is drawn.
type boxed struct {
	counts arithmetic.Counts
	as     laid
}

// gathered is how the pieces on the mat are drawn: they belong to the answer.
var gathered = laid{role: scene.Result, of: scene.OfAnswer}

// layOut reads the moves and lays the floor out; false when there is no room.
func (k *gathering) layOut(w arithmetic.Working) bool {
	k.problem = w.Problem
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.MultiplyPlace:
			k.carried[move.Power], k.sums[move.Power] = move.Carried, move.Sum
		case arithmetic.GatherPlace:
			k.carried[move.Power], k.sums[move.Power] = move.Carried, move.Sum
		case arithmetic.TradeTens:
			k.trades = append(k.trades, move)
			to := move.From + 1
			k.carried[to], k.sums[to] = move.Made, max(k.sums[to], move.Made)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	p := plan{mat: k.sums, top: k.read.Counts.Top(), floor: floors(), rows: 1, above: true}
	for i, b := range k.boxes {
		p.groups = append(p.groups, b.counts)
		p.labels = max(p.labels, telling.Width(k.names[i], scene.Small, false))
	}
	floor, ok := layFloor(p)
	k.floor = floor
	k.written.Top = k.read.Counts.Top()
	return ok
}

// lie draws what is in the boxes and what lies on the mat. What has been gathered
// leaves empty outlines in the boxes, so that each still shows its number, and in
// the place that has just been gathered the pieces on the mat have moved.
func (k *gathering) lie(s *scene.Scene, now int) {
	k.name(s)
	k.fill(s, func(power int) bool { return !k.out[power] }, func(as laid) laid { return as })
	k.fill(s, func(power int) bool { return k.out[power] }, laid.empty)
	for power := k.floor.top; power >= 0; power-- {
		as := gathered
		if power == now {
			as = as.moved()
		}
		k.layMat(s, power, as)
		if k.out[power] || k.to[power] > 0 {
			role := scene.Result
			if power == now {
				role = scene.Moved
			}
			k.floor.tally(s, power, ofRole(k.to[power]-k.from[power], role))
		}
	}
}

// fill draws the pieces of some places in all boxes.
func (k *gathering) fill(s *scene.Scene, which func(power int) bool, how func(laid) laid) {
	for power := range k.floor.box.top + 1 {
		for i, b := range k.boxes {
			if which(power) {
				k.floor.layBox(s, i, power, 0, b.counts[power], how(b.as))
			}
		}
	}
}

// every is all places.
func every(int) bool { return true }

// layMat draws the pieces of a place on the mat, those of the boxes as they are to
// be drawn.
func (k *gathering) layMat(s *scene.Scene, power int, as laid) {
	split := min(max(k.carried[power], k.from[power]), k.to[power])
	k.floor.lay(s, power, 0, k.from[power], split, gathered)
	k.floor.lay(s, power, 0, split, k.to[power], as)
}

// name writes what is in each box under it.
func (k *gathering) name(s *scene.Scene) {
	for i, b := range k.floor.boxes {
		s.Add(scene.Item{Shape: scene.Text{X: b.X + b.W/2, Y: b.Bottom() + labelGap, Size: scene.Small, Runs: k.names[i].Runs()}})
	}
}

// gather brings the pieces of one place to the mat.
func (k *gathering) gather(s *scene.Scene, power int, sum int64) {
	k.out[power], k.to[power] = true, sum
	k.lie(s, power)
	k.written.Touch(power)
	if sum < 10 {
		k.written.Write(power, sum)
	}
}

// trade takes tens of pieces from the mat, which stay as ghosts for this step, and
// lays as many of the next place.
func (k *gathering) trade(s *scene.Scene, move arithmetic.TradeTens) {
	to := move.From + 1
	k.from[move.From] = move.Given
	k.lie(s, -1)
	k.floor.lay(s, move.From, 0, 0, move.Given, ghost)
	k.strikeTens(s, move)
	k.to[to] = move.Made
	k.floor.lay(s, to, 0, 0, move.Made, gathered.moved())
	k.floor.tally(s, to, ofRole(move.Made, scene.Moved))
	k.written.Write(move.From, move.Left)
	if to > k.floor.box.top {
		k.written.Write(to, move.Made)
	} else {
		k.written.Carry(to, move.Made)
	}
}

// strikeTens draws one stroke through pieces that fill whole rows, or one through
// each row.
func (k *gathering) strikeTens(s *scene.Scene, move arithmetic.TradeTens) {
	if move.Given%int64(k.floor.perRow[move.From]) != 0 {
		k.floor.strike(s, move.From, 0, 0, move.Given, scene.OfNothing)
		return
	}
	a, b := k.floor.slot(move.From, 0, 0), k.floor.slot(move.From, 0, int(move.Given-1))
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: a.X - 2, Y1: b.Bottom() + 2, X2: b.Right() + 2, Y2: a.Y - 2})
}

// posed is the problem before anything is brought together.
func (k *gathering) posed() *scene.Scene {
	s := &scene.Scene{}
	k.name(s)
	k.fill(s, every, func(as laid) laid { return as })
	for power := k.floor.top; power >= 0; power-- {
		k.floor.tally(s, power, notation.Line{telling.Unknown()})
	}
	return s
}

func (k *gathering) asked() string { return words.Sentences(k.desc, words.BlocksHowMany()) }

// finish puts the pieces of a step on its floor. From the step on in which all is
// together, the problem is shown when the answer is hidden.
func (k *gathering) finish(s, shown *scene.Scene, hide bool, title, desc string) {
	s.Title = scene.Same(words.BlocksStepTitle(k.problem, title))
	if !hide {
		telling.AddPart(s, scene.Always, shown)
		s.Desc = scene.Same(desc)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	s.Desc = scene.Telling{Shown: desc, Hidden: k.asked()}
}

// whole is the story in one picture: what was in the boxes as empty outlines, and
// on the mat the answer, with the tens that were traded as ghosts.
func (k *gathering) whole() *scene.Scene {
	shown := &scene.Scene{}
	k.name(shown)
	k.fill(shown, every, laid.empty)
	told := []string{k.desc}
	k.from, k.to = arithmetic.Counts{}, k.sums
	for _, move := range k.trades {
		k.from[move.From] = move.Given
		k.floor.came(shown, move.From, 0, move.Given)
		told = append(told, words.BlocksTradedTens(move))
	}
	for power := k.floor.top; power >= 0; power-- {
		k.layMat(shown, power, gathered)
		k.floor.tally(shown, power, ofRole(k.read.Counts[power], scene.Result))
	}
	k.from, k.to = arithmetic.Counts{}, arithmetic.Counts{}
	s := k.floor.base()
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	asked := telling.Written(k.problem, notation.Line{telling.Unknown()})
	answered := telling.Written(k.problem, ofRole(k.read.Number, scene.Result))
	telling.Equation(s, k.floor.end(), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	s.Desc = scene.Telling{Shown: words.Sentences(append(told, words.BlocksTogether(k.read, k.floor.top))...), Hidden: k.asked()}
	return s
}
