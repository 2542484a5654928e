package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// What an array is laid out with.
const (
	Counters = "counter"
	Squares  = "square"
)

// Things is a piece's name in one or many.
func Things(one string, count int64) string { return plural(one, count) }

// rowsOf is "7 rows of 8".
func rowsOf(rows, cols int64) string {
	return Count(rows, "row") + " of " + arithmetic.Grouped(cols)
}

// rowsAre is "7 rows of 8 are ", with room for the number that follows.
func rowsAre(rows, cols int64) string {
	if rows == 1 {
		return rowsOf(rows, cols) + " is "
	}
	return rowsOf(rows, cols) + " are "
}

// beside is where something is laid, seen from some rows: "beside them".
func beside(where string, rows int64) string {
	if rows == 1 {
		return where + " it"
	}
	return where + " them"
}

func numbers(list []int64) []string {
	out := make([]string, len(list))
	for i, n := range list {
		out[i] = arithmetic.Grouped(n)
	}
	return out
}

// sums is "35 and 21 make 56".
func sums(parts []int64, sum int64) string {
	return List(numbers(parts)) + " make " + arithmetic.Grouped(sum)
}

// ArrayLay says how to lay out rows of cols: with so many counters or tens in
// each, or on paper when thing is empty.
func ArrayLay(rows, cols, things int64, thing string) (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Lay out the rows"
	ask = Say("How many rows are there? How many are in each row?")
	desc = scene.Same("An array: " + Count(rows, "row") + " with " + arithmetic.Grouped(cols) + " in each row.")
	switch {
	case rows == 0:
		hands = Say("Lay out no rows: there is nothing on the table.")
	case cols == 0:
		hands = Say("Mark " + Count(rows, "row") + " and put nothing in them.")
	case thing == "":
		title = "Sketch the rows"
		hands = Say("Sketch a rectangle: " + Count(rows, "row") + " down the side, " + arithmetic.Grouped(cols) + " in each row along the top.")
	case thing == Squares:
		hands = Say("On squared paper, outline " + Count(rows, "row") + " with " + Count(cols, "square") + " in each.")
		title = "Outline the rows"
	default:
		hands = Say("Lay out " + Count(rows, "row") + " with " + Count(things, thing) + " in each.")
	}
	return title, hands, ask, desc
}

// ArrayUnit is the name of a crate: ten, hundred, thousand.
func ArrayUnit(unit int64) string {
	power := 0
	for ; unit >= 10; unit /= 10 {
		power++
	}
	return Place(power, 1)
}

// ArrayCount says how to count the rows.
func ArrayCount(m arithmetic.CountRows) (title string, hands, ask Phrase, desc scene.Telling) {
	all := In(scene.Result, arithmetic.Grouped(m.Product))
	title, ask = "Count the rows", Say("How many are there in all?")
	lay := "An array: " + Count(m.Rows, "row") + " with " + arithmetic.Grouped(m.Cols) + " in each row."
	desc = scene.Telling{Shown: lay + " There are " + arithmetic.Grouped(m.Product) + " in all.", Hidden: lay + " How many are there in all?"}
	switch {
	case m.Rows == 0:
		hands = Say("There are no rows, so there is nothing to count: ", all, ".")
	case m.Cols == 0:
		hands = Say("Every row is empty, so there is nothing to count: ", all, ".")
	case m.Rows == 1:
		hands = Say("There is only 1 row, so the row is all there is: ", all, ".")
	case m.Cols == 1:
		hands = Say("There is 1 in each row, so there are as many as there are rows: ", all, ".")
	default:
		hands = Say("Count by "+arithmetic.Grouped(m.Cols)+", row by row: "+
			strings.Join(numbers(m.Totals[:len(m.Totals)-1]), ", ")+", ", all, ".")
		ask = Say("What do you say when you count a whole row at a time?")
	}
	return title, hands, ask, desc
}

// ArrayTens says how to count an array of round factors in larger units.
func ArrayTens(m arithmetic.CountTens) (title string, hands, ask Phrase, desc scene.Telling) {
	in := func(count, unit int64) string {
		if unit == 1 {
			return arithmetic.Grouped(count)
		}
		return Count(count, ArrayUnit(unit))
	}
	unit := ArrayUnit(m.Unit)
	title = "Count in " + plural(unit, 2)
	many := in(m.Count, m.Unit)
	hands = Say(in(m.Rows, m.RowUnit)+" times "+in(m.Cols, m.ColUnit)+" is "+many+", and "+many+" is ", In(scene.Result, arithmetic.Grouped(m.Product)), ".")
	ask = Say("How many " + plural(unit, 2) + " are there?")
	lay := "An array: " + Count(m.Rows*m.RowUnit, "row") + " with " + arithmetic.Grouped(m.Cols*m.ColUnit) + " in each row."
	desc = scene.Telling{
		Shown:  lay + " It holds " + many + ", which is " + arithmetic.Grouped(m.Product) + ".",
		Hidden: lay + " How many " + plural(unit, 2) + " does it hold, and how many is that?",
	}
	return title, hands, ask, desc
}

