package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// What is dealt out where it will be cut, and what it is dealt out on.
const (
	PaperCircles = "paper circle"
	Plates       = "plate"
)

// EqualGroups is a lesson about equal groups: what is known, and what is put in the
// groups. Groups are rings drawn on paper, but plates where a total is shared.
type EqualGroups struct {
	arithmetic.SetGroups
	Thing string
	Rest  arithmetic.Rest
	Part  bool // some of the groups are asked for
}

// things is "56 counters".
func (a EqualGroups) things(n int64) string { return Count(n, a.Thing) }

// Question asks for what is not known.
func (a EqualGroups) Question() string {
	switch a.Story {
	case arithmetic.Sharing:
		return "How many will be on each plate?"
	case arithmetic.Measuring:
		return "How many groups of " + g(a.Each) + " are there?"
	}
	return "How many are there in all?"
}

// Asked describes the problem without its answer, for every picture of it.
func (a EqualGroups) Asked() string {
	switch a.Story {
	case arithmetic.Sharing:
		return g(a.Total) + " to share equally on " + Count(a.Groups, "plate") + ". " + a.Question()
	case arithmetic.Measuring:
		return g(a.Total) + " to be put in groups of " + g(a.Each) + ". " + a.Question()
	}
	return capital(Count(a.Groups, "group")) + " of " + g(a.Each) + ". " + a.Question()
}

// Ready has everything on the table.
func (a EqualGroups) Ready() (title string, hands, ask Phrase, desc scene.Telling) {
	ask = Say(a.Question())
	switch {
	case a.Story == arithmetic.Sharing && a.Total == 0:
		title, hands = "Set out the plates", Say("Set out "+Count(a.Groups, "plate")+". There is nothing to share: ", In(scene.First, "0"), " counters.")
	case a.Story == arithmetic.Sharing:
		title, hands = "Set out the plates", Say("Put ", In(scene.First, a.things(a.Total)), " on the table and set out "+Count(a.Groups, "plate")+".")
	case a.Story == arithmetic.Measuring && a.Total == 0:
		title, hands = "Look at what there is", Say("There is nothing on the table: ", In(scene.First, "0"), " counters. A group would need "+g(a.Each)+".")
	case a.Story == arithmetic.Measuring:
		title, hands = "Set out the "+plural(a.Thing, 2), Say("Put ", In(scene.First, a.things(a.Total)), " on the table. A group will have "+g(a.Each)+".")
	case a.Groups == 0:
		title, hands = "Look at the groups", Say("There are no groups, so draw no rings.")
		ask = Say("How many groups are there?")
	default:
		title = "Draw the rings"
		hands = Say("Draw " + Count(a.Groups, "ring") + " on paper, one for each group. Every ring will get " + g(a.Each) + ".")
		if a.Each == 0 {
			hands = Say("Draw " + Count(a.Groups, "ring") + " on paper, one for each group. Nothing goes in them.")
		}
		if a.Groups == 1 && a.Each > 0 {
			hands = Say("Draw 1 ring on paper. It will get " + g(a.Each) + ".")
		}
		ask = Say("How many groups are there? How many go in each?")
	}
	if a.Part {
		ask = Say("What does the " + g(a.Groups) + " below the bar tell you to do?")
	}
	return title, hands, ask, scene.Same(a.Asked())
}

// eachPlate is "4 plates. Each plate".
func (a EqualGroups) eachPlate() string {
	if a.Groups == 1 {
		return "1 plate. The plate"
	}
	return Count(a.Groups, "plate") + ". Each plate"
}

// inTurn is an ordinal: first, second, third.
func inTurn(n int64) string {
	if n == 2 {
		return "second"
	}
	return ordinal(n)
}

// Make makes one group, or a few.
func (a EqualGroups) Make(m arithmetic.MakeGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	desc.Hidden = a.Asked()
	if a.Story == arithmetic.Making {
		return a.fill(m)
	}
	each := In(scene.Moved, a.things(m.Each))
	switch {
	case m.More > 1:
		title = "Make " + g(m.More) + " more groups"
		hands = Say("Make " + g(m.More) + " more groups of " + g(m.Each) + ". That takes " + g(m.Took) + ". " + left(m.Left))
		if m.Before == 0 {
			title, hands = "Make "+g(m.More)+" groups", Say("Make "+g(m.More)+" groups of "+g(m.Each)+", with a ring around each. That takes "+g(m.Took)+". "+left(m.Left))
		}
	case m.Before == 0 && m.Each == 1:
		title, hands = "Make the first group", Say("Take ", each, " and draw a ring around it. ", left(m.Left))
	case m.Before == 0:
		title, hands = "Make the first group", Say("Take ", each, " and draw a ring around them. ", left(m.Left))
	default:
		title, hands = "Make the "+inTurn(m.Groups)+" group", Say("Take ", In(scene.Moved, g(m.Each)), " more and draw a ring around ", them(m.Each), ". ", left(m.Left))
	}
	ask = Say("Are there enough for a group of " + g(m.Each) + "?")
	if m.Before > 0 {
		ask = Say("Are there enough for another group of " + g(m.Each) + "?")
	}
	desc.Shown = g(a.Total) + " in all. " + made(m.Groups, "group", " of "+g(m.Each)) + " " + left(m.Left)
	return title, hands, ask, desc
}

