package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// pointing is what one digit is worth while it is told: the pieces of the number,
// those of the digit lit and a line round their tray.
type pointing struct {
	problem arithmetic.Problem
	mat     mat
	laid    arithmetic.LayOut
	found   arithmetic.FindDigit
	counted arithmetic.CountDigit
}

func tellDigit(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.WorthByPlace(p))
	k := &pointing{problem: p, laid: w.Moves[0].(arithmetic.LayOut), found: w.Moves[1].(arithmetic.FindDigit), counted: w.Moves[2].(arithmetic.CountDigit)}
	counts := []arithmetic.Counts{k.laid.Counts}
	k.mat = layMat(demand{numbers: counts, slots: counts, top: k.laid.Counts.Top(), floor: floors(k.told())})
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(k.laid.Counts), Whole: k.whole()}
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.mat.base()}
		desc := words.BlocksDescDigit(k.laid, k.found)
		hidden := desc
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.mat.layAll(step.Scene, 0, k.laid.Counts, ofFirst)
			k.tallies(step.Scene, -1)
			step.Symbols = notation.Lines(k.digits(scene.First))
			step.Title, step.Hands, step.Ask = words.BlocksLayOut(move)
			desc = words.BlocksDescLaid(move)
			hidden = desc
		case arithmetic.FindDigit:
			k.lit(step.Scene, scene.Moved)
			k.tallies(step.Scene, move.Power)
			step.Symbols = notation.Lines(k.digits(scene.Moved))
			step.Title, step.Hands, step.Ask = words.BlocksFindDigit(move)
		case arithmetic.CountDigit:
			shown := &scene.Scene{}
			k.lit(step.Scene, scene.Result)
			k.tally(shown)
			telling.AddPart(step.Scene, scene.ShownOnly, shown)
			k.ask(step.Scene)
			step.Symbols = notation.Lines(k.digits(scene.Result), k.reckoned())
			step.Title, step.Hands, step.Ask = words.BlocksCountDigit(move)
			desc = words.Sentences(desc, words.BlocksWorth(move))
			hidden = words.Sentences(hidden, words.BlocksHowMuch())
		}
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Telling{Shown: desc, Hidden: hidden}
		t.Steps = append(t.Steps, step)
	}
	return t
}

// lit draws the pieces, those of the digit in another role.
func (k *pointing) lit(s *scene.Scene, role scene.Role) {
	for power := k.mat.top; power >= 0; power-- {
		as := ofFirst
		if power == k.found.Power {
			k.mat.frame(s, power, role)
			as.role = role
		}
		k.mat.lay(s, power, 0, 0, k.laid.Counts[power], as)
	}
}

// tallies writes how many pieces lie in each tray.
func (k *pointing) tallies(s *scene.Scene, found int) {
	for power := k.mat.top; power >= 0; power-- {
		role := scene.First
		if power == found {
			role = scene.Moved
		}
		k.mat.tally(s, power, ofRole(k.laid.Counts[power], role))
	}
}

// tally writes what the pieces of the digit are worth under their tray.
func (k *pointing) tally(s *scene.Scene) {
	k.mat.tally(s, k.found.Power, ofRole(k.counted.Worth, scene.Result))
}

// ask writes a question mark there while the answer is hidden.
func (k *pointing) ask(s *scene.Scene) {
	tray := k.mat.trays[k.found.Power]
	s.Add(telling.Question(tray.X+tray.W/2, k.mat.bottom()+tallyGap))
}

// digits is the number with the digit that is asked for in another role. Words
// would keep the digits together; numerals stand apart, as places do.
func (k *pointing) digits(role scene.Role) notation.Line {
	var l notation.Line
	for power := k.mat.top; power >= 0; power-- {
		as := scene.First
		if power == k.found.Power {
			as = role
		}
		l = append(l, notation.N(telling.Digits(k.laid.Counts[power]), as))
	}
	return l
}

// reckoned is 4 hundreds = 400.
func (k *pointing) reckoned() notation.Line {
	return telling.Join(ofRole(k.found.Digit, scene.Result), notation.W(words.Place(k.found.Power, k.found.Digit)), "=", ofRole(k.counted.Worth, scene.Result))
}

// told is the lines that may stand under each tray.
func (k *pointing) told() []notation.Line {
	return []notation.Line{ofRole(k.counted.Worth, scene.Result)}
}

func (k *pointing) whole() *scene.Scene {
	s, shown, hidden := k.mat.base(), &scene.Scene{}, &scene.Scene{}
	k.lit(shown, scene.Result)
	k.tally(shown)
	k.lit(hidden, scene.Result)
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, hidden)
	k.ask(s)
	in, the, is := words.BlocksDigitWorth()
	digit := telling.Join(notation.W(in), ofRole(k.found.Number, scene.First), notation.W(the), ofRole(k.found.Digit, scene.Result), notation.W(is))
	telling.Equation(s, k.mat.tallied(1), telling.Join(digit, telling.Unknown()), telling.Join(digit, ofRole(k.counted.Worth, scene.Result)))
	s.Title = scene.Telling{Shown: words.BlocksDigitTitle(k.problem, k.counted), Hidden: words.Asked(k.problem)}
	desc := words.BlocksDescDigit(k.laid, k.found)
	s.Desc = scene.Telling{Shown: words.Sentences(desc, words.BlocksWorth(k.counted)), Hidden: words.Sentences(desc, words.BlocksHowMuch())}
	return s
}
