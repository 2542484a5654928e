// Package frames draws counters in ten frames.
package frames

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows small numbers as so many more than five or fewer than ten, and sums
// and differences through ten (CCSS K.NBT.A.1, 1.OA.B.3, 1.OA.C.6, 1.OA.D.8,
// 2.OA.C.3).
var Model = &telling.Model{
	Name:  "ten-frames",
	Title: "Ten frames",
	Doc:   "Counters in frames of ten: small numbers, sums and differences to 20 through ten, doubles, even and odd, ways to make a number.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Expression,
		arithmetic.Missing,
		arithmetic.Parity,
		arithmetic.WaysToMake,
	},
	Examples: []string{
		"8 + 6", "6 + 7", "7 + 7", "4 + 4", "5 + 3", "3 + 9", "13 + 4", "10 + 10",
		"2 + 6 + 4", "5 + 4 + 3",
		"14 - 6", "13 - 4", "17 - 5", "9 - 4", "20 - 20",
		"8 + ? = 11", "? + 3 = 7",
		"7", "17", "34",
		"is 17 even or odd", "is 40 even or odd",
		"ways to make 10", "ways to make 5",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn leads for the small numbers of the first grades.
func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.Show, arithmetic.Addition, arithmetic.Subtraction, arithmetic.Parity:
	case arithmetic.Expression, arithmetic.Missing, arithmetic.WaysToMake:
		if fits(p) == nil {
			return telling.Follows
		}
		return telling.Serves
	default:
		return telling.Serves
	}
	n, isNumber := p.Left.(arithmetic.Number)
	small, _ := n.Int64()
	switch {
	case fits(p) != nil, p.Kind == arithmetic.Show && isNumber && small > arithmetic.MostInFrames:
		return telling.Serves
	case p.Story != arithmetic.NoStory:
		return telling.Follows
	}
	return telling.Leads
}

func fits(p arithmetic.Problem) error {
	_, err := work(p)
	if err == nil {
		return nil
	}
	why := words.FramesMisfit(p, err)
	if errors.Is(err, arithmetic.ErrNotWhole) {
		return telling.NotMine(why)
	}
	return why
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch p.Kind {
	case arithmetic.Show:
		return arithmetic.ShowInFrames(p)
	case arithmetic.Addition:
		return arithmetic.AddInFrames(p)
	case arithmetic.Subtraction:
		return arithmetic.TakeInFrames(p)
	case arithmetic.Expression:
		return arithmetic.ChainInFrames(p)
	case arithmetic.Missing:
		return arithmetic.FillInFrames(p)
	case arithmetic.Parity:
		return arithmetic.PairInFrames(p)
	case arithmetic.WaysToMake:
		n, _ := p.Left.(arithmetic.Number)
		if v, _ := n.Int64(); v > arithmetic.TenFrame {
			return arithmetic.Working{}, arithmetic.ErrFrames
		}
		return arithmetic.Ways(p)
	}
	return arithmetic.Working{}, arithmetic.ErrNotWhole
}
