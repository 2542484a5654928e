package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// comparing is a comparison with blocks while it is told: two numbers, one above
// the other, place by place.
type comparing struct {
	problem  arithmetic.Problem
	mat      mat
	laid     [2]arithmetic.LayOut
	compared []arithmetic.ComparePlace // in the order of the moves, the largest place first
	sign     arithmetic.WriteSign
	written  telling.Columns
}

func tellCompared(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.CompareByPlace(p))
	k := comparingOf(w)
	k.layOut()
	last := k.compared[len(k.compared)-1]
	t := telling.Telling{
		Answer: w.Answer,
		Pieces: pieces(k.laid[0].Counts.Plus(k.laid[1].Counts)),
		Why:    words.BlocksWhy(k.sign, last, k.mat.top),
	}
	done := 0
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.base()}
		shown := &scene.Scene{}
		k.mat.layAll(shown, 0, k.laid[0].Counts, ofFirst)
		desc, answers := words.BlocksDescTwo(k.laid[0], k.laid[1]), false
		switch move := move.(type) {
		case arithmetic.LayOut:
			if move.Nth == 0 {
				desc = words.BlocksDescLaid(move)
			}
			step.Title, step.Hands, step.Ask = words.BlocksLayOut(move)
		case arithmetic.ComparePlace:
			done++
			answers = move == last
			desc = words.Sentences(desc, words.BlocksCompared(move))
			k.mat.frame(shown, move.Power, scene.Moved)
			k.written.Touch(move.Power)
			step.Title, step.Hands, step.Ask = words.BlocksCompare(move, move.Power > 0)
		case arithmetic.WriteSign:
			answers = true
			desc = words.Sentences(desc, t.Why.String())
			k.mat.frame(shown, last.Power, scene.Result)
			step.Title, step.Hands, step.Ask = words.BlocksSign(move)
		}
		if lay, ok := move.(arithmetic.LayOut); !ok || lay.Nth == 1 {
			k.mat.layAll(shown, 1, k.laid[1].Counts, ofSecond)
		}
		k.tallies(shown, done)
		step.Symbols = k.written.Block()
		if move == arithmetic.Move(k.sign) {
			step.Symbols = notation.Lines(k.answered())
		}
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Same(desc)
		if answers {
			telling.AddPart(step.Scene, scene.ShownOnly, shown)
			telling.AddPart(step.Scene, scene.HiddenOnly, k.posed())
			step.Scene.Desc = scene.Telling{Shown: desc, Hidden: k.asked()}
		} else {
			telling.AddPart(step.Scene, scene.Always, shown)
		}
		t.Steps = append(t.Steps, step)
	}
	t.Whole = k.whole(t.Why.String())
	return t
}

func comparingOf(w arithmetic.Working) *comparing {
	k := &comparing{problem: w.Problem}
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid[move.Nth] = move
		case arithmetic.ComparePlace:
			k.compared = append(k.compared, move)
		case arithmetic.WriteSign:
			k.sign = move
		}
	}
	return k
}

func (k *comparing) layOut() {
	first, second := k.laid[0].Counts, k.laid[1].Counts
	top := max(first.Top(), second.Top())
	gutter := 0
	for n, role := range []scene.Role{scene.First, scene.Second} {
		gutter = max(gutter, telling.Width(ofRole(k.laid[n].Number, role), scene.Small, false)+bandLabelGap)
	}
	lines := make([][]notation.Line, top+1)
	for _, move := range k.compared {
		lines[move.Power] = []notation.Line{digitsCompared(move)}
	}
	k.mat = layMat(demand{numbers: []arithmetic.Counts{first, second}, slots: []arithmetic.Counts{first, second}, top: top, gutter: gutter, floor: floors(lines...)})
	k.written = telling.Columns{Top: top, First: first, Second: second}
}

func (k *comparing) base() *scene.Scene {
	s := k.mat.base()
	k.mat.name(s, "", ofRole(k.laid[0].Number, scene.First), ofRole(k.laid[1].Number, scene.Second))
	return s
}

// digitsCompared is what holds of two digits: 4 < 7.
func digitsCompared(m arithmetic.ComparePlace) notation.Line {
	return telling.Join(ofRole(m.First, scene.First), notation.S(m.Relation.String()), ofRole(m.Second, scene.Second))
}

// tallies writes under each tray what holds of the places compared so far.
func (k *comparing) tallies(s *scene.Scene, done int) {
	for _, m := range k.compared[:done] {
		k.mat.tally(s, m.Power, digitsCompared(m))
	}
}

func (k *comparing) posed() *scene.Scene {
	s := &scene.Scene{}
	k.mat.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(s, 1, k.laid[1].Counts, ofSecond)
	return s
}

func (k *comparing) asked() string {
	return words.BlocksDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksWhichMore()
}

func (k *comparing) answered() notation.Line {
	a, b, _ := k.problem.Operands()
	return telling.Join(telling.Numeral(a, scene.First), notation.N(k.sign.Relation.String(), scene.Result), telling.Numeral(b, scene.Second))
}

// whole is the two numbers with the place that decides outlined. Places to the
// right of it say nothing, so nothing stands under them.
func (k *comparing) whole(why string) *scene.Scene {
	shown := &scene.Scene{}
	last := k.compared[len(k.compared)-1]
	if last.Relation != arithmetic.Equal {
		k.mat.frame(shown, last.Power, scene.Result)
	}
	k.mat.layAll(shown, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(shown, 1, k.laid[1].Counts, ofSecond)
	k.tallies(shown, len(k.compared))
	s := k.base()
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), telling.Unknown(), telling.Numeral(b, scene.Second))
	if k.problem.Kind == arithmetic.Claim {
		asked = telling.Join(notation.W(words.BlocksIsItTrue()), telling.Numeral(a, scene.First), k.problem.Rel.String(), telling.Numeral(b, scene.Second), telling.Unknown())
	}
	telling.Equation(s, k.mat.tallied(1), asked, k.answered())
	s.Title = scene.Telling{Shown: k.answered().Text(), Hidden: words.Asked(k.problem)}
	s.Desc = scene.Telling{Shown: words.BlocksDescTwo(k.laid[0], k.laid[1]) + " " + why, Hidden: k.asked()}
	return s
}
