package bond

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// plate draws the plate of a known amount from a step on, with its number.
func (d *drawing) plate(step int, r scene.Rect, a arithmetic.Amount) {
	d.Add(step, known(r, telling.RoleOf(a.Nth)), d.number(r, a))
}

// askedPlate draws a plate that waits for its number from one step on, and gets it in
// another, with the items that come with it.
func (d *drawing) askedPlate(asked, found int, r scene.Rect, a arithmetic.Amount, with ...scene.Item) {
	blank := unknown(r)
	d.Until(asked, found, blank...)
	d.Add(found, hidden(blank...)...)
	d.Add(found, shown(append([]scene.Item{known(r, scene.Result), d.number(r, a)}, with...)...)...)
}

// inParts are the counters of the whole, those of each part in its own role.
func (d *drawing) inParts(plan arithmetic.WholeParts, of scene.Of) []scene.Item {
	return append(d.ofPart(plan, 0, telling.RoleOf(plan.Parts[0].Nth), of), d.ofPart(plan, 1, telling.RoleOf(plan.Parts[1].Nth), of)...)
}

// ofPart are the counters of the whole that make one of its parts: they lie side by
// side.
func (d *drawing) ofPart(plan arithmetic.WholeParts, at int, role scene.Role, of scene.Of) []scene.Item {
	first := [2]int64{0, plan.Parts[0].N}[at]
	return d.some(d.whole, first, plan.Parts[at].N, plan.Whole.N, role, of)
}

// moved are the counters of the whole as they have just come together.
func moved(items []scene.Item) []scene.Item {
	list := make([]scene.Item, len(items))
	for i, it := range items {
		it.Role = scene.Moved
		list[i] = it
	}
	return list
}

func tellPartWhole(w arithmetic.Working, plan arithmetic.WholeParts) telling.Telling {
	d := lay(plan.Whole.N)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	d.Add(0, d.joins()...)
	if plan.Whole.Nth == arithmetic.Asked {
		d.together(&t, w.Moves, plan)
	} else {
		d.apart(&t, w.Moves, plan)
	}
	return t.Close(&d.Story, d.below, words.BondDesc(plan))
}

// together puts the two parts on their plates and then slides both to the whole.
func (d *drawing) together(t *telling.Draft, moves []arithmetic.Move, plan arithmetic.WholeParts) {
	for i, part := range plan.Parts {
		if i > 0 {
			d.Until(0, i, unfilled(d.parts[i]))
		}
		d.plate(i, d.parts[i], part)
		laid := d.counters(d.parts[i], part.N, telling.RoleOf(part.Nth), telling.OfPlace(part.Nth))
		d.Until(i, 2, laid...)
		d.Only(2, hidden(laid...)...)
		d.Only(2, shown(d.counters(d.parts[i], part.N, scene.Gone, scene.OfNothing)...)...)
		d.Finally(laid...)
		line := notation.Line{written(part)}
		if i == 1 {
			line = t.Asked()
		}
		t.Step(words.BondPart(moves[i].(arithmetic.LayAmount), plan, d.counted), line)
	}
	d.askedPlate(0, 2, d.whole, plan.Whole)
	all := d.inParts(plan, telling.OfPlace(plan.Whole.Nth))
	d.Only(2, shown(moved(all)...)...)
	d.Finally(shown(all...)...)
	add := moves[2].(arithmetic.AddParts)
	sum := telling.Join(written(add.Parts[0]), "+", written(add.Parts[1]), "=", written(add.Whole))
	t.Step(words.BondTogether(add, plan, d.counted), sum, t.Answered())
}

// unfilled is a plate that nothing is on yet.
func unfilled(r scene.Rect) scene.Item {
	return scene.Item{Shape: r, Role: scene.Guide, Finish: scene.Outline}
}

// apart has the whole on its plate, slides the known part off, and then the other.
func (d *drawing) apart(t *telling.Draft, moves []arithmetic.Move, plan arithmetic.WholeParts) {
	mark := moves[1].(arithmetic.MarkPart)
	found := moves[2].(arithmetic.FindOther)
	known, other := d.parts[mark.At], d.parts[1-mark.At]
	of, role := telling.OfPlace(plan.Whole.Nth), telling.RoleOf(plan.Whole.Nth)
	d.plate(0, d.whole, plan.Whole)
	all := d.counters(d.whole, plan.Whole.N, role, of)
	d.Only(2, hidden(all...)...)
	d.Finally(hidden(all...)...)
	d.Finally(shown(d.inParts(plan, of)...)...)
	d.Until(0, 1, d.ofPart(plan, mark.At, role, of)...)
	d.Until(0, 2, d.ofPart(plan, 1-mark.At, role, of)...)
	d.Until(1, 2, d.ofPart(plan, mark.At, scene.Gone, of)...)
	d.Only(2, shown(d.ofPart(plan, 1-mark.At, scene.Gone, of)...)...)
	d.Until(0, 1, unfilled(known))
	d.plate(1, known, mark.Part)
	d.Add(1, d.counters(known, mark.Part.N, telling.RoleOf(mark.Part.Nth), telling.OfPlace(mark.Part.Nth))...)
	laid := d.counters(other, found.Other.N, scene.Result, scene.OfAnswer)
	d.askedPlate(0, 2, other, found.Other)
	d.Only(2, shown(moved(laid)...)...)
	d.Finally(shown(laid...)...)
	t.Step(words.BondWhole(moves[0].(arithmetic.LayWhole), plan, d.counted), notation.Line{written(plan.Whole)})
	t.Step(words.BondApart(mark, plan, d.counted), t.Asked())
	difference := telling.Join(written(found.Whole), "−", written(found.Known), "=", written(found.Other))
	t.Step(words.BondOther(found, plan, d.counted), difference, t.Answered())
}
