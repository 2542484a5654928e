package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of bar diagrams of equal parts.

// DiagramLeftOver, DiagramTimes, DiagramParts and DiagramGroups stand in the
// pictures behind a number.
const (
	DiagramLeftOver = "left over"
	DiagramTimes    = "times as many"
)

func DiagramGroups(n int64) string { return plural("group", n) }

// DiagramParts leaves out that a single part is equal to itself.
func DiagramParts(n int64) string {
	if n == 1 {
		return "part"
	}
	return "equal parts"
}

// equalParts is "4 equal parts", or "1 part".
func equalParts(n int64) string { return g(n) + " " + DiagramParts(n) }

// DiagramUnit lays one part.
func DiagramUnit(m arithmetic.LayAmount, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Lay one part",
		Hands: Say("Lay a paper strip for one group and write ", amount(m.Amount), " on it."),
		Ask:   Say("Which number tells how many are in one group?"),
		Desc:  scene.Same("One bar for " + g(m.Amount.N) + "."),
	}
	if plan.Unit {
		t.Title = "Lay the smaller one"
		t.Hands = Say("Lay a paper strip for the smaller number and write ", amount(m.Amount), " on it.")
		t.Ask = Say("Will the other strip be longer or shorter?")
	}
	return t
}

// DiagramCopy lays the part again and again.
func DiagramCopy(m arithmetic.CopyBar, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Lay " + g(m.Count.N) + " parts",
		Hands: Say("Lay ", amount(m.Count), " such strips end to end. The whole length is not known yet."),
		Ask:   Say("How many strips must there be, all of one length?"),
		Desc:  scene.Same("A bar of " + equalParts(m.Count.N) + ", " + g(m.Size.N) + " in each. The whole is not known yet."),
	}
	if m.Count.N == 1 {
		t.Title = "Count the parts"
		t.Hands = Say("There is only ", amount(m.Count), " such strip. The whole length is not known yet.")
	}
	if plan.Unit {
		t.Hands = Say("Under it, lay ", amount(m.Count), " strips as long as that one, end to end from the same left edge.")
		t.Desc = scene.Same("A bar for " + g(m.Size.N) + " and under it one that is " + g(m.Count.N) + " times as long. Its number is not known yet.")
	}
	return t
}

// DiagramTotal finds the total of the parts.
func DiagramTotal(m arithmetic.AddEqualBars, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Find the whole",
		Hands: sentence(In(scene.First, Count(m.Count.N, "part")), " of ", amount(m.Size), " make ", amount(m.Total), ": ", amounts("×", m.Count, m.Size), " = ", amount(m.Total)),
		Ask:   Say("How do you find the whole of so many equal parts?"),
		Desc:  equalStory(plan, true),
	}
	if plan.Unit {
		t.Title = "Find the larger one"
	}
	return t
}

// DiagramTotalFirst lays the bar that is cut or measured.
func DiagramTotalFirst(m arithmetic.LayWhole, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Lay the whole",
		Hands: Say("Take a long paper strip and write ", amount(m.Whole), " over it."),
		Ask:   Say("What is the whole, and is it cut in equal parts?"),
		Desc:  scene.Same("One bar for " + g(m.Whole.N) + "."),
	}
	if plan.Unit {
		t.Title = "Lay the larger one"
		t.Ask = Say("Is " + g(m.Whole.N) + " the larger or the smaller one?")
	}
	return t
}

// DiagramCut cuts the bar in equal parts.
func DiagramCut(m arithmetic.CutBar, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Cut it into " + equalParts(m.Count.N),
		Hands: Say("Fold the strip into ", In(amount(m.Count).Role, equalParts(m.Count.N)), ". How much is in each is not known yet."),
		Ask:   Say("How many equal parts must there be?"),
		Desc:  scene.Same("A bar for " + g(m.Total.N) + " in " + equalParts(m.Count.N) + ". How much is each part?"),
	}
	if m.Count.N == 1 {
		t.Title = "Keep it in one part"
		t.Hands = Say("Leave the strip in ", amount(m.Count), " part.")
	}
	if plan.Left > 0 {
		t.Hands = Say("Mark ", In(amount(m.Count).Role, equalParts(m.Count.N)), " on the strip, each as large as whole numbers allow. What is left over stays apart.")
	}
	if plan.Unit {
		t.Hands = Say(t.Hands, " One of them is the smaller number.")
	}
	return t
}

