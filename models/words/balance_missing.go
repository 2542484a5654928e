package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BalanceSet lays both sides of an equation with a blank.
func BalanceSet(m arithmetic.SetLevel, cubes bool) BalanceTold {
	left, right := laid(m.Left, cubes), laid(m.Right, cubes)
	return BalanceTold{
		Title: "Load both pans",
		Hands: Say("Put ", In(scene.First, left), " on the left pan and ", In(scene.Second, right), " on the right. Fill the bag in secret until the pans are level: the equal sign says “the same as”."),
		Ask:   Say("What do you know about the two pans when they are level?"),
		Desc:  scene.Same("A level balance. On the left pan: " + left + ". On the right pan: " + right + "."),
	}
}

// BalanceCount counts the pan without the bag.
func BalanceCount(m arithmetic.CountPan) BalanceTold {
	role, name, total := panRole(m.Side), panNames[m.Side], arithmetic.Grouped(m.Value)
	return BalanceTold{
		Title: "Count the " + name + " pan",
		Hands: Say("Count what is on the "+name+" pan: ", In(role, m.Expr.String()), " is ", In(role, total), "."),
		Ask:   Say("How much is on the " + name + " pan?"),
		Desc:  scene.Same("There are " + total + " on the " + name + " pan."),
	}
}

// BalanceTake takes the same from both pans.
func BalanceTake(m arithmetic.TakeBoth, cubes bool) BalanceTold {
	by, left := things(arithmetic.Grouped(m.By), cubes), things(arithmetic.Grouped(m.Left), cubes)
	known := panNames[1-m.Blank]
	return BalanceTold{
		Title: "Take the same from both",
		Hands: Say("Take ", In(scene.Moved, by), " from each pan. It stays level, and now the bag stands alone."),
		Ask:   Say("What can you take from both pans so that the bag stands alone?"),
		Desc:  scene.Same("From each pan " + by + were(m.By) + " taken. The bag stands alone, and it is level with the " + left + " on the " + known + " pan."),
	}
}

func were(n int64) string {
	if n == 1 {
		return " is"
	}
	return " are"
}

// BalanceOpen opens the bag.
func BalanceOpen(p arithmetic.Problem, m arithmetic.OpenBlank) BalanceTold {
	found := In(scene.Result, arithmetic.Grouped(m.Number))
	filled := LineFilled(p, arithmetic.Answer{Number: arithmetic.Int(m.Number)})
	return BalanceTold{
		Title: "Open the bag",
		Hands: Say("The bag weighs the same as what is left on the other pan. Open it and count ", found, ". Write ", found, " in the blank."),
		Ask:   Say("What must be in the bag?"),
		Desc: scene.Telling{Shown: "The open bag has " + arithmetic.Grouped(m.Number) + " in it: " + filled + ".",
			Hidden: "The closed bag stands alone, level with what is left on the other pan. What is in it?"},
	}
}

// BalanceFoundDesc describes an equation whose blank was found.
func BalanceFoundDesc(p arithmetic.Problem, left, right arithmetic.Pan, take arithmetic.TakeBoth, found int64) scene.Telling {
	t := "A level balance. On the left pan " + left.Expr.String() + ", on the right pan " + right.Expr.String() + ", with a bag for the question mark."
	shown := t
	if take.By > 0 {
		shown += " From both pans " + arithmetic.Grouped(take.By) + were(take.By) + " taken, so that the bag stands alone."
	}
	n := arithmetic.Grouped(found)
	return scene.Telling{
		Shown:  shown + " The bag has " + n + " in it. So " + LineFilled(p, arithmetic.Answer{Number: arithmetic.Int(found)}) + ".",
		Hidden: t + " What must be in the bag, so that both sides are the same?",
	}
}
