package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// saying is a number said in words while it is told: period by period from the
// left, each in a row under the table.
//
//	  4 0 2 7   3 0 5
//	4,027   four thousand
//	  305   three hundred five
type saying struct {
	problem arithmetic.Problem
	table   table
	laid    arithmetic.LayOut
	periods []arithmetic.SayPeriod
}

func tellSaid(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.SayByPeriods(p))
	k := &saying{problem: p, laid: w.Moves[0].(arithmetic.LayOut)}
	for _, move := range w.Moves {
		if period, ok := move.(arithmetic.SayPeriod); ok {
			k.periods = append(k.periods, period)
		}
	}
	top := k.laid.Counts.Top()
	k.table = layTable(demand{top: top, periods: len(k.periods) > 1, slots: []arithmetic.Counts{k.laid.Counts}})
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(top, k.laid.Counts)}
	said := 0
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.base()}
		desc, hidden := words.PlacesDescLaid(k.laid), words.PlacesDescLaid(k.laid)
		now := -1
		switch move := move.(type) {
		case arithmetic.LayOut:
			step.Symbols = notation.Lines(number(move.Number, scene.First))
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(move)
		case arithmetic.SayPeriod:
			now = said
			said++
			k.light(step.Scene, move)
			step.Symbols = notation.Lines(k.line(move, scene.Moved))
			step.Title, step.Hands, step.Ask = words.PlacesSayPeriod(move)
			desc = words.Sentences(desc, words.PlacesDescPeriod(move))
			hidden = words.Sentences(hidden, words.PlacesHowSaid())
		case arithmetic.ReadOff:
			step.Symbols = notation.Lines(telling.Join(number(move.Number, scene.First), "="), notation.Line{notation.W(words.Name(move.Number))})
			step.Title, step.Hands, step.Ask = words.PlacesSaid(move)
			desc = words.Sentences(desc, words.PlacesDescSaid(move.Number))
			hidden = words.Sentences(hidden, words.PlacesHowSaid())
		}
		k.lie(step.Scene)
		shown := &scene.Scene{}
		for i, period := range k.periods[:said] {
			k.write(shown, i, period, i == now)
		}
		telling.AddPart(step.Scene, scene.ShownOnly, shown)
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Telling{Shown: desc, Hidden: hidden}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

// wordsDown sets the words apart from the digits.
const wordsDown = 14

func (k *saying) base() *scene.Scene {
	s := k.table.base(1 + len(k.periods))
	s.H += wordsDown
	return s
}

// lie draws the counters and the digits under them.
func (k *saying) lie(s *scene.Scene) {
	k.table.layAll(s, 0, k.laid.Counts, ofFirst)
	k.table.writeAll(s, 0, k.laid.Counts, scene.First)
}

// light draws a heavy line round the columns of a period.
func (k *saying) light(s *scene.Scene, m arithmetic.SayPeriod) {
	right := 3 * m.Nth
	k.table.lightFrom(s, min(right+2, k.table.top), right, scene.Moved)
}

// line is the number of a period and how it is said.
func (k *saying) line(m arithmetic.SayPeriod, role scene.Role) notation.Line {
	return telling.Join(number(m.Number, scene.First), notation.N(words.PeriodSaid(m), role))
}

// write writes the number of a period, and how it is said, in a row under the
// digits.
func (k *saying) write(s *scene.Scene, i int, m arithmetic.SayPeriod, now bool) {
	const numbers, air = 80, 20 // the room of three digits, and what is left before the words
	role := scene.Result
	if now {
		role = scene.Moved
	}
	x, y := scene.Margin+numbers, k.table.row(1+i)+wordsDown
	s.Add(
		scene.Item{Shape: scene.Text{X: x, Y: y, Anchor: scene.Right, Size: scene.Small, Runs: number(m.Number, scene.First).Runs()}},
		scene.Item{Shape: scene.Text{X: x + air, Y: y, Anchor: scene.Left, Size: scene.Small, Runs: []scene.Run{{Text: words.PeriodSaid(m), Role: role}}}},
	)
}

func (k *saying) whole() *scene.Scene {
	s := k.base()
	k.lie(s)
	shown := &scene.Scene{}
	for i, m := range k.periods {
		k.write(shown, i, m, false)
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	foot := number(k.laid.Number, scene.First)
	telling.Equation(s, k.table.rowsEnd(1+len(k.periods))+wordsDown, foot, foot)
	s.Title = scene.Telling{Shown: words.PlacesSaidTitle(k.laid.Number), Hidden: words.Asked(k.problem)}
	desc := words.PlacesDescLaid(k.laid)
	s.Desc = scene.Telling{Shown: words.Sentences(desc, words.PlacesDescSaid(k.laid.Number)), Hidden: words.Sentences(desc, words.PlacesHowSaid())}
	return s
}
