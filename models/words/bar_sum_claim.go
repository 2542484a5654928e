package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarEndToEnd says where the second number of a sum is laid.
func BarEndToEnd() Phrase { return Say(" Put it right after the first, end to end.") }

// BarCountSum says how many parts a sum has.
func BarCountSum(m arithmetic.CountParts) Phrase {
	return Say("Count the parts of both together: " + barPieces(m.Total) + ", " + BarAmount(m.Total) + ".")
}

// sides are the two sides of a claim with a sum, the numbers in their roles.
func sides(p arithmetic.Problem) (left, right Phrase) {
	c, _ := arithmetic.OneSum(p)
	name := func(nth int) Span {
		return In([...]scene.Role{scene.First, scene.Second, scene.Result}[nth], c.Numbers[nth].String())
	}
	i, j := c.Addends()
	left, right = Say(name(i), " + ", name(j)), Say(name(c.Alone()))
	if !c.Left {
		left, right = right, left
	}
	return left, right
}

// BarCompareSum says what the ends of a sum and a number show.
func BarCompareSum(p arithmetic.Problem, m arithmetic.CompareEnds) Phrase {
	left, right := sides(p)
	is := Say(left, " "+m.Relation.String()+" ", right, ".")
	if m.Relation == arithmetic.Equal {
		return Say("Lay a ruler across the ends: both shaded lengths stop at the same place. ", is)
	}
	farther := left
	if m.Relation == arithmetic.Less {
		farther = right
	}
	return Say("Look at the two ends: ", farther, reaches(m), ". ", is)
}

// BarSumClaimWhy says why a claim about a sum is true or false.
func BarSumClaimWhy(p arithmetic.Problem, cuts []arithmetic.CutParts, total arithmetic.Strips, m arithmetic.CompareEnds) Phrase {
	left, right := sides(p)
	why := append(cutsWhy(cuts), Say("The sum is "+BarAmount(total)+". ")...)
	switch m.Relation {
	case arithmetic.Equal:
		why = append(why, Say("Both sides are the same length")...)
	case arithmetic.Less:
		why = append(why, Say(right, " is "+gap(m.Gap)+" more than ", left)...)
	default:
		why = append(why, Say(left, " is "+gap(m.Gap)+" more than ", right)...)
	}
	if p.Kind == arithmetic.Claim && p.Rel != m.Relation {
		why = append(why, Say(notTrue(p, m))...)
	}
	return append(why, Span{Text: "."})
}

// BarSumClaimDesc says what a picture of a sum and a number shows: those of the
// numbers that lie there, as they were written, and what was done since. total is
// nil until the parts of the sum are counted.
func BarSumClaimDesc(p arithmetic.Problem, laid [3]arithmetic.Strips, count int, cuts []arithmetic.CutParts, total *arithmetic.Strips, ends *arithmetic.CompareEnds) scene.Telling {
	c, _ := arithmetic.OneSum(p)
	i, j := c.Addends()
	k := c.Alone()
	said := bars(count - 1)
	for n, nth := range []int{i, j, k}[:count] {
		said += [...]string{" In the upper bar: ", " Right after it: ", " In the lower bar: "}[n] + barLiesAs(c.Numbers[nth].String(), laid[nth])
	}
	asks := said + " Which reaches farther, or do both end at the same place?"
	if p.Kind == arithmetic.Claim {
		asks = said + " Is " + p.String() + "?"
	}
	for _, cut := range cuts {
		said += " Cut finer, " + BarAmount(cut.From) + " is " + BarAmount(cut.To) + "."
	}
	if total != nil {
		said += " The upper bar has " + barPieces(*total) + ", " + BarAmount(*total) + "."
	}
	if ends == nil {
		return scene.Same(said)
	}
	is := p.Left.String() + " " + ends.Relation.String() + " " + p.Right.String() + "."
	if ends.Relation == arithmetic.Equal {
		return scene.Telling{Shown: said + " Both bars end at the same place: " + is, Hidden: asks}
	}
	return scene.Telling{Shown: said + " One bar reaches " + gap(ends.Gap) + " of a whole farther: " + is, Hidden: asks}
}
