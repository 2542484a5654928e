package bond

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// The ways to make a number are one bond with a row of counters for each way. Its two
// parts stand at the ends of the row, where the lines from the whole lead:
//
//	   [ 5 ]
//	  /     \
//	0  ●●●●●  5
//	1  ●●●●●  4
//	2  ●●●●●  3
type ways struct {
	drawing
	n    int64
	left int // the middle of the first counter
	row  int // the middle of the first row
}

const (
	wayTall  = 42
	wayStep  = 28 // from counter to counter
	waySplit = 12 // between the counters of the two parts
	wayR     = 11
	wayTo    = 46 // from a number to the end of its row
)

func layWays(n int64) *ways {
	const wide, tall = 150, 64
	w := &ways{n: n}
	w.whole = scene.Rect{X: (scene.PaperW - wide) / 2, Y: scene.Margin, W: wide, H: tall, Round: 20}
	w.left = (scene.PaperW-w.length())/2 + wayStep/2
	w.row = scene.Margin + tall + between + wayTall/2
	return w
}

// length is a row of counters from end to end; of none it is as long as three.
func (w *ways) length() int { return int(max(w.n, 3))*wayStep + waySplit }

// columns are where the numbers of the two parts stand.
func (w *ways) columns() [2]int {
	left := (scene.PaperW - w.length()) / 2
	return [2]int{left - wayTo, left + w.length() + wayTo}
}

// numbers are the two parts of a way, at the ends of its row.
func (w *ways) numbers(at int, pair [2]int64) []scene.Item {
	var list []scene.Item
	for i, n := range pair {
		list = append(list, scene.Item{Shape: scene.Text{
			X: w.columns()[i], Y: w.row + at*wayTall, Size: scene.Middle, Bold: true,
			Runs: []scene.Run{{Text: arithmetic.Grouped(n), Role: telling.RoleOf(i)}},
		}})
	}
	return list
}

// counters are those of a way, each part in its role.
func (w *ways) counters(at int, pair [2]int64, role func(part int) scene.Role) []scene.Item {
	var list []scene.Item
	x := w.left
	if w.n < 3 {
		x += int(3-w.n) * wayStep / 2
	}
	for part, n := range pair {
		for range n {
			list = append(list, scene.Item{
				Shape: scene.Circle{X: x, Y: w.row + at*wayTall, R: wayR}, Role: role(part), Finish: scene.Deep,
				Of: scene.OfNth(at), Worth: fraction.Whole(1),
			})
			x += wayStep
		}
		x += waySplit
	}
	return list
}

// way draws a way from a step on.
func (w *ways) way(step, at int, pair [2]int64) {
	items := append(w.counters(at, pair, telling.RoleOf), w.numbers(at, pair)...)
	if at == 0 {
		w.Add(step, items...)
		return
	}
	w.Add(step, shown(items...)...)
	w.Add(step, hidden(w.blank(at)...)...)
}

// blank is a row to color: the counters in one line, and a question mark for each part.
func (w *ways) blank(at int) []scene.Item {
	var list []scene.Item
	for i := range w.n {
		list = append(list, scene.Item{
			Shape: scene.Circle{X: w.left + waySplit/2 + int(i)*wayStep, Y: w.row + at*wayTall, R: wayR}, Role: scene.Hidden, Finish: scene.Outline,
		})
	}
	for _, x := range w.columns() {
		list = append(list, telling.Text(scene.Hidden, x, w.row+at*wayTall, scene.Middle, "?"))
	}
	return list
}

// joinsTo leads from the whole to the two columns of numbers.
func (w *ways) joinsTo() {
	bottom, to := w.whole.Y+w.whole.H, w.row-wayTall/2
	for i, x := range w.columns() {
		from := w.whole.X + w.whole.W/2 + [2]int{-40, 40}[i]
		w.Add(0, scene.Item{Shape: scene.Line{X1: from, Y1: bottom, X2: x, Y2: to}, Role: scene.Ink, Finish: scene.Bold})
	}
}

func tellWays(w arithmetic.Working) telling.Telling {
	n := w.Moves[0].(arithmetic.LayWhole).Whole
	pairs := w.Answer.Pairs
	d := layWays(n.N)
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	d.Add(0, known(d.whole, scene.Ink), numeral(d.whole, arithmetic.Grouped(n.N), scene.Ink, d.whole.H))
	d.joinsTo()
	whole := d.counters(0, pairs[0], func(int) scene.Role { return scene.Ink })
	d.Until(0, 1, whole...)
	at := 0
	for i, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayWhole:
			t.Step(words.WaysLay(m), notation.Line{telling.Count(n.N, scene.Ink)})
		case arithmetic.FirstWay:
			d.way(i, 0, m.Pair)
			at = 1
			t.Step(words.WaysFirst(m, n.N), wayLine(m.Pair, n.N))
		case arithmetic.NextWay:
			d.way(i, 1, m.Pair)
			at = 2
			t.Step(words.WaysNext(m, n.N), wayLine(m.Pair, n.N))
		case arithmetic.OtherWays:
			var list []notation.Line
			for k, pair := range m.Pairs {
				d.way(i, at+k, pair)
				list = append(list, wayLine(pair, n.N))
			}
			t.Step(words.WaysOthers(m, w.Answer.Pairs), list...)
		case arithmetic.TurnWays:
			t.Step(words.WaysTurn(m, w.Answer.Pairs), turnedLine(pairs[len(pairs)-1], n.N))
		}
	}
	bottom := d.row + wayTall*(len(pairs)-1) + wayTall/2
	title, desc := words.WaysWhole(w.Problem, pairs)
	told := t.Pictures(&d.Story, bottom, title, desc)
	count := telling.Count(int64(len(pairs)), scene.Result)
	what := notation.W(words.WaysPairs(int64(len(pairs))))
	telling.Equation(told.Whole, bottom, telling.Join(telling.Unknown(), notation.W(words.WaysPairs(2)), telling.Count(n.N, scene.Ink)), telling.Join(count, what, telling.Count(n.N, scene.Ink)))
	return told
}

// wayLine is 2 + 3 = 5.
func wayLine(pair [2]int64, n int64) notation.Line {
	return telling.Join(telling.Count(pair[0], scene.First), "+", telling.Count(pair[1], scene.Second), "=", telling.Count(n, scene.Ink))
}

// turnedLine is 2 + 3 = 3 + 2.
func turnedLine(pair [2]int64, n int64) notation.Line {
	a, b := telling.Count(pair[0], scene.First), telling.Count(pair[1], scene.Second)
	return telling.Join(a, "+", b, "=", b, "+", a)
}
