package words

import (
	"modeler/models/scene"
)

// ArrayCommon is the common factors of two numbers as the sides that their arrays
// share.
type ArrayCommon struct {
	Numbers  [2]int64
	Pairs    [2][][2]int64
	Common   []int64
	Greatest int64
}

// Title names the problem and its answer.
func (a ArrayCommon) Title() scene.Telling {
	asked := ArrayCommonAre(a.Numbers[0], a.Numbers[1])
	return scene.Telling{Shown: asked + ": " + List(numbers(a.Common)), Hidden: asked}
}

// ArrayCommonAre stands over the list.
func ArrayCommonAre(m, n int64) string { return "common factors of " + g(m) + " and " + g(n) }

// ArrayGreatestIs stands over the greatest of them.
const ArrayGreatestIs = "the greatest common factor"

// ArrayBy stands between the sides of an array.
const ArrayBy = "by"

// ArrayArraysOf names the arrays of one number.
func ArrayArraysOf(n int64) string { return "arrays of " + g(n) }

func (a ArrayCommon) set(i int) string {
	var list []string
	for _, pair := range a.Pairs[i] {
		list = append(list, rowsOf(pair[0], pair[1]))
	}
	return "Arrays of " + g(a.Numbers[i]) + ": " + List(list) + "."
}

func (a ArrayCommon) both() string { return a.set(0) + " " + a.set(1) }

// Found says how to find all arrays of one of the numbers.
func (a ArrayCommon) Found(i int) (title string, hands, ask Phrase, desc scene.Telling) {
	n := In(arrayRoles[i], g(a.Numbers[i]))
	title = "Arrays of " + g(a.Numbers[i])
	var list []string
	for _, pair := range a.Pairs[i] {
		list = append(list, rowsOf(pair[0], pair[1]))
	}
	hands = Say("Lay ", n, " in equal rows, in every way there is: "+List(list)+".")
	desc = scene.Same(a.set(0))
	if i == 1 {
		desc = scene.Same(a.both())
	}
	return title, hands, Say("How do you know that you have them all?"), desc
}

// Matched says which sides both numbers have.
func (a ArrayCommon) Matched() (title string, hands, ask Phrase, desc scene.Telling) {
	sides := In(scene.Result, List(numbers(a.Common)))
	hands = Say("Mark the sides that arrays of both numbers have: ", sides, ".")
	if len(a.Common) == 1 {
		hands = Say("Only the side ", sides, " is there in arrays of both numbers.")
	}
	return "Mark the sides that match", hands, Say("Which sides do both numbers have?"), a.Story()
}

// Read says which of them is the greatest.
func (a ArrayCommon) Read() (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("The longest side that both have is ", In(scene.Result, g(a.Greatest)), ": the greatest common factor.")
	desc = a.Story()
	desc.Shown += " The greatest is " + g(a.Greatest) + "."
	desc.Hidden += " Which is the greatest?"
	return "Find the greatest", hands, Say("Which of them is the greatest?"), desc
}

// Story describes the whole story.
func (a ArrayCommon) Story() scene.Telling {
	return scene.Telling{
		Shown:  a.both() + " The sides that both have: " + List(numbers(a.Common)) + ".",
		Hidden: a.both() + " Which sides do both have?",
	}
}
