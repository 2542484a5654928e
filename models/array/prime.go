package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// primeTall is the room under the arrays for what is said of the number.
const primeTall = 64

// verdict is the step that says whether the number is prime. before is the
// picture of the step before, which has the same paper.
func (a *factors) verdict(before *scene.Scene) telling.Step {
	st := telling.Step{Scene: a.draw(len(a.pairs), -1)}
	for i, m := range a.pairs {
		blank := "?"
		if i == 0 {
			blank = words.ArrayOneRow(a.n)
		}
		a.name(st.Scene, i, words.ArrayBothTurns(m.Rows, m.Cols), blank)
	}
	a.says(st.Scene, before.H-scene.Margin-primeTall/2+4)
	st.Scene.H = before.H
	st.Title, st.Hands, st.Ask, st.Scene.Desc = words.ArrayPrimeSaid(*a.judged, a.pairs)
	m := *a.judged
	switch {
	case m.Prime || m.Number == 1:
		st.Symbols = notation.Lines(telling.Join(number(m.Number), "=", number(1), "×", number(m.Number)))
	default:
		st.Symbols = notation.Lines(telling.Join(number(m.Number), "=", number(m.Other[0]), "×", number(m.Other[1])))
	}
	return st
}

// judge writes under a whole story whether the number is prime.
func (a *factors) judge(s *scene.Scene) {
	y := a.bottom + 12
	if !a.toScale() {
		a.note(s)
		y += noteTall
	}
	a.says(s, y+primeTall/2)
	s.H = y + primeTall + scene.Margin
}

func (a *factors) says(s *scene.Scene, y int) {
	m := *a.judged
	for _, n := range []caption{revealed(words.ArrayPrimeIs(m), scene.Result), blanked(words.ArrayPrimeAsked(m.Number))} {
		it := captionAt(n, scene.PaperW/2, y)
		t := it.Shape.(scene.Text)
		t.Size = scene.Large
		for t.Width() > scene.PaperW-2*scene.Margin {
			t.Size--
		}
		it.Shape = t
		s.Add(it)
	}
}

// room makes place for the verdict in the steps.
func (a *factors) room(s *scene.Scene) {
	if a.judged != nil {
		s.H += primeTall
	}
}

// primeTitle names the problem and what is true.
func primeTitle(w arithmetic.Working) scene.Telling {
	m := w.Moves[len(w.Moves)-1].(arithmetic.JudgePrime)
	return scene.Telling{Shown: words.ArrayPrimeIs(m), Hidden: words.ArrayPrimeAsked(m.Number)}
}
