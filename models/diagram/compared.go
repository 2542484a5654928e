package diagram

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// compared is two bars from one left edge, their numbers in front of them. What the
// one is longer is an empty piece at the end of the shorter bar:
//
//	402 ┌──────────────────┬─────────┐
//	    └──────────────────┴─────────┘
//	178 ┌──────────────────┐┄┄┄┄┄┄┄┄┄┐
//	    └──────────────────┘┄┄┄┄┄┄┄┄┄┘
//	                       |── 224 ──|
type compared struct {
	drawing
	amounts [2]arithmetic.Amount
	gap     arithmetic.Amount
	x       int
	w       [2]int
	y       [2]int
	below   int
}

func layCompared(m arithmetic.FindGap) *compared {
	const toBar = 18
	d := &compared{amounts: [2]arithmetic.Amount{m.First, m.Second}, gap: m.Gap}
	wide := max(number(0, m.First.N).Width(), number(1, m.Second.N).Width()) + toBar
	short := d.short()
	long, scaled := lengths([]int64{d.amounts[short].N, m.Gap.N}, full-wide)
	d.scaled = scaled
	d.w[short], d.w[1-short] = long[0], long[0]+long[1]
	d.x = scene.Margin + wide + (full-wide-d.w[1-short])/2
	top := scene.Margin
	if short == 0 && m.Gap.N > 0 {
		top += d.gapRoom()
	}
	if m.Gap.N == 0 {
		top += 14
	}
	d.y = [2]int{top, top + barTall + row}
	d.below = d.y[1] + barTall
	switch {
	case m.Gap.N == 0:
		d.below += 16 + labelTall
	case short == 1:
		d.below += d.gapRoom()
	}
	return d
}

// short is which of the bars is the shorter one; of two equal ones the second.
func (d *compared) short() int {
	if d.amounts[0].N < d.amounts[1].N {
		return 0
	}
	return 1
}

// ends are where the gap begins and ends.
func (d *compared) ends() (from, to int) {
	short := d.short()
	return d.x + d.w[short], d.x + d.w[1-short]
}

func (d *compared) gapRoom() int {
	from, to := d.ends()
	return measureRoom(from, to, number(arithmetic.Asked, d.gap.N).Width())
}

// bar draws a bar and its number.
func (d *compared) bar(step, i int) {
	a := d.amounts[i]
	if a.N > 0 {
		d.Add(step, box(telling.RoleOf(a.Nth), telling.OfPlace(a.Nth), a.N, d.x, d.y[i], d.w[i]))
	} else {
		d.Add(step, scene.Item{Shape: scene.Line{X1: d.x, Y1: d.y[i], X2: d.x, Y2: d.y[i] + barTall}, Role: telling.RoleOf(a.Nth), Finish: scene.Bold})
	}
	t := number(a.Nth, a.N)
	t.X, t.Y, t.Anchor = d.x-18, d.y[i]+barTall/2, scene.Right
	d.Add(step, scene.Item{Shape: t})
}

// extra draws what the one bar is longer: unknown from one step on, found from
// another.
func (d *compared) extra(asked, found int) {
	if d.gap.N == 0 {
		return
	}
	from, to := d.ends()
	short := d.short()
	wide := number(arithmetic.Asked, d.gap.N).Width()
	y := d.y[short] + barTall + measureUp
	if short == 0 {
		y = d.y[0] - measureUp
	}
	lines := func(texts ...scene.Item) []scene.Item { return measured(from, to, y, wide, short == 1, texts...) }
	blank := append(lines(scene.Item{Shape: question()}), unknown(from, d.y[short], to-from))
	extra := box(scene.Result, scene.OfAnswer, d.gap.N, from, d.y[short], to-from)
	extra.Finish = scene.Dashed // it is not a part of the shorter bar
	piece := append(lines(scene.Item{Shape: number(arithmetic.Asked, d.gap.N)}), extra)
	d.reveal(asked, found, blank, piece)
	// A dotted line shows how far the two are as long as each other.
	d.Add(asked, scene.Item{Shape: scene.Line{X1: from, Y1: d.y[1-short], X2: from, Y2: d.y[1-short] + barTall}, Role: scene.Ink, Finish: scene.Dotted})
}

// sameEnd leads a line through both ends where they are at the same place.
func (d *compared) sameEnd(step int) {
	if d.gap.N > 0 {
		return
	}
	const past = 14
	edge := d.x + d.w[0]
	end := telling.Text(scene.Result, edge, d.y[1]+barTall+past+labelTall/2+2, scene.Small, words.BarBothEnd)
	end.Shape = telling.OnPaper(end.Shape.(scene.Text))
	line := scene.Item{Shape: scene.Line{X1: edge, Y1: d.y[0] - past, X2: edge, Y2: d.y[1] + barTall + past}, Role: scene.Result, Finish: scene.Bold}
	d.Add(step, shown(line), shown(end))
}

func tellCompared(w arithmetic.Working) telling.Telling {
	last := len(w.Moves) - 1
	found := w.Moves[last].(arithmetic.FindGap)
	d := layCompared(found)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	for i, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayAmount:
			d.bar(i, m.At)
			role := telling.RoleOf(m.Amount.Nth)
			line := notation.Line{telling.Count(m.Amount.N, role)}
			if m.At == 1 {
				line = t.Asked()
			}
			t.Step(words.DiagramUnder(m, found), line)
		case arithmetic.MarkGap:
			d.extra(i, last)
			t.Step(words.DiagramGap(m), t.Asked())
		case arithmetic.FindGap:
			if last == 2 {
				d.extra(i, i)
			}
			d.sameEnd(i)
			t.Step(words.DiagramFindGap(w.Problem, m), gapLine(m), t.Answered())
		}
	}
	return t.Close(&d.Story, d.notToScale(d.below), words.DiagramCompared(w.Problem, found, d.scaled))
}

// gapLine is the difference of the two numbers.
func gapLine(m arithmetic.FindGap) notation.Line {
	more, less := m.First, m.Second
	if more.N < less.N {
		more, less = less, more
	}
	return telling.Join(telling.Count(more.N, telling.RoleOf(more.Nth)), "−", telling.Count(less.N, telling.RoleOf(less.Nth)), "=", telling.Count(m.Gap.N, scene.Result))
}
