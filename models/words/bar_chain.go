package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarLayNext says where the next number of a sum is laid: after the ones before it.
func BarLayNext(role scene.Role, m arithmetic.LayStrips) Phrase {
	said := BarLay(role, m.Number, m.Strips, false)
	if m.Nth > 0 {
		said = append(said, Say(" Put it right after the others, end to end.")...)
	}
	return said
}

// BarCutChain says that the parts of all lengths are made one size, and what each is
// then.
func BarCutChain(m arithmetic.CutAll, roles []scene.Role) Phrase {
	said := Say("Cut the parts of every length finer until all are " + Parts(m.Den, 2) + ": ")
	for i, to := range m.To {
		if i > 0 {
			said = append(said, Say(", ")...)
		}
		said = append(said, In(roles[i], BarAmount(to)))
	}
	return append(said, Span{Text: "."})
}

// BarCountChain says that a strip is laid under several lengths, and how many parts all
// of them have.
func BarCountChain(m arithmetic.CountParts) Phrase {
	return Say("Lay a strip under them, as long as all together. Count: "+barPieces(m.Total)+", ", In(scene.Result, BarAmount(m.Total)), ".")
}

// BarChainDesc says what a picture of a sum of several lengths shows: how many of them
// lie there, what they are cut in, 0 while they are as they were written, and what they
// are together, or nil.
func BarChainDesc(p arithmetic.Problem, laid []arithmetic.LayStrips, den int64, total *arithmetic.Strips) scene.Telling {
	said := "A bar with its wholes marked."
	for i, m := range laid {
		where := " On it is "
		if i > 0 {
			where = " Right after it is "
		}
		said += where + m.Number.String() + "."
	}
	if den > 0 {
		said += " All are cut into " + Parts(den, 2) + "."
	}
	if total == nil {
		return scene.Same(said)
	}
	return scene.Telling{Shown: said + " Together they make " + BarAmount(*total) + ".", Hidden: said + " How much is " + p.String() + "?"}
}