// fill fills rings that are there.
func (a EqualGroups) fill(m arithmetic.MakeGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	desc.Hidden = a.Asked()
	last := In(scene.Moved, List(numbers(m.Totals)))
	each := a.things(m.Each)
	switch {
	case m.More > 1 && m.Before == 0:
		title, hands = "Fill "+g(m.More)+" rings", Say("Put "+each+" in each of the first "+g(m.More)+" rings: ", last, ".")
	case m.More > 1:
		title, hands = "Fill "+g(m.More)+" more rings", Say("Put "+each+" in each of the next "+g(m.More)+" rings: ", last, ".")
	case m.Before == 0 && a.Groups == 1:
		title, hands = "Fill the ring", Say("Put ", In(scene.Moved, each), " in the ring.")
	case m.Before == 0:
		title, hands = "Fill the first ring", Say("Put ", In(scene.Moved, each), " in the first ring.")
	case m.Groups == a.Groups:
		title, hands = "Fill the last ring", Say("Put "+g(m.Each)+" more in the last ring: that makes ", last, ".")
	default:
		title, hands = "Fill the "+inTurn(m.Groups)+" ring", Say("Put "+g(m.Each)+" more in the next ring: that makes ", last, ".")
	}
	ask = Say("How many are there now?")
	desc.Shown = capital(Count(a.Groups, "ring")) + ". "
	if m.Groups == a.Groups {
		desc.Shown += "Every ring has " + g(m.Each) + ": "
	} else {
		desc.Shown += hasHave(m.Groups, "ring") + " " + g(m.Each) + " each: "
	}
	desc.Shown += g(m.Totals[len(m.Totals)-1]) + " so far."
	return title, hands, ask, desc
}

// Deal goes round the plates.
func (a EqualGroups) Deal(m arithmetic.DealRounds) (title string, hands, ask Phrase, desc scene.Telling) {
	took := In(scene.Moved, g(m.Took))
	ask = Say("Are there enough to go round again?")
	switch {
	case m.Groups == 1 && m.Took == 1:
		ask = Say("Is there one to put on the plate?")
	case m.Groups == 1:
		ask = Say("Are there " + g(m.Took) + " to put on the plate?")
	case m.Before == 0:
		ask = Say("Are there enough to put one on each plate?")
	}
	switch {
	case m.Before == 0 && m.More == 1:
		title, hands = "Deal one to each plate", Say("Put one on each plate. That takes ", took, ". "+left(m.Left))
		if m.Groups == 1 {
			hands = Say("Put ", In(scene.Moved, "1"), " on the plate. "+left(m.Left))
		}
	case m.More == 1:
		title, hands = "Go round a "+inTurn(m.Each)+" time", Say("Put one more on each plate. That takes ", took, ". "+left(m.Left))
		if m.Groups == 1 {
			hands = Say("Put ", In(scene.Moved, "1"), " more on the plate. "+left(m.Left))
		}
	case m.Groups == 1 && m.Before > 0:
		title, hands = "Put "+g(m.More)+" more on the plate", Say("Put ", took, " more on the plate. "+left(m.Left))
	case m.Groups == 1:
		title, hands = "Put "+g(m.More)+" on the plate", Say("Put ", took, " on the plate, one by one. "+left(m.Left))
	case m.Before == 0:
		title, hands = "Go round "+g(m.More)+" times", Say("Go round "+g(m.More)+" times, one to each plate. That takes ", took, ". "+left(m.Left))
	default:
		title, hands = "Go round "+g(m.More)+" more times", Say("Go round "+g(m.More)+" more times. That takes ", took, ". "+left(m.Left))
	}
	desc.Hidden = a.Asked()
	desc.Shown = g(a.Total) + " in all, " + a.eachPlate() + " has " + g(m.Each) + ". " + left(m.Left)
	return title, hands, ask, desc
}
