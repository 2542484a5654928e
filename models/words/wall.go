package words

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of the fraction wall: strips of one length under each other, a row for
// every size of part.

// WallStrips is what the hands work with.
const WallStrips = "paper strips of one length"

// WallOnly stands behind a fraction that has no other name on the wall.
const WallOnly = "has no other name here"

// WallKinds and its like say why a wall cannot show a problem.
const (
	WallKinds    = "a fraction wall finds other names of a fraction"
	WallOneWhole = "a fraction wall shows fractions of less than one whole"
)

// WallTooFine says that the rows have more parts than can be seen.
func WallTooFine(most int64) string {
	return "a fraction wall shows parts of at most " + arithmetic.Grouped(most) + " to a whole, and not all of them fit on one wall"
}

// wallRows names the rows: thirds, fourths and fifths.
func wallRows(rows []int64) string {
	var names []string
	for _, den := range rows {
		if den > 1 {
			names = append(names, Parts(den, 2))
		}
	}
	return List(names)
}

// wallLies says how the rows lie.
func wallLies(rows []int64) string {
	return "A wall of strips of one length: 1 whole, and under it " + wallRows(rows) + "."
}

// WallBuild says how the wall is laid.
func WallBuild(m arithmetic.BuildWall) Told {
	return Told{
		Title: "Build the wall",
		Hands: Say("Lay strips of one length under each other. Leave the first whole; cut the others into " + wallRows(m.Rows) + "."),
		Ask:   Say("Which row has the longest parts? Why?"),
		Desc:  scene.Same(wallLies(m.Rows)),
	}
}

// wallShaded says what is shaded.
func wallShaded(n arithmetic.Number) string {
	are, they := " are", "they end"
	if n.Value.Num() == 1 {
		are, they = " is", "it ends"
	}
	return "In the row of " + Parts(n.Value.Den(), 2) + ", " + barParts(n.Value.Num(), n.Value.Den()) + are + " shaded: " + n.String() +
		". A line goes through all rows where " + they + "."
}

// WallShade says how the number is shaded and where it ends.
func WallShade(m arithmetic.ShadeRow) Told {
	n := m.Number
	return Told{
		Title: "Shade " + barParts(n.Value.Num(), n.Value.Den()),
		Hands: Say("Shade ", In(scene.First, n.String()), ": "+barParts(n.Value.Num(), n.Value.Den())+". Where it ends, lay a string or a ruler across all rows."),
		Ask:   Say("Where does ", In(scene.First, n.String()), " end?"),
		Desc:  scene.Same(wallShaded(n)),
	}
}

// WallFind says that parts of another row end on the line. nth is how many names
// there are now.
func WallFind(p arithmetic.Problem, m arithmetic.FindInRow, nth int) Told {
	f := m.Name.Value
	parts := barParts(f.Num(), f.Den())
	t := Told{
		Title: "Count the " + Parts(f.Den(), 2),
		Hands: Say("Count the "+Parts(f.Den(), 2)+" up to the line: "+parts+". So ", In(scene.First, m.From.String()), " is also ", In(scene.Result, m.Name.String()), "."),
		Ask:   Say("Does one of the " + Parts(f.Den(), 2) + " end on the line? How many are before it?"),
	}
	switch {
	case m.Fewest:
		t.Title = "Look for the longest parts"
		t.Hands = Say("Go down from the top. The first cut on the line is in the row of "+Parts(f.Den(), 2)+": "+parts+". So ",
			In(scene.First, m.From.String()), " in simplest form is ", In(scene.Result, m.Name.String()), ".")
		t.Ask = Say("Which is the first row from the top with a cut on the line?")
	case p.Blank.Num > 0:
		t.Title = "Find the row"
		t.Hands = Say("Find the row in which "+Count(f.Num(), "part")+" end on the line. It has "+Parts(f.Den(), 2)+": ",
			In(scene.First, m.From.String()), " is ", In(scene.Result, m.Name.String()), ".")
		if f.Num() == 1 {
			t.Hands = Say("Find the row in which the first part ends on the line. It has "+Parts(f.Den(), 2)+": ",
				In(scene.First, m.From.String()), " is ", In(scene.Result, m.Name.String()), ".")
		}
		t.Ask = Say("In which row do you count " + Count(f.Num(), "part") + " up to the line?")
	}
	said := wallShaded(m.From)
	end := " end"
	if f.Num() == 1 {
		end = " ends"
	}
	t.Desc = scene.Telling{
		Shown:  said + " In the row of " + Parts(f.Den(), 2) + ", " + parts + end + " on the line: " + m.Name.String() + ".",
		Hidden: said + " Look at the row of " + Parts(f.Den(), 2) + ". How many end on the line?",
	}
	if m.Fewest || p.Blank.Num > 0 {
		t.Desc.Hidden = said + " Which other row has a part that ends on the line?"
	}
	return t
}

