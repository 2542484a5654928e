package cubes

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// story is a lesson while it is told.
type story struct {
	said words.Cubes
	work arithmetic.Working
	tall int // the height of a step's picture
	told telling.Telling
}

// step adds a step. Where it shows the answer, posed stands there while that is
// hidden; it is nil for all others.
func (k *story) step(t words.Told, shown, posed *scene.Scene, symbols ...notation.Line) {
	s := &scene.Scene{W: scene.PaperW, H: k.tall, Desc: t.Desc}
	s.Title = scene.Same(words.BlocksStepTitle(k.said.Problem, t.Title))
	if k.said.Kind == arithmetic.Show {
		s.Title.Hidden = words.CubesQuestion
	}
	finish(s, shown, posed)
	k.told.Steps = append(k.told.Steps, telling.Step{Title: t.Title, Hands: t.Hands, Ask: t.Ask, Scene: s, Symbols: notation.Lines(symbols...)})
}

func finish(s, shown, posed *scene.Scene) {
	if posed == nil {
		telling.AddPart(s, scene.Always, shown)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, posed)
}

// whole closes the one picture of the story, whose content ends at bottom.
func (k *story) whole(shown, posed *scene.Scene, bottom int, desc scene.Telling, asked, answered notation.Line, title string) {
	s := &scene.Scene{Title: scene.Telling{Shown: title, Hidden: words.Asked(k.said.Problem)}, Desc: desc}
	if k.said.Kind == arithmetic.Show {
		s.Title.Hidden = words.CubesQuestion
	}
	finish(s, shown, posed)
	telling.Equation(s, bottom, asked, answered)
	k.told.Whole = s
	k.told.Answer = k.work.Answer
}

// operands are the two numbers in their roles, with the sign between them.
func (k *story) operands(sign string) notation.Line {
	a, b, _ := k.said.Operands()
	return telling.Join(telling.Numeral(a, scene.First), sign, telling.Numeral(b, scene.Second))
}

func number(n int64) notation.Term { return telling.Count(n, scene.Ink) }
