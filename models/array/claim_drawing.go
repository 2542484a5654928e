package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

const (
	claimRows  = 12 // of either array
	claimCols  = 20 // likewise; of both together where they have more rows together
	claimNames = 76 // for the number of rows beside an array
	claimApart = 40 // between two arrays beside each other
	cardEdge   = 14 // from a number to the edge of its card
	judgedTall = 52 // of what stands between what the two sides come to
)

// place gives both arrays the largest counters with which they and their names
// stand beside each other, or one above the other where they are wide.
func (a *claim) place() {
	const largest, least, height = 56, 16, 430
	a.size = scene.Middle
	stacked := a.sides[0].Cols+a.sides[1].Cols > claimCols
	rows := max(a.sides[0].Rows, a.sides[1].Rows)
	if stacked {
		rows = a.sides[0].Rows + a.sides[1].Rows
	}
	avail := scene.PaperW - 2*scene.Margin
	size := min(largest, height/int(rows)-8-rowGap) &^ 1
	for a.sized(size); size > least && a.width(stacked) > avail; a.sized(size) {
		size -= 2
	}
	if a.width(stacked) > avail {
		a.size = scene.Small
	}
	if stacked {
		a.stack()
		return
	}
	left := scene.Margin + (avail-a.width(false))/2
	for i, s := range a.sides {
		if s.IsArray {
			a.plots[i].place(left + (a.sideWidth(i)-claimNames-a.plots[i].width())/2 + claimNames)
			left += a.sideWidth(i) + claimApart
		}
	}
	a.nameFacts(plotTop + max(a.tall(0), a.tall(1)))
}

// stack puts one array above the other, from the same left edge.
func (a *claim) stack() {
	left := (scene.PaperW - max(a.plots[0].width(), a.plots[1].width()) + claimNames) / 2
	down := 0
	for i := range a.plots {
		p := &a.plots[i]
		p.down = down
		p.place(left)
		b := p.box()
		a.facts[i] = scene.Point{X: b.X + max(b.W, a.factWidth(i))/2, Y: b.Bottom() + 8 + factsTall/2}
		down = b.Bottom() + factsTall - scene.Margin/2
	}
	a.bottom = a.facts[1].Y + factsTall/2
}

// nameFacts places what the sides come to under the arrays. A number on a card
// stands beside the count of the array.
func (a *claim) nameFacts(under int) {
	y := under + 8 + factsTall/2
	a.bottom = y + factsTall/2
	for i, s := range a.sides {
		if s.IsArray {
			b := a.plots[i].box()
			half := (a.factWidth(i) + 1) / 2
			a.facts[i] = scene.Point{X: max(b.X+b.W/2, scene.Margin+half), Y: y}
			if end := scene.PaperW - scene.Margin - half; i == 1 {
				a.facts[i].X = min(a.facts[i].X, end)
			}
		}
	}
	for i, s := range a.sides {
		if !s.IsArray {
			fact := a.factWidth(1 - i)
			line := fact + claimApart + a.cardWidth(i)
			left := a.facts[1-i].X - line/2
			fact, card := left+fact/2, left+fact+claimApart+a.cardWidth(i)/2
			if i == 0 {
				card, fact = left+a.cardWidth(i)/2, left+line-a.factWidth(1)/2
			}
			a.facts[i], a.facts[1-i].X = scene.Point{X: card, Y: y}, fact
		}
	}
}

// sized makes the counters of both arrays so large. An array that the other one
// says how to cut has its parts apart from the first picture on.
func (a *claim) sized(size int) {
	const apart = 8
	for i, s := range a.sides {
		if !s.IsArray {
			continue
		}
		p := plot{
			look: inCounters, value: 1, size: size, step: size + apart, rise: size + apart + rowGap,
			rows: s.RowParts, cols: s.ColParts, parts: s.Parts,
		}
		if other := a.sides[1-i]; !s.Split() && other.Split() && s.Rows == other.Rows && s.Cols == other.Cols {
			p.rows, p.cols, p.parts = other.RowParts, other.ColParts, other.Parts
		}
		if len(p.parts) == 0 {
			p.parts = []int64{s.Total}
		}
		p.measure(p.step, p.rise)
		a.plots[i] = p
	}
}

// width is the room that both arrays take.
func (a *claim) width(stacked bool) int {
	if stacked {
		return max(a.sideWidth(0), a.sideWidth(1))
	}
	sum := 0
	for i, s := range a.sides {
		if s.IsArray && sum > 0 {
			sum += claimApart
		}
		if s.IsArray {
			sum += a.sideWidth(i)
		}
	}
	return sum
}