// WallRead says all names, and which rows have none.
func WallRead(n arithmetic.Number, m arithmetic.ReadRows) Told {
	t := Told{
		Title: "Read all names",
		Hands: Say("Read all the names from the top: ", In(scene.Result, chain(m.Names)), "."),
		Ask:   Say("In which rows does no part end on the line?"),
		Desc:  wallNames(n, m.Names, m.Without),
	}
	if len(m.Names) == 1 {
		t.Hands = Say("No other row has a cut on the line: ", In(scene.First, n.String()), " is the only name here.")
		return t
	}
	if none := wallNone(m.Without); none != "" {
		t.Hands = append(t.Hands, Span{Text: none})
	}
	return t
}

// wallNone says in which rows no part ends on the line.
func wallNone(without []int64) string {
	var rows []int64
	for _, den := range without {
		if den > 1 {
			rows = append(rows, den)
		}
	}
	if len(rows) == 0 {
		return ""
	}
	return " No part ends there in the rows of " + wallRows(rows) + "."
}

// wallNames is the description of the wall with all names of a number.
func wallNames(n arithmetic.Number, names []arithmetic.Number, without []int64) scene.Telling {
	said := wallShaded(n)
	t := scene.Telling{Shown: said, Hidden: said + " In which other rows does a part end on the line?"}
	others := slices.DeleteFunc(slices.Clone(names), func(name arithmetic.Number) bool { return name == n })
	if len(others) == 0 {
		t.Shown += " No part of another row ends on the line: " + chain(names) + "."
		return t
	}
	t.Shown += " In other rows, the same length is " + List(texts(others)) + ": " + chain(names) + "." + wallNone(without)
	return t
}

func texts(list []arithmetic.Number) []string {
	names := make([]string, len(list))
	for i, n := range list {
		names[i] = n.String()
	}
	return names
}

// WallTitle is the title of every picture of a wall.
func WallTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	if p.Kind == arithmetic.EqualNames {
		return scene.Telling{Shown: p.String() + ": " + chain(a.Order), Hidden: Asked(p)}
	}
	return BarNamedTitle(p, a)
}

// WallDesc says what the whole story shows.
func WallDesc(w arithmetic.Working, rows []int64) scene.Telling {
	said := wallLies(rows) + " "
	var t scene.Telling
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindInRow:
			t = WallFind(w.Problem, m, 2).Desc
		case arithmetic.ReadRows:
			t = WallRead(w.Problem.Left.(arithmetic.Number), m).Desc
		}
	}
	return scene.Telling{Shown: said + t.Shown, Hidden: said + t.Hidden}
}

// WallWhy says why the names are names of one number.
func WallWhy(n arithmetic.Number, a arithmetic.Answer) Phrase {
	switch {
	case len(a.Order) == 1:
		return Say("In no other row does a part end where ", In(scene.First, n.String()), " ends.")
	case len(a.Order) > 1:
		return Say(In(scene.Result, chain(a.Order)), ": all end on the same line.")
	}
	return Say(In(scene.First, n.String()), " and ", In(scene.Result, a.Number.String()), " end on the same line.")
}
