package cubes

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellPaired sets cubes in two rows.
func (k *story) tellPaired() telling.Telling {
	laid := k.work.Moves[0].(arithmetic.LayTrains)
	pair := k.work.Moves[1].(arithmetic.PairUp)
	read := k.work.Moves[2].(arithmetic.ReadPairs)
	k.told.Pieces = pieces(laid.Number)
	trains, two := twoRows(laid, pair)
	rows := laid.Tens
	if laid.Ones > 0 {
		rows++
	}
	foot := two.bottom(2) + labelTall
	k.tall = max(trains.bottom(rows), foot) + scene.Margin - 10

	posed := &scene.Scene{}
	trains.number(posed, laid, itemOf(0))
	k.step(k.said.Lay(laid, false), posed, nil, count(laid.Number, scene.First))
	s := &scene.Scene{}
	two.pairs(s, pair, arrived(itemOf(0)))
	k.step(k.said.Pair(pair), s, nil, pairsOf(pair))
	done := &scene.Scene{}
	two.pairs(done, pair, itemOf(0))
	n := telling.Numeral(k.said.Left.(arithmetic.Number), scene.First)
	answered := telling.Join(n, notation.W("is"), notation.Term{Text: words.EvenOrOdd(read.Even), Kind: notation.Word, Role: scene.Result})
	t := k.said.ReadPairs(read)
	t.Desc = k.said.EndsPaired(read)
	k.step(t, done, posed, pairsOf(pair), answered)
	k.whole(done, posed, max(foot, trains.bottom(rows))-10, t.Desc, notation.Line{notation.W(words.GroupsParity(laid.Number))}, answered, answered.Text())
	return k.told
}

// twoRows are the benches for trains of ten and for two rows of cubes of one size.
func twoRows(laid arithmetic.LayTrains, pair arithmetic.PairUp) (trains, two bench) {
	const most, touch = 52, 6
	half := pair.Pairs + pair.Left
	long := max(half, min(laid.Number, arithmetic.CubeTrain))
	side := min(most, (inner-pegWide)/int(long))
	trains = bench{y: scene.Margin, side: side, pitch: side + trainGap}
	two = bench{y: scene.Margin, side: side, pitch: side + trainGap + touch - trainGap}
	trains.x = scene.PaperW/2 - int(min(laid.Number, arithmetic.CubeTrain))*side/2
	two.x = scene.PaperW/2 - int(half)*side/2
	return trains, two
}

// pairs draws two rows, and the place of a partner that is missing.
func (b bench) pairs(s *scene.Scene, m arithmetic.PairUp, it scene.Item) {
	b.train(s, 0, m.Pairs+m.Left, it)
	b.train(s, 1, m.Pairs, it)
	if m.Left > 0 {
		const air = 6
		s.Draw(scene.Note, scene.Dashed, scene.Rect{X: b.left(m.Pairs) + pegWide + air, Y: b.top(1) + air, W: b.side - pegWide - 2*air, H: b.side - 2*air})
	}
	foot := b.top(1) + b.side + labelTall/2 + 4
	s.Add(telling.Text(scene.Ink, scene.PaperW/2, foot, scene.Middle, words.FramesPairs(m.Pairs, m.Left)))
}

// pairsOf writes an even number as a sum of two equal addends, and an odd one as
// that and 1 (CCSS 2.OA.C.3).
func pairsOf(m arithmetic.PairUp) notation.Line {
	sum := telling.Join(number(m.Total), "=", number(m.Pairs), "+", number(m.Pairs))
	if m.Left > 0 {
		sum = telling.Join(sum, "+", telling.Count(m.Left, scene.First))
	}
	return sum
}
