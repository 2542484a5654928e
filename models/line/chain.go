package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// mostHops is how many hops of a chain still have their labels side by side.
const mostHops = 5

// planChain lays out a chain of sums and differences: one hop for each number, and
// the next begins where the last one ended.
func planChain(p arithmetic.Problem, open bool) (*plan, error) {
	w, s, err := arithmetic.AddChain(p)
	if err != nil {
		return nil, reason(err)
	}
	jumps := jumpsOf(w)
	start := w.Moves[0].(arithmetic.StartAt)
	if err := chainFits(s, start.At, jumps); err != nil {
		return nil, err
	}
	pl := &plan{problem: p, working: w, open: open, title: told(p, w.Answer)}
	expr := chainLine(start.At, jumps)
	pl.asked = telling.Join(expr, "=", telling.Unknown())
	pl.answered = telling.Join(expr, "=", resultLine(w.Answer))
	k, err := pl.lay(s)
	if err != nil {
		return nil, err
	}
	k.turns(jumps)
	k.addStop(k.fromZero(start.At, scene.First, scene.OfFirst))
	pl.step(words.LineChainStart(start, jumps), pl.asked)
	for i, m := range jumps {
		last, sign := i == len(jumps)-1, sign(m)
		k.hops = append(k.hops, hop{from: s.Count(m.From), to: s.Count(m.To), label: runsOf(sign, m.By), role: scene.Second,
			of: scene.OfNth(i + 1), worth: m.By.Value, step: i + 1, tells: words.LineTells(m, w.Answer)})
		if last && m.To.Value.Equal(start.At.Value) {
			k.comeHome(m, i+1, w.Answer)
		} else {
			k.addStop(k.landing(m, i+1, last, w.Answer))
		}
		pl.step(words.LineJump(m, last, w.Answer), jumpLine(m, sign, last))
	}
	pl.sketches = []*sketch{k}
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	pl.desc = words.LineChainDesc(p, start, jumps, w.Answer, k.broken)
	return pl, nil
}

// chainFits checks what a chain has besides its numbers.
func chainFits(s arithmetic.Scale, first arithmetic.Number, jumps []arithmetic.Jump) error {
	numbers := []arithmetic.Number{first}
	for _, j := range jumps {
		if j.By.Value.Sign() == 0 {
			return errors.New(words.LineNoJump)
		}
		numbers = append(numbers, j.By)
	}
	for _, j := range jumps[:len(jumps)-1] {
		if jumps[len(jumps)-1].To.Value.Equal(j.To.Value) {
			return errors.New(words.LineSamePlace)
		}
	}
	if overlap(jumps) {
		return errors.New(words.LineOverlap)
	}
	if mixesForms(numbers...) {
		return errors.New(words.LineMixes)
	}
	if len(numbers) > mostHops+1 {
		return errors.New(words.LineLongChain)
	}
	for _, n := range numbers {
		if fractional(s) && !n.Value.IsWhole() && n.Value.Den() != s.Parts {
			return errors.New(words.LineUnlikeChain)
		}
	}
	return nil
}

// comeHome ends a chain on the number that it began with.
func (k *sketch) comeHome(m arithmetic.Jump, step int, a arithmetic.Answer) {
	at := k.scale.Count(m.To)
	for i := range k.stops {
		if s := &k.stops[i]; s.at == at {
			s.turn, s.turned = step, scene.Result
		}
	}
	k.stops = append(k.stops, stop{at: at, role: scene.Result, of: scene.OfAnswer, worth: a.Number.Value, dot: true, when: scene.ShownOnly, step: step})
}

// overlap reports whether two jumps of one direction lie on the same stretch.
func overlap(jumps []arithmetic.Jump) bool {
	ends := func(j arithmetic.Jump) (lo, hi fraction.Fraction) {
		if j.Back {
			return j.To.Value, j.From.Value
		}
		return j.From.Value, j.To.Value
	}
	for i, a := range jumps {
		for _, b := range jumps[:i] {
			loA, hiA := ends(a)
			loB, hiB := ends(b)
			if a.Back == b.Back && loA.Cmp(hiB) < 0 && loB.Cmp(hiA) < 0 {
				return true
			}
		}
	}
	return false
}

// turns lets hops back go below the line where others go forward. Then only the
// places of the hops have names, and 0: the others would stand far below their
// marks.
func (k *sketch) turns(jumps []arithmetic.Jump) {
	for _, j := range jumps {
		k.twoWays = k.twoWays || j.Back != jumps[0].Back
	}
	if !k.twoWays {
		return
	}
	k.numbered = 0
	last := jumps[len(jumps)-1].To.Value // which has its own name
	if k.lo == 0 && !k.broken && !k.uneven() && last.Sign() != 0 {
		k.addStop(stop{label: runsOf("", k.scale.WriteShort(0)), role: scene.Note})
	}
}

func sign(m arithmetic.Jump) string {
	if m.Back {
		return "−"
	}
	return "+"
}

// chainLine is the chain with the first number in its role and the others in that
// of what is jumped.
func chainLine(first arithmetic.Number, jumps []arithmetic.Jump) notation.Line {
	line := telling.Numeral(first, scene.First)
	for _, j := range jumps {
		line = telling.Join(line, sign(j), telling.Numeral(j.By, scene.Second))
	}
	return line
}
