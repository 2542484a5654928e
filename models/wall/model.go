// Package wall draws a fraction wall: rows of equal wholes, each cut in more parts
// than the one above.
package wall

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model finds the other names of a fraction on rows of equal wholes: where the same
// length ends in another row, it has a name in those parts. (CCSS 3.NF.A.3a-b, 4.NF.A.1)
var Model = &telling.Model{
	Name:  "fraction-wall",
	Title: "Fraction wall",
	Doc:   "Rows of equal wholes cut in 1 to 12 parts, one under the other: which names one amount has, and which it has not.",
	Kinds: []arithmetic.Kind{
		arithmetic.EqualNames,
		arithmetic.SimplestForm,
		arithmetic.Renaming,
	},
	Examples: []string{
		"fractions equal to 1/2", "fractions equal to 4/6", "fractions equal to 3/7", "fractions equal to 15/20",
		"6/8 in simplest form", "2/3 = ?/12", "3/4 = 9/?",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn: the wall leads where all names are asked for; it is a good second picture
// where one is.
func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.EqualNames:
		return telling.Leads
	case arithmetic.SimplestForm, arithmetic.Renaming:
		return telling.Follows
	}
	return telling.Serves
}

const (
	mostParts = 24  // of a row: each is then 20 units wide or more
	room      = 672 // for the wall, beside the names at its left
	narrowest = 560
)

// fits refuses what is no fraction of at most one whole, and rows that cannot be
// drawn exactly or seen.
func fits(p arithmetic.Problem) error {
	switch p.Kind {
	case arithmetic.EqualNames, arithmetic.SimplestForm, arithmetic.Renaming:
	default:
		return telling.NotMine(errors.New(words.WallKinds))
	}
	n, ok := p.Left.(arithmetic.Number)
	if !ok || n.Form != arithmetic.Common {
		return telling.NotMine(errors.New(words.WallKinds))
	}
	if n.Value.Sign() <= 0 || n.Value.Cmp(fraction.Whole(1)) >= 0 {
		return errors.New(words.WallOneWhole)
	}
	_, wall, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrSame):
		return errors.New(words.BarsSame(p))
	case errors.Is(err, arithmetic.ErrUneven):
		return errors.New(words.BarsUneven(p))
	case err != nil || wall.Rows[len(wall.Rows)-1] > mostParts:
		return errors.New(words.WallTooFine(mostParts))
	}
	return nil
}

func work(p arithmetic.Problem) (arithmetic.Working, arithmetic.Wall, error) {
	return arithmetic.NameOnWall(p, room, narrowest)
}

func tell(p arithmetic.Problem) telling.Telling {
	w, rows, err := work(p)
	if err != nil {
		panic(err) // fits has worked it
	}
	return tellNames(w, lay(rows))
}
