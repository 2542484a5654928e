package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why base-ten blocks cannot share.
var (
	BlocksShares  = errors.New("base-ten blocks share among 1 to 9 groups")
	BlocksGroups  = errors.New("base-ten blocks share equally, and do not make groups of a size")
	BlocksNoRest  = errors.New("base-ten blocks leave over what cannot be shared, and do not cut it")
	BlocksNoRoom  = errors.New("so many blocks would lie on the table at once that there is no room for them")
	BlocksStories = errors.New("base-ten blocks show no story of times as many or how many more")
)

// blocksGroups is a number of groups.
func blocksGroups(n int64) string { return Count(n, "group") }

// blocksEach is how many every group gets, in the role of what has just come.
func blocksEach(m arithmetic.SharePlace) Span { return In(scene.Moved, pieces(m.Power, m.Each)) }

// BlocksShare tells how the pieces of one place are shared.
func BlocksShare(m arithmetic.SharePlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	title = "Share the " + name
	ask = Say("How many " + name + " does each group get?")
	groups := In(scene.Second, blocksGroups(m.Groups))
	have := In(scene.First, pieces(m.Power, m.Have))
	zero := ""
	if !m.Leading {
		zero = " Write 0 for the " + name + "."
	}
	switch {
	case m.Have == 0:
		return title, Say("There are no " + name + " to share, so no group gets any." + zero), ask
	case m.Each == 0 && m.Have == 1:
		return title, Say(have, " is too few for ", groups, ", so no group gets a "+Place(m.Power, 1)+"."+zero), ask
	case m.Each == 0:
		return title, Say(have, " are too few for ", groups, ", so no group gets a "+Place(m.Power, 1)+"."+zero), ask
	case m.Groups == 1:
		return title, Say("Give the one group ", have, "."), ask
	}
	return title, Say("Share ", have, " among ", groups, ": ", blocksEach(m), " to each. "+stays(m.Power, m.Left)), ask
}

// BlocksTradeLeft tells how what could not be shared is traded.
func BlocksTradeLeft(m arithmetic.TradeLeft) (title string, hands, ask Phrase) {
	given, got := pieces(m.From, m.Count), pieces(m.From-1, m.Made)
	title = "Trade " + given + " for " + got
	ask = Say("What can we do with the " + given + " that are left?")
	if m.Count == 1 {
		ask = Say("What can we do with the " + Place(m.From, 1) + " that is left?")
	}
	now := Say(" Now there are " + pieces(m.From-1, m.Have) + " to share.")
	if m.Had > 0 {
		now = Say(" With the "+pieces(m.From-1, m.Had)+" that "+lieOrLies(m.Had)+" there, that makes ", In(scene.First, pieces(m.From-1, m.Have)), ".")
	}
	return title, Say("Trade "+given+" for ", In(scene.Moved, got), ".", now), ask
}

func lieOrLies(n int64) string {
	if n == 1 {
		return "lies"
	}
	return "lie"
}

// BlocksReadShare tells how the quotient is read off one group.
func BlocksReadShare(p arithmetic.Problem, m arithmetic.ReadShare) (title string, hands, ask Phrase) {
	quotient := In(scene.Result, arithmetic.Grouped(m.Each))
	answer := Say(p.String()+" = ", quotient)
	if m.Left > 0 {
		answer = Say(answer, " remainder ", In(scene.First, arithmetic.Grouped(m.Left)))
	}
	lies := Say("Look at one group: "+BlocksCounted(m.Counts, m.Counts.Top())+". ", answer, ".")
	if m.Each == 0 {
		lies = Say("Nothing lies in a group. ", answer, ".")
	}
	if m.Left > 0 {
		lies = Say(lies, " What is left over stays outside the groups.")
	}
	return "Read one group", lies, Say("How much is in each group?")
}

// BlocksDescShare describes what is still to be shared and what lies in every group.
func BlocksDescShare(on, given arithmetic.Counts, top int, groups int64) string {
	left := "Base-ten blocks, still to be shared: " + BlocksCounted(on, top) + "."
	if on == (arithmetic.Counts{}) {
		left = "Base-ten blocks. None are left to be shared."
	}
	if given == (arithmetic.Counts{}) {
		return left + " Under them " + blocksGroups(groups) + ", empty."
	}
	return left + " Under them " + blocksGroups(groups) + " with " + BlocksCounted(given, given.Top()) + inEach(groups) + "."
}

func inEach(groups int64) string {
	if groups == 1 {
		return ""
	}
	return " in each"
}

// BlocksDescToShare describes a division before anything is shared, and asks for
// the quotient.
func BlocksDescToShare(laid arithmetic.LayOut, groups int64) string {
	return BlocksDescLaid(laid) + " Under it " + blocksGroups(groups) + ", empty. How much does each group get?"
}

// BlocksSharedOut says in a description what one place came to.
func BlocksSharedOut(m arithmetic.SharePlace) string {
	if m.Each == 0 {
		return "No " + Place(m.Power, 2) + " can be shared."
	}
	return pieces(m.Power, m.Shared) + " shared among " + blocksGroups(m.Groups) + ", " + pieces(m.Power, m.Each) + inEach(m.Groups) + "."
}

// BlocksTradedLeft says in a description that what was left was traded.
func BlocksTradedLeft(m arithmetic.TradeLeft) string {
	are := " are traded for "
	if m.Count == 1 {
		are = " is traded for "
	}
	return pieces(m.From, m.Count) + are + pieces(m.From-1, m.Made) + "."
}

// BlocksShared says in a description what each group has in the end.
func BlocksShared(m arithmetic.ReadShare) string {
	text := "Each of " + blocksGroups(m.Groups) + " has " + BlocksCounted(m.Counts, m.Counts.Top()) + ": " + arithmetic.Grouped(m.Each) + "."
	if m.Groups == 1 {
		text = "The 1 group has " + BlocksCounted(m.Counts, m.Counts.Top()) + ": " + arithmetic.Grouped(m.Each) + "."
	}
	if m.Left > 0 {
		text += " " + begin(pieces(0, m.Left)) + " " + isOrAre(m.Left) + " left over: remainder " + arithmetic.Grouped(m.Left) + "."
	}
	return text
}

func isOrAre(n int64) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// BlocksLeftOver is what stands beside what could not be shared.
func BlocksLeftOver() string { return "left" }
