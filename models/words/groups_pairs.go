package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// Lay has everything on the table before pairs are made.
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
	desc.Shown = g(a.Total) + " in all. " + made(m.Groups, "pair", "") + " " + left(m.Left)
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
