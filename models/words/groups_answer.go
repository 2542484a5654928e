package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Read says the answer.
func (a EqualGroups) Read(m arithmetic.ReadGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Read the answer", Say(a.Question())
	if a.Part {
		title, ask = "Look at one plate", Say("How many are on one plate?")
	}
	if a.Story == arithmetic.Sharing && a.Rest == arithmetic.OneMore && m.Left > 0 {
		ask = Say("How many are on the fullest plate?")
	}
	switch a.Story {
	case arithmetic.Sharing:
		hands = a.readShare(m)
	case arithmetic.Measuring:
		hands = a.readMeasure(m)
	default:
		title, hands, ask = a.readProduct(m)
	}
	return title, hands, ask, a.Told(m)
}

func (a EqualGroups) readShare(m arithmetic.ReadGroups) Phrase {
	each := In(scene.Result, g(m.Each))
	switch {
	case m.Total == 0:
		return Say("There is nothing to share, so every plate has ", each, ".")
	case a.Rest == arithmetic.AsPart && m.Left > 0:
		return Say("Every plate has ", In(scene.Result, found(m.Found)), ".")
	case a.Rest == arithmetic.OneMore && m.Left > 0:
		return Say("No plate has more than ", In(scene.Result, found(m.Found)), ", so room for that many on each plate is enough.")
	case m.Each == 0:
		return Say("There are too few to put one on each plate, so every plate has ", each, ". ", over(m.Left, m.Total))
	case m.Groups == 1 && m.Each == 1:
		return Say("There is ", each, " on the plate.")
	case m.Groups == 1:
		return Say("There are ", each, " on the plate: all of them.")
	case m.Each == 1 && a.Part:
		return Say("There is ", each, " on each plate.")
	case a.Part:
		return Say("There are ", each, " on each plate.")
	case m.Each == 1:
		return Say("There is ", each, " on each plate. ", over(m.Left, m.Total))
	}
	return Say("There are ", each, " on each plate. ", over(m.Left, m.Total))
}

func (a EqualGroups) readMeasure(m arithmetic.ReadGroups) Phrase {
	groups := In(scene.Result, g(m.Groups))
	switch {
	case m.Total == 0:
		return Say("There is nothing to put in groups, so there are ", groups, " groups.")
	case a.Rest == arithmetic.AsPart && m.Left > 0 && m.Groups == 0:
		return Say("There is only part of a group of "+g(m.Each)+": ", In(scene.Result, found(m.Found)), ".")
	case a.Rest == arithmetic.AsPart && m.Left > 0:
		number, last := m.Found.Number.String(), m.Found.Simplest.String()
		if last == number {
			return Say("There are ", In(scene.Result, number), " groups of "+g(m.Each)+".")
		}
		return Say("There are ", In(scene.Result, number), " groups of "+g(m.Each)+", which is ", In(scene.Result, last), ".")
	case a.Rest == arithmetic.OneMore && m.Left > 0 && m.Groups == 0:
		return Say("That takes ", In(scene.Result, found(m.Found)), " group, and it is not full.")
	case a.Rest == arithmetic.OneMore && m.Left > 0:
		return Say("That takes ", In(scene.Result, found(m.Found)), " groups, and the last one is not full.")
	case m.Groups == 0:
		return Say("There are too few for a group of "+g(m.Each)+", so there are ", groups, " groups. ", over(m.Left, m.Total))
	case m.Groups == 1:
		return Say("There is ", groups, " group of "+g(m.Each)+". ", over(m.Left, m.Total))
	}
	return Say("There are ", groups, " groups of "+g(m.Each)+". ", over(m.Left, m.Total))
}

