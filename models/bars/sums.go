package bars

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Heights of the picture of a sum, from the top of the paper.
const (
	sumUpper  = scene.Margin + 144       // of the upper bar: under the mark of the whole and the labels
	sumTall   = 72                       // of a bar
	sumLower  = sumUpper + sumTall + 28  // of the lower bar
	sumBottom = sumLower + sumTall + 108 // under the labels of the lower bar
)

// picture draws both bars after a move. The whole story, with its answer hidden,
// shows the numbers as they were written.
func (d *adding) picture(now added, story bool) *scene.Scene {
	s := &scene.Scene{
		W: scene.PaperW, H: sumBottom + scene.Margin,
		Title: words.BarSumTitle(d.working.Problem, d.working.Answer),
		Desc:  words.BarSumDesc(d.working.Problem, d.laid[:now.on], now.amounts, now.together || d.minus, d.piled, now.taken, now.total),
	}
	d.wholeMark(s)
	if story {
		asked := added{amounts: d.laid, on: 2, together: !d.minus}
		d.upper(s, asked, scene.HiddenOnly)
		d.lower(s, asked, scene.HiddenOnly)
		d.upper(s, now, scene.ShownOnly)
		d.lower(s, now, scene.ShownOnly)
		d.ask(s)
		return s
	}
	d.upper(s, now, scene.Always)
	if now.total == nil {
		d.lower(s, now, scene.Always)
		return s
	}
	before := now
	before.total = nil
	d.lower(s, before, scene.HiddenOnly)
	d.lower(s, now, scene.ShownOnly)
	d.ask(s)
	return s
}

// ask outlines the length that is asked for.
func (d *adding) ask(s *scene.Scene) {
	room := false
	if left := d.take.Left; d.piled {
		wholes, parts := left.Wholes*d.den, d.take.From.Wholes*d.den
		room = d.unsure(s, sumLower, sumTall, 0, wholes) || room
		room = d.unsure(s, sumLower, sumTall, parts, parts+d.units(left.Part)) || room
	} else {
		room = d.unsure(s, sumLower, sumTall, 0, d.length)
	}
	if !room {
		d.braces(s, sumLower+sumTall, false, []mark{{0, 0, telling.Join(telling.Unknown()), scene.Hidden, scene.HiddenOnly}})
	}
}

// upper draws the numbers: the first alone, or both put together.
func (d *adding) upper(s *scene.Scene, now added, when scene.When) {
	first, second := now.amounts[0], now.amounts[1]
	b := bar{y: sumUpper, h: sumTall}
	var marks []mark
	switch {
	case now.on == 0:
	case !now.together:
		b.runs = cutFiner(d.row(first, now), now.old[0], now.fresh == 1)
		if now.taken != nil {
			b.runs = d.kept(b.runs, *now.taken)
		}
		b = d.cutAs(b, first.Part.Den())
		marks = []mark{{0, d.long(first), telling.Numeral(d.numbers[0], scene.First), scene.First, when}}
	default:
		b.runs, marks = d.putTogether(now, when)
		if den := first.Part.Den(); den == second.Part.Den() || second.Part.Num() == 0 {
			b = d.cutAs(b, den)
		} else if first.Part.Num() == 0 {
			b = d.cutAs(b, second.Part.Den())
		}
	}
	d.draw(s, b, when)
	if now.taken != nil {
		d.strikeGone(s, b, when)
	}
	d.braces(s, sumUpper, true, marks)
}

// putTogether lays the second number after the first. Where both have wholes
// and parts would come between them, wholes lie beside wholes.
func (d *adding) putTogether(now added, when scene.When) (runs []run, marks []mark) {
	first, second := now.amounts[0], now.amounts[1]
	a := cutFiner(d.runs(0, first, scene.First, scene.OfFirst), now.old[0], now.fresh == 1)
	b := cutFiner(d.runs(d.long(first), second, scene.Second, scene.OfSecond), now.old[1], now.fresh == 2)
	apart := second.Wholes > 0 && first.Part.Num() > 0
	if now.moving {
		b[0].role, b[1].role = scene.Moved, scene.Moved
	}
	if !apart {
		return append(a, b...), []mark{
			{0, d.long(first), telling.Numeral(d.numbers[0], scene.First), scene.First, when},
			{d.long(first), d.long(first) + d.long(second), telling.Numeral(d.numbers[1], scene.Second), scene.Second, when},
		}
	}
	b[0].from = d.end(a[0])
	a[1].from = d.end(b[0])
	b[1].from = d.end(a[1])
	if now.moving {
		a[1].role = scene.Moved
	}
	for i, r := range []run{a[0], b[0], a[1], b[1]} {
		if r.count == 0 {
			continue
		}
		of := i % 2 // first, second, first, second
		named := arithmetic.Strips{Wholes: r.count}
		if i > 1 {
			named = arithmetic.Strips{Part: d.laid[of].Part}
		}
		runs = append(runs, r)
		marks = append(marks, mark{r.from, d.end(r), telling.Strips(named, bothRoles[of]), bothRoles[of], when})
	}
	return runs, marks
}

// lower draws the second number while it waits, then what the problem comes to.
// The row is not there before it is needed.
func (d *adding) lower(s *scene.Scene, now added, when scene.When) {
	b := bar{y: sumLower, h: sumTall}
	var marks []mark
	second := now.amounts[1]
	switch {
	case d.minus && now.on == 2:
		b, marks = d.lowerLeft(b, now, when)
	case d.minus:
		return
	case now.total != nil:
		b = d.totalBar(now)
		marks = []mark{{0, d.long(*now.total), telling.Strips(*now.total, scene.Result), scene.Result, when}}
	case now.moving:
		b.runs = d.runs(0, second, scene.Gone, scene.OfNothing)
	case now.on == 2 && !now.together:
		b = d.shaded(sumLower, sumTall, second, scene.Second, scene.OfSecond)
		marks = []mark{{0, d.long(second), telling.Numeral(d.numbers[1], scene.Second), scene.Second, when}}
	case when != scene.HiddenOnly:
		return
	}
	d.draw(s, b, when)
	d.braces(s, sumLower+sumTall, false, marks)
}

// totalBar is the result: what has just become of it is marked as moved.
func (d *adding) totalBar(now added) bar {
	b := d.shaded(sumLower, sumTall, *now.total, scene.Result, scene.OfAnswer)
	if d.piled {
		b.runs[1].from = d.take.From.Wholes * d.den // under what is left of the parts
		b = d.cutAs(b, now.total.Part.Den())
	}
	if now.merged {
		b.runs[1].role = scene.Moved
	}
	if now.joined > 0 {
		b.runs = d.filled(b.runs, now.joined)
	}
	return b
}
