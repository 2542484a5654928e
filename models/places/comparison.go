package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// comparing is a comparison while it is told: two numbers, one above the other with
// its digits, place by place from the largest. Under the table stands what was
// found in each place.
type comparing struct {
	problem  arithmetic.Problem
	table    table
	laid     [2]arithmetic.LayOut
	compared []arithmetic.ComparePlace
	sign     arithmetic.WriteSign
	written  telling.Columns
}

func tellCompared(p arithmetic.Problem) telling.Telling {
	const rows = 1
	w := mustWork(arithmetic.CompareByPlace(p))
	k := comparingOf(w)
	last := k.compared[len(k.compared)-1]
	out := telling.Telling{
		Answer: w.Answer,
		Pieces: pieces(k.table.top, k.laid[0].Counts.Plus(k.laid[1].Counts)),
		Why:    words.BlocksWhy(k.sign, last, k.table.top),
	}
	done := 0
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.table.base(rows)}
		shown := &scene.Scene{}
		desc, answers := words.PlacesDescTwo(k.laid[0], k.laid[1]), false
		switch move := move.(type) {
		case arithmetic.LayOut:
			if move.Nth == 0 {
				desc = words.PlacesDescLaid(move)
			}
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(move)
		case arithmetic.ComparePlace:
			done++
			answers = move == last
			desc = words.Sentences(desc, words.BlocksCompared(move))
			k.table.light(shown, move.Power, scene.Moved)
			k.written.Touch(move.Power)
			step.Title, step.Hands, step.Ask = words.BlocksCompare(move, move.Power > 0)
		case arithmetic.WriteSign:
			answers = true
			desc = words.Sentences(desc, out.Why.String())
			k.table.light(shown, last.Power, scene.Result)
			step.Title, step.Hands, step.Ask = words.BlocksSign(move)
		}
		lay, laying := move.(arithmetic.LayOut)
		k.lay(shown, !laying || lay.Nth == 1)
		k.found(shown, done)
		step.Symbols = k.written.Block()
		if move == arithmetic.Move(k.sign) {
			step.Symbols = notation.Lines(k.answered())
		}
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Same(desc)
		if answers {
			finish(step.Scene, shown, k.posed())
			step.Scene.Desc.Hidden = k.asked()
		} else {
			finish(step.Scene, shown, nil)
		}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole(out.Why.String())
	return out
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
	first, second := k.laid[0].Counts, k.laid[1].Counts
	top := max(first.Top(), second.Top())
	k.table = layTable(demand{top: top, slots: []arithmetic.Counts{first, second}, digits: true})
	k.written = telling.Columns{Top: top, First: first, Second: second}
	return k
}

// lay draws the numbers, each over its digits.
func (k *comparing) lay(s *scene.Scene, both bool) {
	k.table.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.table.writeUnder(s, 0, k.laid[0].Counts, scene.First)
	if both {
		k.table.layAll(s, 1, k.laid[1].Counts, ofSecond)
		k.table.writeUnder(s, 1, k.laid[1].Counts, scene.Second)
	}
}

// found writes what holds in each of the places compared so far: 4 < 7.
func (k *comparing) found(s *scene.Scene, done int) {
	for _, m := range k.compared[:done] {
		line := telling.Join(digit(m.First, scene.First), notation.S(m.Relation.String()), digit(m.Second, scene.Second))
		s.Add(scene.Item{Shape: scene.Text{X: k.table.middle(m.Power), Y: k.table.row(0), Size: scene.Small, Runs: line.Runs()}})
	}
}

func (k *comparing) posed() *scene.Scene {
	s := &scene.Scene{}
	k.lay(s, true)
	return s
}

func (k *comparing) asked() string {
	return words.PlacesDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksWhichMore()
}

func (k *comparing) answered() notation.Line {
	a, b, _ := k.problem.Operands()
	return telling.Join(telling.Numeral(a, scene.First), notation.N(k.sign.Relation.String(), scene.Result), telling.Numeral(b, scene.Second))
}

// whole is the two numbers with the place that decides outlined. Places to the
// right of it say nothing, so nothing stands under them.
func (k *comparing) whole(why string) *scene.Scene {
	shown := &scene.Scene{}
	if last := k.compared[len(k.compared)-1]; last.Relation != arithmetic.Equal {
		k.table.light(shown, last.Power, scene.Result)
	}
	k.lay(shown, true)
	k.found(shown, len(k.compared))
	s := k.table.base(1)
	finish(s, shown, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), telling.Unknown(), telling.Numeral(b, scene.Second))
	if k.problem.Kind == arithmetic.Claim {
		asked = telling.Join(notation.W(words.BlocksIsItTrue()), telling.Numeral(a, scene.First), k.problem.Rel.String(), telling.Numeral(b, scene.Second), telling.Unknown())
	}
	telling.Equation(s, k.table.rowsEnd(1), asked, k.answered())
	s.Title = scene.Telling{Shown: k.answered().Text(), Hidden: words.Asked(k.problem)}
	s.Desc = scene.Telling{Shown: words.PlacesDescTwo(k.laid[0], k.laid[1]) + " " + why, Hidden: k.asked()}
	return s
}
