package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// placeBowl puts the number in a bowl beside the array.
func (a *adding) placeBowl() {
	const bowlSide, height = 150, 340
	array, loose := 0, 1
	if !a.terms[0].IsArray {
		array, loose = 1, 0
	}
	t := a.terms[array]
	a.bowl = true
	wide := max(bowlSide, scene.Advance(arithmetic.Grouped(a.terms[loose].Total), scene.Middle, true)+72)
	p := plot{value: 1, sum: t.Total, rows: []int64{t.Rows}, cols: []int64{t.Cols}, parts: []int64{t.Total}}
	p.choose(room{height: height, size: 40, plain: true, right: wide + termApart})
	all := p.width()
	if p.look == inSketch {
		all = min(all, scene.PaperW-2*scene.Margin-wide-termApart-p.nameRoom())
		p.w = []int{all}
	}
	names := p.nameRoom()
	left := (scene.PaperW - all - names - wide - termApart) / 2
	box := scene.Box{X: left, Y: plotTop, W: names + all, H: p.h[0]}
	bowl := scene.Box{X: box.Right() + termApart, Y: plotTop, W: wide, H: p.h[0]}
	if loose == 0 {
		bowl.X = left
		box.X = bowl.Right() + termApart
	}
	p.place(box.X + names)
	a.plots[array], a.at[array], a.at[loose] = p, box, bowl
	a.lowest = plotTop + p.h[0] + 8
	tall := max(p.h[0], bowlTall)
	a.lowest = plotTop + tall + 8
	if note := (&story{plot: p}).note(); note != "" {
		a.noteTop = a.lowest + 20
		a.lowest += 40
	}
}

// drawBowl draws a number as a bowl with the number on it.
func (a *adding) drawBowl(s *scene.Scene, i int, it scene.Item) {
	const lean = 20
	b := a.at[i]
	y := b.Y + b.H/2 - bowlTall/2
	it.Shape = scene.Polygon{{X: b.X, Y: y}, {X: b.Right(), Y: y}, {X: b.Right() - lean, Y: y + bowlTall}, {X: b.X + lean, Y: y + bowlTall}}
	s.Add(worth(it, a.terms[i].Total))
	s.Add(captionAt(caption{words: arithmetic.Grouped(a.terms[i].Total), role: claimRole(i)}, b.X+b.W/2, y+bowlTall/2))
}
