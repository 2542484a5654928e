package words

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// Split cuts what is left over.
func (a EqualGroups) Split(m arithmetic.SplitRest, each int64) (title string, hands, ask Phrase, desc scene.Telling) {
	pieces := In(scene.Moved, g(m.Pieces)+" "+Parts(m.Parts, m.Pieces))
	title, ask = "Cut what is left", Say("How can the plates share what is left?")
	hands = Say("Cut each of the "+g(m.Left)+" that are left in "+g(m.Parts)+" equal parts. That makes ", pieces, ".")
	if m.Left == 1 {
		hands = Say("Cut the one that is left in "+g(m.Parts)+" equal parts. That makes ", pieces, ".")
	}
	desc.Hidden = a.Asked()
	desc.Shown = g(a.Total) + " in all, " + Count(a.Groups, "plate") + ". Each plate has " + g(each) + ". What is left is cut in " + g(m.Pieces) + " " + Parts(m.Parts, m.Pieces) + "."
	return title, hands, ask, desc
}

// DealParts shares the parts out.
func (a EqualGroups) DealParts(m arithmetic.DealParts) (title string, hands, ask Phrase, desc scene.Telling) {
	part := Parts(m.Groups, 1)
	title, ask = "Share the parts", Say("How many "+Parts(m.Groups, 2)+" does each plate get?")
	hands = Say("Put one "+part+" of each on every plate. That is ", In(scene.Moved, m.Share.String()), " for each plate.")
	if m.Pieces == 1 {
		hands = Say("Put one "+part+" on every plate: ", In(scene.Moved, m.Share.String()), ".")
	}
	desc.Hidden = a.Asked()
	desc.Shown = g(a.Total) + " in all, " + Count(a.Groups, "plate") + ". Each plate gets " + g(m.Pieces) + " " + Parts(m.Groups, m.Pieces) + " more and has " + m.All.String() + "."
	return title, hands, ask, desc
}

// PartGroup sees what is left as part of a group.
func (a EqualGroups) PartGroup(m arithmetic.PartGroup) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "See a part of a group", Say("What part of a group of "+g(m.Each)+" is left?")
	hands = Say("Draw a ring around the "+g(m.Left)+" that are left. A group has "+g(m.Each)+", so that is ", In(scene.Moved, m.Share.String()), " of a group.")
	if m.Left == 1 {
		hands = Say("Draw a ring around the one that is left. A group has "+g(m.Each)+", so that is ", In(scene.Moved, m.Share.String()), " of a group.")
	}
	desc.Hidden = a.Asked()
	desc.Shown = g(a.Total) + " in all. In the last ring are " + g(m.Left) + " of the " + g(m.Each) + " that a group has: " + m.Share.String() + " of a group."
	return title, hands, ask, desc
}

// RoundUp finds a place for what is left.
func (a EqualGroups) RoundUp(m arithmetic.RoundUp) (title string, hands, ask Phrase, desc scene.Telling) {
	desc.Hidden = a.Asked()
	ask = Say("Where can the " + g(m.Left) + " that are left go?")
	rest := "the " + g(m.Left) + " that are left"
	if m.Left == 1 {
		rest = "the one that is left"
		ask = Say("Where can the one that is left go?")
	}
	if m.Story == arithmetic.Measuring {
		title = "Make one more group"
		hands = Say("Make one more group for "+rest+". It has room for ", In(scene.Moved, g(m.Empty)), " more.")
		desc.Shown = g(a.Total) + " in all. One more group has " + g(m.Left) + " in it and room for " + g(m.Empty) + " more."
		return title, hands, ask, desc
	}
	title = "Find a place for the rest"
	hands = Say("Put "+rest+" on ", In(scene.Moved, Count(m.Left, "plate")), ", one on each.")
	desc.Shown = g(a.Total) + " in all, " + Count(a.Groups, "plate") + ". What was left is on " + Count(m.Left, "plate") + ", one on each."
	return title, hands, ask, desc
}

