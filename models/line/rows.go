package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// mostInRow is how many equal hops still have their names under them.
const mostInRow = 12

// planRow lays out equal hops: a product, a division in groups, counting by a
// number, multiples.
//
//	   +4       +4       +4
//	 /    \   /    \   /    \     2 left over
//	+------+--------+--------+-------+--->
//	0      4        8        12      14
func planRow(p arithmetic.Problem) (*plan, error) {
	if p.Story != arithmetic.NoStory || p.Rest != arithmetic.LeftOver {
		return nil, notMine
	}
	if a, b, two := p.Operands(); two && (wholeInParts(a) || wholeInParts(b)) {
		return nil, errors.New(words.LineWholeHops)
	}
	w, row, err := arithmetic.HopEqually(p)
	if err != nil {
		return nil, rowReason(p, err)
	}
	if row.Count > mostInRow {
		return nil, errors.New(words.LineManyHops)
	}
	const mostTenths = 120 // beyond, the marks of a decimal stand too close
	if _, b, two := p.Operands(); two && b.Form == arithmetic.Decimal && row.Land(row.Count) > mostTenths {
		return nil, errors.New(words.LineTrainTooFine)
	}
	pl := &plan{problem: p, working: w, title: words.LineRowTitle(p, w.Answer)}
	rest := w.Answer.Remainder
	stops := landings(row)
	if rest > 0 {
		stops = append(stops, row.Land(row.Count)+rest)
	}
	k, err := rowSketch(row.Scale, stops, leastHop)
	if err != nil {
		return nil, err
	}
	pl.sketches = []*sketch{k}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartRow:
			pl.startRow(k, m)
		case arithmetic.HopOn:
			pl.hopOn(k, m, i)
		case arithmetic.StopShort:
			k.gaps = append(k.gaps, gap{from: m.At, to: m.Total, size: arithmetic.Int(m.Rest), side: 1, step: i,
				words: words.LineLeftOver, role: scene.First, of: scene.OfFirst, worth: fraction.Whole(m.Rest)})
			pl.step(words.LineStopShort(m), restLine(m))
		case arithmetic.CountHops:
			pl.step(words.LineCountHops(m), pl.rowAnswer())
		}
	}
	pl.asked, pl.answered = pl.rowAsked(row), pl.rowAnswer()
	pl.desc = words.LineRowDesc(p, row, w.Answer, k.broken)
	k.nameFreeWholes()
	if !k.arrange() || row.Scale.Parts > 1 && k.shifted() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// rowReason says in words why there is no row.
func rowReason(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNothing):
		return errors.New(words.LineNoHop)
	case errors.Is(err, arithmetic.ErrUneven):
		return errors.New(words.LineUnevenHops)
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New(words.LineManyHops)
	case p.Kind == arithmetic.Division && !p.Grouping:
		return telling.NotMine(errors.New(words.LineSharing))
	}
	return reason(err)
}

// landings are the start of a row and every place on which it lands.
func landings(row arithmetic.HopRow) []int64 {
	var stops []int64
	for nth := range row.Count + 1 {
		stops = append(stops, row.Land(nth))
	}
	return stops
}

// rowSketch is a line for rows of hops, with stops that are no closer together than
// narrowest. Only the landings have names.
func rowSketch(s arithmetic.Scale, stops []int64, narrowest int64) (*sketch, error) {
	s.Parts = max(s.Parts, 1)
	t, ok := arithmetic.RowStretch(s, stops, lineRoom, brokenRoom, narrowest)
	if !ok {
		return nil, errors.New(words.LineTrainTooFine)
	}
	return &sketch{ruler: rulerFor(t, endSides(t)), mark: t.Mark, long: t.Long, scale: s, hush: -1}, nil
}

// startRow marks where a row begins, and the total of a division.
func (pl *plan) startRow(k *sketch, m arithmetic.StartRow) {
	from := stop{at: m.From, label: runsOf("", m.Number(m.From)), role: scene.Note}
	if pl.problem.Kind == arithmetic.Counting {
		from.role, from.of, from.worth, from.dot = scene.First, scene.OfFirst, m.Worth(m.From), true
	}
	k.addStop(from)
	if m.Total > 0 {
		k.addStop(stop{at: m.Total, label: runsOf("", m.Number(m.Total)), role: scene.First, dot: true})
	}
	pl.step(words.LineRowStart(pl.problem, m), pl.rowAsked(m.HopRow))
}

