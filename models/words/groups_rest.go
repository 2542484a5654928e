package words

import (
	"modeler/arithmetic"
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
