package bond

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// factLine is a fact in the roles of its numbers.
func factLine(f arithmetic.BondFact) notation.Line {
	return telling.Join(written(f.A), f.Op.String(), written(f.B), "=", written(f.C))
}

// blankLine is a fact that is still to be found: its numbers are not known.
func blankLine(f arithmetic.BondFact) notation.Line {
	q := telling.Unknown()
	return telling.Join(q, f.Op.String(), q, "=", q)
}

// The facts of a family stand under the bond, those that join on the left and those
// that split on the right:
//
//	3 + 5 = 8      8 − 5 = 3
//	5 + 3 = 8      8 − 3 = 5
const (
	factTall = 56
	factsUp  = 16 // from the bond to the facts
)

// facts draws some facts in a column from a step on. The first fact of all is given.
func (d *drawing) facts(step, column int, facts []arithmetic.BondFact, given bool) {
	x := scene.PaperW/2 + [2]int{-scene.PaperW / 4, scene.PaperW / 4}[column]
	for i, f := range facts {
		line := func(l notation.Line) scene.Item {
			y := d.below + factsUp + i*factTall + factTall/2
			return scene.Item{Shape: scene.Text{X: x, Y: y, Size: scene.Middle + 4, Bold: true, Runs: l.Runs()}}
		}
		if given && i == 0 {
			d.Add(step, line(factLine(f)))
			continue
		}
		d.Add(step, shown(line(factLine(f)))...)
		d.Add(step, hidden(line(blankLine(f)))...)
	}
}

func tellFamily(w arithmetic.Working) telling.Telling {
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	add := w.Moves[2].(arithmetic.AddParts)
	join, split := w.Moves[3].(arithmetic.JoinFacts), w.Moves[4].(arithmetic.SplitFacts)
	times := join.Facts[0].Op == arithmetic.Multiply
	d := lay(add.Whole.N)
	if times {
		d = layProduct(add)
	}
	d.Add(0, d.joins()...)
	for i, a := range add.Parts {
		if i > 0 {
			d.Until(0, i, unfilled(d.parts[i]))
		}
		d.plate(i, d.parts[i], a)
		if !times {
			d.Add(i, d.counters(d.parts[i], a.N, telling.RoleOf(i), telling.OfPlace(i))...)
		}
		line := notation.Line{written(a)}
		if i == 1 {
			line = telling.Join(written(add.Parts[0]), join.Facts[0].Op.String(), written(a), "=", telling.Unknown())
		}
		t.Step(words.FamilyPart(w.Moves[i].(arithmetic.LayAmount), add, times, d.counted), line)
	}
	d.Until(0, 2, unknown(d.whole)...)
	number := d.number(d.whole, add.Whole)
	if dots := d.array(add); times && dots != nil {
		number = numeral(d.whole, arithmetic.Grouped(add.Whole.N), scene.Result, dotsDown)
	}
	d.Add(2, known(d.whole, scene.Result), number)
	plan := arithmetic.WholeParts{Parts: add.Parts, Whole: add.Whole}
	if times {
		d.sign()
		d.Add(2, d.array(add)...)
	} else {
		d.Add(2, d.inParts(plan, scene.OfAnswer)...)
	}
	d.facts(3, 0, join.Facts, true)
	d.facts(4, 1, split.Facts, false)
	t.Step(words.FamilyWhole(add, times, d.counted), factLine(join.Facts[0]))
	t.Step(words.FamilyJoin(join), lines(join.Facts)...)
	t.Step(words.FamilySplit(split), lines(split.Facts)...)
	title, desc := words.Family(w.Problem, add, append(append([]arithmetic.BondFact{}, join.Facts...), split.Facts...))
	return t.Pictures(&d.Story, d.below+factsUp+factTall*len(join.Facts), title, desc)
}

func lines(facts []arithmetic.BondFact) []notation.Line {
	var list []notation.Line
	for _, f := range facts {
		list = append(list, factLine(f))
	}
	return list
}

// The whole of a product is an array with as many rows as its first factor says. Its
// dots are smaller than counters; beyond ten rows or columns the number stands alone.
const (
	mostDots = 10
	dotStep  = 22
	dot      = 8
	dotsDown = 72 // from the edge of the plate to the dots, under the number
)

// layProduct places the plates of a product: no part of it is a part of the whole, so
// a sign stands between the factors.
func layProduct(add arithmetic.AddParts) *drawing {
	d := lay(add.Whole.N + mostCounters + 1)
	rows, cols := add.Parts[0].N, add.Parts[1].N
	if max(rows, cols) > mostDots {
		return d
	}
	grow := dotsDown + int(rows)*dotStep + 14 - d.whole.H
	d.whole.H += grow
	for i := range d.parts {
		d.parts[i].Y += grow
	}
	d.whole.X, d.whole.W = d.whole.X-20, d.whole.W+40
	d.below += grow
	return d
}

// array is the whole of a product as rows of dots.
func (d *drawing) array(add arithmetic.AddParts) []scene.Item {
	rows, cols := int(add.Parts[0].N), int(add.Parts[1].N)
	if max(rows, cols) > mostDots {
		return nil
	}
	var list []scene.Item
	left := d.whole.X + (d.whole.W-cols*dotStep)/2 + dotStep/2
	top := d.whole.Y + dotsDown + dotStep/2
	for i := range rows * cols {
		list = append(list, scene.Item{
			Shape: scene.Circle{X: left + i%cols*dotStep, Y: top + i/cols*dotStep, R: dot},
			Role:  scene.Result, Finish: scene.Deep, Of: scene.OfAnswer, Worth: fraction.Whole(1),
		})
	}
	return list
}

// sign stands between the two factors.
func (d *drawing) sign() {
	y := d.parts[0].Y + d.parts[0].H/2
	d.Add(0, telling.Text(scene.Ink, scene.PaperW/2, y, scene.Middle, "×"))
}
