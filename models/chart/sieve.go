package chart

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellSieve tells whether a number is prime: whether it is still there when the
// multiples of smaller primes are crossed out.
func tellSieve(w arithmetic.Working) telling.Telling {
	b := lay(false)
	start := w.Moves[0].(arithmetic.StartSieve)
	b.asked(0, start.Number)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.ChartSieve{Problem: w.Problem, Answer: w.Answer}
	b.open = start.Number
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartSieve:
			b.crossed[1] = 1
			t.Step(said.Start(m), notation.Line{telling.Count(m.Number, scene.First)})
		case arithmetic.CrossOut:
			for _, n := range m.List {
				b.crossed[n] = i + 1
			}
			kept := b.tile(m.Prime, scene.Second, scene.OfNothing, 0)
			b.under.Only(i, kept)
			kept.When = scene.ShownOnly
			b.under.Finally(kept)
			t.Step(said.CrossOut(m), fewOf(m.List, scene.Ink))
		case arithmetic.JudgeSieve:
			if m.Prime {
				stays := b.tile(m.Number, scene.Result, scene.OfNothing, 0)
				stays.When = scene.ShownOnly
				b.under.Add(i, stays)
			}
			t.Step(said.Judge(m), judged(m))
			said.By = m
		}
	}
	told := t.Pictures(b.story(false), b.bottom(), said.Title(), said.Whole())
	told.Pieces = []telling.Piece{{Name: words.ChartPencil, Count: 1}}
	return told
}

// asked marks the number that is asked about.
func (b *board) asked(step int, n int64) {
	mark := b.frame(n, scene.First)
	mark.Of, mark.Worth = scene.OfFirst, fraction.Whole(n)
	b.over.Add(step, mark)
}

// judged is the number as a product, or prime.
func judged(m arithmetic.JudgeSieve) notation.Line {
	n := telling.Count(m.Number, scene.First)
	if m.By > 0 {
		return telling.Join(n, "=", telling.Count(m.By, scene.Result), "×", telling.Count(m.Times, scene.Result))
	}
	if !m.Prime {
		return notation.Line{n}
	}
	return telling.Join(n, "=", telling.Count(1, scene.Result), "×", n)
}

// tellEven tells whether a number is even: whether it comes when counting by twos.
func tellEven(w arithmetic.Working) telling.Telling {
	b := lay(false)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.ChartEven{Problem: w.Problem}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.LightEvens:
			for n := int64(2); n <= arithmetic.OnChart; n += 2 {
				lit := b.tile(n, scene.Second, scene.OfNothing, 0)
				b.under.Only(0, lit)
				lit.When = scene.ShownOnly
				b.under.Finally(lit)
			}
			t.Step(said.Light(), telling.Join(telling.Counts(",", scene.Second, 2, 4, 6, 8, 10), ",", notation.W("…")))
		case arithmetic.FindEven:
			b.asked(i, m.Number)
			t.Step(said.Find(m), notation.Line{telling.Count(m.Number, scene.First)})
			said.Found = m
		}
	}
	told := t.Pictures(b.story(false), b.bottom(), said.Title(), said.Whole())
	told.Pieces = []telling.Piece{{Name: words.ChartPencil, Count: 1}}
	return told
}
