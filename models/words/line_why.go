package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineLook compares two points.
func LineLook(p arithmetic.Problem, m arithmetic.LookAtPoints) LineTold {
	const ask = "Do they end at the same point, or is one farther to the right?"
	return LineTold{
		Title: "Compare where they end",
		Hands: LineWhy(p, m),
		Ask:   Say(ask),
		Desc:  scene.Telling{Shown: LineWhy(p, m).String(), Hidden: ask},
	}
}

// LineWhy is the sentence that says why a statement is true or not.
func LineWhy(p arithmetic.Problem, m arithmetic.LookAtPoints) Phrase {
	_, left := p.Left.(arithmetic.Operation)
	_, right := p.Right.(arithmetic.Operation)
	if left || right {
		return lineSums(p, m, left, right)
	}
	a, b := In(scene.First, m.First.String()), In(scene.Second, m.Second.String())
	if m.Relation == arithmetic.Equal {
		return Say(a, " and ", b, " end at the same point of the line, so they are equal.")
	}
	if m.Relation == arithmetic.Less {
		return Say(b, " is farther to the right, so it is more than ", a, ". ", lineApart(m, b))
	}
	return Say(a, " is farther to the right, so it is more than ", b, ". ", lineApart(m, a))
}

// lineSums gives what the sums come to before it compares them: "1/2 + 1/3 is
// 5/6, and 5/6 is more than 2/5, so 1/2 + 1/3 = 2/5 is not true."
func lineSums(p arithmetic.Problem, m arithmetic.LookAtPoints, left, right bool) Phrase {
	a, b := In(scene.First, m.First.String()), In(scene.Second, m.Second.String())
	var why Phrase
	if left {
		why = Say(In(scene.First, p.Left.String()), " is ", a)
	}
	if left && right {
		why = Say(why, " and ")
	}
	if right {
		why = Say(why, In(scene.Second, p.Right.String()), " is ", b)
	}
	if m.Relation == arithmetic.Equal && left && right {
		why = Say(why, " too")
	}
	if m.Relation != arithmetic.Equal {
		than := map[arithmetic.Relation]string{arithmetic.Less: " is less than ", arithmetic.Greater: " is more than "}[m.Relation]
		why = Say(why, ", and ", a, than, b)
	}
	switch {
	case p.Kind == arithmetic.Claim && m.Relation == p.Rel:
		why = Say(why, ", so "+p.String()+" is true.")
	case p.Kind == arithmetic.Claim:
		why = Say(why, ", so "+p.String()+" is not true.")
	case m.Relation == arithmetic.Equal:
		why = Say(why, ", so they are equal.")
	default:
		why = Say(why, ".")
	}
	switch m.Relation {
	case arithmetic.Less:
		return Say(why, " ", lineApart(m, b))
	case arithmetic.Greater:
		return Say(why, " ", lineApart(m, a))
	}
	return why
}

// lineApart says how much more the greater of two is, in common parts where these
// are not those that were written: "2/3 is 16/24 and 5/8 is 15/24: 2/3 is 1/24
// more."
func lineApart(m arithmetic.LookAtPoints, greater Span) Phrase {
	said := Say(greater, " is ", In(scene.Result, m.Gap.String()), " more.")
	if !m.Renamed() {
		return said
	}
	var names Phrase
	for _, n := range []struct {
		role    scene.Role
		was, is arithmetic.Number
	}{{scene.First, m.First, m.FirstAs}, {scene.Second, m.Second, m.SecondAs}} {
		if n.was.String() == n.is.String() {
			continue
		}
		if names != nil {
			names = Say(names, " and ")
		}
		names = Say(names, In(n.role, n.was.String()), " is ", In(n.role, n.is.String()))
	}
	return Say(names, ": ", said)
}
