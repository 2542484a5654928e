// Package places draws whole numbers in a place-value table: counters in columns,
// each worth what its column says.
package places

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model lays numbers out with counters, in columns from the ones to the millions
// (CCSS 2.NBT.A.1, 2.NBT.A.3, 4.NBT.A.1, 4.NBT.A.2, 4.NBT.B.4, 5.NBT.A.1).
var Model = &telling.Model{
	Name:  "place-value-table",
	Title: "Place-value table",
	Doc:   "Shows whole numbers up to millions with counters in columns, and what happens to the columns when they are added, subtracted, compared or made 10 times as much.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Comparison,
		arithmetic.Claim,
	},
	Examples: []string{
		"4,027,305",
		"45,612 + 28,540",
		"50,204 - 17,360",
		"compare 305,412 and 305,142",
		"2,345,600 - 1,000,050",
		"23,456 > 9,876",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn puts the table first where blocks come to an end.
func turn(p arithmetic.Problem) int {
	a, b := arithmetic.Number{}, arithmetic.Number{}
	switch p.Kind {
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim:
		a, b, _ = p.Operands()
	case arithmetic.Show:
		a, _ = p.Left.(arithmetic.Number)
	default:
		return telling.Serves
	}
	x, _ := a.Int64()
	y, _ := b.Int64()
	switch most := max(x, y); {
	case most > mostInBlocks, p.Kind == arithmetic.Addition && x+y > mostInBlocks:
		return telling.Leads
	case most > small:
		return telling.Follows
	}
	return telling.Serves
}

// mostInBlocks is the largest number with a block for each of its pieces; above it
// there are only counters.
const mostInBlocks = 9_999

// small is the largest number that needs no table: it is told with single things.
const small = 20

func fits(p arithmetic.Problem) error {
	switch p.Kind {
	case arithmetic.Show:
		n, ok := p.Left.(arithmetic.Number)
		if !ok {
			return telling.NotMine(words.PlacesKind)
		}
		_, err := placed(n)
		return err
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim:
		return fitsPair(p)
	}
	return telling.NotMine(words.PlacesKind)
}

// fitsPair is about problems of two numbers.
func fitsPair(p arithmetic.Problem) error {
	a, b, ok := p.Operands()
	if !ok {
		return telling.NotMine(words.PlacesKind)
	}
	x, err := placed(a)
	if err != nil {
		return err
	}
	y, err := placed(b)
	if err != nil {
		return err
	}
	switch compares := p.Kind == arithmetic.Comparison || p.Kind == arithmetic.Claim; {
	case p.Kind == arithmetic.Addition && x+y > arithmetic.MaxPlaced:
		return words.PlacesSum
	case p.Kind == arithmetic.Subtraction && x < y:
		return words.PlacesNegative
	case compares && max(x, y) <= small:
		return words.PlacesSmall
	}
	return nil
}

// placed is a number that has room in the table.
func placed(n arithmetic.Number) (int64, error) {
	v, whole := n.Int64()
	switch {
	case !whole || n.Form != arithmetic.Whole || v < 0:
		return 0, telling.NotMine(words.PlacesWhole)
	case v > arithmetic.MaxPlaced:
		return 0, words.PlacesLarge
	}
	return v, nil
}

func tell(p arithmetic.Problem) telling.Telling {
	switch p.Kind {
	case arithmetic.Addition:
		return tellAdded(p)
	case arithmetic.Subtraction:
		return tellSubtracted(p)
	case arithmetic.Show:
		return tellShown(p)
	}
	return tellCompared(p)
}

// mustWork is the working of a problem that fits, of which nothing can go wrong.
func mustWork(w arithmetic.Working, err error) arithmetic.Working {
	if err != nil {
		panic("places: a problem that does not fit: " + err.Error())
	}
	return w
}

// pieces is what to have on the table: a sheet with columns and so many counters.
func pieces(top int, counts ...arithmetic.Counts) []telling.Piece {
	list := []telling.Piece{{Name: words.PlacesSheet(top + 1), Count: 1}}
	most := int64(0)
	for _, c := range counts {
		most = max(most, c.Pieces())
	}
	if most > 0 {
		list = append(list, telling.Piece{Name: words.Things(words.Counters, most), Count: most})
	}
	return list
}

// finish puts what a step shows on its scene. posed is what stands there while the
// answer is hidden, nil when the step does not show the answer.
func finish(s, shown, posed *scene.Scene) {
	if posed == nil {
		telling.AddPart(s, scene.Always, shown)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, posed)
}
