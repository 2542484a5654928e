package words

import (
	"errors"
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// SquarePaper is what to have.
const SquarePaper = "multiplication square"

const squareIs = "A multiplication square: products in rows and columns, with their two factors at the edges."

// Why a multiplication square does not show a problem.
var (
	ErrSquareKind    = errors.New("a multiplication square shows facts, missing factors, multiples, factors and facts that are turned")
	ErrSquareLarge   = errors.New("a multiplication square has the numbers from 1 to 10 on its edges")
	ErrSquareProduct = errors.New("the number is not in that row of a multiplication square")
	ErrSquareNowhere = errors.New("the number stands nowhere on a multiplication square")
	ErrSquareRows    = errors.New("a multiplication square shows common multiples of two different numbers from 1 to 10")
)

// SquareMisfit says why a problem cannot be worked on a multiplication square.
// ErrSquareKind is for problems that are none of it.
func SquareMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrOverflow) && p.Kind == arithmetic.Factors:
		return ErrSquareNowhere
	case errors.Is(err, arithmetic.ErrOverflow) && p.Kind == arithmetic.CommonMultiples:
		return ErrSquareRows
	case errors.Is(err, arithmetic.ErrOverflow) && (p.Kind == arithmetic.Division || p.Kind == arithmetic.Missing):
		return ErrSquareProduct
	case errors.Is(err, arithmetic.ErrOverflow), errors.Is(err, arithmetic.ErrNothing):
		return ErrSquareLarge
	}
	return ErrSquareKind
}

// Square is a lesson on a multiplication square.
type Square struct {
	arithmetic.Problem
	Answer arithmetic.Answer
}

func lineName(column bool) string {
	if column {
		return "column"
	}
	return "row"
}

// FindLine finds a row or a column.
func (s Square) FindLine(m arithmetic.FindLine) Told {
	n := In(roleOf(m.Nth), g(m.N))
	edge, name := "at the left edge", lineName(m.Column)
	if m.Column {
		edge = "at the top"
	}
	t := Told{
		Title: "Find " + name + " " + n.Text,
		Hands: Say("Put a finger on ", n, " "+edge+": that is the "+name+" of ", n, "."),
		Ask:   Say("Where is the "+name+" of ", n, "?"),
		Desc:  scene.Same(squareIs + " The " + name + " of " + n.Text + " is lit."),
	}
	if m.Nth > 0 && s.Kind == arithmetic.Product {
		t.Desc = scene.Same("The " + name + " of " + n.Text + " is lit too.")
	}
	return t
}

// MeetAt reads a product.
func (s Square) MeetAt(m arithmetic.MeetAt) Told {
	row, col, product := In(scene.First, g(m.Row)), In(scene.Second, g(m.Col)), In(scene.Result, g(m.Product))
	return Told{
		Title: "See where they meet",
		Hands: Say("Go along row ", row, " and down column ", col, " until your fingers meet: at ", product, "."),
		Ask:   Say("Which number stands where row ", row, " and column ", col, " meet?"),
		Desc: scene.Telling{Shown: "Row " + row.Text + " and column " + col.Text + " meet at " + product.Text + ".",
			Hidden: "Which number stands where row " + row.Text + " and column " + col.Text + " meet?"},
	}
}

// SeeArray sees the rectangle that a product counts.
func (s Square) SeeArray(m arithmetic.SeeArray) Told {
	cells := In(scene.Result, g(m.Cells))
	return Told{
		Title: "See the rectangle",
		Hands: Say("From the corner to that place there "+areIs(m.Rows)+" ", In(scene.First, Count(m.Rows, "row")), " of ", In(scene.Second, Count(m.Cols, "cell")), ": ", cells, " in all. The number counts the cells of its rectangle."),
		Ask:   Say("How many cells are there from the corner to that place?"),
		Desc: scene.Telling{Shown: "The rectangle from the corner has " + rowsOf(m.Rows, m.Cols) + ": " + Count(m.Cells, "cell") + ".",
			Hidden: "The rectangle from the corner has " + rowsOf(m.Rows, m.Cols) + ". How many cells is that?"},
	}
}

