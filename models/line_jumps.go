package models

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// planJumps lays out a sum or a difference as hops.
func planJumps(p arithmetic.Problem) (*linePlan, error) {
	a, b, ok := p.Operands()
	if !ok {
		return nil, errors.New(words.LineKinds)
	}
	if mixesForms(a, b) {
		return nil, errors.New(words.LineMixes)
	}
	work, op := arithmetic.AddByJumps, arithmetic.Add
	if p.Kind == arithmetic.Subtraction {
		work, op = arithmetic.SubtractByJumps, arithmetic.Subtract
	}
	w, err := work(p)
	if err != nil {
		return nil, lineError(err)
	}
	s, err := arithmetic.CommonScale(a, b)
	if err != nil {
		return nil, lineError(err)
	}
	pl := &linePlan{problem: p, working: w, title: told(p, w.Answer)}
	pl.asked = join(numeral(a, scene.First), notation.S(op.String()), numeral(b, scene.Second), notation.S("="), unknown())
	pl.answered = join(pl.asked[:len(pl.asked)-1], resultLine(w.Answer))
	k, err := pl.lay(s, a, b)
	if err != nil {
		return nil, err
	}
	if jumps := jumpsOf(w); p.Kind == arithmetic.Subtraction && len(jumps) > 0 && !jumps[0].Back {
		pl.countUp(k, p, a, b)
	} else {
		pl.jumpAlong(k, p, a, b)
	}
	pl.sketches = []*lineSketch{k}
	k.nameOne()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// mixesForms reports whether a decimal and a fraction stand together.
func mixesForms(numbers ...arithmetic.Number) bool {
	var fractions, decimals bool
	for _, n := range numbers {
		fractions = fractions || n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
		decimals = decimals || n.Form == arithmetic.Decimal || n.Form == arithmetic.Money
	}
	return fractions && decimals
}

// lineError says in words why a problem cannot be worked on a line.
func lineError(err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New(words.LineNegative)
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New(words.LineLarge)
	}
	return errors.New(words.LineKinds)
}

// told is the title of every picture of a problem: the problem and its answer.
func told(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + words.LineAnswer(a), Hidden: p.String() + " = ?"}
}

// resultLine is an answer, with its final name where that is another.
func resultLine(a arithmetic.Answer) notation.Line {
	line := numeral(a.Number, scene.Result)
	if a.Simplest != a.Number {
		line = join(line, notation.S("="), numeral(a.Simplest, scene.Result))
	}
	return line
}

// lay chooses the stretch of line for all the stops of the working and begins the
// sketch, to scale where the narrowest hop can be seen.
func (pl *linePlan) lay(s arithmetic.Scale, ends ...arithmetic.Number) (*lineSketch, error) {
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
		return &lineSketch{lineRuler: rulerFor(t), mark: t.Mark, long: t.Long, numbered: t.Long, scale: s, hush: -1}, nil
	}
	if s.Form == arithmetic.Common || s.Form == arithmetic.Mixed {
		return nil, errors.New(words.LineFine)
	}
	pl.uneven = true
	return &lineSketch{lineRuler: unevenRuler(stops, needs), scale: s, hush: -1}, nil
}

// fromZero marks a number as the length from 0, where the line begins there, or
// else as a point.
func (k *lineSketch) fromZero(n arithmetic.Number, role scene.Role, of scene.Of) lineStop {
	at := k.scale.Count(n)
	stop := lineStop{at: at, label: wholeToo(n), role: role, of: of, dot: true}
	if !k.broken && k.lo == 0 && at > 0 && !k.uneven() {
		k.lengths = append(k.lengths, lineLength{to: at, role: role, of: of, worth: n.Value})
		return stop
	}
	stop.worth = n.Value
	return stop
}

// jumpAlong tells hops from the first number: every landing is named, the last
// one is the answer.
func (pl *linePlan) jumpAlong(k *lineSketch, p arithmetic.Problem, a, b arithmetic.Number) {
	jumps := jumpsOf(pl.working)
	sign := "+"
	if p.Kind == arithmetic.Subtraction {
		sign = "−"
	}
	k.addStop(k.fromZero(a, scene.First, scene.OfFirst))
	done, cut := 0, scene.Telling{}
	for i, m := range pl.working.Moves {
		switch m := m.(type) {
		case arithmetic.StartAt:
			pl.step(words.LineStart(p, a, b, jumps), pl.asked, splitLine(b, jumps))
		case arithmetic.Recut:
			pl.recut(k, m, i)
			told := words.LineRecut(m)
			cut = told.Desc
			pl.step(told, renamedLine(m.First, m.FirstAs, scene.First), renamedLine(m.Second, m.SecAs, scene.Second))
		case arithmetic.Jump:
			done++
			last := done == len(jumps)
			k.hops = append(k.hops, lineHop{from: k.scale.Count(m.From), to: k.scale.Count(m.To), label: runsOf(sign, m.By),
				role: scene.Second, of: scene.OfSecond, worth: m.By.Value, step: i, tells: words.LineTells(m, pl.working.Answer)})
			k.addStop(k.landing(m, i, last, pl.working.Answer))
			pl.step(words.LineJump(m, last, pl.working.Answer), jumpLine(m, sign, last))
		}
	}
	if len(jumps) == 0 {
		pl.step(words.LineStay(p, a), join(pl.answered))
	}
	pl.desc = words.LineJumpsDesc(p, cut, jumps, pl.working.Answer, k.broken)
}

