package groups

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// caption is a line under the groups, and what it says while the answer is hidden.
type caption struct {
	shown, hidden notation.Line
	role          scene.Role
}

// plain is a caption that gives nothing away.
func plain(n int64, words string) caption {
	line := named(notation.Line{number(n)}, words)
	return caption{line, line, scene.Note}
}

// asked is a caption in which the number is what was asked.
func asked(n arithmetic.Number, words, blank string) caption {
	return caption{named(telling.Numeral(n, scene.Ink), words), named(notation.Line{telling.Unknown()}, blank), scene.Result}
}

// named is a number with the words after it, in one piece where it has no fraction.
func named(n notation.Line, words string) notation.Line {
	if len(n) == 1 && n[0].Den == "" {
		return notation.Line{notation.W(n[0].Text + " " + words)}
	}
	return telling.Join(n, notation.W(words))
}

// found names the answer.
func (a *story) found() caption {
	answer, rest := a.read.Found.Number, a.said.Rest
	if a.read.Left == 0 {
		rest = arithmetic.LeftOver
	}
	one, whole := answer.Int64()
	groups := words.GroupsMade(whole && one == 1, rest != arithmetic.OneMore, a.read.Each)
	switch {
	case a.pairs != nil:
		return plain(a.pairs.Pairs, words.GroupsPairs(a.pairs.Pairs))
	case a.taken != nil && a.now.taken > 0:
		taken := words.GroupsTaken(*a.taken)
		return asked(arithmetic.Int(a.taken.Sum), taken, taken)
	case a.taken != nil:
		return plain(a.read.Each, words.GroupsOnEach)
	case a.set.Story == arithmetic.Making:
		return asked(answer, words.GroupsInAll, words.GroupsInAll)
	case a.set.Story == arithmetic.Measuring && rest == arithmetic.AsPart && a.read.Groups == 0:
		return asked(answer, words.GroupsPart(a.read.Each), words.GroupsMade(false, true, a.read.Each))
	case a.set.Story == arithmetic.Measuring:
		return asked(answer, groups, words.GroupsMade(false, rest != arithmetic.OneMore, a.read.Each))
	case rest == arithmetic.OneMore:
		return asked(answer, words.GroupsAtMost, words.GroupsAtMost)
	}
	return asked(answer, words.GroupsOnEach, words.GroupsOnEach)
}

// picture draws how things lie, with the tags of the rings and what is on the
// tray. In the last step answer is set: then what was asked is named, and is a
// question while it is hidden.
func (a *story) picture(s *scene.Scene, before state, answer bool) {
	if a.set.Story != arithmetic.Making {
		shown, role := a.onBoard(), scene.First
		hidden := shown
		if answer && a.waits > 0 {
			hidden = words.ArrayLeftOver("?")
		}
		if a.waits == 0 {
			role = scene.Note
		}
		a.board(s, role, shown, hidden)
	}
	a.draw(s, before, a.now)
	a.tagAll(s, answer)
	if a.set.Story == arithmetic.Making && a.set.Groups == 0 {
		b := a.rings[0]
		s.Add(telling.Text(scene.Note, scene.PaperW/2, b.Y+b.H/2, scene.Small, words.GroupsNone))
	}
}

// onBoard says what is on the tray.
func (a *story) onBoard() string {
	switch {
	case a.set.Total == 0:
		return a.said.Wait(a.pairs != nil)
	case a.waits == 0:
		return words.ArrayNoneLeft
	case a.over:
		return words.ArrayLeftOver(arithmetic.Grouped(a.waits))
	case a.waits == a.set.Total:
		return a.said.Wait(a.pairs != nil)
	}
	return words.ArrayLeft(arithmetic.Grouped(a.waits))
}

// tagAll writes the running total under every ring that is filled, or counts the
// rings where their number is asked for. Part of a group is not counted.
func (a *story) tagAll(s *scene.Scene, answer bool) {
	if !a.tags {
		return
	}
	if a.set.Story == arithmetic.Making {
		for i, n := range a.totals {
			a.tag(s, i, n, i == int(a.set.Groups)-1)
		}
		return
	}
	for i := range a.now.rings {
		if a.now.free == nil || a.now.free[i] == 0 || a.said.Rest == arithmetic.OneMore {
			a.tag(s, i, int64(i+1), answer && i == a.now.rings-1 && a.said.Rest != arithmetic.AsPart)
		}
	}
}