// sideWidth is the room for one array with its names.
func (a *claim) sideWidth(i int) int {
	return max(claimNames+a.plots[i].width()+2*bandEdge, a.factWidth(i))
}

// factWidth is the room for what an array comes to, cardWidth for a number on
// its card.
func (a *claim) factWidth(i int) int {
	return scene.Advance(a.fact(i, arithmetic.Grouped(a.sides[i].Total)), a.size, true)
}

func (a *claim) cardWidth(i int) int {
	return scene.Advance(arithmetic.Grouped(a.sides[i].Total), scene.Middle, true) + 2*cardEdge
}

// fact is "8 × 5 + 8 × 2 = 56".
func (a *claim) fact(i int, total string) string {
	return a.written[i].Text() + " = " + total
}

// tall is the height of an array.
func (a *claim) tall(i int) int {
	sum := 0
	for _, h := range a.plots[i].h {
		sum += h
	}
	return sum + partGap*max(0, len(a.plots[i].h)-1)
}

// draw draws both sides.
func (a *claim) draw(s *scene.Scene, now stage) {
	for i, side := range a.sides {
		if !side.IsArray {
			a.card(s, i)
			continue
		}
		a.array(s, i, now)
		if !now.counted {
			continue
		}
		at := a.facts[i]
		add := func(total string, when scene.When) {
			t := scene.Words(at.X, at.Y, a.size, a.fact(i, total))
			t.Bold = true
			s.Add(scene.Item{Shape: t, Role: claimRole(i), When: when})
		}
		add(arithmetic.Grouped(side.Total), now.when)
		if now.when == scene.ShownOnly {
			add("?", scene.HiddenOnly)
		}
	}
}

// judged writes what stands between what the two sides come to.
func (a *claim) judged(s *scene.Scene, m arithmetic.JudgeArrays) {
	t := scene.Text{X: scene.PaperW / 2, Y: a.bottom + judgedTall/2, Size: scene.Middle, Bold: true}
	t.Runs = telling.Join(a.total(0), m.Relation.String(), a.total(1)).Runs()
	s.Add(scene.Item{Shape: t, When: scene.ShownOnly})
	t.Runs = telling.Join(a.total(0), telling.Unknown(), a.total(1)).Runs()
	s.Add(scene.Item{Shape: t, When: scene.HiddenOnly})
}

// card draws a side that is a number.
func (a *claim) card(s *scene.Scene, i int) {
	const tall = 52
	at, wide := a.facts[i], a.cardWidth(i)
	s.Draw(claimRole(i), scene.Outline, scene.Rect{X: at.X - wide/2, Y: at.Y - tall/2, W: wide, H: tall, Round: 8})
	s.Add(captionAt(caption{words: arithmetic.Grouped(a.sides[i].Total), role: claimRole(i)}, at.X, at.Y))
}

// array draws one array with its names.
func (a *claim) array(s *scene.Scene, i int, now stage) {
	p, side := &a.plots[i], a.sides[i]
	p.bands(s, int(side.Rows))
	lies := claimRole(i)
	if now.turned && i == 1 {
		lies = scene.Moved
	}
	for r := range p.rows {
		for c := range p.cols {
			p.fill(s, r, c, scene.Item{Role: lies, Of: [2]scene.Of{scene.OfLeft, scene.OfRight}[i]})
		}
	}
	rows, cols := []int64{side.Rows}, []int64{side.Cols}
	if side.Split() || a.cut {
		role := scene.Ink
		if now.cutting && !side.Split() {
			role = scene.Moved
		}
		p.cuts(s, role)
		rows, cols = p.rows, p.cols
	}
	b := p.box()
	if slices.Equal(rows, p.rows) {
		for r, n := range rows {
			p.beside(s, p.y[r], p.y[r]+p.h[r], "", caption{words: arithmetic.Grouped(n)})
		}
	} else {
		p.beside(s, b.Y, b.Bottom(), "", caption{words: arithmetic.Grouped(side.Rows)})
	}
	if slices.Equal(cols, p.cols) {
		for c, n := range cols {
			p.above(s, p.x[c], p.x[c]+p.w[c], scene.Middle, caption{words: arithmetic.Grouped(n)})
		}
	} else {
		p.above(s, b.X, b.Right(), scene.Middle, caption{words: arithmetic.Grouped(side.Cols)})
	}
}
