package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayShare is what is divided: how many in all, by how many, and which of the
// two stories it is. Thing is empty where nothing is laid out but sketched.
type ArrayShare struct {
	arithmetic.SetOut
	Thing string
}

func g(n int64) string { return arithmetic.Grouped(n) }

// all is "56 counters", or "56" in a sketch.
func (a ArrayShare) all(n int64) string {
	if a.Thing == "" {
		return g(n)
	}
	return Count(n, a.Thing)
}

// question asks for the side that is not known.
func (a ArrayShare) question() string {
	if a.Grouping {
		return "How many rows of " + g(a.Side) + " are there?"
	}
	return "How many are in each row?"
}

// Asked describes the problem without its answer, for every picture of it.
func (a ArrayShare) Asked() string {
	if a.Grouping {
		return g(a.Total) + " in all, to be put in rows of " + g(a.Side) + ". " + a.question()
	}
	return g(a.Total) + " in all, to be put in " + Count(a.Side, "equal row") + ". " + a.question()
}

// Ready has the total on the table and the known side marked.
func (a ArrayShare) Ready() (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Set out the problem", Say(a.question())
	hands = Say("Put ", In(scene.First, a.all(a.Total)), " on the table. ")
	if a.Thing == "" {
		hands = Say("There are ", In(scene.First, g(a.Total)), " in all. ")
	}
	if a.Grouping {
		hands = Say(hands, "Rows will have "+g(a.Side)+" in each.")
	} else {
		hands = Say(hands, "Mark places for "+Count(a.Side, "row")+".")
	}
	return title, hands, ask, scene.Same(a.Asked())
}

// left says what is still to be placed.
func left(n int64) string {
	switch n {
	case 0:
		return "None are left."
	case 1:
		return "1 is left."
	}
	return g(n) + " are left."
}

// Once places the first line.
func (a ArrayShare) Once(m arithmetic.PlaceOnce) (title string, hands, ask Phrase, desc scene.Telling) {
	if a.Grouping {
		title = "Make one row"
		hands = Say("Take ", In(scene.Moved, g(m.Side)), " and make one row. "+left(m.Left))
		ask = Say("Can you take out a row of " + g(m.Side) + "?")
		desc.Shown = g(a.Total) + " in all. One row of " + g(m.Side) + " is made. " + left(m.Left)
	} else {
		title = "Put one in each row"
		hands = Say("Put one in each row. That takes ", In(scene.Moved, g(m.Side)), ". "+left(m.Left))
		ask = Say("Are there enough to put one in each row?")
		desc.Shown = g(a.Total) + " in all, " + Count(a.Side, "row") + ". One is in each row. " + left(m.Left)
	}
	desc.Hidden = a.Asked()
	return title, hands, ask, desc
}

// Rest goes on until no further line is full.
func (a ArrayShare) Rest(m arithmetic.PlaceRest) (title string, hands, ask Phrase, desc scene.Telling) {
	count := strings.Join(numbers(m.Totals), ", ")
	until := "until none are left"
	if m.Left > 0 {
		until = "until there are too few for another"
	}
	if a.Grouping {
		title = "Make more rows"
		hands = Say("Make more rows of "+g(m.Side)+" "+until+". Count by "+g(m.Side)+": ", In(scene.Moved, count), ".")
		ask = Say("Can you make another row?")
		desc.Shown = g(a.Total) + " in all. " + Count(m.Found, "row") + " of " + g(m.Side) + " are made. " + left(m.Left)
	} else {
		if m.Left > 0 {
			until = "until there are too few to go around"
		}
		title = "Go around again"
		hands = Say("Put one more in each row, again and again, "+until+": ", In(scene.Moved, count), ".")
		ask = Say("Can you go around again?")
		desc.Shown = g(a.Total) + " in all, " + Count(a.Side, "row") + " with " + g(m.Found) + " in each. " + left(m.Left)
	}
	desc.Hidden = a.Asked()
	return title, hands, ask, desc
}

