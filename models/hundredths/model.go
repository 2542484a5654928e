// Package hundredths draws decimals on a square of a hundred small squares.
package hundredths

import (
	"modeler/arithmetic"
	"modeler/models/telling"
)

// Model shows what tenths and hundredths are, compares, adds and takes away
// decimals, and gives fractions, decimals and percents each other's form (CCSS
// 4.NF.C.5, 4.NF.C.6, 4.NF.C.7; percents: National curriculum in England, year 5).
var Model = &telling.Model{
	Name:  "hundredths-square",
	Title: "Hundredths square",
	Doc:   "Shows tenths and hundredths as columns and small squares of one whole: decimals compared, added, taken away, and written as fractions and percents.",
	Kinds: []arithmetic.Kind{
		arithmetic.Show,
		arithmetic.Comparison,
		arithmetic.Claim,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.FractionForm,
		arithmetic.DecimalForm,
		arithmetic.PercentForm,
		arithmetic.Renaming,
	},
	Examples: []string{
		"0.62",
		"1.05",
		"compare 0.3 and 0.29",
		"0.3 = 3/10",
		"0.38 + 0.45",
		"1.2 - 0.75",
		"3/4 as a decimal",
		"0.4 as a percent",
		"3/10 = ?/100",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn: the square leads where the question is what a decimal is, or which form it
// has; sums and differences are led by pieces that can be moved.
func turn(p arithmetic.Problem) int {
	if p.Story != arithmetic.NoStory {
		return telling.Serves
	}
	switch p.Kind {
	case arithmetic.Show, arithmetic.FractionForm, arithmetic.DecimalForm, arithmetic.PercentForm:
		return telling.Leads
	case arithmetic.Comparison, arithmetic.Claim:
		return telling.Leads
	}
	return telling.Serves
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("hundredths: a problem that does not fit: " + err.Error())
	}
	return newLesson(w).tell()
}

func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch p.Kind {
	case arithmetic.Show:
		return arithmetic.ShowOnSquares(p)
	case arithmetic.Comparison, arithmetic.Claim:
		return arithmetic.CompareOnSquares(p)
	case arithmetic.Addition:
		return arithmetic.AddOnSquares(p)
	case arithmetic.Subtraction:
		return arithmetic.SubtractOnSquares(p)
	}
	return arithmetic.RenameOnSquares(p)
}
