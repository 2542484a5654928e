package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// Light lights the multiples of one of two numbers in its row.
func (s Square) Light(row arithmetic.HopRow) Told {
	by := In(panRole(row.Line), g(row.By))
	lands := landsOn(arithmetic.HopOn{HopRow: row, First: 1, Last: row.Count})
	return Told{
		Title: "Look along row " + by.Text,
		Hands: Say("Look along the row of ", by, ", and color: ", In(panRole(row.Line), lands), "."),
		Ask:   Say("Which multiples of ", by, " are in its row?"),
		Desc: scene.Telling{
			Shown:  "In the row of " + by.Text + " are lit " + lands + ".",
			Hidden: "In the row of " + by.Text + " the first " + Count(row.Count, "number") + " are lit.",
		},
	}
}

// Both finds the numbers that stand in both rows.
func (s Square) Both(m arithmetic.Meet) Told {
	least := In(scene.Result, g(s.Answer.List[0]))
	hands := Say(List(numbers(m.At))+" stand in both rows: they are common multiples. ", least, " is the least.")
	if len(m.At) == 1 {
		hands = Say(least, " stands in both rows: it is the least common multiple.")
	}
	if len(m.At) < len(s.Answer.List) {
		hands = Say(hands, " Beyond the square it goes on: "+list(s.Answer.List, ", ")+", and so on.")
	}
	return Told{
		Title: "Find the same numbers",
		Hands: hands,
		Ask:   Say("Which numbers stand in both rows?"),
		Desc:  scene.Telling{Shown: s.common(), Hidden: "Which numbers stand in both rows, and which of them is the least?"},
	}
}

func (s Square) common() string {
	return "The common multiples are " + list(s.Answer.List, ", ") + ", and so on; the least is " + g(s.Answer.List[0]) + "."
}

// CommonWhole describes two rows.
func (s Square) CommonWhole(m arithmetic.Meet) scene.Telling {
	told := scene.Same(squareIs)
	for _, row := range m.Rows {
		lit := s.Light(row).Desc
		told.Shown, told.Hidden = told.Shown+" "+lit.Shown, told.Hidden+" "+lit.Hidden
	}
	return scene.Telling{Shown: told.Shown + " " + s.common(), Hidden: told.Hidden + " Which numbers stand in both rows, and which of them is the least?"}
}

// Place finds one place of a number.
func (s Square) Place(m arithmetic.MeetAt) Told {
	n, row, col := In(scene.First, g(m.Product)), In(scene.Result, g(m.Row)), In(scene.Result, g(m.Col))
	return Told{
		Title: "Find " + n.Text + " in row " + row.Text,
		Hands: Say("Look for ", n, ". It stands in row ", row, " and column ", col, ", so ", row, " × ", col, " = ", n, "."),
		Ask:   Say("In which row and column do you find ", n, "?"),
		Desc: scene.Telling{Shown: n.Text + " stands in row " + row.Text + " and column " + col.Text + ".",
			Hidden: "In which row, from " + row.Text + " on, does " + n.Text + " stand?"},
	}
}

// FindAll finds the other places, and what is too large for the square.
func (s Square) FindAll(m arithmetic.FindAll) Told {
	n := In(scene.First, g(m.Number))
	t := Told{
		Title: "Find all its factors",
		Hands: Say("Every place of ", n, " has another on the other side of the line from corner to corner, with row and column changed over."),
		Ask:   Say("Where else does ", n, " stand?"),
	}
	if len(m.On) == 1 {
		t.Hands = Say(n, " stands nowhere else on the square.")
	}
	if len(m.Off) > 0 {
		t.Hands = Say(t.Hands, " "+capital(SquareBeyond)+" "+SquareOff(m)+".")
	}
	t.Hands = Say(t.Hands, " ", s.factors())
	t.Desc = scene.Telling{Shown: s.places(m), Hidden: "Where else does " + n.Text + " stand, and which factors are too large for the square?"}
	return t
}

func rowsIn(pairs [][2]int64) []int64 {
	var all []int64
	for _, p := range pairs {
		all = append(all, p[0])
	}
	return all
}

