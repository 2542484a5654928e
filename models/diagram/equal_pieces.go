package diagram

import (
	"slices"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// parts are the boxes of some of the equal parts, from one up to another that is not
// included.
func (d *equal) parts(role scene.Role, of scene.Of, from, to int64) []scene.Item {
	var list []scene.Item
	for i := from; i < to; i++ {
		list = append(list, box(role, of, d.plan.Size.N, d.at(int(i)), d.y, d.w))
	}
	return list
}

// sizes are the numbers on the parts, from one up to another that is not included.
// Where they have no room, the first one is led out and speaks for all; where a bar
// of one part stands above, that has the number.
func (d *equal) sizes(from, to int64) []scene.Item {
	t := number(d.plan.Size.Nth, d.plan.Size.N)
	if d.plan.Taken > 0 {
		t.Runs[0].Role = scene.Ink // it is on the way to the answer
	}
	if d.out {
		if from > 0 || d.plan.Unit {
			return nil
		}
		return d.onFirst(t)
	}
	var list []scene.Item
	for i := from; i < to; i++ {
		t.X, t.Y = d.at(int(i))+d.w/2, d.y+barTall/2
		list = append(list, plate(t)...)
	}
	return list
}

// onFirst is a text on the first part, or led out of it.
func (d *equal) onFirst(t scene.Text) []scene.Item {
	mid := d.x + d.w/2
	if !d.out {
		t.X, t.Y = mid, d.y+barTall/2
		return plate(t)
	}
	t.X, t.Y = max(mid, scene.Margin+(t.Width()+1)/2+plateEdge), d.y+barTall+leader+plateTall/2
	return append(led(mid, d.y, t.X), plate(t)...)
}

// unit is the bar of one part with a text on it or behind it.
func (d *equal) unit(piece scene.Item, t scene.Text) []scene.Item {
	t.X, t.Y = d.x+d.w/2, d.unitY+barTall/2
	if d.out {
		t.X, t.Anchor = d.x+d.w+14, scene.Left
		return []scene.Item{piece, {Shape: t}}
	}
	return append([]scene.Item{piece}, plate(t)...)
}

// rest is what is left over, behind the last part, and its name under it.
func (d *equal) rest() (piece, name []scene.Item) {
	if d.plan.Left == 0 {
		return nil, nil
	}
	x := d.at(int(d.plan.Count.N)) + apart
	runs := []scene.Run{{Text: arithmetic.Grouped(d.plan.Left), Role: scene.First}, {Text: " " + words.DiagramLeftOver}}
	t := scene.Text{Y: d.y + barTall + leader + plateTall/2, Size: scene.Small, Bold: true, Runs: runs}
	t.X = scene.PaperW - scene.Margin - plateEdge - (t.Width()+1)/2
	t.X = min(t.X, x+d.left/2)
	return []scene.Item{box(scene.First, scene.OfFirst, d.plan.Left, x, d.y, d.left)}, append(led(x+d.left/2, d.y, t.X), plate(t)...)
}

// over is the measure of the whole bar with texts.
func (d *equal) over(length int, texts ...scene.Item) []scene.Item {
	return measured(d.x, d.x+length, d.y-measureUp, number(0, d.plan.Total.N).Width(), false, texts...)
}

// label is the words under the bar: a count in its role, and what it counts.
func (d *equal) label(count string, role scene.Role, what string) scene.Item {
	return scene.Item{Shape: scene.Text{
		X: d.x + d.w*int(d.plan.Count.N)/2, Y: d.labelY, Size: scene.Small, Runs: []scene.Run{{Text: count, Role: role}, {Text: " " + what}},
	}}
}

// countLabel names the number of parts that is known.
func (d *equal) countLabel(what string) scene.Item {
	n := d.plan.Count
	role := telling.RoleOf(n.Nth)
	return d.label(arithmetic.Grouped(n.N), role, what)
}

// totalNumber is the number of the total where it is asked.
func (d *equal) totalNumber() scene.Text { return number(d.plan.Total.Nth, d.plan.Total.N) }

// uncut is how long the bar of the total is before anything is set apart.
func (d *equal) uncut() int { return d.w*int(d.plan.Count.N) + d.left }

// wholeBar draws the bar of the total before it is cut, up to a step.
func (d *equal) wholeBar(until int) {
	total := d.plan.Total
	d.Until(0, until, box(telling.RoleOf(total.Nth), telling.OfPlace(total.Nth), total.N, d.x, d.y, d.uncut()))
	d.Until(0, until, d.totalOver(d.uncut())...)
}

// totalOver is the measure with the number of the total.
func (d *equal) totalOver(length int) []scene.Item {
	return d.over(length, scene.Item{Shape: d.totalNumber()})
}

func tellEqual(w arithmetic.Working, plan arithmetic.EqualBars) telling.Telling {
	d := layEqual(plan)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	switch {
	case w.Problem.Kind == arithmetic.Product:
		d.product(&t, w.Moves)
	case w.Problem.Kind == arithmetic.PartOf:
		d.partOf(&t, w.Moves)
	case w.Problem.Grouping:
		d.grouping(&t, w.Moves)
	default:
		d.sharing(&t, w.Moves)
	}
	return t.Close(&d.Story, d.notToScale(d.below), words.DiagramEqual(w.Problem, plan, d.scaled))
}

// product lays a part again and again.
func (d *equal) product(t *telling.Draft, moves []arithmetic.Move) {
	n, size, total := d.plan.Count, d.plan.Size, d.plan.Total
	times := telling.Join(telling.Count(n.N, scene.First), "×", telling.Count(size.N, scene.Second))
	what := words.DiagramParts(n.N)
	if d.plan.Unit {
		d.Add(0, d.unit(box(scene.Second, scene.OfSecond, size.N, d.x, d.unitY, d.w), number(size.Nth, size.N))...)
		d.Until(1, 2, d.parts(scene.Moved, scene.OfAnswer, 0, n.N)...)
		d.Add(2, d.parts(scene.Result, scene.OfAnswer, 0, n.N)...)
		d.Add(1, d.sizes(0, n.N)...)
		what = words.DiagramTimes
	} else {
		d.Add(0, d.parts(scene.Second, scene.OfAnswer, 0, 1)...)
		d.Add(0, d.sizes(0, 1)...)
		d.Add(1, d.parts(scene.Second, scene.OfAnswer, 1, n.N)...)
		d.Add(1, d.sizes(1, n.N)...)
	}
	d.Add(1, d.countLabel(what))
	asked := d.over(d.length(), scene.Item{Shape: question()})
	d.Until(1, 2, asked...)
	found := d.over(d.length(), shown(scene.Item{Shape: d.totalNumber()}), hidden(scene.Item{Shape: question()}))
	d.Add(2, found...)
	t.Step(words.DiagramUnit(moves[0].(arithmetic.LayAmount), d.plan), notation.Line{telling.Count(size.N, scene.Second)})
	t.Step(words.DiagramCopy(moves[1].(arithmetic.CopyBar), d.plan), telling.Join(times, "=", telling.Unknown()))
	t.Step(words.DiagramTotal(moves[2].(arithmetic.AddEqualBars), d.plan), telling.Join(times, "=", telling.Count(total.N, scene.Result)))
}

// sharing cuts the bar in a known number of parts and finds their size.
func (d *equal) sharing(t *telling.Draft, moves []arithmetic.Move) {
	n, total := d.plan.Count, d.plan.Total
	d.wholeBar(1)
	d.Add(1, d.totalOver(d.length())...)
	rest, restName := d.rest()
	d.Add(1, d.parts(scene.First, scene.OfFirst, 0, n.N)...)
	d.Add(1, rest...)
	size := number(d.plan.Size.Nth, d.plan.Size.N)
	if d.plan.Unit {
		d.reveal(1, 2, d.unit(unknown(d.x, d.unitY, d.w), question()),
			d.unit(box(scene.Result, scene.OfAnswer, d.plan.Size.N, d.x, d.unitY, d.w), size))
		d.Add(1, d.countLabel(words.DiagramTimes))
	} else {
		d.reveal(1, 2, d.onFirst(question()), append(d.sizes(0, n.N), restName...))
		d.Add(1, d.countLabel(words.DiagramParts(n.N)))
	}
	t.Step(words.DiagramTotalFirst(moves[0].(arithmetic.LayWhole), d.plan), notation.Line{telling.Count(total.N, scene.First)})
	t.Step(words.DiagramCut(moves[1].(arithmetic.CutBar), d.plan), t.Asked())
	t.Step(words.DiagramSize(moves[2].(arithmetic.FindSize), d.plan), t.Answered())
}

// grouping marks parts of a known size and counts them.
func (d *equal) grouping(t *telling.Draft, moves []arithmetic.Move) {
	n, size, total := d.plan.Count, d.plan.Size, d.plan.Total
	mark := moves[1].(arithmetic.MarkUnit)
	rest, restName := d.rest()
	what, asked := words.DiagramGroups(n.N), words.DiagramGroups(2)
	if d.plan.Unit {
		what, asked = words.DiagramTimes, words.DiagramTimes
		whole := box(scene.First, scene.OfFirst, total.N, d.x, d.y, d.length())
		d.Until(0, 2, shown(whole))
		d.Add(0, hidden(whole))
		d.Add(0, d.totalOver(d.length())...)
		d.Add(1, d.unit(box(scene.Second, scene.OfSecond, size.N, d.x, d.unitY, d.w), number(size.Nth, size.N))...)
		d.found(d.parts(scene.First, scene.OfFirst, 0, n.N))
	} else {
		d.wholeBar(1)
		d.Add(1, d.parts(scene.First, scene.OfFirst, 0, 1)...)
		d.Add(1, d.sizes(0, 1)...)
		blank := d.totalOver(d.uncut())
		if mark.Rest > 0 {
			from, to := d.at(1), d.x+d.uncut()
			it := unknown(from, d.y, to-from)
			it.Of, it.Worth = scene.OfFirst, fraction.Whole(mark.Rest)
			blank = append(blank, it)
		}
		marked := slices.Concat(d.totalOver(d.length()), d.parts(scene.First, scene.OfFirst, 1, n.N), d.sizes(1, n.N), rest, restName)
		d.reveal(1, 2, blank, marked)
	}
	d.reveal(1, 2, []scene.Item{d.label("?", scene.Hidden, asked)}, []scene.Item{d.label(arithmetic.Grouped(n.N), scene.Result, what)})
	t.Step(words.DiagramTotalFirst(moves[0].(arithmetic.LayWhole), d.plan), notation.Line{telling.Count(total.N, scene.First)})
	t.Step(words.DiagramMarkUnit(mark, d.plan), t.Asked())
	t.Step(words.DiagramCount(moves[2].(arithmetic.FindCount), d.plan), t.Answered())
}

// found draws what comes with the answer and is not drawn without it.
func (d *equal) found(items []scene.Item) { d.reveal(2, 2, nil, items) }

// partOf cuts the bar of an amount in as many parts as the denominator says, and takes
// as many as the numerator says.
func (d *equal) partOf(t *telling.Draft, moves []arithmetic.Move) {
	n, total := d.plan.Count, d.plan.Total
	taken := d.plan.Taken
	d.wholeBar(1)
	d.Add(1, d.totalOver(d.length())...)
	d.Until(1, 3, d.parts(scene.Second, scene.OfSecond, 0, taken)...)
	d.Add(1, d.parts(scene.Second, scene.OfSecond, taken, n.N)...)
	d.Add(3, d.parts(scene.Result, scene.OfAnswer, 0, taken)...)
	d.Until(1, 3, d.label(arithmetic.Grouped(n.N), scene.First, words.DiagramParts(n.N)))
	for _, it := range d.sizes(0, n.N) {
		d.Add(2, shown(it))
	}
	d.Until(1, 2, d.onFirst(question())...)
	for _, it := range d.onFirst(question()) {
		d.Until(2, 3, hidden(it))
	}
	sum := scene.Item{Shape: number(arithmetic.Asked, d.plan.Sum)}
	d.Add(3, measured(d.x, d.at(int(taken)), d.sumY, number(0, d.plan.Sum).Width(), true, shown(sum), hidden(scene.Item{Shape: question()}))...)
	size := moves[2].(arithmetic.FindSize)
	take := moves[3].(arithmetic.TakeBars)
	t.Step(words.DiagramTotalFirst(moves[0].(arithmetic.LayWhole), d.plan), notation.Line{telling.Count(total.N, scene.Second)})
	t.Step(words.DiagramCut(moves[1].(arithmetic.CutBar), d.plan), t.Asked())
	t.Step(words.DiagramSize(size, d.plan), telling.Join(telling.Count(total.N, scene.Second), "÷", telling.Count(n.N, scene.Ink), "=", telling.Count(size.Size.N, scene.Ink)))
	t.Step(words.DiagramTake(take, d.plan), telling.Join(telling.Count(taken, scene.Ink), "×", telling.Count(take.Size, scene.Ink), "=", telling.Count(take.Sum, scene.Result)), t.Answered())
}
