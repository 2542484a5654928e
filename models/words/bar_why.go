package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarWhy says why a claim is true or false, or why one number is more.
func BarWhy(p arithmetic.Problem, m arithmetic.CompareEnds, cuts []arithmetic.CutParts) Phrase {
	a, b, _ := p.Operands()
	why := cutsWhy(cuts)
	if m.SameCount {
		why = append(why, sameCountWhy(m)...)
	}
	switch {
	case m.Relation == arithmetic.Equal:
		why = append(why, equalWhy(a, b, m, len(cuts) > 0)...)
	case m.SameCount:
		why = append(why, Say("So ")...)
		why = append(why, BarStatement(a, m.Relation.String(), b)...)
	default:
		more, less, roles := a, b, [2]scene.Role{scene.First, scene.Second}
		if m.Relation == arithmetic.Less {
			more, less, roles = b, a, [2]scene.Role{scene.Second, scene.First}
		}
		why = append(why, Say(In(roles[0], more.String()), " is "+gap(m.Gap)+" more than ", In(roles[1], less.String()))...)
	}
	if p.Kind == arithmetic.Claim && p.Rel != m.Relation {
		why = append(why, Say(notTrue(p, m))...)
	}
	return append(why, Span{Text: "."})
}

// cutsWhy says what every cut made of a number.
func cutsWhy(cuts []arithmetic.CutParts) Phrase {
	var why Phrase
	for _, c := range cuts {
		role := [...]scene.Role{scene.First, scene.Second, scene.Result}[c.Nth]
		why = append(why, Say("Each "+Parts(c.From.Part.Den(), 1)+" cut into "+arithmetic.Grouped(c.Into)+" makes "+
			Parts(c.To.Part.Den(), 2)+", so ", In(role, BarAmount(c.From)), " is ", In(role, BarAmount(c.To)), ". ")...)
	}
	return why
}

// notTrue says that a claim is not true, and what is: a claim the wrong way round
// is turned.
func notTrue(p arithmetic.Problem, m arithmetic.CompareEnds) string {
	switch {
	case m.Relation == arithmetic.Equal:
		return ". So " + p.String() + " is not true"
	case p.Rel != arithmetic.Equal:
		return ", so " + p.String() + " is not true. It is the other way round: " + m.Instead.String()
	}
	return ", so " + p.String() + " is not true. This is true: " + m.Instead.String()
}

// equalWhy says why two numbers are one length.
func equalWhy(a, b arithmetic.Number, m arithmetic.CompareEnds, cut bool) Phrase {
	equal := Say(In(scene.First, a.String()), " and ", In(scene.Second, b.String()), " are equal")
	switch {
	case cut:
		return Say("Both are the same length")
	case m.First == m.Second:
		return Say("Both are "+barPieces(m.First)+", so ", equal)
	case a.Value.Sign() == 0:
		return Say("Neither has a part shaded, so ", equal)
	case !a.Value.IsWhole():
		// A mixed number and a fraction in the same parts.
		den := m.First.Part.Den()
		return Say(upper(barParts(den, den))+" make 1 whole, so ", equal)
	}
	var makes []string
	for _, s := range []arithmetic.Strips{m.First, m.Second} {
		if s.Part.Num() > 0 && s.Part.Den() > 1 {
			makes = append(makes, barParts(s.Part.Num(), s.Part.Den())+" make "+Count(s.Part.Num()/s.Part.Den(), "whole"))
		}
	}
	if len(makes) == 0 { // a part is a whole, as in 2 = 2/1
		wholes, _ := a.Int64()
		return Say("Both are "+Count(wholes, "whole")+", so ", equal)
	}
	return Say(upper(strings.Join(makes, " and "))+", so ", equal)
}

// sameCountWhy compares the sizes of parts where both amounts have as many.
func sameCountWhy(m arithmetic.CompareEnds) Phrase {
	count := m.First.Part.Num()
	large, small := m.First.Part.Den(), m.Second.Part.Den()
	if large > small {
		large, small = small, large
	}
	if count == 1 && m.First.Wholes == 0 {
		return Say("A whole cut into " + Count(large, "part") + " has larger parts than a whole cut into " + arithmetic.Grouped(small) + ". ")
	}
	return Say("Both have " + Count(count, "part") + ", and " + Parts(large, 2) + " are larger than " + Parts(small, 2) + ". ")
}
