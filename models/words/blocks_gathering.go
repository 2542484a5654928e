package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why base-ten blocks cannot multiply, or add a list.
var (
	BlocksFactors = errors.New("base-ten blocks lay out 1 to 9 groups: one of the two numbers must be from 1 to 9")
	BlocksNothing = errors.New("there is nothing to lay out: one of the numbers is 0")
	BlocksProduct = errors.New("the product is more than 9,999, and the largest block is the thousand")
	BlocksAddends = errors.New("base-ten blocks add up to four numbers, without brackets")
)

// BlocksLayGroups tells how the groups of a product are laid out.
func BlocksLayGroups(p arithmetic.Problem, m arithmetic.LayGroups) (title string, hands, ask Phrase) {
	size := In(scene.Second, arithmetic.Grouped(m.Size))
	groups := In(scene.First, blocksGroups(m.Groups))
	title = "Lay out " + blocksGroups(m.Groups) + " of " + arithmetic.Grouped(m.Size)
	each := ": " + BlocksCounted(m.Counts, m.Counts.Top()) + inEach(m.Groups) + "."
	ask = Say("How many groups are there, and what is in each?")
	if m.Turned {
		return title, Say(p.String()+" is as much as "+arithmetic.Grouped(m.Groups)+" × "+arithmetic.Grouped(m.Size)+". Lay out ", groups, " of ", size, each), ask
	}
	return title, Say("Lay out ", groups, " of ", size, each), ask
}

// BlocksMultiply tells how the pieces of one place of all groups come together.
func BlocksMultiply(m arithmetic.MultiplyPlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	title = "Bring the " + name + " together"
	ask = Say("How many " + name + " are there in all?")
	made := In(scene.Moved, pieces(m.Power, m.Made))
	groups := In(scene.First, blocksGroups(m.Groups))
	switch {
	case m.Made == 0 && m.Carried == 0:
		return title, Say("There are no " + name + " in the groups. The place stays empty."), ask
	case m.Made == 0:
		return title, Say("There are no "+name+" in the groups. Only ", carriedPieces(m.Power, m.Carried), " "+lieOrLies(m.Carried)+" there."), ask
	}
	said := Say("Bring the "+name+" together: ", groups, " of ", In(scene.Second, pieces(m.Power, m.Each)), " "+makeOrMakes(m.Groups)+" ", made, ".")
	if m.Carried > 0 {
		said = Say(said, " With ", carriedPieces(m.Power, m.Carried), " there are ", In(scene.Moved, pieces(m.Power, m.Sum)), ".")
	}
	return title, said, ask
}

func makeOrMakes(n int64) string {
	if n == 1 {
		return "makes"
	}
	return "make"
}

// carriedPieces are those that a trade has brought: the new ten, the 3 new tens.
func carriedPieces(power int, n int64) Span {
	if n == 1 {
		return In(scene.Result, "the new "+Place(power, 1))
	}
	return In(scene.Result, "the "+arithmetic.Grouped(n)+" new "+Place(power, n))
}

// BlocksLayBox tells how one of several numbers is laid out in its box.
func BlocksLayBox(m arithmetic.LayOut) (title string, hands, ask Phrase) {
	role := scene.First
	if m.Nth%2 == 1 {
		role = scene.Second
	}
	number := In(role, arithmetic.Grouped(m.Number))
	title = "Lay out " + number.Text
	ask = Say("Which pieces make ", number, "?")
	if m.Number == 0 {
		return title, Say("Lay out no pieces for ", number, "."), ask
	}
	return title, Say("Lay out ", number, " in a place of its own: "+BlocksCounted(m.Counts, m.Counts.Top())+"."), ask
}

// BlocksGather tells how the pieces of one place of several numbers come together.
func BlocksGather(m arithmetic.GatherPlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	title = "Join the " + name
	ask = Say("How many " + name + " are there in all?")
	var parts []any
	n := 0
	for i, part := range m.Parts {
		if part == 0 {
			continue
		}
		if n > 0 {
			parts = append(parts, " + ")
		}
		role := scene.Second
		if i%2 == 0 {
			role = scene.First
		}
		parts = append(parts, In(role, arithmetic.Grouped(part)))
		n++
	}
	sum := In(scene.Moved, pieces(m.Power, m.Sum))
	switch {
	case m.Sum == 0:
		return title, Say("There are no " + name + " to join. The place stays empty."), ask
	case n == 0:
		return title, Say("Only ", carriedPieces(m.Power, m.Carried), " "+lieOrLies(m.Carried)+" in the "+name+"."), ask
	case m.Carried > 0:
		return title, Say("Push the "+name+" together: ", Say(parts...), " and ", carriedPieces(m.Power, m.Carried), " make ", sum, "."), ask
	case n == 1:
		return title, Say("Push the "+name+" together: only ", sum, " "+lieOrLies(m.Sum)+" there."), ask
	}
	return title, Say("Push the "+name+" together: ", Say(parts...), " make ", sum, "."), ask
}

// BlocksTradeTens tells how tens of pieces become pieces of the next place.
func BlocksTradeTens(m arithmetic.TradeTens) (title string, hands, ask Phrase) {
	given, made := pieces(m.From, m.Given), pieces(m.From+1, m.Made)
	title = "Trade " + given + " for " + made
	ask = Say("Are there enough " + Place(m.From, 2) + " to make a " + Place(m.From+1, 1) + "?")
	if m.Made > 1 {
		ask = Say("How many times can you make a " + Place(m.From+1, 1) + "?")
	}
	return title, Say("Trade "+given+" for ", In(scene.Moved, made), ". "+stays(m.From, m.Left)), ask
}

// BlocksTradedTens says in a description that tens of pieces were traded.
func BlocksTradedTens(m arithmetic.TradeTens) string {
	return pieces(m.From, m.Given) + " are traded for " + pieces(m.From+1, m.Made) + "."
}

// BlocksDescGroups describes the groups of a product before they come together.
func BlocksDescGroups(m arithmetic.LayGroups) string {
	return "Base-ten blocks in " + blocksGroups(m.Groups) + " of " + arithmetic.Grouped(m.Size) + ": " + BlocksCounted(m.Counts, m.Counts.Top()) + inEach(m.Groups) + "."
}

// BlocksDescNumbers describes the numbers of a sum, each in a box of its own.
func BlocksDescNumbers(list []arithmetic.LayOut) string {
	var out []string
	for _, m := range list {
		out = append(out, begin(laidOut(m))+".")
	}
	return "Base-ten blocks in boxes. " + Sentences(out...)
}

// BlocksDescGathered describes what has been brought together.
func BlocksDescGathered(on arithmetic.Counts, top int) string {
	if on == (arithmetic.Counts{}) {
		return "Nothing is brought together yet."
	}
	return "Brought together: " + BlocksCounted(on, top) + "."
}

// BlocksGatheredPlace says in a description how many pieces of one place came
// together.
func BlocksGatheredPlace(power int, sum int64) string {
	return "In the " + Place(power, 2) + " there " + isOrAre(sum) + " " + pieces(power, sum) + " in all."
}

// BlocksHowMany asks for the product.
func BlocksHowMany() string { return "How many are they together?" }
