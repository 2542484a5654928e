package balance

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// finding is an equation with a blank while it is told.
type finding struct {
	*picture
	problem arithmetic.Problem
	sides   [2]arithmetic.Pan
	blank   int // the side of the bag
	counted bool
	take    arithmetic.TakeBoth
}

// tellMissing takes the same from both pans until the bag stands alone, and opens
// it.
func tellMissing(p arithmetic.Problem, w arithmetic.Working, l layout) telling.Telling {
	k := findingOf(p, w, l)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(max(1, k.sides[0].Laid()+k.sides[1].Laid()+k.found), l.cube > 0, true)}
	title := scene.Telling{Shown: words.LineFilled(p, w.Answer), Hidden: p.String()}
	total, taken := false, false
	for _, m := range w.Moves {
		s := &scene.Scene{Title: title}
		var told words.BalanceTold
		var lines []notation.Line
		state := stage{total: total, taken: taken}
		switch m := m.(type) {
		case arithmetic.SetLevel:
			told, lines = words.BalanceSet(m, l.cube > 0), []notation.Line{k.equation(notation.Line{telling.Unknown()})}
		case arithmetic.CountPan:
			total, state.total = true, true
			told, lines = words.BalanceCount(m), []notation.Line{countedLine(m.Pan), k.against(m.Value)}
		case arithmetic.TakeBoth:
			taken, total = true, false
			state = stage{taken: true, ghosts: true}
			told, lines = words.BalanceTake(m, l.cube > 0), []notation.Line{k.takenLine(), k.alone(m.Left, scene.Ink)}
		case arithmetic.OpenBlank:
			state.open, state.moved, state.total = true, true, false
			told, lines = words.BalanceOpen(p, m), []notation.Line{k.opened(), k.equation(notation.Line{telling.Count(m.Number, scene.Result)})}
		}
		k.draw(s, state)
		s.Desc = told.Desc
		k.close(s)
		t.Steps = append(t.Steps, telling.Step{Title: told.Title, Hands: told.Hands, Ask: told.Ask, Scene: s, Symbols: notation.Lines(lines...)})
	}
	t.Whole = &scene.Scene{Title: title, Desc: words.BalanceFoundDesc(p, k.sides[0], k.sides[1], k.take, k.found)}
	for _, state := range []stage{{open: true, ghosts: true, when: scene.ShownOnly}, {when: scene.HiddenOnly}} {
		state.taken = state.ghosts
		k.draw(t.Whole, state)
	}
	telling.Equation(t.Whole, k.table, k.equation(notation.Line{telling.Unknown()}), k.equation(notation.Line{telling.Count(k.found, scene.Result)}))
	return t
}

func findingOf(p arithmetic.Problem, w arithmetic.Working, l layout) *finding {
	k := &finding{problem: p}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.SetLevel:
			k.sides = [2]arithmetic.Pan{m.Left, m.Right}
		case arithmetic.CountPan:
			k.counted = true
		case arithmetic.TakeBoth:
			k.take = m
		case arithmetic.OpenBlank:
			k.blank = m.Blank
			k.picture = place(l, k.counted, false)
			k.found = m.Number
		}
	}
	return k
}

// stage is how far the lesson has come in a picture.
type stage struct {
	total  bool // the pan without the blank is counted
	taken  bool // the same is taken from both
	ghosts bool // and can still be seen
	open   bool // the bag is open
	moved  bool // it has just been opened
	when   scene.When
}

func (k *finding) draw(s *scene.Scene, at stage) {
	k.addBalance(s, 0, false, at.when)
	for side := range k.sides {
		p := loaded{side: side, when: at.when, owners: k.owners(side), blank: "?", gone: !at.ghosts}
		if at.taken {
			p.taken = k.take.By
		}
		if side == k.blank && at.open {
			k.opening(s, p, at)
			continue
		}
		k.addPieces(s, p)
		k.addNames(s, p)
		if at.total && side != k.blank {
			k.addTotal(s, p, k.sides[side].Value, scene.Moved)
		}
	}
	k.addSign(s, arithmetic.Equal.String(), scene.Ink, at.when)
}

// opening draws the pan with the open bag, and with the closed one while the answer
// is hidden.
func (k *finding) opening(s *scene.Scene, p loaded, at stage) {
	open := p
	open.blank, open.owners = "", slices.Clone(p.owners)
	if at.when == scene.Always {
		open.when, p.when = scene.ShownOnly, scene.HiddenOnly
		k.addPieces(s, p)
		k.addNames(s, p)
	}
	for i, slot := range k.slots[p.side] {
		if slot.Blank && at.moved {
			open.owners[i].role = scene.Moved
		}
	}
	k.addPieces(s, open)
	k.addNames(s, open)
}

// owners are whose the groups of a side are. Those of the known numbers go by
// their place in the problem; a product or a difference is not one of its numbers.
func (k *finding) owners(side int) []owner {
	var list []owner
	nth := 0
	for i, pan := range k.sides {
		for _, g := range pan.Groups {
			own := owner{role: roleOf(i)}
			switch {
			case g.Blank:
				own = owner{scene.Result, scene.OfAnswer}
			case g.Times > 0 || g.Off > 0:
				nth += 2
			default:
				own.of = scene.OfNth(nth)
				nth++
			}
			if i == side {
				list = append(list, own)
			}
		}
	}
	return list
}

// equation is the problem with something in the place of the blank.
func (k *finding) equation(blank notation.Line) notation.Line {
	return telling.Join(sideLine(k.sides[0], scene.First, blank), "=", sideLine(k.sides[1], scene.Second, blank))
}

// against is the counted pan against the other: 12 = ? + 5.
func (k *finding) against(total int64) notation.Line {
	return k.between(notation.Line{telling.Count(total, roleOf(1-k.blank))}, sideLine(k.sides[k.blank], roleOf(k.blank), notation.Line{telling.Unknown()}))
}

// takenLine takes the same away from the pan without the blank: 12 − 5 = 7.
func (k *finding) takenLine() notation.Line {
	role := roleOf(1 - k.blank)
	return telling.Join(telling.Count(k.take.From, role), "−", telling.Count(k.take.By, scene.Moved), "=", telling.Count(k.take.Left, role))
}

// alone is the blank against what is left: 7 = ?
func (k *finding) alone(left int64, role scene.Role) notation.Line {
	return k.between(notation.Line{telling.Count(left, role)}, notation.Line{telling.Unknown()})
}

func (k *finding) opened() notation.Line {
	return telling.Join(telling.Unknown(), "=", telling.Count(k.found, scene.Result))
}

// between writes the pan without the blank and the other in their places.
func (k *finding) between(known, blank notation.Line) notation.Line {
	if k.blank == 0 {
		known, blank = blank, known
	}
	return telling.Join(known, "=", blank)
}
