package words

import (
	"errors"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why a place-value table cannot show a decimal.
var (
	PlacesFine = errors.New("a place-value table goes to thousandths")
	PlacesWide = errors.New("a place-value table shows decimals below 1,000")
)

// DecimalColumn is the name of a column by how many places stand after the point and
// its index from the right: ones, tenths, hundredths.
func DecimalColumn(places, index int) string {
	if after := places - index; after > 0 {
		return arithmetic.DecimalPlace(after)
	}
	return Place(index-places, 2)
}

// DecimalCount is so many pieces of a place: 3 tenths, no hundredths.
func DecimalCount(places, index int, count int64) string {
	return Count(count, strings.TrimSuffix(DecimalColumn(places, index), "s"))
}

// decimalCounted lists the digits from one down to another: "no ones and 3 tenths".
func decimalCounted(d arithmetic.DecimalDigits, on arithmetic.Counts, lowest int) string {
	var list []string
	for index := d.Top; index >= lowest; index-- {
		list = append(list, DecimalCount(d.Places, index, on[index]))
	}
	return List(list)
}

// PlacesLayDigit tells how the counters of one digit of a decimal are laid out.
func PlacesLayDigit(m arithmetic.LayDigit) Told {
	name := DecimalColumn(m.Digits.Places, m.Index)
	t := Told{
		Title: "Lay out " + DecimalCount(m.Digits.Places, m.Index, m.Count),
		Ask:   Say("How many " + name + " are there?"),
		Hands: Say("Put ", In(scene.First, Count(m.Count, "counter")), " in the "+name+" column: "+m.Worth.String()+"."),
		Desc:  scene.Same("Place-value table so far: " + decimalCounted(m.Digits, m.On, m.Index) + "."),
	}
	if m.Count == 0 {
		t.Title = "No " + name
		t.Hands = Say("Leave the " + name + " column empty. The 0 keeps its place.")
	}
	return t
}

// PlacesLayDigits tells how a decimal is laid out at once.
func PlacesLayDigits(d arithmetic.DecimalDigits) Told {
	number := In(scene.First, d.Number.String())
	return Told{
		Title: "Lay out " + d.Number.String(),
		Ask:   Say("How many counters go in each column for ", number, "?"),
		Hands: Say("Put counters for ", number, ": "+decimalCounted(d, d.Counts, 0)+"."),
		Desc:  scene.Same(PlacesDecimal(d)),
	}
}

// PlacesDecimal describes a decimal laid out.
func PlacesDecimal(d arithmetic.DecimalDigits) string {
	return "Place-value table. " + d.Number.String() + " is " + decimalCounted(d, d.Counts, 0) + "."
}

// PlacesDecimalAsked describes a decimal without its number.
func PlacesDecimalAsked(d arithmetic.DecimalDigits) string {
	return "Place-value table: " + decimalCounted(d, d.Counts, 0) + "."
}

// PlacesWriteDigits tells how a decimal is read, or written as a sum.
func PlacesWriteDigits(p arithmetic.Problem, m arithmetic.WriteDigits, equation string) Told {
	number := In(scene.First, m.Digits.Number.String())
	if p.Kind == arithmetic.ExpandedForm {
		return Told{
			Title: "Write what each digit is worth",
			Ask:   Say("What is each digit of ", number, " worth?"),
			Hands: Say("Write what the counters of each column are worth: " + equation + "."),
			Desc:  scene.Telling{Shown: PlacesDecimal(m.Digits) + " " + equation + ".", Hidden: PlacesDecimal(m.Digits) + " What is each digit worth?"},
		}
	}
	return Told{
		Title: "Read the number",
		Ask:   Say("Which number is it?"),
		Hands: Say("Read the columns from the left. They say ", number, ": "+DecimalName(m.Digits.Number)+"."),
		Desc:  scene.Telling{Shown: PlacesDecimal(m.Digits) + " Together they are " + m.Digits.Number.String() + ", " + DecimalName(m.Digits.Number) + ".", Hidden: PlacesDecimalAsked(m.Digits) + " " + PlacesQuestion()},
	}
}

// PlacesPoint tells where the digit that is asked for stands.
func PlacesPoint(m arithmetic.PointAtDigit) Told {
	name := DecimalColumn(m.Digits.Places, m.Index)
	digit := In(scene.Moved, arithmetic.Grouped(m.Digit))
	t := Told{
		Title: "Find the " + name,
		Ask:   Say("Which digit of ", In(scene.First, m.Digits.Number.String()), " counts the "+name+"?"),
		Hands: Say("Find the "+name+" column and count: ", In(scene.Moved, Count(m.Digit, "counter")), ", so the digit is ", digit, "."),
		Desc:  scene.Same(PlacesDecimal(m.Digits) + " " + PlacesPointed(m)),
	}
	if m.Digit == 0 {
		t.Hands = Say("Find the "+name+" column. It is empty: the digit is ", digit, ".")
	}
	return t
}

// PlacesPointed says in a description which column is marked.
func PlacesPointed(m arithmetic.PointAtDigit) string {
	return "The " + DecimalColumn(m.Digits.Places, m.Index) + " column is marked: " + DecimalCount(m.Digits.Places, m.Index, m.Digit) + "."
}

// PlacesWorth tells what the digit is worth.
func PlacesWorth(d arithmetic.DecimalDigits, m arithmetic.WorthOfDigit) Told {
	worth := In(scene.Result, m.Worth.String())
	t := Told{
		Title: "Say what it is worth",
		Ask:   Say("What are the " + DecimalColumn(d.Places, m.Index) + " worth together?"),
		Hands: Say("One counter there is worth "+m.Each.String()+", so "+DecimalCount(d.Places, m.Index, m.Digit)+" "+hold(m.Digit)+" worth ", worth, "."),
	}
	if m.Digit == 0 {
		t.Hands = Say("There is nothing to count, so the 0 is worth ", worth, ". It keeps the place.")
	}
	return t
}

// PlacesWorthOf says in a description what a digit is worth.
func PlacesWorthOf(d arithmetic.DecimalDigits, m arithmetic.WorthOfDigit) string {
	return "The " + DecimalColumn(d.Places, m.Index) + " digit is worth " + m.Worth.String() + "."
}

// PlacesSaidLines is how a decimal is said, in one line or broken at the point.
func PlacesSaidLines(n arithmetic.Number, broken bool) []string {
	name := DecimalName(n)
	if wholes, after, ok := strings.Cut(name, " and "); ok && broken {
		return []string{wholes + " and", after}
	}
	return []string{name}
}

// PlacesSay tells how a decimal is said.
func PlacesSay(m arithmetic.SayDecimal) Told {
	last := DecimalColumn(m.Digits.Places, 0)
	name := In(scene.Result, "“"+DecimalName(m.Digits.Number)+"”")
	how := Say("Say what stands after the point as one number, and the name of the last column, the " + last + ": ")
	switch {
	case m.Wholes > 0 && m.After > 0:
		how = Say("Say the wholes, then “and” for the point, then what stands after it as one number with the name of the last column, the " + last + ": ")
	case m.Wholes > 0:
		how = Say("Nothing but zeros stands after the point, so say the wholes: ")
	}
	return Told{
		Title: "Say the number", Ask: Say("How do you say ", In(scene.First, m.Digits.Number.String()), "?"),
		Hands: Say(how, name, "."),
		Desc: scene.Telling{Shown: PlacesDecimal(m.Digits) + " It is said “" + DecimalName(m.Digits.Number) + "”.",
			Hidden: PlacesDecimal(m.Digits) + " " + PlacesHowSaid()},
	}
}

// PlacesDecimalTitle names the picture of a decimal.
func PlacesDecimalTitle(p arithmetic.Problem, a arithmetic.Answer, answered string) scene.Telling {
	switch p.Kind {
	case arithmetic.Show:
		return scene.Telling{Shown: answered, Hidden: PlacesQuestion()}
	case arithmetic.PlaceValue:
		return scene.Telling{Shown: p.String() + ": " + a.Number.String(), Hidden: Asked(p)}
	case arithmetic.InWords:
		return scene.Telling{Shown: a.Number.String() + ": " + DecimalName(a.Number), Hidden: Asked(p)}
	}
	return scene.Telling{Shown: answered, Hidden: Asked(p)}
}
