package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

var sideRoles = [2]scene.Role{scene.First, scene.Second}

// side names one side of a claim about copies: 3 × 2/5, or 6/5.
func side(m arithmetic.Copies) string {
	if m.Alone {
		return m.Each.String()
	}
	return arithmetic.Grouped(m.Count) + " × " + m.Each.String()
}

// BarCopiesLayTitle heads the step in which one side is laid out.
func BarCopiesLayTitle(m arithmetic.LayCopies) string { return "Lay out " + side(m.Copies) }

// BarCopiesLay says how one side is laid out, and what it is.
func BarCopiesLay(m arithmetic.LayCopies) Phrase {
	role := sideRoles[m.Nth]
	if m.Alone {
		return BarLay(role, m.Each, m.Total, m.Nth > 0)
	}
	where := ""
	if m.Nth > 0 {
		where = "under it, from the same left edge, "
	}
	end := " end to end"
	if m.Count == 1 {
		end = ""
	}
	return Say(upper(where+"lay "+copies(m.Count)+" of "), In(role, m.Each.String()), end+". They are "+barParts(m.Total.Part.Num(), m.Total.Part.Den())+": ", In(role, BarAmount(m.Total)), ".")
}

// BarAskCopiesLay asks for the count of parts of one side.
func BarAskCopiesLay(m arithmetic.LayCopies) Phrase {
	if m.Alone {
		return BarAskLay(m.Total)
	}
	return Say("How many " + Parts(m.Total.Part.Den(), 2) + " are " + copies(m.Count) + " of " + m.Each.String() + "?")
}

// BarCopiesCompare says what the ends of two sides show.
func BarCopiesCompare(p arithmetic.Problem, m arithmetic.CompareEnds) Phrase {
	is := Say(In(scene.First, p.Left.String()), " "+m.Relation.String()+" ", In(scene.Second, p.Right.String()), ".")
	if m.Relation == arithmetic.Equal {
		return Say("Lay a ruler across the ends: both shaded lengths stop at the same place. ", is)
	}
	farther := In(scene.First, p.Left.String())
	if m.Relation == arithmetic.Less {
		farther = In(scene.Second, p.Right.String())
	}
	return Say("Look at the two ends: ", farther, reaches(m), ". ", is)
}

// BarCopiesWhy says why a claim about copies is true or false.
func BarCopiesWhy(p arithmetic.Problem, sides [2]arithmetic.LayCopies, m arithmetic.CompareEnds) Phrase {
	var why Phrase
	for i, s := range sides {
		if !s.Alone {
			why = append(why, Say(In(sideRoles[i], side(s.Copies)), " is "+barParts(s.Total.Part.Num(), s.Total.Part.Den())+". ")...)
		}
	}
	left, right := In(scene.First, p.Left.String()), In(scene.Second, p.Right.String())
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

// BarCopiesClaimDesc says what a picture of two sides shows: those that lie there, and
// where they end. ends is nil until that is looked at.
func BarCopiesClaimDesc(p arithmetic.Problem, laid []arithmetic.LayCopies, ends *arithmetic.CompareEnds) scene.Telling {
	said := bars(len(laid))
	for i, s := range laid {
		name := s.Each.String()
		if !s.Alone {
			name = copies(s.Count) + " of " + name
			if s.Count > 1 {
				name += ", end to end"
			}
		}
		said += [...]string{" The first: ", " The second: "}[i] + barLiesAs(name, s.Total)
	}
	if ends == nil {
		return scene.Same(said)
	}
	shown := " Both shaded lengths end at the same place: "
	if ends.Relation != arithmetic.Equal {
		shown = " One reaches " + gap(ends.Gap) + " of a whole farther: "
	}
	shown = said + shown + p.Left.String() + " " + ends.Relation.String() + " " + p.Right.String() + "."
	asks := said + " Which reaches farther, or do both end at the same place?"
	if p.Kind == arithmetic.Claim {
		asks = said + " Is " + p.String() + "?"
	}
	return scene.Telling{Shown: shown, Hidden: asks}
}