// GoAlong goes to the product.
func (s Square) GoAlong(m arithmetic.GoAlong) Told {
	n, total := In(roleOf(m.Line.Nth), g(m.Line.N)), In(roleOf(m.Nth), g(m.Total))
	name, go_ := lineName(m.Line.Column), "along row "
	if m.Line.Column {
		go_ = "down column "
	}
	return Told{
		Title: "Go to " + total.Text,
		Hands: Say("Go "+go_, n, " until you come to ", total, ". Keep a finger there."),
		Ask:   Say("Where is ", total, " in "+name+" ", n, "?"),
		Desc:  scene.Same("In the " + name + " of " + n.Text + ", " + total.Text + " is framed."),
	}
}

// ReadEdge reads the unknown factor at the edge.
func (s Square) ReadEdge(m arithmetic.ReadEdge) Told {
	way, total, found := "up to the top", g(m.Total), In(scene.Result, g(m.Answer))
	if m.Left {
		way = "left to the edge"
	}
	return Told{
		Title: "Read the edge",
		Hands: Say("From "+total+" go "+way+": there stands ", found, ". So "+g(m.Row)+" × "+g(m.Col)+" = "+total+"."),
		Ask:   Say("Which number stands at the edge, when you go " + way + "?"),
		Desc: scene.Telling{Shown: "From " + total + " " + way + " stands " + found.Text + ": " + g(m.Row) + " × " + g(m.Col) + " = " + total + ".",
			Hidden: "From " + total + " go " + way + ". Which number stands there?"},
	}
}

// Whole describes the finished square of a fact or a missing factor.
func (s Square) Whole(w arithmetic.Working) scene.Telling {
	told := scene.Same(squareIs)
	for _, m := range w.Moves {
		var t Told
		switch m := m.(type) {
		case arithmetic.FindLine:
			name := "The " + lineName(m.Column) + " of " + g(m.N) + " is marked."
			t.Desc = scene.Same(name)
		case arithmetic.MeetAt:
			t = s.MeetAt(m)
		case arithmetic.SeeArray:
			t = s.SeeArray(m)
			t.Desc.Hidden = ""
		case arithmetic.GoAlong:
			t = s.GoAlong(m)
			t.Desc.Hidden = "Where in it is " + g(m.Total) + ", and which number stands at the edge?"
		case arithmetic.ReadEdge:
			t = s.ReadEdge(m)
			t.Desc.Hidden = ""
		}
		told.Shown, told.Hidden = Sentences(told.Shown, t.Desc.Shown), Sentences(told.Hidden, t.Desc.Hidden)
	}
	return told
}

// HopOn lights some multiples in a row.
func (s Square) HopOn(m arithmetic.HopOn) Told {
	by, lands := In(scene.First, g(m.By)), In(scene.Moved, landsOn(m))
	nth := strconv.FormatInt(m.First, 10)
	told := Told{
		Title: "Read " + by.Text + " × " + nth,
		Hands: Say("Go on to the next number in the row: ", by, " × "+nth+" = ", lands, "."),
		Ask:   Say("What is ", by, " × "+nth+"?"),
		Desc:  scene.Telling{Shown: by.Text + " × " + nth + " = " + lands.Text + " is lit.", Hidden: "What is " + by.Text + " × " + nth + "?"},
	}
	switch {
	case m.Last > m.First:
		told.Title = "Read on along the row"
		told.Hands = Say("Read on along the row of ", by, ": ", lands, ". Each is ", by, " more than the one before.")
		told.Ask = Say("Which numbers come next in the row?")
		told.Desc = scene.Telling{Shown: "In the row of " + by.Text + " come " + lands.Text + ".", Hidden: "Which numbers come next in the row of " + by.Text + "?"}
	case m.First == 1:
		told.Hands = Say("The first number in the row is ", by, " × 1 = ", lands, ".")
	}
	if m.Last < m.Count {
		told.Desc.Hidden = told.Desc.Shown
	}
	return told
}

// ListTitle is the problem and its numbers.
func (s Square) ListTitle() scene.Telling { return answered(s.Problem, s.Answer) }

// RowWhole describes a row of multiples.
func (s Square) RowWhole(w arithmetic.Working) scene.Telling {
	by := g(w.Moves[0].(arithmetic.StartRow).By)
	given := squareIs + " The row of " + by + " is marked."
	return scene.Telling{Shown: given + " In it are lit: " + list(s.Answer.List, ", ") + ".", Hidden: given + " Which are the first " + strconv.Itoa(s.Run.Terms) + " numbers in it?"}
}