// ArraySplit says where to split the sides. beside is set when the parts are
// given by the problem and laid out one after another.
func ArraySplit(rows, cols []int64, counters, given bool) (title string, hands, ask Phrase) {
	title, ask = "Split the array", Say("Where can you split it to get facts that you know?")
	var do []string
	line := "Draw a line at the split."
	if counters {
		line = "Lay a straw between the parts."
	}
	if len(cols) > 1 {
		do = append(do, "each row into "+List(numbers(cols)))
	}
	if len(rows) > 1 {
		do = append(do, "the rows into "+List(numbers(rows)))
	}
	if given {
		title, ask = "Lay out both parts", Say("What is the same in both parts?")
		if len(cols) > 1 {
			return title, Say("Lay out " + rowsOf(rows[0], cols[0]) + ". " + beside("Beside", rows[0]) + " lay " + rowsOf(rows[0], cols[1]) + "."), ask
		}
		return title, Say("Lay out " + rowsOf(rows[0], cols[0]) + ". " + beside("Below", rows[0]) + " lay " + rowsOf(rows[1], cols[0]) + "."), ask
	}
	if len(rows)+len(cols) > 3 {
		line = "Draw a line at every split."
	}
	return title, Say("Split " + strings.Join(do, " and ") + ". " + line), ask
}

// ArrayOne says how to see two parts as one array.
func ArrayOne(m arithmetic.LayRows, rows, cols []int64, all int64) (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("Push the parts together and see one array: ", rowsAre(m.Rows, m.Cols), In(scene.Result, arithmetic.Grouped(all)), " too.")
	desc = scene.Telling{
		Shown:  ArrayParts(rows, cols, nil, true) + " There are " + arithmetic.Grouped(all) + " in all.",
		Hidden: ArrayParts(rows, cols, nil, true) + " How many are there in all?",
	}
	return "See one array", hands, Say("Does it matter which way you count?"), desc
}

// ArrayParts describes a split array with as many of its products as are found.
// Given is set when the problem itself says the parts.
func ArrayParts(rows, cols []int64, found []arithmetic.FindPart, given bool) string {
	var b strings.Builder
	switch {
	case given && len(cols) > 1:
		b.WriteString("An array in two parts, side by side: " + rowsOf(rows[0], cols[0]) + " and " + rowsOf(rows[0], cols[1]) + ".")
	case given:
		b.WriteString("An array in two parts, one above the other: " + rowsOf(rows[0], cols[0]) + " and " + rowsOf(rows[1], cols[0]) + ".")
	default:
		b.WriteString("An array: " + Count(sum(rows), "row") + " with " + g(sum(cols)) + " in each row.")
		if len(rows) > 1 {
			b.WriteString(" The rows are split into " + List(numbers(rows)) + ".")
		}
		if len(cols) > 1 {
			b.WriteString(" Each row is split into " + List(numbers(cols)) + ".")
		}
	}
	for _, f := range found {
		b.WriteString(" " + capital(rowsAre(f.Rows, f.Cols)) + g(f.Product) + ".")
	}
	return b.String()
}

func sum(list []int64) int64 {
	s := int64(0)
	for _, n := range list {
		s += n
	}
	return s
}

func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// ArrayPart says how to find one part.
func ArrayPart(f arithmetic.FindPart, role scene.Role) (title string, hands, ask Phrase) {
	title = arithmetic.Grouped(f.Rows) + " × " + arithmetic.Grouped(f.Cols)
	hands = Say("Find the part with ", In(role, rowsOf(f.Rows, f.Cols)), ": that is ", In(role, arithmetic.Grouped(f.Product)), ".")
	ask = Say("How many are in " + rowsOf(f.Rows, f.Cols) + "?")
	return title, hands, ask
}

// ArrayJoin says how to put the parts together.
func ArrayJoin(m arithmetic.JoinParts, roles []scene.Role) (title string, hands, ask Phrase) {
	hands = Say("Put the parts together: ")
	for i, part := range m.Parts {
		switch {
		case i > 0 && i == len(m.Parts)-1:
			hands = append(hands, Say(" and ")...)
		case i > 0:
			hands = append(hands, Say(", ")...)
		}
		hands = append(hands, In(roles[i], arithmetic.Grouped(part)))
	}
	hands = append(hands, Say(" make ", In(scene.Result, arithmetic.Grouped(m.Sum)), ".")...)
	return "Add the parts", hands, Say("How many are there in all?")
}

// ArrayJoined describes the whole story of a split array.
func ArrayJoined(rows, cols []int64, found []arithmetic.FindPart, m arithmetic.JoinParts, given bool) scene.Telling {
	return scene.Telling{
		Shown:  ArrayParts(rows, cols, found, given) + " Together " + sums(m.Parts, m.Sum) + ".",
		Hidden: ArrayParts(rows, cols, nil, given) + " How many are there in all?",
	}
}

// Labels in the picture.
const (
	ArrayNotToScale  = "not to scale"
	ArrayTensToScale = "to scale, with a mark at every 10"
	ArrayEmptyRows   = "nothing in any row"
	ArrayNoRows      = "no rows"
)

// ArrayEach names the length of a row.
func ArrayEach(n string) string { return n + " in each row" }

// ArrayInAll names a total.
func ArrayInAll(n string) string { return n + " in all" }
