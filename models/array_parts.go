package models

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// What the parts of a split array come to stands inside them on a plate, or
// beside them where they are too small for it:
//
//	           90        4
//	     ┌────────────┬────┐
//	 30  │    2,700   │    │ 120     right of a part too narrow for its name
//	     ├────────────┼────┤
//	  6  └────────────┴────┘ 24
//	          540                    under a part too low for it
//
// An array with one row of parts has the whole fact under each: 7 × 5 = 35.

const (
	plotInsideTall = 52 // the lowest part that has its name inside
	plotPlateEdge  = 10 // from a name to the edge of its plate
	plotOutside    = 14 // from the array to a name beside it
	plotLineTall   = scene.Middle * 112 / 100
)

// partNames writes what the found parts come to. In a whole story with the
// answer hidden the facts are asked instead.
func (a *arrayStory) partNames(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	switch {
	case a.look == inSketch || len(a.rows) > 1 && len(a.cols) > 1:
		a.cellNames(s, found, when)
	case len(a.rows) == 1:
		a.factsBelow(s, found, when)
	default:
		a.factsRight(s, found, when)
	}
}

// facts are the names of all parts of an array split one way.
func (a *plot) facts() []string {
	var out []string
	for _, r := range a.rows {
		for _, c := range a.cols {
			out = append(out, arrayFact(r, c, arithmetic.Grouped(a.parts[len(out)])))
		}
	}
	return out
}

func (a *arrayStory) factsBelow(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	var middles, lengths []int
	facts := a.facts()
	low, high := scene.Margin, scene.PaperW-scene.Margin
	if a.box().H < 84 {
		low = a.x[0] - plotBandEdge // beside a low array stand the names of its rows
	}
	size := scene.Middle
	if plotFactsWide(facts, size) > high-low {
		size = scene.Small
	}
	for j, fact := range facts {
		middles = append(middles, a.x[j]+a.w[j]/2)
		lengths = append(lengths, scene.Advance(fact, size, true))
	}
	middles = plotSpread(middles, lengths, plotFactGap, low, high)
	y := a.box().Bottom() + 8 + arrayFactsTall/2
	for k, f := range found {
		a.fact(s, f, scene.Text{X: middles[f.Col], Y: y, Size: size, Bold: true}, facts[k], when)
	}
}

// plotFactGap stands between two facts under an array.
const plotFactGap = 24

// plotFactsWide is the room that facts take beside each other.
func plotFactsWide(facts []string, size int) int {
	wide := plotFactGap * (len(facts) - 1)
	for _, fact := range facts {
		wide += scene.Advance(fact, size, true)
	}
	return wide
}

func (a *arrayStory) factsRight(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	const tall, gap = scene.Small * 112 / 100, 4
	var middles, lengths []int
	for i := range a.rows {
		middles = append(middles, a.y[i]+a.h[i]/2)
		lengths = append(lengths, tall)
	}
	b := a.box()
	middles = plotSpread(middles, lengths, gap, scene.Margin, b.Bottom()+tall)
	x := b.Right() + plotOutside
	if a.look <= inCrates {
		x += plotBandEdge
	}
	facts := a.facts()
	for k, f := range found {
		a.fact(s, f, scene.Text{X: x, Y: middles[f.Row], Anchor: scene.Left, Size: scene.Small, Bold: true}, facts[k], when)
	}
}

// fact adds one fact, and the question in its place when it is shown only.
func (a *arrayStory) fact(s *scene.Scene, f arithmetic.FindPart, t scene.Text, words string, when scene.When) {
	t.Runs = []scene.Run{{Text: words}}
	s.Add(scene.Item{Shape: t, Role: arrayRole(f.Row, f.Col), When: when})
	if when == scene.ShownOnly {
		t.Runs = []scene.Run{{Text: arrayFact(f.Rows, f.Cols, "?")}}
		s.Add(scene.Item{Shape: t, Role: arrayRole(f.Row, f.Col), When: scene.HiddenOnly})
	}
}

// cellNames names parts inside, or right of or under the last ones.
func (a *arrayStory) cellNames(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	right, below := a.cellNamesOutside()
	size, edge := scene.Middle, plotPlateEdge
	for k := range a.parts {
		if _, is := right[k]; !is && scene.Advance(arithmetic.Grouped(a.parts[k]), size, true)+2*edge > a.w[k%len(a.cols)]-4 {
			size, edge = scene.Small, 4
		}
	}
	for k, f := range found {
		words := arithmetic.Grouped(a.parts[k])
		b := a.part(f.Row, f.Col)
		t := scene.Words(b.X+b.W/2, b.Y+b.H/2, size, words)
		t.Bold = size == scene.Middle
		if y, is := right[k]; is {
			t.X, t.Y, t.Anchor = b.Right()+plotOutside, y, scene.Left
		} else if below[k] {
			t.Y = b.Bottom() + 8 + arrayFactsTall/2
		} else {
			a.plate(s, t, edge, when)
		}
		s.Add(scene.Item{Shape: t, Role: arrayRole(f.Row, f.Col), When: when})
	}
}

