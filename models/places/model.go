// Package places draws whole numbers and decimals in a place-value table: counters in columns,
// each worth what its column says.
package places

import (
	"errors"

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
	Doc:   "Shows whole numbers up to millions, and decimals to thousandths, with counters in columns, and what happens to the columns when they are added, subtracted, compared or made 10 times as much.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.InWords,
		arithmetic.ExpandedForm,
		arithmetic.PlaceValue,
		arithmetic.Product,
		arithmetic.Division,
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
		"4,027,305 in words",
		"60,409 in expanded form",
		"value of the ten thousands digit in 145,820",
		"3,450 x 100",
		"82,000 ÷ 1,000",
		"39,950 + 100",
		"6 x 347",
		"3.047",
		"347.392 in expanded form",
		"value of the 4 in 0.347",
		"0.047 in words",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn puts the table first for the names of numbers, for 10, 100 and 1,000 times,
// and where blocks come to an end.
func turn(p arithmetic.Problem) int {
	a, b := arithmetic.Number{}, arithmetic.Number{}
	if isDecimal(p) {
		if n := p.Left.(arithmetic.Number); p.Kind == arithmetic.Show && n.Places < 3 {
			return telling.Follows
		}
		return telling.Leads
	}
	switch p.Kind {
	case arithmetic.InWords:
		return telling.Leads
	case arithmetic.Product, arithmetic.Division:
		if _, _, ok := arithmetic.Shifts(p); ok && fitsShift(p) == nil {
			if arithmetic.ShiftsBeyondFacts(p) {
				return telling.Leads
			}
			return telling.Follows
		}
		return telling.Serves
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim:
		a, b, _ = p.Operands()
	case arithmetic.Show, arithmetic.PlaceValue, arithmetic.ExpandedForm:
		a, _ = p.Left.(arithmetic.Number)
	default:
		return telling.Serves
	}
	x, _ := a.Int64()
	y, _ := b.Int64()
	switch most := max(x, y); {
	case most > mostInBlocks, p.Kind == arithmetic.Addition && most+min(x, y) > mostInBlocks:
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
	if isDecimal(p) {
		return fitsDecimal(p)
	}
	switch p.Kind {
	case arithmetic.Show, arithmetic.InWords, arithmetic.ExpandedForm, arithmetic.PlaceValue:
		n, ok := p.Left.(arithmetic.Number)
		if !ok {
			return telling.NotMine(words.PlacesKind)
		}
		if _, err := placed(n); err != nil {
			return err
		}
		if p.Kind == arithmetic.PlaceValue {
			if _, err := arithmetic.WorthBesideNext(p); err != nil {
				return words.BlocksNoPlace
			}
		}
		return nil
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim:
		return fitsPair(p)
	case arithmetic.Product, arithmetic.Division:
		return fitsShift(p)
	}
	return telling.NotMine(words.PlacesKind)
}

// fitsShift is about products and quotients with 10, 100 or 1,000.
func fitsShift(p arithmetic.Problem) error {
	nth, _, ok := arithmetic.Shifts(p)
	if _, _, _, times := arithmetic.TimesDigit(p); !ok && times && p.Story == arithmetic.NoStory {
		return nil
	}
	if !ok || p.Story != arithmetic.NoStory || p.Rest != arithmetic.LeftOver {
		return telling.NotMine(words.PlacesShiftKind)
	}
	a, b, _ := p.Operands()
	v, err := placed([2]arithmetic.Number{a, b}[nth])
	if err != nil {
		return err
	}
	if v == 0 {
		return telling.NotMine(words.PlacesShiftNone)
	}
	switch _, err := arithmetic.ShiftByPlace(p); {
	case errors.Is(err, arithmetic.ErrUnevenShift):
		return words.PlacesUneven
	case err != nil:
		return words.PlacesProduct
	}
	return nil
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
	if isDecimal(p) {
		return tellDecimal(p)
	}
	switch p.Kind {
	case arithmetic.Addition:
		return tellAdded(p)
	case arithmetic.Subtraction:
		return tellSubtracted(p)
	case arithmetic.Show:
		return tellShown(p)
	case arithmetic.InWords:
		return tellSaid(p)
	case arithmetic.ExpandedForm:
		return tellExpanded(p)
	case arithmetic.PlaceValue:
		return tellDigit(p)
	case arithmetic.Product, arithmetic.Division:
		if _, _, ok := arithmetic.Shifts(p); !ok {
			return tellTimes(p)
		}
		return tellShifted(p)
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
