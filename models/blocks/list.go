package blocks

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellListed lays out three or four numbers, each in a box, and joins them.
func tellListed(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.AddListByPlace(p))
	k, numbers, _ := listOf(w)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(k.sums), Whole: k.whole()}
	all := k.boxes
	hide := false
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.floor.base()}
		shown, desc := &scene.Scene{}, ""
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.boxes = append([]boxed{}, all...)
			for i := move.Nth + 1; i < len(all); i++ {
				k.boxes[i].counts = arithmetic.Counts{}
			}
			k.lie(shown, -1)
			k.boxes = all
			desc = words.BlocksDescNumbers(numbers[:move.Nth+1])
			step.Title, step.Hands, step.Ask = words.BlocksLayBox(move)
		case arithmetic.GatherPlace:
			k.gather(shown, move.Power, move.Sum)
			hide = hide || move.Last
			desc = words.Sentences(k.desc, words.BlocksGatheredPlace(move.Power, move.Sum), words.BlocksDescGathered(move.On, k.floor.top))
			step.Title, step.Hands, step.Ask = words.BlocksGather(move)
		case arithmetic.TradeTens:
			k.trade(shown, move)
			desc = words.Sentences(words.BlocksTradedTens(move), words.BlocksDescGathered(move.On, k.floor.top))
			step.Title, step.Hands, step.Ask = words.BlocksTradeTens(move)
		case arithmetic.ReadOff:
			k.lie(shown, -1)
			desc = words.BlocksTogether(move, k.floor.top)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		step.Symbols = k.written.Block()
		k.finish(step.Scene, shown, hide, step.Title, desc)
		t.Steps = append(t.Steps, step)
	}
	return t
}

// listOf makes the boxes ready; ok is false when there is no room for them.
func listOf(w arithmetic.Working) (k *gathering, numbers []arithmetic.LayOut, ok bool) {
	k = &gathering{}
	for _, move := range w.Moves {
		if lay, is := move.(arithmetic.LayOut); is {
			role := telling.RoleOf(lay.Nth)
			numbers = append(numbers, lay)
			k.boxes = append(k.boxes, boxed{lay.Counts, laid{role: role, of: scene.OfNth(lay.Nth)}})
			k.names = append(k.names, ofRole(lay.Number, role))
		}
	}
	k.desc = words.BlocksDescNumbers(numbers)
	k.written = telling.Columns{Sign: "+", First: numbers[0].Counts, Second: numbers[1].Counts}
	for _, more := range numbers[2:] {
		k.written.More = append(k.written.More, more.Counts)
	}
	return k, numbers, k.layOut(w)
}
