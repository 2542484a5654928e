package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// What a balance lesson is made with.
const (
	BalanceItself = "balance with two pans (a coat hanger with two cups will do)"
	BalanceBag    = "light paper bag"
)

// BalancePieces are what lies on the pans: so many equal cubes, or small weights.
func BalancePieces(cubes bool, count int64) string {
	name := "equal small weight"
	if cubes {
		name = "equal cube"
	}
	return plural(name, count)
}

// Reasons why a balance cannot show a problem.
var (
	BalanceKinds    = errors.New("a balance weighs whole numbers, and sums, products and differences of them, against each other")
	BalanceNegative = errors.New("there is less on one pan than is to be taken from it")
	BalanceHeavy    = errors.New("a balance carries up to 100 on each pan")
	BalanceLong     = errors.New("the numbers of one side do not fit side by side on a pan")
	BalanceTimes    = errors.New("a balance shows up to 10 equal groups on a pan")
)

// BalanceTold is a step of a balance lesson in words.
type BalanceTold struct {
	Title      string
	Hands, Ask Phrase
	Desc       scene.Telling
}

var panNames = [...]string{"left", "right"}

func panRole(side int) scene.Role { return [...]scene.Role{scene.First, scene.Second}[side] }

// laid says what is put on a pan: "8 cubes and 4 cubes", "3 groups of 4 cubes",
// "9 cubes, then take 4 off again".
func laid(p arithmetic.Pan, cubes bool) string {
	var list []string
	for _, g := range p.Groups {
		o, worked := g.Expr.(arithmetic.Operation)
		switch {
		case g.Blank:
			list = append(list, "the closed bag")
		case worked && g.Times > 0:
			list = append(list, groupsOf(o, cubes))
		case worked:
			list = append(list, things(o.Left.String(), cubes)+" with "+o.Right.String()+" taken off again")
		default:
			list = append(list, things(g.Expr.String(), cubes))
		}
	}
	return List(list)
}

func groupsOf(o arithmetic.Operation, cubes bool) string {
	if o.Left.String() == "1" {
		return "1 group of " + things(o.Right.String(), cubes)
	}
	return o.Left.String() + " groups of " + things(o.Right.String(), cubes)
}

// things is a number of cubes; as bars it is only a number.
func things(n string, cubes bool) string {
	switch {
	case !cubes:
		return n
	case n == "1":
		return "1 cube"
	case n == "0":
		return "no cubes"
	}
	return n + " cubes"
}

// BalanceLoad puts a side on its pan while the beam is held.
func BalanceLoad(m arithmetic.LoadPan, cubes bool) BalanceTold {
	side := In(panRole(m.Side), m.Expr.String())
	hands := Say("Put ", In(panRole(m.Side), laid(m.Pan, cubes)), " on the "+panNames[m.Side]+" pan.")
	if m.Side == 0 {
		hands = Say("Hold the balance still. ", hands)
	}
	told := BalanceTold{
		Title: "Load the " + panNames[m.Side] + " pan",
		Hands: hands,
		Ask:   Say("How much is ", side, "?"),
		Desc:  scene.Same("A balance that is held still. On the " + panNames[m.Side] + " pan: " + laid(m.Pan, cubes) + "."),
	}
	if _, is := m.Expr.(arithmetic.Operation); !is {
		told.Ask = Say("How many go on the " + panNames[m.Side] + " pan?")
	}
	return told
}

// BalanceLetGo lets the beam go.
func BalanceLetGo(p arithmetic.Problem, m arithmetic.Weigh) BalanceTold {
	ask := "Which pan will go down, or will they stay level?"
	hands, title := Say("Let go. The pans stay level. "), "It is level"
	if m.Relation != arithmetic.Equal {
		hands, title = Say("Let go. The "+panNames[heavier(m)]+" pan goes down. "), "It tilts"
	}
	return BalanceTold{
		Title: title,
		Hands: Say(hands, BalanceWhy(p, m)),
		Ask:   Say(ask),
		Desc:  scene.Telling{Shown: letGoDesc(m), Hidden: "A balance that is held still, with both pans loaded. " + ask},
	}
}

func heavier(m arithmetic.Weigh) int {
	if m.Relation == arithmetic.Greater {
		return 0
	}
	return 1
}

func letGoDesc(m arithmetic.Weigh) string {
	if m.Relation == arithmetic.Equal {
		return "The balance is level: both pans carry " + arithmetic.Grouped(m.Left.Value) + "."
	}
	return "The " + panNames[heavier(m)] + " pan is lower: there are " + arithmetic.Grouped(m.Left.Value) + " on the left and " +
		arithmetic.Grouped(m.Right.Value) + " on the right."
}

// BalanceWhy says why a statement is true or not: what both sides come to, and that
// the equal sign says that they are the same.
func BalanceWhy(p arithmetic.Problem, m arithmetic.Weigh) Phrase {
	a, b := In(scene.First, p.Left.String()), In(scene.Second, p.Right.String())
	x, y := In(scene.First, arithmetic.Grouped(m.Left.Value)), In(scene.Second, arithmetic.Grouped(m.Right.Value))
	_, left := p.Left.(arithmetic.Operation)
	_, right := p.Right.(arithmetic.Operation)
	var why Phrase
	switch {
	case m.SameNumbers && m.Relation == arithmetic.Equal:
		why = Say("Both sides have the same numbers in another order, and both make ", x, ". ")
	case left && right && m.Relation == arithmetic.Equal:
		why = Say(a, " is ", x, " and ", b, " is ", y, " too. ")
	case left && right:
		why = Say(a, " is ", x, " and ", b, " is ", y, ". ")
	case left:
		why = Say(a, " is ", x, ". ")
	case right:
		why = Say(b, " is ", y, ". ")
	}
	stands := map[arithmetic.Relation]string{arithmetic.Equal: " is the same as ", arithmetic.Less: " is less than ", arithmetic.Greater: " is more than "}[m.Relation]
	why = Say(why, a, stands, b)
	if m.Relation != arithmetic.Equal {
		why = Say(why, ", by ", In(scene.Result, arithmetic.Grouped(m.Gap)))
	}
	if p.Kind != arithmetic.Claim {
		return Say(why, ".")
	}
	switch {
	case m.Relation == p.Rel:
		return Say(why, ", so "+p.String()+" is true.")
	case p.Rel == arithmetic.Equal:
		return Say(why, ". The equal sign says “the same as”, so "+p.String()+" is not true.")
	}
	return Say(why, ", so "+p.String()+" is not true.")
}

// BalanceDesc describes a statement that was weighed.
func BalanceDesc(p arithmetic.Problem, m arithmetic.Weigh) scene.Telling {
	t := "A balance. On the left pan " + p.Left.String() + ", on the right pan " + p.Right.String() + "."
	return scene.Telling{
		Shown:  t + " " + letGoDesc(m) + " " + BalanceWhy(p, m).String(),
		Hidden: t + " It is held still. Which pan will go down, or will they stay level?",
	}
}