// hopOn draws some of the hops of a row, in one step.
func (pl *plan) hopOn(k *sketch, m arithmetic.HopOn, step int) {
	pl.drawHopsOn(k, m, step, scene.Second, pl.rowOwner())
	pl.step(words.LineHopOn(pl.problem, m), pl.hopLines(m)...)
}

// rowOwner is the number that the hops of a row add up to: what is put in groups,
// or the answer.
func (pl *plan) rowOwner() scene.Of {
	switch pl.problem.Kind {
	case arithmetic.Division:
		return scene.OfFirst
	case arithmetic.Multiples:
		return scene.OfLeft // all of them, and no one number
	}
	return scene.OfAnswer
}

func (pl *plan) drawHopsOn(k *sketch, m arithmetic.HopOn, step int, role scene.Role, of scene.Of) {
	sign := "+"
	if m.Back {
		sign = "−"
	}
	label := runsOf(sign, m.Step())
	hidden := scene.Always
	if pl.problem.Kind == arithmetic.Division {
		hidden = scene.ShownOnly // to count them is to have the answer
	}
	all := k.namesFit(m)
	// All hops are alike: as many have their name as have room for it right above them.
	wide, room := k.width*int(m.By)/int(k.hi-k.lo), (scene.Text{Size: scene.Small, Runs: label}).Width()+labelGap
	every := int64((room-1)/wide + 1)
	for nth := m.First; nth <= m.Last; nth++ {
		h := hop{from: m.Land(nth - 1), to: m.Land(nth), role: role, of: of, worth: m.Worth(m.By), step: step}
		if h.when = hidden; nth == 1 && hidden == scene.ShownOnly {
			shown := h // while the answer is hidden the first hop shows how long each is
			shown.when, shown.of, shown.worth, shown.label, shown.alone = scene.HiddenOnly, scene.OfNothing, fraction.Fraction{}, label, true
			k.hops = append(k.hops, shown)
		}
		if (nth-1)%every == 0 {
			h.label = label
		}
		k.hops = append(k.hops, h)
		name := pl.landingName(m, nth, step)
		if !all && name.label != nil {
			name.row = [...]int{farRow, nearRow}[nth%2]
		}
		k.addStop(name)
	}
}

// landingName is the name of the place of a landing. With the answer hidden, the
// numbers that are asked for have none.
func (pl *plan) landingName(m arithmetic.HopOn, nth int64, step int) stop {
	n := m.Number(m.Land(nth))
	name := stop{at: m.Land(nth), label: runsOf("", n), also: wholeToo(n), role: scene.Ink, step: step}
	last := nth == m.Count
	switch pl.problem.Kind {
	case arithmetic.Product:
		if last {
			name.role, name.dot, name.asked, name.of = scene.Result, true, true, scene.OfNothing
		}
	case arithmetic.Division:
		if nth > 1 {
			name.when = scene.ShownOnly
		}
	default:
		name.role = scene.Result
		if name.dot, name.asked = last, last; !last && nth > 1 {
			name.when = scene.ShownOnly
		}
		if nth == 1 && !last {
			name.role = scene.Ink // the first one shows how it goes on
		}
	}
	return name
}

// namesFit reports whether the names of the landings stand side by side in one row.
func (k *sketch) namesFit(m arithmetic.HopOn) bool {
	widest := 0
	for nth := range m.Count + 1 {
		size := scene.Small
		if nth == m.Count {
			size = scene.Middle
		}
		t := scene.Text{Size: size, Bold: nth == m.Count, Runs: runsOf("", m.Number(m.Land(nth)))}
		widest = max(widest, t.Width())
	}
	return int(int64(k.width)*m.By/(k.hi-k.lo)) >= widest+labelGap
}

// wholeInParts reports whether a number is whole and written in parts, as 3/3.
func wholeInParts(n arithmetic.Number) bool {
	return n.Form == arithmetic.Common && n.Value.IsWhole()
}
