// Package line draws numbers as places on a line, and sums as hops along it.
package line

import (
	"errors"
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows numbers as places on a line and sums as hops along it.
var Model = &telling.Model{
	Name:  "number-line",
	Title: "Number line",
	Doc:   "Shows numbers as places on a line: sums and differences as hops, which of two is more, what is nearer.",
	Kinds: []arithmetic.Kind{
		arithmetic.Rounding,
		arithmetic.Missing,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Expression,
		arithmetic.Show,
		arithmetic.Ordering,
		arithmetic.Claim,
		arithmetic.Comparison,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.Counting,
		arithmetic.Multiples,
		arithmetic.CommonMultiples,
		arithmetic.Estimate,
		arithmetic.Closer,
	},
	Examples: []string{
		"345 + 278", "402 − 178", "402 − 398", "398 + 17", "345 + 19", "73 − 29", "8 + 6", "13 − 4", "48 + 27", "2 + 6 + 4", "9 − 5 + 7", "0.3 + 0.45", "1.64 + 1.29", "$5.00 − $3.27",
		"7/5 + 4/5", "1/2 + 1/3", "2 1/4 − 3/4", "8 + ? = 11", "? + 3 = 11", "5 = ? − 3", "11 − ? = 8",
		"round 347 to the nearest 10", "round 3,457 to the nearest 1,000", "round 45 to the nearest 10",
		"3/4", "2 3/4", "0.62", "347", "3/4 = 6/8", "5/8 > 2/3", "compare 0.5 and 1/2", "compare 0.3 and 0.25",
		"4 + 1 = 5 + 2", "8 + 4 = 7 + 5", "order 3/4; 1/2; 5/8", "order 0.5; 1/2; 2/5",
		"4,567,890 + 2,345,678",
		"3 × 4", "12 in groups of 3", "14 in groups of 3", "count by 25 from 100 to 225", "count back by 10 from 150 to 90",
		"count by 1/4 from 0 to 1 2/4", "5 × 1/4", "2 ÷ 1/3",
		"which is closer to 1, 3/4 or 7/8",
		"first 6 multiples of 7", "common multiples of 4 and 6",
		"estimate 348 + 231 to the nearest 100", "estimate 83 − 38 to the nearest 10",
	},
	Turn: turn,
	Fits: func(p arithmetic.Problem) error {
		_, err := planFor(p)
		return err
	},
	Tell: func(p arithmetic.Problem) telling.Telling {
		pl, err := planFor(p)
		if err != nil {
			panic("line: a problem that does not fit: " + err.Error())
		}
		return pl.tell()
	},
}

// turn: the line leads where it says best what is asked: rounding, estimates, a
// missing hop, numbers close together, a chain beyond 20, counting by fractions and
// beyond 100. It is a good second picture of sums and differences, and of fractions
// jumped so many times.
func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.Rounding, arithmetic.Missing, arithmetic.Estimate, arithmetic.Closer:
		return telling.Leads
	case arithmetic.Counting:
		if p.Run.Parts > 1 {
			return telling.Leads
		}
		if list := p.Run.List(); len(list) > 0 && max(list[0], list[len(list)-1]) > 100 {
			return telling.Leads
		}
	case arithmetic.Addition:
		return telling.Follows
	case arithmetic.Product, arithmetic.Division:
		if a, b, ok := p.Operands(); ok && (a.Form == arithmetic.Whole || p.Kind == arithmetic.Division) && (b.Form == arithmetic.Common || b.Form == arithmetic.Mixed) {
			return telling.Follows // so many jumps of a fraction
		}
	case arithmetic.Subtraction:
		if arithmetic.CloseDifference(p) && p.Story == arithmetic.NoStory {
			return telling.Leads
		}
		return telling.Follows
	case arithmetic.Expression:
		if hopped(p.Left) && beyond(p.Left, 20) {
			return telling.Leads
		}
	}
	return telling.Serves
}

// beyond reports whether a number of an expression, or what it comes to, is more
// than most.
func beyond(e arithmetic.Expr, most int64) bool {
	v, err := arithmetic.Evaluate(e)
	if err != nil || v.Num() > most*v.Den() {
		return true
	}
	o, is := e.(arithmetic.Operation)
	return is && (beyond(o.Left, most) || beyond(o.Right, most))
}

// plan is a lesson on a number line with everything in its place.
type plan struct {
	problem  arithmetic.Problem
	working  arithmetic.Working
	sketches []*sketch      // one line, or two from the same 0
	steps    []telling.Step // without their scenes
	descs    []scene.Telling
	desc     scene.Telling // of the whole story
	title    scene.Telling
	asked    notation.Line
	answered notation.Line
	why      words.Phrase
	open     bool                             // the hops are not to be drawn to scale
	uneven   bool                             // the hops are not to scale
	extra    func(st *story, top, bottom int) // what goes from line to line
}

// largest bounds the whole numbers of a number line.
const largest = 9_999_999