// Take takes some of the plates.
func (a EqualGroups) Take(f fraction.Fraction, m arithmetic.TakeGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Take " + Count(m.Groups, "plate")
	all := In(scene.Result, g(m.Sum))
	hands = Say("Take "+g(m.Groups)+" of the "+Count(m.Of, "plate")+". There are ", all, " on them.")
	ask = Say("How many plates does the " + g(f.Num()) + " above the bar ask for? How many are on them?")
	switch {
	case m.Groups == 0:
		title, hands = "Take no plates", Say("Take none of the "+Count(m.Of, "plate")+": that is ", all, ".")
	case m.Groups == 1:
		hands = Say("Take 1 of the "+Count(m.Of, "plate")+". There are ", all, " on it.")
		if m.Sum == 1 {
			hands = Say("Take 1 of the "+Count(m.Of, "plate")+". There is ", all, " on it.")
		}
	}
	plates := g(a.Total) + " shared equally on " + Count(m.Of, "plate")
	of := f.String() + " of " + g(a.Total)
	taken := capital(Name(m.Groups)) + " of them " + map[bool]string{true: "is", false: "are"}[m.Groups == 1] + " taken"
	desc.Shown = plates + ", " + g(m.Each) + " on each. " + taken + ": " + of + " is " + g(m.Sum) + "."
	desc.Hidden = plates + ". " + taken + ". What is " + of + "?"
	return title, hands, ask, desc
}

// Pairs says what is known before pairs are made, and every pair.
func (a EqualGroups) Lay() (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Set out the counters"
	hands = Say("Put ", In(scene.First, a.things(a.Total)), " on the table.")
	if a.Total == 0 {
		hands = Say("There is nothing on the table: ", In(scene.First, "0"), " counters.")
	}
	return title, hands, Say("Has every counter a partner?"), scene.Same(a.pairsAsked())
}

func (a EqualGroups) pairsAsked() string {
	return g(a.Total) + " in all. Can they all be put in pairs?"
}

// Pair makes pairs.
func (a EqualGroups) Pair(m arithmetic.MakeGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Make a pair", Say("Can you make a pair?")
	hands = Say("Take ", In(scene.Moved, "2"), " counters and draw a ring around them: a pair. "+left(m.Left))
	if m.Before > 0 {
		title, ask = "Make all the pairs", Say("Can you make another pair?")
		until := "none are left"
		if m.Left > 0 {
			until = "there are too few for another"
		}
		hands = Say("Make more pairs until "+until+". There are ", In(scene.Moved, g(m.Groups)), " pairs now.")
	}
	desc.Hidden = a.pairsAsked()
	desc.Shown = g(a.Total) + " in all. " + isAre(m.Groups, "pair") + " made. " + left(m.Left)
	return title, hands, ask, desc
}

// ReadPairs says whether the number is even.
func (a EqualGroups) ReadPairs(m arithmetic.ReadPairs) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Even or odd", Say("Is one left without a partner?")
	n := g(m.Total)
	switch {
	case m.Total == 0:
		hands = Say("There are none, so none is without a partner: 0 is ", In(scene.Result, "even"), ".")
	case m.Even:
		hands = Say("Every counter has a partner, so "+n+" is ", In(scene.Result, "even"), ".")
	default:
		hands = Say("One counter has no partner, so "+n+" is ", In(scene.Result, "odd"), ".")
	}
	desc.Hidden = a.pairsAsked()
	desc.Shown = n + " in all: " + Count(m.Pairs, "pair") + " and none left over. " + n + " is even."
	if !m.Even {
		desc.Shown = n + " in all: " + Count(m.Pairs, "pair") + " and 1 left over. " + n + " is odd."
	}
	return title, hands, ask, desc
}

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

// isAre is "1 group is" or "3 groups are".
func isAre(n int64, one string) string {
	if n == 1 {
		return "1 " + one + " is"
	}
	return strconv.FormatInt(n, 10) + " " + plural(one, n) + " are"
}

// hasHave is "1 ring has" or "3 rings have".
func hasHave(n int64, one string) string {
	if n == 1 {
		return "1 " + one + " has"
	}
	return strconv.FormatInt(n, 10) + " " + plural(one, n) + " have"
}

func them(n int64) string {
	if n == 1 {
		return "it"
	}
	return "them"
}
