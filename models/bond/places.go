package bond

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellPlaces puts the tens of a number on one plate and its ones on the other.
func tellPlaces(w arithmetic.Working) telling.Telling {
	n := w.Moves[0].(arithmetic.LayWhole).Whole
	split := w.Moves[1].(arithmetic.SplitPlaces)
	d := lay(n.N)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	d.Add(0, d.joins()...)
	d.plate(0, d.whole, n)
	d.Add(0, d.counters(d.whole, n.N, scene.First, scene.OfFirst)...)
	parts := [2]int64{split.Tens, split.Ones}
	of := [2]scene.Of{scene.OfNth(1), scene.OfNth(2)} // the parts are two numbers more
	for i, v := range parts {
		a := arithmetic.Amount{N: v, Nth: arithmetic.Asked}
		r := d.parts[i]
		number := d.number(r, a)
		if !d.counted {
			number.Of = of[i]
		}
		blank := unknown(r)
		d.Until(0, 1, blank...)
		d.Add(1, hidden(blank...)...)
		d.Add(1, shown(append([]scene.Item{known(r, scene.Result), number}, d.counters(r, v, scene.Result, of[i])...)...)...)
	}
	t.Step(words.BondNumber(n.N, d.counted), notation.Line{written(n)})
	answered := telling.Join(written(n), "=", telling.Counts("+", scene.Result, split.Tens, split.Ones))
	t.Step(words.BondTens(split, d.counted), answered)
	told := t.Pictures(&d.Story, d.below, scene.Telling{Shown: answered.Text(), Hidden: words.Asked(w.Problem)}, words.BondTensDesc(split))
	asked := telling.Join(written(n), "=", telling.Unknown(), "+", telling.Unknown())
	telling.Equation(told.Whole, d.below, asked, answered)
	return told
}
