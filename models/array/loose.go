package array

import (
	"modeler/models/scene"
	"modeler/models/telling"
)

// check writes, where everything waited before, that the rows and what is left over
// are the total again.
func (d *division) check(s *scene.Scene) {
	const air = 30
	if d.wait.bowl || d.read.Found == 0 {
		return
	}
	rows, cols := number(d.set.Side), telling.Count(d.read.Found, scene.Result)
	if d.set.Grouping {
		rows, cols = cols, rows
	}
	line := telling.Join(number(d.set.Total), "=", rows, "×", cols)
	if d.read.Left > 0 {
		line = telling.Join(line, "+", telling.Count(d.read.Left, scene.First))
	}
	b := d.box()
	from := b.Right() + bandEdge + air
	if len(d.lines) > 0 {
		from += d.namesRight()
	}
	room := scene.PaperW - scene.Margin - from
	t := scene.Text{X: from + room/2, Y: b.Y + b.H/2, Size: scene.Middle, Bold: true, Runs: line.Runs()}
	if t.Width() > room {
		t.Size = scene.Small
	}
	if t.Width() > room {
		return
	}
	t.Y = max(t.Y, d.wait.y+d.waitTall(int(max(d.read.Left, 1)))+air)
	if low := len(d.lines) > 0 && t.Box().Bottom() > b.Bottom(); low || t.Y+t.Size > d.stepFoot()-d.stripsTall()-scene.Margin/2 {
		return
	}
	s.Add(scene.Item{Shape: t, When: scene.ShownOnly})
}

const (
	looseAcross = 28
	looseStep   = 34
	looseGap    = 12 // after every five
)

// loose draws a few that are left, large enough to be counted, with their name
// over them.
func (d *division) loose(s *scene.Scene, n int64, label string) {
	s.Add(telling.Text(scene.First, scene.PaperW/2, d.wait.y+restNames/2-8, scene.Small, label))
	for k := range int(n) {
		at := d.looseSeat(k, d.looseCount(n))
		s.Add(worth(scene.Item{Shape: scene.Circle{X: at.X, Y: at.Y, R: looseAcross / 2}, Role: scene.First, Of: d.of}, 1))
	}
}

// looseCount is how many places a line of loose ones has: those of a line of its
// own where they get one in the end.
func (d *division) looseCount(n int64) int {
	if d.more != nil {
		return max(int(n), int(d.set.Side))
	}
	return int(n)
}

// looseSeat is the middle of the k-th place of so many.
func (d *division) looseSeat(k, of int) scene.Point {
	wide := of*looseStep + (of-1)/5*looseGap
	return scene.Point{X: scene.PaperW/2 - wide/2 + k*looseStep + k/5*looseGap + looseStep/2, Y: d.wait.y + restNames + looseAcross/2}
}
