package cubes

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellShown builds a number, the tens first.
func (k *story) tellShown() telling.Telling {
	read := k.work.Moves[len(k.work.Moves)-1].(arithmetic.ReadTrains)
	rows := read.Tens
	if read.Ones > 0 {
		rows++
	}
	b := column(rows, min(read.Total, arithmetic.CubeTrain))
	k.tall = b.bottom(rows) + scene.Margin
	k.told.Pieces = pieces(read.Total)
	lie, full := &scene.Scene{}, &scene.Scene{}
	var written notation.Line
	for i, m := range k.work.Moves {
		switch m := m.(type) {
		case arithmetic.BuildTrains:
			s := &scene.Scene{Items: append([]scene.Item{}, lie.Items...)}
			it := itemOf(0)
			if i > 0 {
				it = arrived(it)
			}
			b.build(s, m, it)
			b.build(lie, m, itemOf(0))
			k.step(k.said.Build(m), s, nil, telling.Join(written, number(m.Count)))
			written = telling.Join(number(m.Count), "+")
		case arithmetic.ReadTrains:
			full.Items = append(full.Items, lie.Items...)
			b.totals(full, read)
			t := k.said.Read(m)
			t.Desc = k.said.Ends(m, "")
			k.step(t, full, lie, asTens(m))
		}
	}
	k.whole(full, lie, b.bottom(rows), k.said.Ends(read, ""), notation.Line{notation.W(words.CubesQuestion)}, asTens(read), asTens(read).Text())
	return k.told
}

// build draws the trains of a move.
func (b bench) build(s *scene.Scene, m arithmetic.BuildTrains, it scene.Item) {
	if m.Ones {
		b.train(s, (m.Number-m.Count)/arithmetic.CubeTrain, m.Count, it)
		return
	}
	for row := range m.Trains {
		b.train(s, row, arithmetic.CubeTrain, it)
	}
}

// totals writes at every train how many cubes there are down to it.
func (b bench) totals(s *scene.Scene, m arithmetic.ReadTrains) {
	for row := range m.Tens {
		b.label(s, row, arithmetic.CubeTrain, scene.Note, count((row+1)*arithmetic.CubeTrain, scene.Note))
	}
	if m.Ones > 0 {
		b.label(s, m.Tens, m.Ones, scene.First, count(m.Total, scene.First))
	}
}

// asTens is a number as its tens and ones, in digits where it has both.
func asTens(m arithmetic.ReadTrains) notation.Line {
	line := telling.Join(telling.Count(m.Total, scene.First), "=")
	switch {
	case m.Tens == 0:
		return telling.Join(line, number(m.Ones), notation.W(words.Place(0, m.Ones)))
	case m.Ones == 0:
		return telling.Join(line, number(m.Tens), notation.W(words.Place(1, m.Tens)))
	}
	return telling.Join(line, number(m.Worth), "+", number(m.Ones))
}
