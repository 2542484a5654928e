package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// showing is a number laid out with blocks while it is told.
type showing struct {
	problem arithmetic.Problem
	mat     mat
	read    arithmetic.ReadOff
	worths  []notation.Line // what the pieces of each place are worth
	on      arithmetic.Counts
	lowest  int           // the place down to which the number is laid out
	said    notation.Line // those places, written
}

// tellShown lays one number out, place by place, and reads it.
func tellShown(p arithmetic.Problem) telling.Telling {
	return tellLaid(mustWork(arithmetic.ShowByPlace(p)))
}

// tellExpanded lays one number out, place by place, and writes what each digit is
// worth.
func tellExpanded(p arithmetic.Problem) telling.Telling {
	return tellLaid(mustWork(arithmetic.ExpandByPlace(p)))
}

func tellLaid(w arithmetic.Working) telling.Telling {
	p := w.Problem
	k := showingOf(w)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(k.read.Counts)}
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.mat.base()}
		switch move := move.(type) {
		case arithmetic.LayPlace:
			k.mat.layAll(step.Scene, 0, k.on, ofFirst)
			k.mat.lay(step.Scene, move.Power, 0, 0, move.Count, ofFirst.moved())
			step.Symbols = notation.Lines(withPlace(k.said, move, scene.Moved))
			step.Title, step.Hands, step.Ask = words.BlocksLayPlace(move)
			k.said = withPlace(k.said, move, scene.First)
			k.on[move.Power], k.lowest = move.Count, move.Power
			step.Scene.Desc = scene.Same(words.BlocksDescLaying(k.on, k.mat.top, k.lowest))
		case arithmetic.ReadOff:
			k.mat.layAll(step.Scene, 0, k.on, ofFirst)
			step.Symbols = notation.Lines(k.said, expanded(move))
			step.Title, step.Hands, step.Ask = words.BlocksShown(move)
			step.Scene.Desc = k.desc()
		case arithmetic.WriteParts:
			k.mat.layAll(step.Scene, 0, k.on, ofFirst)
			step.Symbols = notation.Lines(k.said, k.answered())
			step.Title, step.Hands, step.Ask = words.BlocksExpanded(move)
			step.Scene.Desc = k.desc()
		}
		labels := &scene.Scene{}
		for power := k.mat.top; power >= k.lowest; power-- {
			k.mat.tally(labels, power, ofRole(k.on[power], scene.First))
		}
		telling.AddPart(step.Scene, scene.ShownOnly, labels)
		step.Scene.Title = scene.Telling{Shown: words.BlocksStepTitle(p, step.Title), Hidden: k.question()}
		t.Steps = append(t.Steps, step)
	}
	t.Whole = k.whole()
	return t
}

// showingOf gathers the moves and lays the mat out.
func showingOf(w arithmetic.Working) *showing {
	k := &showing{problem: w.Problem}
	var lines [places][]notation.Line
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayPlace:
			lines[move.Power] = []notation.Line{ofRole(move.Worth, scene.First)}
		case arithmetic.ReadOff:
			k.read = move
		case arithmetic.WriteParts:
			k.read = arithmetic.ReadOff{Number: move.Number, Counts: move.Counts}
		}
	}
	top := k.read.Counts.Top()
	for power := range top + 1 {
		k.worths = append(k.worths, lines[power][0])
	}
	counts := []arithmetic.Counts{k.read.Counts}
	k.mat = layMat(demand{numbers: counts, slots: counts, top: top, floor: floors(lines[:]...)})
	return k
}

// whole is all pieces, with what those of each place are worth.
func (k *showing) whole() *scene.Scene {
	s, labels := k.mat.base(), &scene.Scene{}
	k.mat.layAll(s, 0, k.read.Counts, ofFirst)
	for power, worth := range k.worths {
		k.mat.tally(labels, power, worth)
	}
	telling.AddPart(s, scene.ShownOnly, labels)
	asked := notation.Line{notation.W(words.BlocksQuestion())}
	if k.problem.Kind == arithmetic.ExpandedForm {
		asked = telling.Join(ofRole(k.read.Number, scene.First), "=", telling.Unknown())
	}
	telling.Equation(s, k.mat.tallied(1), asked, k.answered())
	s.Title = scene.Telling{Shown: k.answered().Text(), Hidden: k.question()}
	s.Desc = k.desc()
	return s
}

// question is the title while the answer is hidden: the number itself may be what
// is asked.
func (k *showing) question() string {
	if k.problem.Kind == arithmetic.ExpandedForm {
		return words.Asked(k.problem)
	}
	return words.BlocksQuestion()
}

func (k *showing) desc() scene.Telling {
	if k.problem.Kind == arithmetic.ExpandedForm {
		return words.BlocksDescExpanded(k.read, k.mat.top, k.answered().Text())
	}
	return words.BlocksDescShow(k.read.Counts, k.mat.top)
}

// answered is the number as the sum of what its digits are worth. Where that is
// what was asked, it stands even when it is one number only.
func (k *showing) answered() notation.Line {
	if k.problem.Kind == arithmetic.ExpandedForm && k.read.Counts[k.mat.top]*arithmetic.Power10(k.mat.top) == k.read.Number {
		return telling.Join(ofRole(k.read.Number, scene.First), "=", ofRole(k.read.Number, scene.Result))
	}
	return expanded(k.read)
}

// withPlace adds a place to a line like 4 hundreds + 0 tens + 2 ones.
func withPlace(line notation.Line, m arithmetic.LayPlace, role scene.Role) notation.Line {
	line = append(notation.Line{}, line...)
	if len(line) > 0 {
		line = append(line, notation.S("+"))
	}
	return append(line, notation.N(telling.Digits(m.Count), role), notation.W(words.Place(m.Power, m.Count)))
}

// expanded is a number as the sum of what its digits are worth: 402 = 400 + 2.
// A number with one digit that is not 0 is told in pieces: 400 = 4 hundreds.
func expanded(m arithmetic.ReadOff) notation.Line {
	line := ofRole(m.Number, scene.First)
	parts, err := arithmetic.Expanded(m.Number)
	if err != nil || len(parts) == 1 {
		top := m.Counts.Top()
		return append(line, notation.S("="), notation.N(telling.Digits(m.Counts[top]), scene.Ink), notation.W(words.Place(top, m.Counts[top])))
	}
	for i, part := range parts {
		sign := "+"
		if i == 0 {
			sign = "="
		}
		line = append(line, notation.S(sign), telling.Count(part, scene.Ink))
	}
	return line
}
