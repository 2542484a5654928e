package cubes

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// matching is two trains from one left end, their numbers in front of them:
//
//	          |─ 5 more ─|
//	12 ┌─┬─┬─┬─┬─┬─┐
//	   └─┴─┴─┴─┴─┴─┘
//	 7 ┌─┬─┬─┐┌┄┬┄┬┄┐
//	   └─┴─┴─┘└┄┴┄┴┄┘
type matching struct {
	*story
	bench
	laid  [2]arithmetic.LayTrains
	match arithmetic.MatchTrains
	said  arithmetic.SayTrains
	foot  int
}

// tellMatched holds two trains side by side.
func (k *story) tellMatched() telling.Telling {
	a := k.matchingOf()
	k.told.Pieces = pieces(a.said.First + a.said.Second)
	k.told.Why = k.said.Why(a.said)
	if k.said.Kind == arithmetic.Subtraction {
		k.told.Why = nil
	}
	for _, m := range k.work.Moves {
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.LayTrains:
			a.lay(s, 0, false)
			line := count(m.Number, telling.RoleOf(m.Nth))
			if m.Nth == 1 {
				a.lay(s, 1, true)
				line = a.asked()
			}
			k.step(k.said.Lay(m, true), s, nil, line)
		case arithmetic.MatchTrains:
			a.both(s)
			a.gap(s)
			line := a.answered()
			if m.Gap > 0 {
				line = telling.Join(telling.Count(m.Short, telling.RoleOf(1-m.Longer)), "+", telling.Count(m.Gap, scene.Result), "=", telling.Count(m.Short+m.Gap, telling.RoleOf(m.Longer)))
			}
			k.step(k.said.Match(m), s, a.posed(), line)
		case arithmetic.SayTrains:
			a.both(s)
			a.gap(s)
			k.step(k.said.Say(m), s, a.posed(), a.answered())
		}
	}
	shown := &scene.Scene{}
	a.both(shown)
	a.gap(shown)
	k.whole(shown, a.posed(), a.foot-14, k.said.Say(a.said).Desc, a.asked(), a.answered(), a.answered().Text())
	return k.told
}

// matchingOf reads off the moves what there will be, and places it.
func (k *story) matchingOf() *matching {
	const (
		named   = 64 // for the number in front of a train
		most    = 56 // the side of a cube
		between = 34 // from train to train
		bracket = 62 // for the bracket and what it says
	)
	a := &matching{story: k}
	for _, m := range k.work.Moves {
		switch m := m.(type) {
		case arithmetic.LayTrains:
			a.laid[m.Nth] = m
		case arithmetic.MatchTrains:
			a.match = m
		case arithmetic.SayTrains:
			a.said = m
		}
	}
	long := int(max(a.match.First, a.match.Second))
	a.side = min(most, (inner-named-pegWide)/long)
	wide := named + long*a.side + pegWide
	a.x, a.y = scene.PaperW/2-wide/2+named, scene.Margin
	a.pitch = a.side + between
	if a.match.Gap > 0 && a.match.Longer == 0 {
		a.y += bracket
	}
	a.foot = a.top(1) + a.side
	if a.match.Gap == 0 || a.match.Longer == 1 {
		a.foot += bracket
	}
	k.tall = a.foot + scene.Margin
	return a
}

// lay draws a train with its number in front.
func (a *matching) lay(s *scene.Scene, nth int, fresh bool) {
	it := itemOf(nth)
	if fresh {
		it = arrived(it)
	}
	row := int64(nth)
	a.train(s, row, a.laid[nth].Number, it)
	const toTrain = 16
	s.Add(scene.Item{
		Shape: scene.Text{X: a.x - toTrain, Y: a.top(row) + a.side/2, Anchor: scene.Right, Size: scene.Middle, Runs: count(a.laid[nth].Number, telling.RoleOf(nth)).Runs()},
		Role:  telling.RoleOf(nth),
	})
}

func (a *matching) both(s *scene.Scene) {
	a.lay(s, 0, false)
	a.lay(s, 1, false)
}

// gap marks what the longer train has more: a bracket over it, and the cubes that the
// other would need.
func (a *matching) gap(s *scene.Scene) {
	const (
		off, arm = 14, 12 // from the train to the bracket, and its ends
		toText   = 22
	)
	m := a.match
	if m.Gap == 0 {
		x := (a.left(0) + a.left(m.Short)) / 2
		s.Add(telling.Text(scene.Result, x, a.top(1)+a.side+toText+off, scene.Middle, words.CubesSame))
		return
	}
	from, to := a.left(m.Short), a.left(m.Short+m.Gap)
	y, turned, text := a.y-off, arm, -toText
	if m.Longer == 1 {
		y, turned, text = a.top(1)+a.side+off, -arm, toText
	}
	short := int64(1 - m.Longer)
	s.Draw(scene.Result, scene.Bold, scene.Polyline{{X: from, Y: y + turned}, {X: from, Y: y}, {X: to, Y: y}, {X: to, Y: y + turned}})
	label := telling.OnPaper(scene.Words((from+to)/2, y+text, scene.Middle, words.CubesMore(telling.Digits(m.Gap))))
	s.Add(scene.Item{Shape: label, Role: scene.Result})
	s.Draw(scene.Result, scene.Dashed, scene.Rect{X: from, Y: a.top(short), W: to - from, H: a.side})
}

func (a *matching) posed() *scene.Scene {
	s := &scene.Scene{}
	a.both(s)
	return s
}

func (a *matching) asked() notation.Line {
	x, y, _ := a.story.said.Operands()
	first, second := telling.Numeral(x, scene.First), telling.Numeral(y, scene.Second)
	switch a.story.said.Kind {
	case arithmetic.Claim:
		return telling.Join(notation.W(words.BlocksIsItTrue()), first, a.story.said.Rel.String(), second, telling.Unknown())
	case arithmetic.Subtraction:
		return telling.Join(first, "−", second, "=", telling.Unknown())
	}
	return telling.Join(first, telling.Unknown(), second)
}

func (a *matching) answered() notation.Line {
	if a.story.said.Kind == arithmetic.Subtraction {
		return telling.Join(a.operands("−"), "=", telling.Count(a.said.Gap, scene.Result))
	}
	x, y, _ := a.story.said.Operands()
	return telling.Join(telling.Numeral(x, scene.First), notation.N(a.said.Relation.String(), scene.Result), telling.Numeral(y, scene.Second))
}