// cellNamesOutside says which parts, counted row by row, are named to the right
// of the array and at which height, and which under it.
func (a *arrayStory) cellNamesOutside() (right map[int]int, below map[int]bool) {
	const tall, gap = plotLineTall, 2
	right, below = map[int]int{}, map[int]bool{}
	var order, middles, lengths []int
	for i := range a.rows {
		for j := range a.cols {
			k, b := i*len(a.cols)+j, a.part(i, j)
			wide := scene.Advance(arithmetic.Grouped(a.parts[k]), scene.Middle, true) + 2*plotPlateEdge
			switch {
			case b.W < wide && j == len(a.cols)-1:
				order, middles, lengths = append(order, k), append(middles, b.Y+b.H/2), append(lengths, tall)
			case b.H < plotInsideTall && i == len(a.rows)-1:
				below[k] = true
			}
		}
	}
	for n, y := range plotSpread(middles, lengths, gap, scene.Margin, a.box().Bottom()+tall) {
		right[order[n]] = y
	}
	return right, below
}

// plate keeps the lines of the array from under a name.
func (a *arrayStory) plate(s *scene.Scene, t scene.Text, edge int, when scene.When) {
	b := t.Box()
	s.Add(scene.Item{
		Shape: scene.Rect{X: b.X - edge, Y: t.Y - 22, W: b.W + 2*edge, H: 44, Round: 10},
		Role:  scene.Note, When: when,
	})
}

// roles are the roles of all parts, row by row.
func (a *arrayStory) roles() []scene.Role {
	var out []scene.Role
	for i := range a.rows {
		for j := range a.cols {
			out = append(out, arrayRole(i, j))
		}
	}
	return out
}

// sumLine is the sum of the parts in their roles.
func (a *arrayStory) sumLine() notation.Line {
	var line notation.Line
	for k, role := range a.roles() {
		if k > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(a.parts[k]), role))
	}
	return line
}

// longLine is the equation with its parts, or without them where it would leave
// the paper.
func (a *arrayStory) longLine() notation.Line {
	long := join(a.stem, "=", a.sumLine(), "=", notation.N(arithmetic.Grouped(a.sum), scene.Result))
	t := scene.Text{Size: scene.Large, Bold: true, Runs: long.Runs()}
	if a.stem == nil || t.Width() > scene.PaperW-2*scene.Margin {
		return a.answered
	}
	return long
}

// arraySplitLine writes the split: the facts of an array split one way, the sums of
// the sides of one split both ways.
func arraySplitLine(m arithmetic.SplitSides) notation.Line {
	var line notation.Line
	if len(m.Rows) > 1 && len(m.Cols) > 1 {
		return join(arraySum(m.Rows), "×", arraySum(m.Cols))
	}
	for i, r := range m.Rows {
		for j, c := range m.Cols {
			if len(line) > 0 {
				line = append(line, notation.S("+"))
			}
			role := arrayRole(i, j)
			line = append(line, notation.N(arithmetic.Grouped(r), role), notation.S("×"), notation.N(arithmetic.Grouped(c), role))
		}
	}
	return line
}

// arraySum is (20 + 3).
func arraySum(parts []int64) notation.Line {
	line := notation.Line{notation.S("(")}
	for i, n := range parts {
		if i > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(n), scene.Ink))
	}
	return append(line, notation.S(")"))
}

// arrayAddends is n added up as often as there are rows.
func arrayAddends(rows, n int64) notation.Line {
	var line notation.Line
	for i := range rows {
		if i > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(n), scene.Ink))
	}
	return line
}

// tellEmpty tells a product with a factor 0: rows with nothing in them, or no
// rows at all.
func (a *arrayStory) tellEmpty(w arithmetic.Working) Telling {
	t := Telling{Answer: w.Answer}
	for i, m := range w.Moves {
		var st Step
		s := a.drawEmpty()
		switch m := m.(type) {
		case arithmetic.LayRows:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayLay(m.Rows, m.Cols, m.Cols, words.Counters)
		case arithmetic.CountRows:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCount(m)
		}
		st.Symbols = notation.Lines(a.asked)
		if i == len(w.Moves)-1 {
			st.Symbols = notation.Lines(a.answered)
			t.Whole = a.drawEmpty()
			t.Whole.Desc = s.Desc
			equation(t.Whole, s.H-scene.Margin, a.asked, a.answered)
		}
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	return t
}

// drawEmpty draws up to 12 rows as empty bands; more of them, or none, as one
// surface with words on it.
func (a *arrayStory) drawEmpty() *scene.Scene {
	const left, wide, tall = 200, 440, 36
	s := &scene.Scene{W: scene.PaperW, Title: a.title}
	p := plot{rows: []int64{1}, cols: []int64{1}, x: []int{left}, w: []int{wide}, y: []int{plotTop}, h: []int{120}}
	label := words.ArrayEmptyRows
	switch rows := int(a.whole.Rows); {
	case rows == 0:
		label = words.ArrayNoRows
		fallthrough
	case rows > 12:
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: left, Y: plotTop, W: wide, H: 120, Round: 12})
		s.Add(text(scene.Note, left+wide/2, plotTop+60, scene.Small, label))
	default:
		for i := range rows {
			s.Draw(scene.Tray, scene.Plain, scene.Rect{X: left - plotBandEdge, Y: plotTop + i*(tall+plotRowGap), W: wide + 2*plotBandEdge, H: tall, Round: 12})
		}
		p.h[0] = max(1, rows)*(tall+plotRowGap) - plotRowGap
	}
	p.rowsBeside(s, arrayName{words: arithmetic.Grouped(a.whole.Rows)})
	p.above(s, left, left+wide, scene.Small, arrayName{words: words.ArrayEach(arithmetic.Grouped(a.whole.Cols))})
	s.H = p.box().Bottom() + scene.Margin
	return s
}
