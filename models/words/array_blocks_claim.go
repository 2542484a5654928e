package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayBlocksClaim is a claim about products of three factors, its sides as they
// are written with their brackets.
type ArrayBlocksClaim struct {
	Problem arithmetic.Problem
	Compare arithmetic.CompareBlocks
	Written [2]string
}

// side is "2 blocks, each with 3 rows of 4".
func (a ArrayBlocksClaim) side(i int) string {
	s := a.Compare.Sides[i]
	if !s.Three {
		return rowsOf(s.Rows, s.Cols)
	}
	return blocksOf(s.Blocks)
}

// way is how a side is counted in the order of its brackets.
func (a ArrayBlocksClaim) way(i int) Phrase {
	s := a.Compare.Sides[i]
	all := In(arrayRoles[i], g(s.Product))
	if !s.Three {
		return Say(capital(rowsAre(s.Rows, s.Cols)), all, ".")
	}
	first := said(pairIs(s.Blocks, s.Pair.Pair, s.Pair.Product))
	times, each := s.Blocks.Blocks, s.Pair.Product
	if s.Pair.Pair == arithmetic.RowsInAll {
		times, each = s.Pair.Product, s.Cols
	}
	then := thenIs(s.Pair.Pair, times, each, s.Product)
	then[len(then)-1] = all
	return Say(first, " ", said(then))
}

// Side says how to lay out one side and count it.
func (a ArrayBlocksClaim) Side(i int) (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("Lay out ", In(arrayRoles[i], a.side(i)), ". ", a.way(i))
	shown := capital(a.side(0)) + "."
	if i == 1 {
		shown += " Below: " + a.side(1) + "."
	}
	return "Count " + a.Written[i], hands, Say("Which part do the brackets put first?"), scene.Same(shown + " " + a.way(i).String())
}

// Judged says what stands between the two sides; why is for the whole lesson.
func (a ArrayBlocksClaim) Judged() (title string, hands, ask Phrase, desc scene.Telling, why Phrase) {
	m := a.Compare
	left, right := In(scene.First, g(m.Sides[0].Product)), In(scene.Second, g(m.Sides[1].Product))
	var is Phrase
	switch m.Relation {
	case arithmetic.Equal:
		is = Say("Both are ", left, ", so they are equal.")
		if m.Sides[0].Blocks == m.Sides[1].Blocks {
			is = Say("They are the same blocks, counted in another order. ", is)
		}
	case arithmetic.Less:
		is = Say(right, " is "+g(m.Gap)+" more than ", left, ".")
	default:
		is = Say(left, " is "+g(m.Gap)+" more than ", right, ".")
	}
	why = Say(a.way(0), " ", a.way(1), " ", is)
	if a.Problem.Kind == arithmetic.Claim && a.Problem.Rel != m.Relation {
		why = Say(why, " So "+a.Problem.String()+" is not true.")
	}
	both := capital(a.side(0)) + " and " + a.side(1) + ". "
	desc = scene.Telling{Shown: both + why.String(), Hidden: both + "Which is more, or are they equal?"}
	if a.Problem.Kind == arithmetic.Claim {
		desc.Hidden = both + "Is " + a.Problem.String() + "?"
	}
	return "Compare", is, Say("Which is more, or are they equal?"), desc, why
}
