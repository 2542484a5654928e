package coins

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// Coins are discs and bills are slips, all discs of one size and all slips too: what
// a piece is worth stands on it. Pieces that are counted together stand side by side
// with what they come to under them, in rows that fill the paper.
//
//	$3.27                 5.00
//	+-----+
//	|$3.27| (1)(1)(1)  (10)(10)(25)(25)  [$1]
//	+-----+   $3.30          $4.00       $5.00
const (
	radius   = 34 // of a coin
	billW    = 104
	billH    = 68
	cut      = 10 // from the corner of a bill
	air      = 10 // between two pieces
	unitGap  = 22 // between two units
	labelUp  = 22 // from the pieces to the middle of their label
	rowH     = billH + 48
	headH    = 48 // of the line over a band
	bandGap  = 10 // between two bands
	mostWide = 8  // coins side by side
	mostBill = 6  // bills side by side
)

// unit is pieces that are counted together, or a tag with a price on it.
type unit struct {
	coins []arithmetic.Coin
	tag   notation.Line
	bare  bool // no label stands under it
	box   scene.Box
}

// band is units in rows, under a line.
type band struct {
	head  notation.Line
	units []unit
	y     int
}

func width(c arithmetic.Coin) int {
	if c >= arithmetic.Dollar {
		return billW
	}
	return 2 * radius
}

// wide is the width of a unit: its pieces, or the room of its label.
func (u unit) wide() int {
	if u.tag != nil {
		return billW + 12
	}
	w := -air
	for _, c := range u.coins {
		w += width(c) + air
	}
	if u.bare {
		return w
	}
	label := scene.Text{Size: scene.Small, Runs: []scene.Run{{Text: words.Price(arithmetic.MostMoney)}}}
	return max(w, label.Width())
}

// lay gives every unit its place from a height on, and returns where the band ends.
func (b *band) lay(y int) int {
	b.y = y
	if len(b.head) > 0 {
		y += headH
	}
	const room = scene.PaperW - 2*scene.Margin
	for from := 0; from < len(b.units); {
		to, total := from, -unitGap
		for to < len(b.units) && (to == from || total+unitGap+b.units[to].wide() <= room) {
			total += unitGap + b.units[to].wide()
			to++
		}
		x := (scene.PaperW - total) / 2
		for i := from; i < to; i++ {
			w := b.units[i].wide()
			b.units[i].box = scene.Box{X: x, Y: y, W: w, H: billH}
			x += w + unitGap
		}
		y += rowH
		from = to
	}
	return y + bandGap
}

// chunks are groups of coins as units that have room side by side; the units of one
// group are counted in the list that comes with them.
func chunks(g arithmetic.CoinGroup, bare bool) []unit {
	most := int64(mostWide)
	if g.Coin >= arithmetic.Dollar {
		most = mostBill
	}
	var list []unit
	for n := g.Count; n > 0; n -= most {
		u := unit{bare: bare}
		for range min(n, most) {
			u.coins = append(u.coins, g.Coin)
		}
		list = append(list, u)
	}
	return list
}

// frame draws a line round a unit that has just come, so that it is seen without its
// color too.
func (u unit) frame(s *scene.Scene) {
	const out, up = 6, 3 // the amount stands close above
	s.Draw(scene.Moved, scene.Outline, scene.Rect{X: u.box.X - out, Y: u.box.Y - up, W: u.box.W + 2*out, H: billH + 2*up, Round: 12})
}

// draw draws the pieces of a unit for a number of the problem.
func (u unit) draw(s *scene.Scene, role scene.Role, of scene.Of) {
	if u.tag != nil {
		s.Draw(scene.Second, scene.Outline, scene.Rect{X: u.box.X, Y: u.box.Y + 8, W: u.box.W, H: u.box.H - 16, Round: 8})
		s.Add(scene.Item{Shape: scene.Text{X: u.box.X + u.box.W/2, Y: u.box.Y + u.box.H/2, Size: scene.Small, Runs: u.tag.Runs()}})
		return
	}
	total := -air
	for _, c := range u.coins {
		total += width(c) + air
	}
	x := u.box.X + (u.box.W-total)/2
	for _, c := range u.coins {
		w := width(c)
		it := scene.Item{Role: role, Of: of, Worth: fraction.Must(int64(c), 100), Shape: scene.Circle{X: x + radius, Y: u.box.Y + billH/2, R: radius}}
		if c >= arithmetic.Dollar {
			it.Shape = slip(x, u.box.Y)
		}
		s.Add(it)
		s.Add(scene.Item{Shape: scene.Words(x+w/2, u.box.Y+billH/2, scene.Small, words.CoinFace(c))})
		x += w + air
	}
}

// slip is a bill: a rectangle without its corners.
func slip(x, y int) scene.Polygon {
	r, b := x+billW, y+billH
	return scene.Polygon{{X: x + cut, Y: y}, {X: r - cut, Y: y}, {X: r, Y: y + cut}, {X: r, Y: b - cut},
		{X: r - cut, Y: b}, {X: x + cut, Y: b}, {X: x, Y: b - cut}, {X: x, Y: y + cut}}
}

// label writes what a unit comes to under it.
func (u unit) label(s *scene.Scene, line notation.Line) {
	s.Add(scene.Item{Shape: scene.Text{X: u.box.X + u.box.W/2, Y: u.box.Bottom() + labelUp, Size: scene.Small, Runs: line.Runs()}})
}

// title writes the line over a band.
func (b *band) title(s *scene.Scene) {
	if len(b.head) > 0 {
		s.Add(scene.Item{Shape: scene.Text{X: scene.PaperW / 2, Y: b.y + headH/2 - 2, Size: scene.Middle, Runs: b.head.Runs()}})
	}
}
