package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// BlocksStepTitle names the picture of one step.
func BlocksStepTitle(p arithmetic.Problem, title string) string {
	return p.String() + ": " + strings.ToLower(title[:1]) + title[1:]
}

// BlocksQuestion is what a picture asks in place of the number that it shows.
func BlocksQuestion() string { return "Which number do the blocks show?" }

// BlocksDescShow describes the pieces of one number.
func BlocksDescShow(c arithmetic.Counts, top int) scene.Telling {
	pieces := "Base-ten blocks: " + BlocksCounted(c, top) + "."
	return scene.Telling{
		Shown:  pieces + " Together they are " + arithmetic.Grouped(c.Total()) + ".",
		Hidden: pieces + " " + BlocksQuestion(),
	}
}

// BlocksDescLaying describes the pieces of a number of which the places down to
// one are laid out.
func BlocksDescLaying(c arithmetic.Counts, top, lowest int) string {
	var list []string
	for power := top; power >= lowest; power-- {
		list = append(list, pieces(power, c[power]))
	}
	return "Base-ten blocks laid out so far: " + List(list) + "."
}

// BlocksDescOn describes the pieces that lie on the mat.
func BlocksDescOn(c arithmetic.Counts, top int) string {
	return "Base-ten blocks on the mat: " + BlocksCounted(c, top) + "."
}

// BlocksDescTwo describes two numbers laid out, one above the other.
func BlocksDescTwo(a, b arithmetic.LayOut) string {
	return "Base-ten blocks in two rows. " + laidOut(a) + ". Under it " + laidOut(b) + "."
}

// BlocksDescTogether describes two numbers whose blocks lie together.
func BlocksDescTogether(a, b arithmetic.LayOut) string {
	return "Base-ten blocks. " + laidOut(a) + ". " + begin(laidOut(b)) + "."
}

func laidOut(m arithmetic.LayOut) string {
	if m.Number == 0 {
		return "0 has no blocks"
	}
	return arithmetic.Grouped(m.Number) + " is " + BlocksCounted(m.Counts, m.Counts.Top())
}

// BlocksDescLaid describes one number laid out.
func BlocksDescLaid(m arithmetic.LayOut) string { return "Base-ten blocks. " + laidOut(m) + "." }

// BlocksTradedUp says in a description that ten pieces were traded.
func BlocksTradedUp(m arithmetic.TradeUp) string {
	return pieces(m.From, 10) + " are traded for " + pieces(m.From+1, 1) + "."
}

// BlocksJoined says in a description how many pieces a place holds.
func BlocksJoined(m arithmetic.JoinPlace) string {
	are := " there are "
	if m.Sum == 1 {
		are = " there is "
	}
	return "In the " + Place(m.Power, 2) + are + pieces(m.Power, m.Sum) + " in all."
}

// BlocksCompared says in a description what the pieces of one place say.
func BlocksCompared(m arithmetic.ComparePlace) string {
	where := "In the " + Place(m.Power, 2) + ", "
	if m.Relation != arithmetic.Equal {
		return where + differ(m).String() + "."
	}
	return where + "both have " + pieces(m.Power, m.First) + "."
}

// BlocksTogether says in a description which number all pieces make.
func BlocksTogether(m arithmetic.ReadOff, top int) string {
	return "Together they are " + BlocksCounted(m.Counts, top) + ": " + arithmetic.Grouped(m.Number) + "."
}

// BlocksIsItTrue asks whether a claim holds.
func BlocksIsItTrue() string { return "Is" }

// BlocksTradedDown says in a description that a piece was traded for ten.
func BlocksTradedDown(m arithmetic.TradeDown) string {
	return pieces(m.From, 1) + " is traded for " + pieces(m.From-1, 10) + "."
}

// BlocksCrossed says in a description which pieces are crossed out.
func BlocksCrossed(c arithmetic.Counts) string {
	return "Crossed out: " + BlocksCounted(c, c.Top()) + "."
}

// BlocksCrossedOut says in a description what one move takes away.
func BlocksCrossedOut(m arithmetic.TakePlace) string {
	if m.Count == 0 {
		return "No " + Place(m.Power, 2) + " are crossed out."
	}
	return "Crossed out: " + pieces(m.Power, m.Count) + "."
}

// BlocksAdd asks for the sum of the two rows of blocks.
func BlocksAdd() string { return "How many are they together?" }

// BlocksTakeAway asks for what stays when a number is taken away.
func BlocksTakeAway(b int64, c arithmetic.Counts) string {
	return "Take away " + arithmetic.Grouped(b) + ": " + BlocksCounted(c, c.Top()) + ". How many stay?"
}

// BlocksWhichMore asks for the sign between two numbers.
func BlocksWhichMore() string { return "Which is more, or are they the same?" }

// BlocksLeft says in a description what stays, and which number that is.
func BlocksLeft(m arithmetic.ReadOff, top int) string {
	return "What stays is " + BlocksCounted(m.Counts, top) + ": " + arithmetic.Grouped(m.Number) + "."
}

// Sentences joins sentences with a space, leaving out empty ones.
func Sentences(list ...string) string {
	var out []string
	for _, s := range list {
		if s != "" {
			out = append(out, s)
		}
	}
	return strings.Join(out, " ")
}
