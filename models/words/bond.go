package words

import (
	"errors"
	"fmt"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of number bonds: a plate for the whole and one for each part, with
// counters on them where they can be counted.

// BondPlates is what the hands work with: plates for the whole and the parts.
func BondPlates(n int64) string { return plural("paper plate", n) }

// ErrBondOther and ErrBondPlaces say what a number bond does not show.
var (
	ErrBondOther  = errors.New("a number bond shows a whole number in two parts: sums and differences of two numbers, fact families, ways to make a number")
	ErrBondPlaces = errors.New("a number bond splits numbers from 11 to 99 into tens and ones, with ones to split off")
)

// BondMisfit says why a problem has no number bond.
func BondMisfit(err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New("the missing part would be less than 0")
	case errors.Is(err, arithmetic.ErrDivideByZero):
		return errors.New("a family with a factor 0 has no division facts")
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New("the numbers are too large to draw")
	}
	return errors.New("a number bond shows whole numbers that are not too large")
}

// BondTooLarge, FamilyTooLarge and WaysTooMany bound the numbers.
func BondTooLarge(n, most int64) error {
	if n > most {
		return fmt.Errorf("a number bond shows wholes up to %s", g(most))
	}
	return nil
}

func FamilyTooLarge(n, most int64) error {
	if n > most {
		return fmt.Errorf("a number bond shows products of numbers up to %s", g(most))
	}
	return nil
}

func WaysTooMany(n arithmetic.Number, most int64) error {
	if v, _ := n.Int64(); v > most {
		return fmt.Errorf("all ways are shown for numbers up to %s", g(most))
	}
	return nil
}

// onPlate says what is put on a plate: counters, or a card with the number.
func onPlate(a arithmetic.Amount, counted bool) Phrase {
	switch {
	case !counted:
		return Say("write ", amount(a))
	case a.N == 0:
		return Say("put no counters and write ", amount(a))
	}
	return Say("put ", In(amount(a).Role, Count(a.N, "counter")))
}

// BondPart fills the next part.
func BondPart(m arithmetic.LayAmount, plan arithmetic.WholeParts, counted bool) Told {
	t := Told{
		Title: "Make the first part",
		Hands: sentence("On one part, ", onPlate(m.Amount, counted)),
		Ask:   Say("Is " + g(m.Amount.N) + " a part, or the whole?"),
		Desc:  scene.Same("A number bond. One part is " + g(m.Amount.N) + "; the other part and the whole are not filled yet."),
	}
	if m.At == 1 {
		t.Title = "Make the other part"
		t.Hands = sentence("On the other part, ", onPlate(m.Amount, counted))
		t.Ask = Say("What is still missing in the bond?")
		t.Desc = scene.Same("A number bond with the parts " + g(plan.Parts[0].N) + " and " + g(plan.Parts[1].N) + ". The whole is not known yet.")
	}
	if plan.Taken {
		name := [...]string{"what is left", "what was taken away"}[m.At]
		t.Hands = Say(upperPhrase(onPlate(m.Amount, counted)), " on one part: that is "+name+".")
	}
	return t
}

func upperPhrase(p Phrase) Phrase {
	out := append(Phrase{}, p...)
	out[0].Text = upper(out[0].Text)
	return out
}

// BondTogether finds the whole.
func BondTogether(m arithmetic.AddParts, plan arithmetic.WholeParts, counted bool) Told {
	how := "Put both parts together: "
	if counted && m.Whole.N > 0 {
		how = "Slide both parts up to the whole and count: "
	}
	return Told{
		Title: "Put the parts together",
		Hands: sentence(how, amounts("+", m.Parts...), " = ", amount(m.Whole)),
		Ask:   Say("How many are there when both parts are together?"),
		Desc:  BondDesc(plan),
	}
}

// BondWhole lays out the whole.
func BondWhole(m arithmetic.LayWhole, plan arithmetic.WholeParts, counted bool) Told {
	return Told{
		Title: "Lay out the whole",
		Hands: sentence("On the whole, ", onPlate(m.Whole, counted)),
		Ask:   Say("Is " + g(m.Whole.N) + " a part, or the whole?"),
		Desc:  scene.Same("A number bond. The whole is " + g(m.Whole.N) + "; its parts are not filled yet."),
	}
}

