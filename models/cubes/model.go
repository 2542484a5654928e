// Package cubes draws trains of linking cubes.
package cubes

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model builds numbers to 100 of cubes that snap together, ten to a train, and holds
// two trains side by side to compare (CCSS 1.NBT.B.2, 1.NBT.C.4, K.CC.C.6, 2.OA.C.3,
// 3.OA.A.1).
var Model = &telling.Model{
	Name:  "linking-cubes",
	Title: "Linking cubes",
	Doc:   "Trains of cubes that snap together, ten to a train: numbers to 100, sums and differences, two numbers compared, even and odd, equal trains.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Comparison,
		arithmetic.Claim,
		arithmetic.Parity,
		arithmetic.Product,
	},
	Examples: []string{
		"compare 7 and 12", "9 = 9", "8 < 5", "compare 20 and 0",
		"how many more is 14 than 9",
		"47", "100",
		"28 + 14", "8 + 6", "23 + 14", "40 + 30", "99 + 1",
		"42 - 17", "57 - 24", "30 - 4", "15 - 15",
		"is 17 even or odd", "is 8 even or odd",
		"4 × 6", "12 × 8", "1 × 9",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn leads where two small numbers are compared, and follows where a story
// compares them: the trains lie side by side.
func turn(p arithmetic.Problem) int {
	if fits(p) != nil {
		return telling.Serves
	}
	switch p.Kind {
	case arithmetic.Comparison, arithmetic.Claim:
		return telling.Leads
	case arithmetic.Subtraction, arithmetic.Addition:
		if p.Story != arithmetic.NoStory {
			return telling.Follows
		}
	}
	return telling.Serves
}

func fits(p arithmetic.Problem) error {
	_, err := work(p)
	if err == nil {
		return nil
	}
	why := words.CubesMisfit(p, err)
	if errors.Is(err, arithmetic.ErrNotWhole) {
		return telling.NotMine(why)
	}
	return why
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch {
	case p.Kind == arithmetic.Subtraction && p.Story == arithmetic.HowManyMore, p.Kind == arithmetic.Comparison, p.Kind == arithmetic.Claim:
		return arithmetic.MatchWithCubes(p)
	case p.Story != arithmetic.NoStory:
		return arithmetic.Working{}, arithmetic.ErrNotWhole
	}
	switch p.Kind {
	case arithmetic.Show:
		return arithmetic.ShowWithCubes(p)
	case arithmetic.Addition:
		return arithmetic.AddWithCubes(p)
	case arithmetic.Subtraction:
		return arithmetic.TakeWithCubes(p)
	case arithmetic.Parity:
		return arithmetic.PairWithCubes(p)
	case arithmetic.Product:
		return arithmetic.MultiplyWithCubes(p)
	}
	return arithmetic.Working{}, arithmetic.ErrNotWhole
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("cubes: a problem that does not fit: " + err.Error())
	}
	k := &story{said: words.Cubes{Problem: p}, work: w}
	switch w.Moves[len(w.Moves)-1].(type) {
	case arithmetic.SayTrains:
		return k.tellMatched()
	case arithmetic.ReadPairs:
		return k.tellPaired()
	case arithmetic.ReadGroups:
		return k.tellMade()
	}
	switch p.Kind {
	case arithmetic.Show:
		return k.tellShown()
	case arithmetic.Addition:
		return k.tellAdded()
	}
	return k.tellTaken()
}

// pieces is what to have on the table.
func pieces(n int64) []telling.Piece {
	return []telling.Piece{{Name: words.Things(words.LinkingCube, n), Count: n}}
}
