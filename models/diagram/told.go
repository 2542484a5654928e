package diagram

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// told collects the steps of a lesson in words and symbols.
type told struct {
	problem arithmetic.Problem
	answer  arithmetic.Answer
	steps   []telling.Step
	descs   []scene.Telling
}

// asked is the problem as an equation with a question mark, answered with its answer.
func (t *told) asked() notation.Line {
	if t.problem.Kind == arithmetic.Comparison {
		return t.compared("?", scene.Hidden)
	}
	return telling.Written(t.problem, notation.Line{telling.Unknown()})
}

func (t *told) answered() notation.Line {
	if t.problem.Kind == arithmetic.Comparison {
		return t.compared(t.answer.Relation.String(), scene.Result)
	}
	fill := telling.Numeral(t.answer.Number, scene.Result)
	if t.answer.Remainder > 0 {
		fill = telling.Join(fill, notation.W("r"), telling.Count(t.answer.Remainder, scene.First))
	}
	return telling.Written(t.problem, fill)
}

// compared is the two numbers of a comparison with what stands between them.
func (t *told) compared(sign string, role scene.Role) notation.Line {
	a, b, _ := t.problem.Operands()
	between := notation.S(sign)
	between.Role = role
	return telling.Join(telling.Numeral(a, scene.First), between, telling.Numeral(b, scene.Second))
}

// step adds a step. A line that says the same as the one before it is left out.
func (t *told) step(say words.Told, lines ...notation.Line) {
	if n := len(lines); n > 1 && lines[n-1].Text() == lines[n-2].Text() {
		lines = lines[:n-1]
	}
	t.steps = append(t.steps, telling.Step{Title: say.Title, Hands: say.Hands, Ask: say.Ask, Symbols: notation.Lines(lines...)})
	t.descs = append(t.descs, say.Desc)
}

// close draws the pictures of a diagram whose content ends at bottom.
func (t *told) close(d *drawing, bottom int, desc scene.Telling) telling.Telling {
	bottom = d.notToScale(bottom)
	title := scene.Telling{Shown: t.answered().Text(), Hidden: words.Asked(t.problem)}
	for i := range t.steps {
		s := d.Picture(i)
		s.Title, s.Desc = title, t.descs[i]
		s.W, s.H = scene.PaperW, bottom+scene.Margin
		t.steps[i].Scene = s
	}
	whole := d.Whole()
	whole.Title, whole.Desc = title, desc
	telling.Equation(whole, bottom, t.asked(), t.answered())
	return telling.Telling{Answer: t.answer, Steps: t.steps, Whole: whole}
}