func (a EqualGroups) readProduct(m arithmetic.ReadGroups) (title string, hands, ask Phrase) {
	all := In(scene.Result, g(m.Total))
	title, ask = "Count them all", Say("How many are there in all?")
	switch {
	case m.Groups == 0:
		hands = Say("There are no groups, so there is nothing to count: ", all, ".")
	case m.Each == 0:
		hands = Say("Every ring is empty, so there is nothing to count: ", all, ".")
	case m.Groups == 1:
		hands = Say("There is only 1 group, so the group is all there is: ", all, ".")
	default:
		before := numbers(m.Totals[:len(m.Totals)-1])
		hands = Say("Count by "+g(m.Each)+", a ring at a time: "+strings.Join(before, ", ")+", ", all, ".")
		ask = Say("What do you say when you count a whole ring at a time?")
	}
	return title, hands, ask
}

// found is an answer with its last name: 3 2/4, which is 3 1/2.
func found(a arithmetic.Answer) string {
	text := a.Number.String()
	if last := a.Simplest.String(); last != text {
		text += ", which is " + last
	}
	return text
}

// over says what is left over, outside the groups.
func over(left, total int64) Phrase {
	n := In(scene.First, g(left))
	switch {
	case left == 0:
		return Say("None are left over.")
	case left == 1:
		return Say(n, " is left over.")
	case left == total:
		return Say("All ", n, " are left over.")
	}
	return Say(n, " are left over.")
}

// Told describes the whole story.
func (a EqualGroups) Told(m arithmetic.ReadGroups) scene.Telling {
	told := scene.Telling{Hidden: a.Asked()}
	each := g(m.Each) + " in each"
	if m.Each == 0 {
		each = "nothing in them, 0 in each"
	}
	switch {
	case a.Story == arithmetic.Making && m.Groups == 0:
		told.Shown = "No groups of " + g(m.Each) + ". " + inAll(m.Total) + "."
		return told
	case a.Story == arithmetic.Making:
		told.Shown = capital(Count(m.Groups, "group")) + " with " + each + ". " + inAll(m.Total) + "."
		return told
	case m.Left > 0 && a.Rest == arithmetic.AsPart && a.Story == arithmetic.Sharing:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "plate") + ". Each has " + m.Found.Number.String() + "."
		return told
	case m.Left > 0 && a.Rest == arithmetic.AsPart && m.Groups == 0:
		told.Shown = g(m.Total) + " in all: only part of a group of " + g(m.Each) + ". That is " + m.Found.Number.String() + " of a group."
		return told
	case m.Left > 0 && a.Rest == arithmetic.AsPart:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "full group") + " of " + g(m.Each) + " and part of a group: " + m.Found.Number.String() + " groups."
		return told
	case m.Left > 0 && a.Rest == arithmetic.OneMore && a.Story == arithmetic.Sharing:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "plate") + " with " + each + ", and " + g(m.Left) + " of them " + hasOrHave(m.Left) + " one more: no plate has more than " + m.Found.Number.String() + "."
		return told
	case m.Left > 0 && a.Rest == arithmetic.OneMore && m.Groups == 0:
		told.Shown = g(m.Total) + " in all. They need " + m.Found.Number.String() + " group of " + g(m.Each) + ", and it is not full."
		return told
	case m.Left > 0 && a.Rest == arithmetic.OneMore:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "full group") + " of " + g(m.Each) + " and one group that is not full: " + m.Found.Number.String() + " groups."
		return told
	case a.Story == arithmetic.Sharing:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "plate") + " with " + each
	case m.Groups == 0:
		told.Shown = g(m.Total) + " in all. There is no group of " + g(m.Each) + ", so there are 0 groups"
	default:
		told.Shown = g(m.Total) + " in all. " + thereAre(m.Groups, "group") + " of " + g(m.Each)
	}
	if m.Left > 0 {
		told.Shown += ", and " + g(m.Left) + " left over"
	}
	told.Shown += "."
	return told
}

// thereAre is "There is 1 plate", "There are 4 plates" or "There are no plates".
func thereAre(n int64, one string) string {
	if n == 1 {
		return "There is 1 " + one
	}
	return "There are " + Count(n, one)
}

// inAll is "There is 1 in all" or "There are 35 in all".
func inAll(n int64) string {
	if n == 1 {
		return "There is 1 in all"
	}
	return "There are " + g(n) + " in all"
}
