package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// expanding is a number taken apart while it is told. Under its digits stands what
// each is worth, a row for each digit that is not 0, place under place.
//
//	  4 0 2 7
//	= 4 0 0 0
//	+     2 0
//	+       7
type expanding struct {
	problem arithmetic.Problem
	table   table
	parts   arithmetic.WriteParts
	on      arithmetic.Counts
	lowest  int // the place down to which the number is laid out
}

// rows are the digits, and what each of them is worth.
func (k *expanding) rows() int { return 1 + len(k.parts.Parts) }

func tellExpanded(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.ExpandByPlace(p))
	k := &expanding{problem: p, parts: w.Moves[len(w.Moves)-1].(arithmetic.WriteParts)}
	k.table = layTable(demand{top: k.parts.Counts.Top(), slots: []arithmetic.Counts{k.parts.Counts}, sign: true})
	k.lowest = k.table.top + 1
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, k.parts.Counts)}
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.table.base(k.rows())}
		now, desc := -1, k.desc()
		switch move := move.(type) {
		case arithmetic.LayPlace:
			k.table.layAll(step.Scene, 0, k.on, ofFirst)
			k.table.layPlace(step.Scene, move.Power, 0, 0, move.Count, ofFirst.moved())
			k.on[move.Power], k.lowest, now = move.Count, move.Power, move.Power
			worth := telling.Join(digit(move.Count, scene.First), notation.W(words.Place(move.Power, move.Count)), "=", number(move.Worth, scene.Result))
			step.Symbols = notation.Lines(worth)
			step.Title, step.Hands, step.Ask = words.PlacesLayPlace(move)
			desc = scene.Same(words.PlacesDescLaying(k.on, k.table.top, k.lowest))
		case arithmetic.WriteParts:
			k.table.layAll(step.Scene, 0, k.on, ofFirst)
			step.Symbols = notation.Lines(k.answered())
			step.Title, step.Hands, step.Ask = words.PlacesExpanded(move)
		}
		k.write(step.Scene, now)
		step.Scene.Title = scene.Telling{Shown: words.BlocksStepTitle(p, step.Title), Hidden: words.Asked(p)}
		step.Scene.Desc = desc
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

// write writes the digits that are laid out, and what they are worth in rows of
// their own, which are left out while the answer is hidden. Those of one place may
// just have come.
func (k *expanding) write(s *scene.Scene, now int) {
	t, row, worths := &k.table, 1, &scene.Scene{}
	for power := t.top; power >= k.lowest; power-- {
		role, worth := scene.First, scene.Result
		if power == now {
			role, worth = scene.Moved, scene.Moved
		}
		t.write(s, power, 0, digit(k.on[power], role))
		if k.on[power] == 0 && !(power == 0 && k.parts.Number == 0) {
			continue
		}
		sign := "+"
		if row == 1 {
			sign = "="
		}
		t.sign(worths, row, sign)
		t.write(worths, power, row, digit(k.on[power], worth))
		for below := power - 1; below >= 0; below-- {
			t.write(worths, below, row, digit(0, worth))
		}
		row++
	}
	telling.AddPart(s, scene.ShownOnly, worths)
}

// answered is the number as the sum of what its digits are worth.
func (k *expanding) answered() notation.Line {
	return telling.Join(number(k.parts.Number, scene.First), "=", telling.Counts("+", scene.Result, k.parts.Parts...))
}

func (k *expanding) desc() scene.Telling {
	return words.PlacesDescExpanded(k.parts, k.table.top, k.answered().Text())
}

// whole is the number in the table with all its parts. Where the sum has no room in
// one line, the rows tell it alone.
func (k *expanding) whole() *scene.Scene {
	t := &k.table
	s := t.base(k.rows())
	t.layAll(s, 0, k.parts.Counts, ofFirst)
	k.lowest = 0
	k.write(s, -1)
	asked := telling.Join(number(k.parts.Number, scene.First), "=", telling.Unknown())
	telling.Equation(s, t.rowsEnd(k.rows()), asked, shortened(k.answered(), number(k.parts.Number, scene.First)))
	s.Title = scene.Telling{Shown: k.answered().Text(), Hidden: words.Asked(k.problem)}
	s.Desc = k.desc()
	return s
}
