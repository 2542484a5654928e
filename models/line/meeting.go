package line

import (
	"errors"
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planMeeting lays out the multiples of two numbers as hops on two lines from the
// same 0. Where both land, the places are points on both lines.
func planMeeting(p arithmetic.Problem) (*plan, error) {
	w, err := arithmetic.MeetOnLines(p, mostInRow)
	if err != nil {
		return nil, reason(err)
	}
	pl := &plan{problem: p, working: w, title: words.LineRowTitle(p, w.Answer)}
	met := w.Moves[len(w.Moves)-1].(arithmetic.Meet)
	if max(met.Rows[0].Count, met.Rows[1].Count) > mostInRow {
		return nil, errors.New(words.LineManyHops)
	}
	stops := append(landings(met.Rows[0]), landings(met.Rows[1])...)
	roles := [2]scene.Role{scene.First, scene.Second}
	for i, row := range met.Rows {
		// Both lines have one scale; the hops of each must be seen.
		k, err := rowSketch(arithmetic.Scale{}, stops, 1)
		if err != nil {
			return nil, err
		}
		if int64(k.width)*row.By < leastHop*(k.hi-k.lo) {
			return nil, errors.New(words.LineTrainTooFine)
		}
		k.mark = 0
		k.addStop(stop{label: runsOf("", arithmetic.Int(0)), role: scene.Note})
		pl.meetingRow(k, met, row, roles[i], 1+i)
		pl.sketches = append(pl.sketches, k)
		if !k.arrange() {
			return nil, errors.New(words.LineCrowded)
		}
	}
	both := telling.Join(telling.Counts("", scene.First, met.Rows[0].By), ",", telling.Counts("", scene.Second, met.Rows[1].By))
	pl.step(words.LineStartBoth(met), both)
	for i, row := range met.Rows {
		pl.step(words.LineRowOn(row, i), telling.Counts(",", roles[i], landings(row)[1:]...))
	}
	pl.step(words.LineMeet(met, w.Answer), telling.Counts(",", scene.Result, w.Answer.List...))
	pl.answered = telling.Counts(",", scene.Result, w.Answer.List...)
	pl.asked = telling.Join(telling.Unknown(), ",", telling.Unknown(), ",", telling.Unknown())
	pl.desc = words.LineMeetDesc(met, w.Answer)
	return pl, nil
}

// meetingRow draws the hops of one of two rows. Where the rows meet, the number is
// marked in the last step.
func (pl *plan) meetingRow(k *sketch, met arithmetic.Meet, row arithmetic.HopRow, role scene.Role, step int) {
	const last = 3 // the step in which the meetings are marked
	pl.drawHopsOn(k, arithmetic.HopOn{HopRow: row, First: 1, Last: row.Count}, step, role, scene.OfAnswer)
	for i := range k.hops {
		k.hops[i].of = [...]scene.Of{scene.OfLeft, scene.OfRight}[row.Line]
	}
	for i := range k.stops {
		s := &k.stops[i]
		if s.at == 0 {
			continue
		}
		s.role, s.dot, s.asked, s.when = scene.Ink, false, false, scene.Always
		if slices.Contains(met.At, s.at) {
			s.size, s.turn, s.turned = scene.Middle, last, scene.Result
			k.stops = append(k.stops, stop{at: s.at, role: scene.Result, dot: true, when: scene.ShownOnly, step: last})
		}
	}
}
