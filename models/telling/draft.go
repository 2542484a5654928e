package telling

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// Draft collects the steps of a lesson in words and symbols, until its pictures are
// drawn from a [Story].
type Draft struct {
	Problem arithmetic.Problem
	Answer  arithmetic.Answer
	steps   []Step
	descs   []scene.Telling
}

// Asked is the problem as an equation with a question mark.
func (d *Draft) Asked() notation.Line {
	if d.Problem.Kind == arithmetic.Comparison {
		return d.compared("?", scene.Hidden)
	}
	return Written(d.Problem, notation.Line{Unknown()})
}

// Answered is the problem as an equation with its answer.
func (d *Draft) Answered() notation.Line {
	if d.Problem.Kind == arithmetic.Comparison {
		return d.compared(d.Answer.Relation.String(), scene.Result)
	}
	fill := Numeral(d.Answer.Number, scene.Result)
	if d.Answer.Remainder > 0 {
		fill = Join(fill, notation.W("r"), Count(d.Answer.Remainder, scene.First))
	}
	return Written(d.Problem, fill)
}

// compared is the two numbers of a comparison with what stands between them.
func (d *Draft) compared(sign string, role scene.Role) notation.Line {
	a, b, _ := d.Problem.Operands()
	between := notation.S(sign)
	between.Role = role
	return Join(Numeral(a, scene.First), between, Numeral(b, scene.Second))
}

// Step adds a step. A line that says the same as the one before it is left out.
func (d *Draft) Step(say words.Told, lines ...notation.Line) {
	if n := len(lines); n > 1 && lines[n-1].Text() == lines[n-2].Text() {
		lines = lines[:n-1]
	}
	d.steps = append(d.steps, Step{Title: say.Title, Hands: say.Hands, Ask: say.Ask, Symbols: notation.Lines(lines...)})
	d.descs = append(d.descs, say.Desc)
}

// Close draws the pictures of a story whose content ends at bottom, and the problem's
// equation at the foot of the whole.
func (d *Draft) Close(s *Story, bottom int, desc scene.Telling) Telling {
	title := scene.Telling{Shown: d.Answered().Text(), Hidden: words.Asked(d.Problem)}
	t := d.Pictures(s, bottom, title, desc)
	Equation(t.Whole, bottom, d.Asked(), d.Answered())
	return t
}

// Pictures draws the pictures of a story whose content ends at bottom, all without
// an equation.
func (d *Draft) Pictures(s *Story, bottom int, title, desc scene.Telling) Telling {
	paper := func(p *scene.Scene, desc scene.Telling) *scene.Scene {
		p.Title, p.Desc, p.W, p.H = title, desc, scene.PaperW, bottom+scene.Margin
		return p
	}
	for i := range d.steps {
		d.steps[i].Scene = paper(s.Picture(i), d.descs[i])
	}
	return Telling{Answer: d.Answer, Steps: d.steps, Whole: paper(s.Whole(), desc)}
}
