package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellShown lays one number out, place by place from the largest.
func tellShown(p arithmetic.Problem) telling.Telling {
	const rows = 1 // the digits
	w := mustWork(arithmetic.ShowByPlace(p))
	read := w.Moves[len(w.Moves)-1].(arithmetic.ReadOff)
	t := layTable(demand{top: read.Counts.Top(), slots: []arithmetic.Counts{read.Counts}})
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(t.top, read.Counts)}
	var on arithmetic.Counts
	var said notation.Line
	lowest := t.top + 1
	for _, move := range w.Moves {
		step := telling.Step{Scene: t.base(rows)}
		shown, digits := &scene.Scene{}, &scene.Scene{}
		now := -1
		switch move := move.(type) {
		case arithmetic.LayPlace:
			t.layAll(shown, 0, on, ofFirst)
			t.layPlace(shown, move.Power, 0, 0, move.Count, ofFirst.moved())
			step.Symbols = notation.Lines(withPlace(said, move, scene.Moved))
			step.Title, step.Hands, step.Ask = words.PlacesLayPlace(move)
			said = withPlace(said, move, scene.First)
			on[move.Power], lowest, now = move.Count, move.Power, move.Power
			step.Scene.Desc = scene.Same(words.PlacesDescLaying(on, t.top, lowest))
		case arithmetic.ReadOff:
			t.layAll(shown, 0, on, ofFirst)
			step.Symbols = notation.Lines(said, expandedLine(move))
			step.Title, step.Hands, step.Ask = words.PlacesShown(move)
			step.Scene.Desc = words.PlacesDescShow(on, t.top)
		}
		for power := t.top; power >= lowest; power-- {
			role := scene.First
			if power == now {
				role = scene.Moved
			}
			t.write(digits, power, 0, digit(on[power], role))
		}
		telling.AddPart(step.Scene, scene.Always, shown)
		telling.AddPart(step.Scene, scene.ShownOnly, digits)
		step.Scene.Title = scene.Telling{Shown: words.BlocksStepTitle(p, step.Title), Hidden: words.PlacesQuestion()}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = t.shown(read)
	return out
}

// shown is the whole story of one number.
func (t *table) shown(read arithmetic.ReadOff) *scene.Scene {
	s := t.base(1)
	t.layAll(s, 0, read.Counts, ofFirst)
	digits, asked := &scene.Scene{}, &scene.Scene{}
	for power := t.top; power >= 0; power-- {
		t.write(digits, power, 0, digit(read.Counts[power], scene.First))
		t.write(asked, power, 0, notation.Line{telling.Unknown()})
	}
	finish(s, digits, asked)
	line := expandedLine(read)
	s.Title = scene.Telling{Shown: line.Text(), Hidden: words.PlacesQuestion()}
	s.Desc = words.PlacesDescShow(read.Counts, t.top)
	telling.Equation(s, t.rowsEnd(1), notation.Line{notation.W(words.PlacesQuestion())}, shortened(line, number(read.Number, scene.First)))
	return s
}

// withPlace adds a place to a line like 4 hundreds + 0 tens + 2 ones.
func withPlace(line notation.Line, m arithmetic.LayPlace, role scene.Role) notation.Line {
	place := telling.Join(digit(m.Count, role), notation.W(words.Place(m.Power, m.Count)))
	if len(line) == 0 {
		return place
	}
	return telling.Join(line, "+", place)
}

// expandedLine is a number as the sum of what its digits are worth: 402 = 400 + 2.
// A number with one digit that is not 0 is told in pieces: 400 = 4 hundreds.
func expandedLine(m arithmetic.ReadOff) notation.Line {
	line := telling.Join(number(m.Number, scene.First), "=")
	parts, err := arithmetic.Expanded(m.Number)
	if err != nil || len(parts) == 1 {
		top := m.Counts.Top()
		return telling.Join(line, digit(m.Counts[top], scene.Ink), notation.W(words.Place(top, m.Counts[top])))
	}
	return telling.Join(line, telling.Counts("+", scene.Ink, parts...))
}

// shortened is a line, or the other one where it has no room at the foot.
func shortened(line, other notation.Line) notation.Line {
	if telling.Width(line, scene.Small, true) > scene.PaperW-2*scene.Margin {
		return other
	}
	return line
}