// BondApart sets the known part apart.
func BondApart(m arithmetic.MarkPart, plan arithmetic.WholeParts, counted bool) Told {
	how := Say("Write ", amount(m.Part), " on one part")
	if counted && m.Part.N > 0 {
		how = Say("Slide ", amount(m.Part), " down to one part")
	}
	what := ""
	if plan.Taken {
		what = ": that is " + partName(m.At, plan)
	}
	return Told{
		Title: "Set " + g(m.Part.N) + " apart",
		Hands: Say(how, what+". The other part is not known yet: it gets a ", In(scene.Hidden, "?"), "."),
		Ask:   Say("Which part of the bond do you know already?"),
		Desc:  scene.Same("A number bond. The whole is " + g(m.Whole.N) + " and one part is " + g(m.Part.N) + ". The other part is not known yet."),
	}
}

// BondOther finds the part that was not known.
func BondOther(m arithmetic.FindOther, plan arithmetic.WholeParts, counted bool) Told {
	how := "Take the part you know from the whole: "
	if counted && m.Other.N > 0 {
		how = "Slide the rest down to the other part and count: "
	}
	return Told{
		Title: "Find the other part",
		Hands: sentence(how, amounts("−", m.Whole, m.Known), " = ", amount(m.Other)),
		Ask:   Say("What must go with " + g(m.Known.N) + " to make " + g(m.Whole.N) + "?"),
		Desc:  BondDesc(plan),
	}
}

// BondDesc describes a bond with all its numbers, and with the asked one missing.
func BondDesc(plan arithmetic.WholeParts) scene.Telling {
	a, b, w := plan.Parts[0], plan.Parts[1], plan.Whole
	t := scene.Telling{Shown: "A number bond. The whole is " + g(w.N) + " and its parts are " + g(a.N) + " and " + g(b.N) + "."}
	switch arithmetic.Asked {
	case w.Nth:
		t.Hidden = "A number bond with the parts " + g(a.N) + " and " + g(b.N) + ". What is the whole?"
	case a.Nth:
		t.Hidden = "A number bond. The whole is " + g(w.N) + " and one part is " + g(b.N) + ". What is the other part?"
	default:
		t.Hidden = "A number bond. The whole is " + g(w.N) + " and one part is " + g(a.N) + ". What is the other part?"
	}
	return t
}

// BondNumber lays out a number that is split in tens and ones.
func BondNumber(n int64, counted bool) Told {
	whole := arithmetic.Amount{N: n}
	return Told{
		Title: "Lay out the whole",
		Hands: sentence("On the whole, ", onPlate(whole, counted)),
		Ask:   Say("How many tens are in " + g(n) + ", and how many ones?"),
		Desc:  scene.Same("A number bond. The whole is " + g(n) + "; its parts are not filled yet."),
	}
}

// BondTens puts tens on one part and ones on the other.
func BondTens(m arithmetic.SplitPlaces, counted bool) Told {
	tens, ones := In(scene.Result, g(m.Tens)), In(scene.Result, g(m.Ones))
	return Told{
		Title: "Split tens and ones",
		Hands: Say("Write what the "+Count(m.TenCount, "ten")+" "+areIs(m.TenCount)+" worth, ", tens, ", on one part, and the ones, ", ones, ", on the other."),
		Ask:   Say("What is the first digit worth?"),
		Desc:  BondTensDesc(m),
	}
}

// BondTensDesc describes a bond of tens and ones.
func BondTensDesc(m arithmetic.SplitPlaces) scene.Telling {
	bond := "A number bond. The whole is " + g(m.Number)
	return scene.Telling{
		Shown:  bond + " and its parts are " + g(m.Tens) + " and " + g(m.Ones) + ".",
		Hidden: bond + ". One part has its tens and the other its ones. What are they worth?",
	}
}