// Part places many lines at once.
func (a ArrayShare) Part(m arithmetic.PlacePart, done []arithmetic.PlacePart, role scene.Role) (title string, hands, ask Phrase, desc scene.Telling) {
	ask = a.howMany(m.Part)
	area := In(role, g(m.Area))
	if a.Grouping {
		title = "Make " + g(m.Part) + " rows"
		hands = Say("Make ", In(role, Count(m.Part, "row")), " of "+g(m.Side)+". That takes ", area, ". "+left(m.Left))
		if a.Thing == "" {
			hands = Say("Mark off ", In(role, Count(m.Part, "row")), " of "+g(m.Side)+". That takes ", area, ". "+left(m.Left))
		}
	} else {
		title = "Put " + g(m.Part) + " in each row"
		hands = Say("Put ", In(role, g(m.Part)), " in each row. That takes ", area, ". "+left(m.Left))
		if a.Thing == "" {
			hands = Say("Mark off ", In(role, g(m.Part)), " for each row. That takes ", area, ". "+left(m.Left))
		}
	}
	desc = scene.Telling{Shown: g(a.Total) + " in all. ", Hidden: a.Asked()}
	for _, part := range done {
		desc.Shown += a.partDone(part) + " "
	}
	desc.Shown += left(m.Left)
	return title, hands, ask, desc
}

// howMany asks for a part of the missing side in its unit: how many hundreds can
// each row get?
func (a ArrayShare) howMany(part int64) Phrase {
	unit := int64(1)
	for part/unit >= 10 {
		unit *= 10
	}
	units := ""
	if unit > 1 {
		units = plural(ArrayUnit(unit), 2) + " "
	}
	if a.Grouping && unit > 1 {
		return Say("How many " + units + "of rows of " + g(a.Side) + " can you make?")
	}
	if a.Grouping {
		return Say("How many rows of " + g(a.Side) + " can you make?")
	}
	return Say("How many " + units + "can each row get?")
}

func (a ArrayShare) partDone(m arithmetic.PlacePart) string {
	if a.Grouping {
		return capital(rowsAre(m.Part, m.Side)) + g(m.Area) + "."
	}
	return capital(rowsAre(a.Side, m.Part)) + g(m.Area) + "."
}

// Read says the side that was found, and what is left over.
func (a ArrayShare) Read(m arithmetic.ReadSide, parts []arithmetic.PlacePart) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Read the answer", Say(a.question())
	found := In(scene.Result, g(m.Found))
	var sum Phrase
	if len(parts) > 1 {
		var names []int64
		for _, part := range parts {
			names = append(names, part.Part)
		}
		sum = Say(List(numbers(names))+" make ", found, ". ")
	}
	switch {
	case a.Grouping && m.Found == 0:
		hands = Say("There are too few for a whole row of " + g(m.Side) + ", so no row is made.")
	case m.Found == 0 && a.Total == 0:
		hands = Say("There is nothing to share, so there are none in each row.")
	case m.Found == 0:
		hands = Say("There are not enough for every row to get a whole one, so each row gets 0.")
	case a.Grouping && m.Found == 1:
		hands = Say(sum, "There is ", found, " row of "+g(m.Side)+".")
	case a.Grouping:
		hands = Say(sum, "There are ", found, " rows of "+g(m.Side)+".")
	case m.Found == 1:
		hands = Say("There is ", found, " in each row.")
	default:
		hands = Say(sum, "There are ", found, " in each row.")
	}
	if m.Left > 0 {
		is, all := " are", ""
		if m.Left == a.Total && m.Left > 1 {
			all = "All "
		}
		if m.Left == 1 {
			is = " is"
		}
		hands = Say(hands, " ", In(scene.First, all+g(m.Left)), is+" left over, outside the rows.")
	}
	return title, hands, ask, a.Story(m, parts)
}

// Story describes the whole story.
func (a ArrayShare) Story(m arithmetic.ReadSide, parts []arithmetic.PlacePart) scene.Telling {
	var b strings.Builder
	b.WriteString(g(a.Total) + " in all. ")
	for _, part := range parts {
		b.WriteString(a.partDone(part) + " ")
	}
	if a.Grouping {
		b.WriteString("There are " + Count(m.Found, "row") + " with " + g(m.Side) + " in each")
	} else {
		b.WriteString("There are " + Count(m.Side, "row") + " with " + g(m.Found) + " in each")
	}
	if m.Left > 0 {
		b.WriteString(", and " + g(m.Left) + " left over")
	}
	return scene.Telling{Shown: b.String() + ".", Hidden: a.Asked()}
}

// ArrayLeft and ArrayLeftOver name what is still to be placed, and what will
// not be.
func ArrayLeft(n string) string     { return n + " left" }
func ArrayLeftOver(n string) string { return n + " left over" }

// ArrayNoneLeft stands where nothing waits any more.
const ArrayNoneLeft = "none left"

// ArrayWaits names all that is to be placed.
func ArrayWaits(m arithmetic.SetOut) string {
	if m.Grouping {
		return g(m.Total) + " to group"
	}
	return g(m.Total) + " to share"
}

// ArrayRows names a number of rows.
func ArrayRows(n int64) string { return Count(n, "row") }
