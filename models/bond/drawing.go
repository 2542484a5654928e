package bond

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// A bond is a plate for the whole, joined to a plate for each part. All plates are of
// one size: what is on them says how much. Up to twenty there are counters to count.
//
//	        ┌───────────┐
//	        │     8     │
//	        │ ●●●●● ●●● │
//	        └──┬─────┬──┘
//	       ┌───┘     └───┐
//	┌──────┴────┐   ┌────┴──────┐
//	│     3     │   │     5     │
//	│ ●●●       │   │ ●●●●●     │
//	└───────────┘   └───────────┘

const (
	mostCounters = 20
	inRow        = 10 // counters in a row, with a gap after five
	step         = 30 // from counter to counter
	fiveGap      = 8
	radius       = 12
	numeralTall  = 52
	plateWide    = 344 // with counters
	bareWide     = 220 // with a number only
	bareTall     = 88
	between      = 52 // from the whole down to the parts
)

// drawing is one bond on the paper: where its three plates are.
type drawing struct {
	telling.Story
	counted bool // with counters
	whole   scene.Rect
	parts   [2]scene.Rect
	below   int
}

// lay places the plates of a bond whose whole is n.
func lay(n int64) *drawing {
	d := &drawing{counted: n <= mostCounters}
	w, h := bareWide, bareTall
	if d.counted {
		w, h = plateWide, numeralTall+20+step*int((max(n, 1)+inRow-1)/inRow)
	}
	const edge = scene.PaperW / 2
	d.whole = scene.Rect{X: edge - w/2, Y: scene.Margin, W: w, H: h, Round: 20}
	y := d.whole.Y + h + between
	const half = 24 // from the middle of the paper to a part
	d.parts[0] = scene.Rect{X: edge - half - w, Y: y, W: w, H: h, Round: 20}
	d.parts[1] = scene.Rect{X: edge + half, Y: y, W: w, H: h, Round: 20}
	d.below = y + h
	return d
}

// known is a plate in the role of its number, and unknown one that waits for it.
func known(r scene.Rect, role scene.Role) scene.Item {
	return scene.Item{Shape: r, Role: role, Finish: scene.Outline}
}

func unknown(r scene.Rect) []scene.Item {
	return []scene.Item{{Shape: r, Role: scene.Hidden, Finish: scene.Dashed}, numeral(r, "?", scene.Hidden, r.H)}
}

// numeral is a number on a plate, in the middle of its upper part that is so high.
func numeral(r scene.Rect, words string, role scene.Role, high int) scene.Item {
	return scene.Item{Shape: scene.Text{X: r.X + r.W/2, Y: r.Y + high/2, Size: scene.Large, Bold: true, Runs: []scene.Run{{Text: words, Role: role}}}}
}

// number is an amount on a plate. Where nothing can be counted the number itself is
// worth it.
func (d *drawing) number(r scene.Rect, a arithmetic.Amount) scene.Item {
	high := r.H
	if d.counted {
		high = numeralTall + 10
	}
	it := numeral(r, arithmetic.Grouped(a.N), telling.RoleOf(a.Nth), high)
	if !d.counted && a.N > 0 {
		it.Of, it.Worth = telling.OfPlace(a.Nth), fraction.Whole(a.N)
	}
	return it
}

// place is where the i-th of n counters of a plate lies, from 0: in rows of ten, the
// first row in the middle.
func place(r scene.Rect, i, n int) (x, y int) {
	col, row, long := i%inRow, i/inRow, min(n, inRow)
	left := r.X + (r.W-long*step-(long-1)/5*fiveGap)/2 + step/2
	return left + col*step + col/5*fiveGap, r.Y + numeralTall + 10 + row*step + step/2
}

// counters are all n counters of a plate.
func (d *drawing) counters(r scene.Rect, n int64, role scene.Role, of scene.Of) []scene.Item {
	return d.some(r, 0, n, n, role, of)
}

// some are count counters of a plate that has n, from one on.
func (d *drawing) some(r scene.Rect, first, count, n int64, role scene.Role, of scene.Of) []scene.Item {
	var list []scene.Item
	if !d.counted {
		return nil
	}
	for i := range count {
		x, y := place(r, int(first+i), int(n))
		it := scene.Item{Shape: scene.Circle{X: x, Y: y, R: radius}, Role: role, Finish: scene.Deep, Of: of, Worth: fraction.Whole(1)}
		if role == scene.Gone {
			it.Finish, it.Of, it.Worth = scene.Dashed, scene.OfNothing, fraction.Fraction{}
		}
		list = append(list, it)
	}
	return list
}

// joins are the lines from the whole to the parts.
func (d *drawing) joins() []scene.Item {
	var list []scene.Item
	for _, part := range d.parts {
		from := d.whole.X + d.whole.W/2 + 60
		if part.X < d.whole.X+d.whole.W/2-part.W/2 {
			from -= 120
		}
		list = append(list, scene.Item{
			Shape: scene.Line{X1: from, Y1: d.whole.Y + d.whole.H, X2: part.X + part.W/2, Y2: part.Y}, Role: scene.Ink, Finish: scene.Bold,
		})
	}
	return list
}

// shown and hidden give items to one version of the picture.
func shown(items ...scene.Item) []scene.Item  { return inVersion(scene.ShownOnly, items) }
func hidden(items ...scene.Item) []scene.Item { return inVersion(scene.HiddenOnly, items) }

func inVersion(when scene.When, items []scene.Item) []scene.Item {
	list := make([]scene.Item, len(items))
	for i, it := range items {
		it.When = when
		list[i] = it
	}
	return list
}

// written is a plain term of an amount in its role.
func written(a arithmetic.Amount) notation.Term {
	return telling.Count(a.N, telling.RoleOf(a.Nth))
}
