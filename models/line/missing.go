package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planMissing lays out an equation with a number missing: the unknown is a hop or
// the place where a hop starts, and it has a question mark until it is found.
func planMissing(p arithmetic.Problem, open bool) (*plan, error) {
	w, err := arithmetic.FindByJumps(p)
	if err != nil {
		if errors.Is(err, arithmetic.ErrNegative) {
			return nil, errors.New(words.LineNoSuch)
		}
		return nil, reason(err)
	}
	look := w.Moves[0].(arithmetic.LookFor)
	if mixesForms(look.Known, look.Total) {
		return nil, errors.New(words.LineMixes)
	}
	s, err := arithmetic.CommonScale(look.Known, look.Total)
	if err != nil {
		return nil, reason(err)
	}
	pl := &plan{problem: p, working: w, open: open}
	roles := missingRoles(look)
	pl.asked = missingLine(look, roles, notation.Line{telling.Unknown()})
	pl.answered = missingLine(look, roles, telling.Numeral(w.Answer.Number, scene.Result))
	pl.title = scene.Telling{Shown: words.LineFilled(p, w.Answer), Hidden: p.String()}
	k, err := pl.lay(s)
	if err != nil {
		return nil, err
	}
	k.hush = s.Count(w.Answer.Number)
	if look.Start {
		pl.missingStart(k, look, roles)
	} else {
		pl.missingHop(k, look, roles)
	}
	pl.sketches = []*sketch{k}
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// roles are whose the two known numbers are: the one that is written first is
// the first.
type roles struct {
	known, total     scene.Role
	knownOf, totalOf scene.Of
}

func missingRoles(look arithmetic.LookFor) roles {
	if look.OnRight {
		return roles{scene.Second, scene.First, scene.OfSecond, scene.OfFirst}
	}
	return roles{scene.First, scene.Second, scene.OfFirst, scene.OfSecond}
}

// missingLine is the equation with something in the place of the blank.
func missingLine(look arithmetic.LookFor, r roles, filled notation.Line) notation.Line {
	sides := [2]notation.Line{telling.Numeral(look.Known, r.known), filled}
	if look.Start {
		sides[0], sides[1] = sides[1], sides[0]
	}
	operation := telling.Join(sides[0], notation.S(look.Op.String()), sides[1])
	total := telling.Numeral(look.Total, r.total)
	if look.OnRight {
		return telling.Join(total, notation.S("="), operation)
	}
	return telling.Join(operation, notation.S("="), total)
}

// missingHop tells a + ? = c and c − ? = d: both ends are known.
func (pl *plan) missingHop(k *sketch, look arithmetic.LookFor, r roles) {
	k.addStop(k.fromZero(look.Known, r.known, r.knownOf))
	k.addStop(stop{at: k.scale.Count(look.Total), label: runsOf("", look.Total), role: r.total, of: r.totalOf, worth: look.Total.Value, dot: true})
	jumps := jumpsOf(pl.working)
	sign := look.Op.String()
	pl.step(words.LineLookForHop(look, r.known, r.total), pl.asked)
	pl.wayBetween(k, look.Known, look.Total, jumps, sign, 1)
	if len(jumps) < 2 {
		pl.step(words.LineFoundHop(look, pl.working.Answer), pl.answered)
	}
	pl.desc = words.LineWayDesc(pl.problem, look.Known, look.Total, jumps, pl.working.Answer, k.broken)
}

// missingStart tells ? + b = c and ? − b = c: the hop and its end are known. The
// hop is undone from its end, and then made again from the number that was found.
func (pl *plan) missingStart(k *sketch, look arithmetic.LookFor, r roles) {
	undo := jumpsOf(pl.working)
	start := pl.working.Answer.Number
	check := len(undo) + 1
	sign, back := "+", "−"
	if look.Op == arithmetic.Subtract {
		sign, back = back, sign
	}
	k.addStop(stop{at: k.scale.Count(look.Total), label: runsOf("", look.Total), role: r.total, of: r.totalOf, worth: look.Total.Value, dot: true})
	k.addStop(stop{at: k.scale.Count(start), label: runsOf("", start), role: scene.Result, of: scene.OfAnswer, worth: start.Value,
		dot: true, asked: true, posed: len(undo), when: scene.ShownOnly, step: len(undo)})
	pl.step(words.LineLookForStart(look, r.known, r.total), pl.asked)
	again := hop{from: k.scale.Count(start), to: k.scale.Count(look.Total), label: runsOf(sign, look.Known), role: r.known, of: r.knownOf,
		worth: look.Known.Value, alone: true}
	posed, hidden, made := again, again, again
	posed.when, posed.until = scene.ShownOnly, 1
	hidden.when = scene.HiddenOnly
	made.when, made.step = scene.ShownOnly, check
	if len(undo) > 0 {
		k.hops = append(k.hops, posed, hidden, made)
	}
	for i, m := range undo {
		k.hops = append(k.hops, hop{from: k.scale.Count(m.From), to: k.scale.Count(m.To), label: runsOf(back, m.By), role: scene.Ink,
			when: scene.ShownOnly, step: 1 + i, until: check})
		if i < len(undo)-1 {
			k.addStop(stop{at: k.scale.Count(m.To), label: runsOf("", m.To), when: scene.ShownOnly, step: 1 + i, until: check})
		}
		pl.step(words.LineUndo(m, i == 0, i == len(undo)-1, pl.working.Answer), jumpLine(m, back, i == len(undo)-1))
	}
	pl.step(words.LineCheck(look, start, r.known, r.total), pl.answered)
	pl.desc = words.LineStartDesc(pl.problem, look, undo, pl.working.Answer)
}
