package frames

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// ways is a ten frame for each way to make a number, three in a line.
type ways struct {
	board
	said  words.FramesWays
	until int // how many of them are there
	fresh int // from which one on they are new
}

// layWays places so many small frames.
func layWays(n int) board {
	const side, gap, beside = 40, 40, 3
	b := board{side: side}
	w, h := cols*side, rows*side
	line := min(n, beside)
	x := scene.PaperW/2 - (line*(w+gap)-gap)/2
	for i := range n {
		b.frames = append(b.frames, scene.Box{X: x + i%beside*(w+gap), Y: scene.Margin + i/beside*(h+labelTall+lineGap), W: w, H: h})
	}
	b.bottom = b.frames[n-1].Bottom() + labelTall
	return b
}

func tellWays(w arithmetic.Working) telling.Telling {
	pairs := w.Answer.Pairs
	n := w.Moves[0].(arithmetic.LayWhole).Whole.N
	k := &ways{board: layWays(len(pairs)), said: words.FramesWays{N: n, Pairs: pairs}}
	t := telling.Telling{Answer: w.Answer, Pieces: []telling.Piece{{Name: words.Things(words.Frame, 1), Count: 1}}}
	if n > 0 {
		t.Pieces = append(t.Pieces, telling.Piece{Name: words.Things(words.TwoColored, n), Count: n})
	}
	for _, m := range w.Moves {
		var told words.Told
		var lines []notation.Line
		k.fresh = k.until
		switch m := m.(type) {
		case arithmetic.LayWhole:
			told, lines = k.said.Lay(), []notation.Line{{number(n)}}
		case arithmetic.FirstWay:
			k.until = 1
			k.fresh = 1 // it lies there
			told, lines = k.said.First(m), []notation.Line{wayLine(m.Pair, n)}
		case arithmetic.NextWay:
			k.until = 2
			told, lines = k.said.Next(m), []notation.Line{wayLine(m.Pair, n)}
		case arithmetic.OtherWays:
			k.until = len(pairs)
			told = k.said.Others(m)
			for _, pair := range m.Pairs {
				lines = append(lines, wayLine(pair, n))
			}
		case arithmetic.TurnWays:
			told = k.said.Turn(m)
			last := pairs[len(pairs)-1]
			a, b := of(last[0], 0), of(last[1], 1)
			lines = []notation.Line{telling.Join(a, "+", b, "=", b, "+", a)}
		}
		title := words.BlocksStepTitle(w.Problem, told.Title)
		s := &scene.Scene{W: scene.PaperW, H: k.bottom + scene.Margin - 10, Title: scene.Same(title), Desc: told.Desc}
		k.picture(s)
		t.Steps = append(t.Steps, telling.Step{Title: told.Title, Hands: told.Hands, Ask: told.Ask, Scene: s, Symbols: notation.Lines(lines...)})
	}
	k.fresh = k.until
	t.Whole = &scene.Scene{Desc: k.said.Whole()}
	t.Whole.Title, _ = words.WaysWhole(w.Problem, pairs)
	k.picture(t.Whole)
	k.foot(t.Whole)
	return t
}

// foot says how many pairs there are.
func (k *ways) foot(s *scene.Scene) {
	n := number(k.said.N)
	found := int64(len(k.said.Pairs))
	telling.Equation(s, k.bottom-14,
		telling.Join(telling.Unknown(), notation.W(words.WaysPairs(2)), n),
		telling.Join(telling.Count(found, scene.Result), notation.W(words.WaysPairs(found)), n))
}

// picture draws the ways found so far; while the answer is hidden, only the first.
func (k *ways) picture(s *scene.Scene) {
	k.empty(s)
	if k.until == 0 {
		k.way(s, 0, [2]int64{0, k.said.N}, scene.Always)
		return
	}
	for i, pair := range k.said.Pairs[:k.until] {
		when := scene.Always
		if i > 0 {
			when = scene.ShownOnly
			k.label(s, i, scene.HiddenOnly, scene.Hidden, telling.Join(telling.Unknown(), "+", telling.Unknown()))
		}
		k.way(s, i, pair, when)
		k.label(s, i, when, scene.Ink, telling.Join(of(pair[0], 0), "+", of(pair[1], 1)))
	}
}

// way puts the counters of a way in its frame. In a way that is new the one that was
// turned over last has moved.
func (k *ways) way(s *scene.Scene, at int, pair [2]int64, when scene.When) {
	for i := range pair[0] + pair[1] {
		x, y := middle(k.board.at(at*arithmetic.TenFrame+int(i), false))
		it := scene.Item{Shape: scene.Circle{X: x, Y: y, R: k.radius()}, Role: scene.First, Finish: scene.Deep, When: when, Of: scene.OfNth(at), Worth: fraction.Whole(1)}
		if i >= pair[0] {
			it.Role, it.Finish = scene.Second, scene.Plain
		}
		if at >= k.fresh && i == pair[0]-1 {
			k.arrive(s, it)
			continue
		}
		s.Add(it)
	}
}

// wayLine is 2 + 3 = 5.
func wayLine(pair [2]int64, n int64) notation.Line {
	return telling.Join(of(pair[0], 0), "+", of(pair[1], 1), "=", number(n))
}
