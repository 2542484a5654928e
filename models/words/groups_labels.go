package words

import (
	"modeler/arithmetic"
)

// GroupsNone stands where no group is drawn.
const GroupsNone = "no groups"

// GroupsWait names all that is to be shared or grouped.
func (a EqualGroups) Wait(pairs bool) string {
	switch {
	case pairs:
		return g(a.Total) + " in all"
	case a.Story == arithmetic.Sharing:
		return g(a.Total) + " to share"
	}
	return g(a.Total) + " to group"
}

// The words after a number that name an answer.
const (
	GroupsOnEach = "on each plate"
	GroupsInAll  = "in all"
	GroupsAtMost = "at most on a plate"
)

// GroupsTaken names what is on the plates that are taken, after its number.
func GroupsTaken(m arithmetic.TakeGroups) string {
	return "on " + g(m.Groups) + " of the " + Count(m.Of, "plate")
}

// GroupsPart names part of a group, after its fraction.
func GroupsPart(each int64) string { return "of a group of " + g(each) }

// GroupsMade names groups after their number; whole are all full.
func GroupsMade(one, full bool, each int64) string {
	text := plural("group", 2)
	if one {
		text = "group"
	}
	if full {
		text += " of " + g(each)
	}
	return text
}

// GroupsPairs names pairs after their number.
func GroupsPairs(n int64) string { return plural("pair", n) }

// GroupsParity asks whether a number is even.
func GroupsParity(n int64) string { return "is " + g(n) + " even or odd?" }

// EvenOrOdd is the answer of a question after parity.
func EvenOrOdd(even bool) string {
	if even {
		return "even"
	}
	return "odd"
}

// made is "1 group of 5 is made." or "3 groups of 5 are made."
func made(n int64, one, of string) string {
	if n == 1 {
		return "1 " + one + of + " is made."
	}
	return Count(n, one) + of + " are made."
}

// hasHave is "1 ring has" or "3 rings have".
func hasHave(n int64, one string) string { return Count(n, one) + " " + hasOrHave(n) }

func hasOrHave(n int64) string {
	if n == 1 {
		return "has"
	}
	return "have"
}

func them(n int64) string {
	if n == 1 {
		return "it"
	}
	return "them"
}