// recut begins with the parts of the first fraction and cuts the line in the
// common parts in the step for it; then the first fraction has two names.
func (pl *linePlan) recut(k *lineSketch, m arithmetic.Recut, step int) {
	if k.hi-k.lo <= mostCommon {
		k.mark = 0
		if own := m.First.Value.Den(); own > 1 && own < m.Parts {
			k.cuts = append(k.cuts, lineCut{every: m.Parts / own})
		}
		common := arithmetic.CutStretch{Parts: m.Parts, Each: m.Each, Of: m.First}
		k.cuts = append(k.cuts, lineCut{every: 1, move: common, step: step, named: true})
	}
	for i := range k.stops {
		if s := &k.stops[i]; s.role == scene.First && m.FirstAs != m.First {
			s.turn, s.turned = step, scene.First
			s.later = append(append(runsOf("", m.First), scene.Run{Text: " = "}), runsOf("", m.FirstAs)...)
		}
	}
	a, b, sign := numeral(m.FirstAs, scene.First), numeral(m.SecAs, scene.Second), pl.asked[len(pl.asked)-2]
	op := arithmetic.Add
	if pl.problem.Kind == arithmetic.Subtraction {
		op = arithmetic.Subtract
	}
	pl.answered = join(pl.asked[:len(pl.asked)-1], a, notation.S(op.String()), b, sign, resultLine(pl.working.Answer))
}

// renamedLine is 1/2 = 3/6, or nothing where the name stays.
func renamedLine(was, is arithmetic.Number, role scene.Role) notation.Line {
	if was == is {
		return nil
	}
	return join(numeral(was, role), notation.S("="), numeral(is, role))
}

// mostCommon is how many common parts the line is still cut in one by one.
const mostCommon = 60

// landing is where a hop lands; the last one is the answer.
func (k *lineSketch) landing(m arithmetic.Jump, step int, last bool, a arithmetic.Answer) lineStop {
	stop := lineStop{at: k.scale.Count(m.To), label: runsOf("", m.To), role: scene.Ink, step: step}
	if last {
		stop.role, stop.of, stop.dot, stop.asked, stop.worth = scene.Result, scene.OfAnswer, true, true, a.Number.Value
		// A landing on a whole number has the name of the whole number.
		if stop.label = runsOf("", a.Number); a.Number.Form == arithmetic.Common && a.Number.Value.IsWhole() {
			stop.label = runsOf("", a.Simplest)
		}
	}
	return stop
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
func (k *lineSketch) nameOne() {
	if k.broken || k.uneven() || k.scale.Parts == 1 || k.scale.Form == arithmetic.Money {
		return
	}
	for _, at := range []int64{0, k.scale.Parts} {
		if at <= k.hi {
			k.addStop(lineStop{at: at, label: runsOf("", k.scale.WriteShort(at)), role: scene.Note})
		}
	}
}

// addStop adds a stop; where one stands already the first one stays.
func (k *lineSketch) addStop(s lineStop) {
	for _, other := range k.stops {
		if other.at == s.at {
			return
		}
	}
	k.stops = append(k.stops, s)
}

// jumpLine is a hop in symbols: 345 + 200 = 545.
func jumpLine(m arithmetic.Jump, sign string, last bool) notation.Line {
	role := scene.Ink
	if last {
		role = scene.Result
	}
	return join(numeral(m.From, scene.Ink), notation.S(sign), numeral(m.By, scene.Moved), notation.S("="), numeral(m.To, role))
}

// splitLine says how the second number is split: 278 = 200 + 70 + 8. It is
// nothing when there is one hop.
func splitLine(b arithmetic.Number, jumps []arithmetic.Jump) notation.Line {
	if len(jumps) < 2 {
		return nil
	}
	line := join(numeral(b, scene.Second), notation.S("="))
	for i, j := range jumps {
		if i > 0 {
			line = join(line, notation.S("+"))
		}
		line = join(line, numeral(j.By, scene.Second))
	}
	return line
}

func jumpsOf(w arithmetic.Working) []arithmetic.Jump {
	var jumps []arithmetic.Jump
	for _, m := range w.Moves {
		if j, ok := m.(arithmetic.Jump); ok {
			jumps = append(jumps, j)
		}
	}
	return jumps
}