// planFor works a problem and lays it out; its error says why it does not fit.
func planFor(p arithmetic.Problem) (*plan, error) {
	switch p.Kind {
	case arithmetic.Product, arithmetic.Division, arithmetic.Counting, arithmetic.Multiples:
		return planRow(p)
	case arithmetic.CommonMultiples:
		return planMeeting(p)
	case arithmetic.Estimate:
		return planEstimate(p)
	}
	if !hopped(p.Left) || !hopped(p.Right) {
		return nil, notMine
	}
	if err := checkNumbers(p); err != nil {
		return nil, err
	}
	switch p.Kind {
	case arithmetic.Addition, arithmetic.Subtraction:
		return unstrained(p, planJumps)
	case arithmetic.Expression:
		return unstrained(p, planChain)
	case arithmetic.Missing:
		return unstrained(p, planMissing)
	case arithmetic.Rounding:
		return planRounding(p)
	case arithmetic.Show, arithmetic.Ordering:
		return planPoints(p)
	case arithmetic.Closer:
		return planCloser(p)
	case arithmetic.Claim, arithmetic.Comparison:
		if _, _, ok := p.Operands(); ok {
			return planPair(p)
		}
		return planTrains(p)
	}
	return nil, notMine
}

// unstrained plans a lesson to scale, or not to scale where the names would have
// to stand too far from what they name.
func unstrained(p arithmetic.Problem, plans func(arithmetic.Problem, bool) (*plan, error)) (*plan, error) {
	pl, err := plans(p, false)
	if err != nil || !pl.strained() {
		return pl, err
	}
	if open, err := plans(p, true); err == nil && !open.strained() {
		return open, nil
	}
	return pl, nil
}

// strained reports whether a name stands far from what it names, or in a second row
// that it need not be in, on a line without marks.
func (pl *plan) strained() bool {
	const far = 36
	for _, k := range pl.sketches {
		if k.mark > 0 {
			continue // its marks, which are even, are worth more
		}
		for _, l := range append(slices.Clone(k.above), k.below...) {
			if abs(l.centre-l.x) > far || l.row == 1 && l.fixed == 0 {
				return true
			}
		}
	}
	return false
}

// notMine says what a number line shows, of a problem that is none of it.
var notMine = telling.NotMine(errors.New(words.LineKinds))

// hopped reports whether an expression has no operations but sums and
// differences, which are hops.
func hopped(e arithmetic.Expr) bool {
	o, is := e.(arithmetic.Operation)
	return !is || (o.Op == arithmetic.Add || o.Op == arithmetic.Subtract) && hopped(o.Left) && hopped(o.Right)
}

// checkNumbers checks every number of a problem against the bounds.
func checkNumbers(p arithmetic.Problem) error {
	var list []arithmetic.Number
	var walk func(e arithmetic.Expr)
	walk = func(e arithmetic.Expr) {
		switch e := e.(type) {
		case arithmetic.Number:
			list = append(list, e)
		case arithmetic.Operation:
			walk(e.Left)
			walk(e.Right)
		}
	}
	walk(p.Left)
	walk(p.Right)
	for _, n := range append(list, p.List...) {
		switch {
		case n.Form == arithmetic.Percent:
			return notMine
		case n.Value.Sign() < 0:
			return errors.New(words.LineNegative)
		case n.Value.Num()/n.Value.Den() > largest:
			return errors.New(words.LineLarge)
		case n.Value.Den() > 1000 || n.Places > 3:
			return errors.New(words.LineFine)
		case (n.Form == arithmetic.Common || n.Form == arithmetic.Mixed) && n.Value.Num() > largest:
			return errors.New(words.LineLarge)
		}
	}
	return nil
}

// tell draws the plan.
func (pl *plan) tell() telling.Telling {
	st := &story{bottom: scene.Margin}
	const between = 24 // of two lines
	for i, k := range pl.sketches {
		top := st.bottom
		if i > 0 {
			top += between
		}
		st.bottom = k.draw(st, top)
	}
	if pl.extra != nil {
		pl.extra(st, scene.Margin, st.bottom)
	}
	if pl.uneven {
		note := telling.Text(scene.Note, scene.PaperW/2, st.bottom+34, scene.Small, words.LineUneven)
		st.add(0, 0, note)
		st.bottom = note.Shape.Box().Bottom()
	}
	for i := range pl.steps {
		s := st.picture(i)
		s.Title, s.Desc = pl.title, pl.say(pl.descs[i])
		pl.steps[i].Scene = s
	}
	whole := st.whole()
	whole.Title, whole.Desc = pl.title, pl.say(pl.desc)
	const air = 12 // more room above the equation: names hang below the line
	telling.Equation(whole, st.bottom+air, pl.asked, pl.answered)
	return telling.Telling{Answer: pl.working.Answer, Pieces: pieces(), Steps: pl.steps, Whole: whole, Why: pl.why}
}

func (pl *plan) say(t scene.Telling) scene.Telling {
	if pl.uneven {
		t.Shown += " " + words.LineUnevenSentence
		t.Hidden += " " + words.LineUnevenSentence
	}
	return t
}

func pieces() []telling.Piece {
	return []telling.Piece{{Name: words.LinePaper, Count: 1}, {Name: words.LineMarker, Count: 1}}
}

// step adds a step of the lesson.
func (pl *plan) step(told words.LineTold, symbols ...notation.Line) {
	symbols = slices.DeleteFunc(symbols, func(l notation.Line) bool { return len(l) == 0 })
	pl.steps = append(pl.steps, telling.Step{Title: told.Title, Hands: told.Hands, Ask: told.Ask, Symbols: notation.Lines(symbols...)})
	pl.descs = append(pl.descs, told.Desc)
}
