package discs

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// picture draws all discs after a move. The whole story, with its answer hidden,
// shows the numbers as they were written.
func (d *adding) picture(now added, story bool) *scene.Scene {
	s := &scene.Scene{
		W: scene.PaperW, H: d.bottom + scene.Margin,
		Title: words.BarSumTitle(d.working.Problem, d.working.Answer),
		Desc:  words.DiscSumDesc(d.working.Problem, d.laid[:now.on], now.amounts, now.together, now.taken, now.total),
	}
	d.wholeMark(s, 0)
	if story {
		d.terms(s, added{amounts: d.laid, on: 2}, scene.HiddenOnly)
		d.terms(s, now, scene.ShownOnly)
	} else {
		d.terms(s, now, scene.Always)
	}
	switch g := d.groups[2]; {
	case now.total != nil:
		d.sign(s, 2, scene.Ink, "=", scene.Always)
		d.draw(s, g, d.result(now), scene.ShownOnly)
		g.name(s, scene.Result, telling.Strips(*now.total, scene.Result), scene.ShownOnly)
		d.unsure(s, g)
	case now.together:
		d.sign(s, 2, scene.Ink, "=", scene.Always)
		d.draw(s, g, d.joined(now), scene.Always)
	}
	return s
}

// terms draws the two numbers with the sign between them.
func (d *adding) terms(s *scene.Scene, now added, when scene.When) {
	for i := range now.on {
		p := d.pictured(now.amounts[i], bothRoles[i], scene.OfNth(i))
		if i == 0 {
			p.runs = d.row(now.amounts[0], now)
		}
		if now.taken == nil {
			p.runs = cutFiner(p.runs, now.old[i], now.fresh == i+1)
		}
		if i == 1 && now.opened == 2 {
			p.runs[1].role = scene.Moved
		}
		if i == 0 && now.taken != nil {
			p.runs = d.kept(p.runs, *now.taken)
		}
		d.draw(s, d.groups[i], p, when)
		for _, r := range p.runs {
			if r.role == scene.Gone {
				d.strike(s, d.groups[i], r.from, d.end(r), when)
			}
		}
		d.nameTerm(s, i, now, when)
	}
	if now.on == 2 {
		sign := arithmetic.Add
		if d.minus {
			sign = arithmetic.Subtract
		}
		d.sign(s, 1, scene.Ink, sign.String(), when)
	}
}

// nameTerm writes a number and its new name under its discs. Once the result is
// counted, the new name may be as good as the answer: the hidden version leaves it out.
func (d *adding) nameTerm(s *scene.Scene, nth int, now added, when scene.When) {
	role, g := bothRoles[nth], d.groups[nth]
	name := renamedLine(d.numbers[nth], now.amounts[nth], role)
	if now.total != nil && when == scene.Always {
		g.name(s, role, name, scene.ShownOnly)
		g.name(s, role, telling.Numeral(d.numbers[nth], role), scene.HiddenOnly)
		return
	}
	g.name(s, role, name, when)
}

// row is the first number: whole discs, and parts. Where whole discs were cut, those
// behind them lie between their parts and the loose parts.
func (d *adding) row(a arithmetic.Strips, now added) []run {
	all := d.runs(0, a, scene.First, scene.OfFirst)
	if now.loose == 0 {
		return all
	}
	first, cut, behind, rest := all[0], all[1], all[0], all[1]
	first.count, behind.count = now.before, a.Wholes-now.before
	cut.count, rest.count = now.loose, rest.count-now.loose
	cut.from = d.end(first)
	behind.from = d.end(cut)
	rest.from = d.end(behind)
	if now.opened == 1 {
		cut.role = scene.Moved
	}
	return []run{first, cut, behind, rest}
}

// kept is a row with what was taken from it as ghosts: the last of its wholes and
// the last of its parts. Wholes and parts lie by turns.
func (d *adding) kept(row []run, m arithmetic.TakeStrips) []run {
	gone := [2]int64{m.Taken.Wholes, m.Taken.Part.Num()}
	var runs []run
	for i := len(row) - 1; i >= 0; i-- {
		keep, ghost := row[i], row[i]
		ghost.count = min(keep.count, gone[i%2])
		gone[i%2] -= ghost.count
		keep.count -= ghost.count
		ghost.from, ghost.role = d.end(keep), scene.Gone
		runs = append([]run{keep, ghost}, runs...)
	}
	return runs
}

// joined is both numbers on the discs of the result, in their own colours: wholes
// first, then parts beside parts.
func (d *adding) joined(now added) picture {
	first, second := now.amounts[0], now.amounts[1]
	a := d.runs(0, first, scene.First, scene.OfAnswer)
	b := d.runs(0, second, scene.Second, scene.OfAnswer)
	b[0].from = d.end(a[0])
	a[1].from = d.end(b[0])
	b[1].from = d.end(a[1])
	return picture{max(first.Part.Den(), second.Part.Den()), []run{a[0], b[0], a[1], b[1]}}
}

// result is the counted total: what has just become of it is marked as moved.
func (d *adding) result(now added) picture {
	p := d.pictured(*now.total, scene.Result, scene.OfAnswer)
	if now.merged {
		p.runs[1].role = scene.Moved
	}
	if now.joined > 0 {
		p.runs = d.filled(p.runs, now.joined)
	}
	return p
}

// filled marks whole discs that have just been filled: the last of them.
func (s sheet) filled(runs []run, wholes int64) []run {
	old, made := runs[0], runs[0]
	old.count -= wholes
	made.from, made.count, made.role = s.end(old), wholes, scene.Moved
	return []run{old, made, runs[1]}
}
