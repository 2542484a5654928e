package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayFactorsTitle names all factors of a number.
func ArrayFactorsTitle(p arithmetic.Problem, pairs [][2]int64) scene.Telling {
	return scene.Telling{Shown: p.String() + ": " + List(ArrayFactorList(pairs)), Hidden: p.String()}
}

// ArrayFactorList lists the factors from the smallest to the largest.
func ArrayFactorList(pairs [][2]int64) []string {
	var list []int64
	for _, pair := range pairs {
		list = append(list, pair[0])
	}
	return numbers(list)
}

// ArrayPair says how to find one array of n.
func ArrayPair(n int64, m arithmetic.FindPair, found []arithmetic.FindPair) (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Try " + Count(m.Rows, "row")
	ask = Say("Can you lay " + g(n) + " in " + Count(m.Rows, "equal row") + "?")
	if m.Rows == 1 {
		ask = Say("Can you lay " + g(n) + " in one row?")
		hands = Say("Lay all " + g(n) + " in one row. That is always an array.")
	} else {
		hands = Say(failed(m.Failed), "Lay "+g(n)+" in "+Count(m.Rows, "row")+": there are ", In(scene.First, g(m.Cols)), " in each.")
	}
	return title, hands, ask, scene.Telling{Shown: arraysOf(n, found), Hidden: arraysAsked(n)}
}

// failed names the rows tried in vain.
func failed(rows []int64) Phrase {
	switch len(rows) {
	case 0:
		return nil
	case 1, 2, 3, 4:
		return Say(capital(List(numbers(rows))) + " rows do not come out even. ")
	}
	return Say(g(rows[0]) + " to " + g(rows[len(rows)-1]) + " rows do not come out even. ")
}

// ArrayTurn says why the search is over.
func ArrayTurn(n int64, m arithmetic.TurnPairs, found []arithmetic.FindPair, pairs [][2]int64) (title string, hands, ask Phrase, desc scene.Telling) {
	last := found[len(found)-1]
	hands = Say(failed(m.Failed), "From "+Count(m.Rows, "row")+" on, every array is one you have, turned: "+
		rowsAre(last.Cols, last.Rows)+rowsOf(last.Rows, last.Cols)+" on their side.")
	if last.Rows == last.Cols {
		hands = Say(failed(m.Failed), "From "+Count(m.Rows, "row")+" on, every array is one you have, turned on its side.")
	}
	return "Turn the arrays", hands, Say("How do you know that you have them all?"), ArraySet(n, found, pairs)
}

// ArraySet describes all arrays of a number.
func ArraySet(n int64, found []arithmetic.FindPair, pairs [][2]int64) scene.Telling {
	list := ArrayFactorList(pairs)
	factors := " The factors of " + g(n) + " are " + List(list) + "."
	if len(list) == 1 {
		factors = " The only factor of " + g(n) + " is " + list[0] + "."
	}
	return scene.Telling{Shown: arraysOf(n, found) + " Each can be turned." + factors, Hidden: arraysAsked(n)}
}

func arraysOf(n int64, found []arithmetic.FindPair) string {
	var list []string
	for _, m := range found {
		list = append(list, rowsOf(m.Rows, m.Cols))
	}
	return "Arrays of " + g(n) + ": " + List(list) + "."
}

func arraysAsked(n int64) string {
	return Count(n, "square") + " in one row. Which other arrays of " + g(n) + " are there?"
}

// ArrayBothTurns names an array and the one it turns into.
func ArrayBothTurns(rows, cols int64) string {
	if rows == cols {
		return g(rows) + " × " + g(cols)
	}
	return g(rows) + " × " + g(cols) + " or " + g(cols) + " × " + g(rows)
}

// ArrayFact names one array.
func ArrayFact(rows, cols int64) string { return g(rows) + " × " + g(cols) }

// ArrayTurnedName names an array that has been turned on its side.
func ArrayTurnedName(m arithmetic.FindPair) string { return ArrayFact(m.Cols, m.Rows) + ", turned" }

// Labels in the picture of factors.
const (
	ArrayNoOther = "no other array"
	ArrayOnSide  = "turned"
)

// ArrayOneRow names the array that every number has.
func ArrayOneRow(n int64) string { return g(n) + " in one row" }

// ArrayFactorsAre stands over the list of factors.
func ArrayFactorsAre(n int64) string { return "factors of " + g(n) }
