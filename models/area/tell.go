package area

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// told is a lesson while it is told: its words and symbols, and what is drawn.
type told struct {
	*plan
	draft telling.Draft
	story telling.Story

	cutAt, takeAt, countAt int // the steps in which the squares are cut and the rectangle is taken and counted
	steps                  int
}

// tell tells every move of the working.
func (p *plan) tell() telling.Telling {
	w := p.working
	t := &told{plan: p, draft: telling.Draft{Problem: w.Problem, Answer: w.Answer}}
	p.number(t)
	t.squares()
	t.sides()
	t.words()
	bottom := t.foot()
	sofar := words.AreaSoFar(p.lay, p.cut, p.take)
	var last words.Told
	if p.count != nil {
		last = words.AreaCount(sofar, *p.count, p.take != nil, p.named)
	} else {
		last = words.AreaAdd(words.AreaSplit(sofar, *p.split).Desc.Shown, *p.add, p.named)
		last.Desc.Hidden = sofar + " How much of a whole is the rectangle?"
	}
	title := words.AreaTitle(w.Problem, w.Answer)
	last.Desc.Shown += words.AreaSo(title.Shown)
	out := t.draft.Pictures(&t.story, bottom, title, last.Desc)
	telling.Equation(out.Whole, bottom, t.draft.Asked(), t.answered())
	out.Pieces = []telling.Piece{{Name: words.AreaPaper(p.across.Squares * p.down.Squares), Count: p.across.Squares * p.down.Squares}}
	return out
}

// number gives the moves their steps.
func (p *plan) number(t *told) {
	t.steps = 1
	if p.cut != nil {
		t.cutAt, t.takeAt = 1, 2
		t.steps = 3
	}
	t.countAt = t.steps
}

// words says every move and writes it.
func (t *told) words() {
	asked := t.draft.Asked()
	t.draft.Step(words.AreaLay(t.lay), asked)
	if t.cut != nil {
		cut := telling.Join(telling.Count(t.down.Parts.Den(), scene.First), "×", telling.Count(t.across.Parts.Den(), scene.Second), "=", telling.Count(t.cut.Whole, scene.Ink))
		if t.cut.Last {
			cut = telling.Join(telling.Numeral(t.down.Number, scene.First), "=", telling.Count(t.down.Wholes(), scene.First), "+", telling.Numeral(arithmetic.Frac(t.down.Part()), scene.First))
		}
		t.draft.Step(words.AreaCut(t.lay, *t.cut), cut)
		t.draft.Step(words.AreaTake(t.lay, *t.cut, *t.take), asked)
	}
	sofar := words.AreaSoFar(t.lay, t.cut, t.take)
	if t.count != nil {
		count := telling.Join(telling.Count(t.count.Rows, scene.First), "×", telling.Count(t.count.Columns, scene.Second), "=", telling.Count(t.count.Count, scene.Result))
		t.draft.Step(words.AreaCount(sofar, *t.count, t.take != nil, t.named), count, t.answered())
		return
	}
	var parts []notation.Line
	for _, part := range t.split.Parts {
		parts = append(parts, telling.Join(telling.Numeral(part.Down, scene.First), "×", telling.Numeral(part.Across, scene.Second), "=", telling.Numeral(part.Product, scene.Result)))
	}
	split := words.AreaSplit(sofar, *t.split)
	t.draft.Step(split, parts...)
	t.draft.Step(words.AreaAdd(split.Desc.Shown, *t.add, t.named), t.sum(), t.answered())
}

// sum is the parts put together, the wholes first and the others in common parts.
func (t *told) sum() notation.Line {
	var terms []notation.Line
	if t.add.Wholes > 0 {
		terms = append(terms, notation.Line{telling.Count(t.add.Wholes, scene.Result)})
	}
	for _, f := range t.add.Cut {
		terms = append(terms, telling.Numeral(arithmetic.Frac(f), scene.Result))
	}
	return telling.Join(telling.Chain("+", terms...), "=", telling.Numeral(t.add.Sum, scene.Result))
}

// answered is the equation with the product and its last name.
func (t *told) answered() notation.Line {
	line := t.draft.Answered()
	if t.named != nil {
		line = telling.Join(line, "=", telling.Numeral(t.named.To, scene.Result))
	}
	return line
}

// foot writes under the squares what one whole is, and how many parts the rectangle
// has, and returns where the picture ends.
func (t *told) foot() (bottom int) {
	const air, line = 12, 38
	y := t.bottom() + t.below + air + line/2
	write := func(role scene.Role, when scene.When, text string) scene.Item {
		it := telling.Text(role, t.middle(), y, scene.Small, text)
		it.When = when
		return it
	}
	caption := words.AreaCaption(t.across.Squares * t.down.Squares)
	if t.count == nil {
		t.story.Add(0, write(scene.Note, scene.Always, caption))
		return y + line/2
	}
	t.story.Until(0, t.countAt, write(scene.Note, scene.Always, caption))
	count, rest := words.AreaCounted(*t.count)
	unknown, of := words.AreaAsked(*t.count)
	t.story.Add(t.countAt, write(scene.Ink, scene.ShownOnly, join(count, rest)), write(scene.Ink, scene.HiddenOnly, join(unknown, of)))
	return y + line/2
}

func join(a, b string) string {
	if b == "" {
		return a
	}
	return a + " " + b
}

// middle is the middle of the squares, or of the paper where the squares are narrow.
func (t *told) middle() int {
	const least = 420
	if t.wide() < least {
		return scene.PaperW / 2
	}
	return t.x + t.wide()/2
}

// worth is what a part of the rectangle adds to the product.
func worth(p arithmetic.PartialProduct) fraction.Fraction { return p.Product.Value }
