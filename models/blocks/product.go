package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellMultiplied lays out equal groups and brings them together. Beside the column
// stands what each place comes to.
func tellMultiplied(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.MultiplyByPlace(p))
	k, lay, _ := productOf(w)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(k.sums), Whole: k.whole()}
	var beside, parts []notation.Line
	hide := false
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.floor.base()}
		shown, desc := &scene.Scene{}, k.desc
		var line notation.Line
		switch move := move.(type) {
		case arithmetic.LayGroups:
			k.lie(shown, -1)
			step.Title, step.Hands, step.Ask = words.BlocksLayGroups(p, move)
		case arithmetic.MultiplyPlace:
			k.gather(shown, move.Power, move.Sum)
			hide = hide || move.Last
			if move.Made > 0 {
				line = reckonedPlace(move, scene.Moved)
				beside = append(beside, reckonedPlace(move, scene.Ink))
				parts = append([]notation.Line{ofRole(move.Worth, scene.Ink)}, parts...)
			}
			desc = words.Sentences(words.BlocksDescGroups(lay), words.BlocksGatheredPlace(move.Power, move.Sum), words.BlocksDescGathered(move.On, k.floor.top))
			step.Title, step.Hands, step.Ask = words.BlocksMultiply(move)
		case arithmetic.TradeTens:
			k.trade(shown, move)
			desc = words.Sentences(words.BlocksTradedTens(move), words.BlocksDescGathered(move.On, k.floor.top))
			step.Title, step.Hands, step.Ask = words.BlocksTradeTens(move)
		case arithmetic.ReadOff:
			k.lie(shown, -1)
			desc = words.BlocksTogether(move, k.floor.top)
			line = telling.Join(ofRole(lay.Groups, scene.First), "×", ofRole(lay.Size, scene.Second), "=", telling.Chain("+", parts...))
			if len(parts) > 1 {
				line = telling.Join(line, "=", ofRole(move.Number, scene.Result))
			}
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		step.Symbols = k.written.Block()
		step.Symbols.Beside = withLast(beside, line)
		k.finish(step.Scene, shown, hide, step.Title, desc)
		t.Steps = append(t.Steps, step)
	}
	return t
}

// productOf makes the groups ready; ok is false when there is no room for them.
func productOf(w arithmetic.Working) (k *gathering, lay arithmetic.LayGroups, ok bool) {
	lay = w.Moves[0].(arithmetic.LayGroups)
	k = &gathering{desc: words.BlocksDescGroups(lay)}
	for range lay.Groups {
		k.boxes = append(k.boxes, boxed{lay.Counts, laid{role: scene.Second}})
		k.names = append(k.names, ofRole(lay.Size, scene.Second))
	}
	groups, _ := arithmetic.Places(lay.Groups) // at most 9
	k.written = telling.Columns{Sign: "×", First: lay.Counts, Second: groups}
	return k, lay, k.layOut(w)
}

// reckonedPlace is what the groups have in one place: 3 × 7 ones = 21 ones.
func reckonedPlace(m arithmetic.MultiplyPlace, role scene.Role) notation.Line {
	return telling.Join(ofRole(m.Groups, scene.First), "×", ofRole(m.Each, scene.Second), notation.W(words.Place(m.Power, m.Each)), "=",
		ofRole(m.Made, role), notation.W(words.Place(m.Power, m.Made)))
}

// withLast is the lines so far with a new one in place of the last, if it tells
// the same move, or after it.
func withLast(lines []notation.Line, line notation.Line) []notation.Line {
	out := append([]notation.Line{}, lines...)
	switch {
	case line == nil:
		return out
	case len(out) > 0 && out[len(out)-1].Text() == line.Text():
		out = out[:len(out)-1]
	}
	return append(out, line)
}
