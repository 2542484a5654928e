// Package blocks draws whole numbers in base-ten blocks, with every trade.
package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model lays numbers out in thousands, hundreds, tens and ones, and
// makes every trade a move of its own (CCSS 2.NBT.A.1, 2.NBT.A.4, 2.NBT.B.7).
var Model = &telling.Model{
	Name:  "base-ten-blocks",
	Title: "Base-ten blocks",
	Doc:   "Shows whole numbers in thousands, hundreds, tens and ones, with every trade when they are added, subtracted, multiplied or shared.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.ExpandedForm,
		arithmetic.PlaceValue,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Expression,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.Comparison,
		arithmetic.Claim,
	},
	Examples: []string{
		"402 - 178",
		"345 + 278",
		"706",
		"347 > 374",
		"compare 98 and 102",
		"3,000 - 1,456",
		"1,275 + 1,850",
		"14 - 6",
		"706 in expanded form",
		"value of the 4 in 3,456",
		"12 + 35 + 28",
		"3 x 47",
		"5 x 60",
		"73 / 3",
		"612 / 6",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

func tell(p arithmetic.Problem) telling.Telling {
	switch p.Kind {
	case arithmetic.Addition:
		return tellAdded(p)
	case arithmetic.Subtraction:
		return tellSubtracted(p)
	case arithmetic.Show:
		return tellShown(p)
	case arithmetic.ExpandedForm:
		return tellExpanded(p)
	case arithmetic.PlaceValue:
		return tellDigit(p)
	case arithmetic.Expression:
		return tellListed(p)
	case arithmetic.Product:
		return tellMultiplied(p)
	case arithmetic.Division:
		return tellShared(p)
	}
	return tellCompared(p)
}

// mustWork is the working of a problem that fits, of which nothing can go wrong.
func mustWork(w arithmetic.Working, err error) arithmetic.Working {
	if err != nil {
		panic("blocks: a problem that does not fit: " + err.Error())
	}
	return w
}

// pieces lists what to have on the table, the largest first.
func pieces(c arithmetic.Counts) []telling.Piece {
	var list []telling.Piece
	for power := c.Top(); power >= 0; power-- {
		if c[power] > 0 {
			list = append(list, telling.Piece{Name: words.Place(power, c[power]), Count: c[power]})
		}
	}
	return list
}

// floors are the least widths of trays: room for their names, and for the given
// lines under them.
func floors(lines ...[]notation.Line) (floor [places]int) {
	for power := range floor {
		floor[power] = scene.Advance(words.Place(power, 2), scene.Small, false) + 12
		if power < len(lines) {
			for _, line := range lines[power] {
				floor[power] = max(floor[power], telling.Width(line, scene.Small, false)+8)
			}
		}
	}
	return floor
}

func ofRole(n int64, role scene.Role) notation.Line {
	return notation.Line{telling.Count(n, role)}
}
