package diagram

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// joined is a whole in parts, some of them not known until the last step.
type joined struct {
	drawing
	plan   arithmetic.WholeParts
	x, w   []int // where the parts begin and how long they are
	length int
	y      int // the top of the bar
	below  int // where what belongs to the bar ends
	plates []int
}

func layJoined(plan arithmetic.WholeParts) *joined {
	d := &joined{plan: plan}
	var amounts []int64
	for _, part := range plan.Parts {
		amounts = append(amounts, part.N)
	}
	d.w, d.scaled = lengths(amounts, full)
	x := start(d.w...)
	for _, w := range d.w {
		d.x = append(d.x, x)
		x, d.length = x+w, d.length+w
	}
	d.y = scene.Margin + lineTall/2 + measureUp
	d.below = d.y + barTall
	d.placePlates()
	return d
}

// placePlates finds the places of the plates: in the middle of a piece, or side by
// side under the bar.
func (d *joined) placePlates() {
	var want, half, out []int
	for i, part := range d.plan.Parts {
		mid, t := d.x[i]+d.w[i]/2, number(part.Nth, part.N)
		d.plates = append(d.plates, mid)
		if !inside(t, d.w[i]) {
			want, half, out = append(want, mid), append(half, (t.Width()+1)/2+plateEdge), append(out, i)
		}
	}
	if len(out) == 0 {
		return
	}
	at, _ := telling.Spread(want, half, 8, scene.Margin, scene.PaperW-scene.Margin) // five plates always have room
	for k, i := range out {
		d.plates[i] = at[k]
	}
	d.below += leader + plateTall
}

// plateOf is a text on its plate, in a part or led out of it.
func (d *joined) plateOf(i int, t scene.Text) []scene.Item {
	t.X, t.Y = d.plates[i], d.y+barTall/2
	if inside(number(d.plan.Parts[i].Nth, d.plan.Parts[i].N), d.w[i]) {
		return plate(t)
	}
	t.Y = d.y + barTall + leader + plateTall/2
	return append(led(d.x[i]+d.w[i]/2, d.y, t.X), plate(t)...)
}

// part draws a known part from a step on.
func (d *joined) part(step, i int) {
	a := d.plan.Parts[i]
	if a.N > 0 {
		d.Add(step, box(telling.RoleOf(a.Nth), telling.OfPlace(a.Nth), a.N, d.x[i], d.y, d.w[i]))
	}
	d.Add(step, d.plateOf(i, number(a.Nth, a.N))...)
}

// askedPart draws the part that is asked, as unknown from one step on and with its
// number from another.
func (d *joined) askedPart(asked, found, i int) {
	a := d.plan.Parts[i]
	blank, piece := d.plateOf(i, question()), d.plateOf(i, number(a.Nth, a.N))
	if a.N > 0 {
		blank = append([]scene.Item{unknown(d.x[i], d.y, d.w[i])}, blank...)
		piece = append([]scene.Item{box(scene.Result, scene.OfAnswer, a.N, d.x[i], d.y, d.w[i])}, piece...)
	}
	d.reveal(asked, found, blank, piece)
}

// reveal draws what stands for an unknown from one step on, and from another what is
// found, where the answer is shown.
func (d *drawing) reveal(asked, found int, blank, piece []scene.Item) {
	d.Until(asked, found, blank...)
	for _, it := range piece {
		d.Add(found, shown(it))
	}
	for _, it := range blank {
		d.Add(found, hidden(it))
	}
}

// over draws the measure of the whole with a text.
func (d *joined) over(texts ...scene.Item) []scene.Item {
	wide := number(0, d.plan.Whole.N).Width()
	return measured(d.x[0], d.x[0]+d.length, d.y-measureUp, wide, false, texts...)
}

// wholeNumber is the number of the whole, which belongs to the problem.
func (d *joined) wholeNumber() scene.Item {
	a := d.plan.Whole
	return scene.Item{Shape: number(a.Nth, a.N), Of: telling.OfPlace(a.Nth), Worth: fraction.Whole(a.N)}
}

func tellJoined(w arithmetic.Working, plan arithmetic.WholeParts) telling.Telling {
	d := layJoined(plan)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	last := len(w.Moves) - 1
	for i, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayAmount:
			d.part(i, m.At)
			if i == last-1 {
				d.Until(i, last, d.over(scene.Item{Shape: question()})...)
			}
			t.Step(words.DiagramLay(m, plan), partsLine(plan.Parts[:i+1], i == last-1))
		case arithmetic.LayWhole:
			d.Until(i, i+1, box(telling.RoleOf(m.Whole.Nth), telling.OfPlace(m.Whole.Nth), m.Whole.N, d.x[0], d.y, d.length))
			d.Until(i, i+1, d.over(scene.Item{Shape: number(m.Whole.Nth, m.Whole.N)})...)
			d.Add(i+1, d.over(d.wholeNumber())...)
			t.Step(words.DiagramLayWhole(m, plan), notation.Line{telling.Count(m.Whole.N, telling.RoleOf(m.Whole.Nth))})
		case arithmetic.MarkPart:
			d.askedPart(i, i+1, 1-m.At)
			d.part(i, m.At)
			t.Step(words.DiagramMark(m, plan), t.Asked())
		case arithmetic.AddParts:
			lines := d.over(scene.Item{Shape: question()})
			texts := len(lines) - 1
			d.Add(i, lines[:texts]...)
			d.Add(i, hidden(lines[texts]), shown(d.over(d.wholeNumber())[texts]))
			t.Step(words.DiagramAdd(m, plan), telling.Join(partsLine(m.Parts, false), "=", telling.Count(m.Whole.N, scene.Result)), t.Answered())
		case arithmetic.FindOther:
			difference := telling.Join(telling.Count(m.Whole.N, telling.RoleOf(m.Whole.Nth)), "−", telling.Count(m.Known.N, telling.RoleOf(m.Known.Nth)), "=", telling.Count(m.Other.N, scene.Result))
			t.Step(words.DiagramOther(m, plan), difference, t.Answered())
		}
	}
	return t.Close(&d.Story, d.notToScale(d.below), words.DiagramJoined(w.Problem, plan, d.scaled))
}

// partsLine is parts as a sum, with what it comes to asked.
func partsLine(parts []arithmetic.Amount, asked bool) notation.Line {
	var links []notation.Line
	for _, a := range parts {
		links = append(links, notation.Line{telling.Count(a.N, telling.RoleOf(a.Nth))})
	}
	line := telling.Chain("+", links...)
	if asked {
		line = telling.Join(line, "=", telling.Unknown())
	}
	return line
}
