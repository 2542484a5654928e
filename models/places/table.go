package places

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/words"
)

// A table has a column for each place, the ones on the right, and in it one or two
// bands of counters. A counter is worth what its column says. Ten counters are
// seen as two fives: two rows where columns are wide, two upright lines where they
// are narrow. Large numbers have the names of the periods over those of the places.
//
//	+--------------------+ +--------------------+
//	|     thousands      | |        ones        |   period
//	+--------------------+ +--------------------+
//	 hundreds tens   ones   hundreds tens   ones    names
//	+--------++----++----+ +--------++----++----+
//	| o o    ||    || o  | | o      || o  || o o|   band 0
//	| o      ||    || o  | |        ||    || o  |
//	+--------++----++----+ +--------++----++----+
//	    3       0     2         1      1    3       rows under the table
const (
	periodH    = 44 // height of a period's bar
	nameH      = 44 // height of the row with the names of the places
	columnPad  = 8  // from the edge of a column to its counters, at the sides
	columnAir  = 16 // and above and below
	columnGap  = 4  // between two columns
	periodGap  = 12 // between two periods
	bandGap    = 26 // between two numbers in one column
	frameGap   = 16 // between two tens in one column
	arrowBand  = 74 // between two bands with arrows from one to the other
	digitH     = 46 // height of a row of digits inside a column
	firstRow   = 36 // from the table to the middle of the first row under it
	rowStep    = 44 // from that row to the next
	signWidth  = 28 // room for the sign left of the table
	widest     = 216
	fewColumns = 4 // as many columns are wide enough for five counters in a row
)

// fives is how many counters stand in a line.
const fives = 5

// smallest is the radius of the smallest counter that has room for dashes, and for
// fives to be seen at a glance.
const smallest = 12

// demand is what a table must have room for.
type demand struct {
	top     int                 // the largest place
	places  int                 // columns after the point, which stand right of the ones
	periods bool                // whether periods have names, as they do from five columns on
	slots   []arithmetic.Counts // of each band: the most counters that lie there
	frames  bool                // the bands are the tens of one number, not two numbers
	arrows  bool                // arrows lead from one band to the other
	digits  bool                // whether the digits of each band stand under it, inside the column
	sign    bool                // whether a sign stands beside the rows under the table
	across  int                 // of rows of a digit: the most counters side by side; 0 for counters in fives
	down    int                 // and how many rows there are
}

// table is the layout of a lesson.
type table struct {
	top     int
	places  int
	periods bool
	wide    bool // five counters stand in a row, and not in an upright line
	across  int  // how many stand in a row where they lie in rows of a digit; 0 where they lie in fives
	r, step int  // radius of a counter, and from one to the next
	columns [arithmetic.PlaceNames]scene.Box
	most    arithmetic.Counts // counters that lie in one band at once
	bands   []scene.Box       // Y and H only
	left    int               // where the sign stands
}

// layTable gives every column and band its place.
func layTable(d demand) table {
	t := table{top: d.top, places: d.places, periods: d.places == 0 && (d.periods || d.top >= fewColumns), wide: d.top < fewColumns, across: d.across}
	gutter := 0
	if d.sign {
		gutter = signWidth
	}
	t.size(scene.PaperW - 2*scene.Margin - gutter)
	y := t.columnsTop() + columnAir
	gap := bandGap
	if d.frames {
		gap = frameGap
	}
	if d.arrows {
		gap = arrowBand
	}
	for i, slots := range d.slots {
		if i > 0 {
			y += gap
		}
		h := 2 * t.r
		if i == 0 && d.down > 0 {
			h = d.down*t.step - (t.step - 2*t.r)
		}
		for power, n := range slots {
			h = max(h, t.height(int(n)))
			t.most[power] = max(t.most[power], n)
		}
		t.bands = append(t.bands, scene.Box{Y: y, H: h})
		if y += h; d.digits {
			y += digitH
		}
	}
	bottom := y + columnAir
	if d.digits {
		bottom = y
	}
	t.place(gutter, bottom)
	return t
}

// size chooses how large a counter is.
func (t *table) size(room int) {
	const air, closeAir = 5, 3 // between two counters
	least, most := smallest, 16
	if t.across > 0 {
		least, most = 5, 11
	}
	for t.r = most; ; t.r-- {
		between := air
		if t.r < smallest {
			between = max(closeAir, t.r/2)
		}
		if t.step = 2*t.r + between; t.r == least || t.total() <= room {
			return
		}
	}
}

// inner is the width of the counters of one column.
func (t *table) inner() int {
	if t.across > 0 {
		return t.across*t.step - (t.step - 2*t.r)
	}
	if t.wide {
		return fives*t.step - (t.step - 2*t.r)
	}
	return 2*t.step - (t.step - 2*t.r)
}

// height is that of a number of counters in one band.
func (t *table) height(count int) int {
	lines := min(count, fives)
	if t.across > 0 {
		lines = 1
	} else if t.wide {
		lines = (count + fives - 1) / fives
	}
	return max(0, lines*t.step-(t.step-2*t.r))
}

// need is the least width of a column.
func (t *table) need(power int) int {
	w := max(t.inner()+2*columnPad, scene.Advance(t.name(power), scene.Small, false)+2)
	if t.periods && t.top/3 == power/3 && t.top%3 == 0 {
		w = max(w, scene.Advance(words.Period(power/3), scene.Small, false)+10)
	}
	return w
}

// gap is what lies between a column and the one on its right.
func (t *table) gap(power int) int {
	if power == 0 {
		return 0
	}
	if t.periods && power%3 == 0 || t.places > 0 && power == t.places {
		return periodGap
	}
	return columnGap
}

func (t *table) total() int {
	sum := 0
	for power := range t.top + 1 {
		sum += t.need(power) + t.gap(power)
	}
	return sum
}

// place gives the columns the room that is left, in equal shares.
func (t *table) place(gutter, bottom int) {
	room := scene.PaperW - 2*scene.Margin - gutter
	share := (room - t.total()) / (t.top + 1)
	width := func(power int) int { return max(t.need(power), min(t.need(power)+share, widest)) }
	x := 0
	for power := range t.top + 1 {
		x += width(power) + t.gap(power)
	}
	t.left = (scene.PaperW - gutter - x) / 2
	x = t.left + gutter
	for power := t.top; power >= 0; power-- {
		top := t.columnsTop()
		t.columns[power] = scene.Box{X: x, Y: top, W: width(power), H: bottom - top}
		x += width(power) + t.gap(power)
	}
}

// columnsTop is the upper edge of the columns.
func (t *table) columnsTop() int {
	if t.periods {
		return scene.Margin + periodH + nameH
	}
	return scene.Margin + nameH
}

func (t *table) bottom() int { return t.columns[0].Bottom() }
