package bars

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// row is the first number: whole strips, and parts. Where whole strips were cut,
// those behind them lie between their parts and the loose parts.
//
//	+-------+---+---+-------+---+
//	| whole | : | : | whole | : |   3 1/2 with the second whole cut
//	+-------+---+---+-------+---+
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

// strikeGone puts one stroke through every stretch of ghosts.
func (d *adding) strikeGone(s *scene.Scene, b bar, when scene.When) {
	from, to := int64(0), int64(0)
	strike := func() {
		d.strike(s, b, from, to, when)
	}
	for _, r := range b.runs {
		if r.role != scene.Gone || r.count == 0 {
			continue
		}
		if r.from != to {
			strike()
			from = r.from
		}
		to = d.end(r)
	}
	strike()
}

// lowerLeft has what was taken under where it lay, and what is left under what is
// left.
func (d *adding) lowerLeft(b bar, now added, when scene.When) (bar, []mark) {
	from := d.long(now.amounts[0]) - d.long(now.amounts[1])
	taken := d.runs(from, now.amounts[1], scene.Second, scene.OfSecond)
	if d.piled {
		wholes := d.take.From.Wholes * d.den
		taken[0].from = wholes - d.take.Taken.Wholes*d.den
		taken[1].from = d.long(d.take.From) - d.units(d.take.Taken.Part)
	}
	taken = cutFiner(taken, now.old[1], now.fresh == 2)
	if now.opened == 2 {
		taken[1].role = scene.Moved
	}
	var marks []mark
	if now.total != nil {
		b = d.totalBar(now)
		marks = d.named(b.runs, *now.total, scene.Result, telling.Strips(*now.total, scene.Result), when)
	}
	marks = append(marks, d.named(taken, d.laid[1], scene.Second, telling.Numeral(d.numbers[1], scene.Second), when)...)
	slices.SortStableFunc(marks, func(a, b mark) int { return int(a.from - b.from) })
	b.runs = append(b.runs, taken...)
	return b, marks
}

// named is the mark of an amount, or two where its wholes and its parts lie
// apart.
func (d *adding) named(runs []run, a arithmetic.Strips, role scene.Role, name notation.Line, when scene.When) []mark {
	wholes, parts := runs[0], runs[1]
	if d.piled && a.Wholes > 0 && a.Part.Num() > 0 {
		return []mark{
			{wholes.from, d.end(wholes), telling.Strips(arithmetic.Strips{Wholes: a.Wholes}, role), role, when},
			{parts.from, d.end(parts), telling.Strips(arithmetic.Strips{Part: a.Part}, role), role, when},
		}
	}
	from := wholes.from
	if wholes.count == 0 {
		from = parts.from
	}
	return []mark{{from, from + d.long(a), name, role, when}}
}