// DiagramSize finds how much each part is.
func DiagramSize(m arithmetic.FindSize, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Find one part",
		Hands: Say("Share ", amount(m.Total), " equally among the parts. Each part is ", amount(m.Size), "."),
		Ask:   Say("How do you find one part when you know the whole?"),
		Desc:  equalStory(plan, false),
	}
	if plan.Unit {
		t.Title = "Find the smaller one"
		t.Hands = Say("Share ", amount(m.Total), " equally among the parts. Each part is ", amount(m.Size), ", and so is the smaller number.")
	}
	if m.Left > 0 {
		t.Hands = Say(t.Hands, " ", In(scene.First, g(m.Left)), " "+areIs(m.Left), " left over.")
	}
	if plan.Taken > 0 {
		t.Hands = Say("Share ", amount(m.Total), " equally among the parts. Each part is "+g(m.Size.N)+".")
		bar := "A bar for " + g(m.Total.N) + " in " + equalParts(m.Count.N)
		t.Desc = scene.Telling{Shown: bar + ", " + g(m.Size.N) + " in each.", Hidden: bar + ". Each part is worked out first."}
	}
	return t
}

// DiagramMarkUnit marks one part of the known size.
func DiagramMarkUnit(m arithmetic.MarkUnit, plan arithmetic.EqualBars) Told {
	if plan.Unit {
		return Told{
			Title: "Lay the smaller one",
			Hands: Say("Lay a strip for ", amount(m.Size), " over it, from the same left edge."),
			Ask:   Say("How many times does the short strip fit along the long one?"),
			Desc:  scene.Same("A bar for " + g(m.Size.N) + " and under it a bar for " + g(m.Total.N) + ", from the same left edge."),
		}
	}
	return Told{
		Title: "Mark one group",
		Hands: Say("Mark off one group of ", amount(m.Size), " from the left. How many groups there will be is not known yet."),
		Ask:   Say("Which number tells how many are in one group?"),
		Desc:  scene.Same("A bar for " + g(m.Total.N) + ". One group of " + g(m.Size.N) + " is marked off. How many such groups does it make?"),
	}
}

// DiagramCount finds how many parts there are.
func DiagramCount(m arithmetic.FindCount, plan arithmetic.EqualBars) Told {
	t := Told{
		Title: "Count the groups",
		Hands: Say("Go on marking groups of ", amount(m.Size), ". There "+areIs(m.Count.N)+" ", In(scene.Result, Count(m.Count.N, "group")), "."),
		Ask:   Say("How many groups of " + g(m.Size.N) + " make " + g(m.Total.N) + "?"),
		Desc:  equalStory(plan, false),
	}
	if plan.Unit {
		t.Title = "Count how many times"
		t.Hands = Say("Lay the short strip along the long one again and again. It fits ", amount(m.Count), timesWord(m.Count.N), ".")
		t.Ask = Say("How many strips of " + g(m.Size.N) + " make " + g(m.Total.N) + "?")
	}
	if m.Left > 0 {
		t.Hands = Say(t.Hands, " ", In(scene.First, g(m.Left)), " "+areIs(m.Left), " left over.")
	}
	return t
}

func areIs(n int64) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

func timesWord(n int64) string {
	if n == 1 {
		return " time"
	}
	return " times"
}

// DiagramTake takes some of the parts.
func DiagramTake(m arithmetic.TakeBars, plan arithmetic.EqualBars) Told {
	return Told{
		Title: "Take " + Count(m.Taken, "part"),
		Hands: sentence("Take "+Count(m.Taken, "part")+" of "+g(m.Size)+": that is ", In(scene.Result, g(m.Sum))),
		Ask:   Say("How many of the parts does the fraction ask for?"),
		Desc:  equalStory(plan, false),
	}
}
