package arithmetic

import (
	"slices"

	"modeler/fraction"
)

// Wall is rows of equal wholes under each other, each cut in more parts than the
// one above it. Units to a whole are so many that all its parts are whole units.
type Wall struct {
	Rows  []int64 // parts of each row, fewest first
	Units int64
}

// The moves that are made with a wall.
type (
	// BuildWall lays the rows.
	BuildWall struct{ Wall }

	// ShadeRow shades a number in the row of its parts, and draws a line through
	// all rows where it ends. (CCSS 3.NF.A.3a)
	ShadeRow struct{ Number Number }

	// FindInRow finds that as many parts of another row end on the line. Fewest says
	// that no row above it has a part that ends there. (CCSS 3.NF.A.3b)
	FindInRow struct {
		From, Name Number
		Fewest     bool
	}

	// ReadRows reads all names that were found, fewest parts first. Without are the
	// rows of the wall in which no part ends on the line.
	ReadRows struct {
		Names   []Number
		Without []int64
	}
)

func (BuildWall) move() {}
func (ShadeRow) move()  {}
func (FindInRow) move() {}
func (ReadRows) move()  {}

// MostNamed is the largest denominator of a name that [EqualNames] asks for.
const MostNamed = 12

// wallOrder is the order in which rows are added to a wall while they fit: those
// whose parts a child of eight works with come first (CCSS grade 3: halves, thirds,
// fourths, sixths, eighths), and those that fit few others last.
var wallOrder = []int64{1, 2, 3, 4, 6, 8, 5, 10, 12, 9, 7, 11}

// NameOnWall works, on a wall that is at most room and at least narrowest units
// wide, the kinds that find other names of a fraction of at most one whole:
// [EqualNames], [SimplestForm] and [Renaming]. Its errors are [ErrSame], [ErrUneven],
// [ErrOverflow] where the rows that are needed do not fit, and that of a problem
// that is not about such a fraction.
func NameOnWall(p Problem, room, narrowest int64) (Working, Wall, error) {
	n, ok := p.Left.(Number)
	if !ok || n.Form != Common || n.Value.Sign() <= 0 || n.Value.Cmp(fraction.Whole(1)) > 0 {
		return Working{}, Wall{}, errNotTwo
	}
	var names []Number
	switch p.Kind {
	case EqualNames:
		names = equalNames(n)
	case SimplestForm:
		names = []Number{Frac(n.Value.Simplest())}
	case Renaming:
		to, err := filled(n.Value, p.Blank)
		if err != nil {
			return Working{}, Wall{}, err
		}
		names = []Number{Frac(to)}
	default:
		return Working{}, Wall{}, errNotTwo
	}
	if p.Kind != EqualNames && names[0] == n {
		return Working{}, Wall{}, ErrSame
	}
	wall, ok := wallFor(append([]Number{n}, names...), room, narrowest)
	if !ok {
		return Working{}, Wall{}, ErrOverflow
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}, Moves: []Move{BuildWall{wall}, ShadeRow{n}}}
	for _, name := range names {
		if name != n {
			w.Moves = append(w.Moves, FindInRow{From: n, Name: name, Fewest: p.Kind == SimplestForm})
		}
	}
	if p.Kind != EqualNames {
		w.Answer = Answer{Number: names[0], Simplest: names[0]}
		return w, wall, nil
	}
	w.Answer.Order = names
	w.Moves = append(w.Moves, ReadRows{names, wall.without(n.Value)})
	return w, wall, nil
}

// equalNames are the names of a fraction with at most [MostNamed] parts to a whole,
// fewest first, and the fraction itself where it has more.
func equalNames(n Number) []Number {
	var names []Number
	for den := int64(1); den <= MostNamed; den++ {
		if f, err := n.Value.In(den); err == nil {
			names = append(names, Frac(f))
		}
	}
	if n.Value.Den() > MostNamed {
		names = append(names, n)
	}
	return names
}

// without are the rows in which no part ends where f does.
func (w Wall) without(f fraction.Fraction) []int64 {
	return slices.DeleteFunc(slices.Clone(w.Rows), func(den int64) bool {
		_, err := f.In(den)
		return err == nil
	})
}

// wallFor chooses the rows: those of the numbers, and of the others as many as
// leave all parts whole units on a wall of that width. ok is false where the numbers
// alone do not fit.
func wallFor(numbers []Number, room, narrowest int64) (Wall, bool) {
	w := Wall{Units: 1}
	for _, n := range numbers {
		if !w.add(n.Value.Den(), room, 1) {
			return w, false
		}
	}
	for _, den := range wallOrder {
		w.add(den, room, narrowest)
	}
	slices.Sort(w.Rows)
	return w, w.wide(room) >= narrowest
}

// add adds a row, where the wall is wide enough with it.
func (w *Wall) add(den, room, narrowest int64) bool {
	if slices.Contains(w.Rows, den) {
		return true
	}
	units, err := fraction.LCM(w.Units, den)
	if err != nil || (Wall{Units: units}).wide(room) < narrowest {
		return false
	}
	w.Rows, w.Units = append(w.Rows, den), units
	return true
}

// wide is the width of the widest wall in a room, in steps of which each unit has
// the same whole number; 0 where there is none.
func (w Wall) wide(room int64) int64 { return room / w.Units * w.Units }