func products(pairs [][2]int64) []string {
	var names []string
	for _, p := range pairs {
		names = append(names, g(p[0])+" × "+g(p[1]))
	}
	return names
}

// SquareBeyond stands before the pairs of factors that are too large for the square.
const SquareBeyond = "beyond the square:"

// SquareOff lists the pairs of factors that are too large for the square; "" where
// all are on it.
func SquareOff(m arithmetic.FindAll) string {
	var once [][2]int64
	for _, p := range m.Off {
		if p[0] <= p[1] {
			once = append(once, p)
		}
	}
	if len(once) == 0 {
		return ""
	}
	return List(products(once))
}

func (s Square) places(m arithmetic.FindAll) string {
	text := g(m.Number) + " stands at " + List(products(m.On)) + "."
	if off := SquareOff(m); off != "" {
		text += " " + capital(SquareBeyond) + " " + off + "."
	}
	return text
}

// factors lists the factors of the number.
func (s Square) factors() Phrase {
	all := rowsIn(s.Answer.Pairs)
	if len(all) == 1 {
		return Say("Its only factor is ", In(scene.Result, g(all[0])), ".")
	}
	return Say("The factors are ", In(scene.Result, List(numbers(all))), ".")
}

// FactorsTitle is the problem and its factors.
func (s Square) FactorsTitle() scene.Telling {
	return scene.Telling{Shown: s.String() + ": " + list(rowsIn(s.Answer.Pairs), ", "), Hidden: Asked(s.Problem)}
}

// FactorsWhole describes all places of a number.
func (s Square) FactorsWhole(m arithmetic.FindAll) scene.Telling {
	return scene.Telling{
		Shown:  squareIs + " " + s.places(m) + " " + s.factors().String(),
		Hidden: squareIs + " Where does " + g(m.Number) + " stand, and which numbers are at the edges there?",
	}
}

// SquareMirror is a lesson about a fact that is turned.
type SquareMirror struct {
	arithmetic.Problem
	See arithmetic.SeeMirror
}

// Place finds one of the two facts.
func (s SquareMirror) Place(m arithmetic.MeetAt, nth int) Told {
	role := panRole(nth)
	row, col := In(role, g(m.Row)), In(role, g(m.Col))
	return Told{
		Title: "Find " + row.Text + " × " + col.Text,
		Hands: Say("Find where row ", row, " and column ", col, " meet: at "+g(m.Product)+"."),
		Ask:   Say("Where do row ", row, " and column ", col, " meet?"),
		Desc: scene.Telling{
			Shown:  "Row " + row.Text + " and column " + col.Text + " meet at " + g(m.Product) + ", the corner of a rectangle with " + rowsOf(m.Row, m.Col) + ".",
			Hidden: "Row " + row.Text + " and column " + col.Text + " meet at the corner of a rectangle with " + rowsOf(m.Row, m.Col) + ".",
		},
	}
}

// Mirror sees that both lie alike.
func (s SquareMirror) Mirror() Told {
	return Told{
		Title: "Fold the square",
		Hands: Say("Fold the square along the line from corner to corner: the two places lie on one another. Both are ", In(scene.Result, g(s.See.First.Product)), "."),
		Ask:   Say("What happens to the two places when you fold the square from corner to corner?"),
		Desc: scene.Telling{Shown: s.Why().String(),
			Hidden: "Do the two places lie on one another when the square is folded from corner to corner?"},
	}
}

// Why says why the claim is true.
func (s SquareMirror) Why() Phrase {
	return Say("Row and column change places, and the rectangle is turned: both have " + g(s.See.First.Product) + " cells, so they are equal.")
}

// Title is the claim and whether it is true.
func (s SquareMirror) Title() scene.Telling {
	return scene.Telling{Shown: s.String() + " is true", Hidden: Asked(s.Problem)}
}

// Whole describes the two places.
func (s SquareMirror) Whole() scene.Telling {
	first, second := s.Place(s.See.First, 0).Desc, s.Place(s.See.Second, 1).Desc
	return scene.Telling{
		Shown:  Sentences(squareIs, first.Shown, second.Shown, s.Why().String()),
		Hidden: Sentences(squareIs, first.Hidden, second.Hidden, s.Mirror().Desc.Hidden),
	}
}
