// Package chart draws the hundred chart: the numbers from 1 to 100 in rows of ten.
package chart

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows patterns of numbers to 100, and tens and ones as steps from row to row
// and along a row (CCSS 1.NBT.C.5, 2.NBT.A.2, 2.NBT.B.5, 4.OA.B.4).
var Model = &telling.Model{
	Name:  "hundred-chart",
	Title: "Hundred chart",
	Doc:   "The numbers from 1 to 100 in rows of ten: counting, multiples and common multiples as patterns, tens and ones as steps, even numbers, primes.",
	Kinds: []arithmetic.Kind{
		arithmetic.Counting,
		arithmetic.CommonMultiples,
		arithmetic.Multiples,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Parity,
		arithmetic.Primality,
	},
	Examples: []string{
		"count by 5 from 0 to 50", "count back by 10 from 97 to 37", "common multiples of 4 and 6", "first 8 multiples of 9",
		"34 + 25", "83 − 27", "is 14 even or odd", "is 51 prime",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// turn leads for patterns that can be seen on the chart, and follows for the
// multiples of one number.
func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.Counting, arithmetic.CommonMultiples:
		if fits(p) == nil {
			return telling.Leads
		}
	case arithmetic.Multiples:
		return telling.Follows
	}
	return telling.Serves
}

func fits(p arithmetic.Problem) error {
	_, err := work(p)
	if err == nil {
		return nil
	}
	why := words.ChartMisfit(p, err)
	if why == words.ErrChartKind {
		return telling.NotMine(why)
	}
	return why
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (w arithmetic.Working, err error) {
	switch p.Kind {
	case arithmetic.Counting, arithmetic.Multiples:
		if p.Run.Parts > 1 {
			return w, arithmetic.ErrNotWhole // fractions do not stand on the chart
		}
		w, _, err = arithmetic.CountOnChart(p)
		return w, err
	case arithmetic.CommonMultiples:
		return arithmetic.MeetOnChart(p, arithmetic.OnChart)
	case arithmetic.Addition, arithmetic.Subtraction:
		if p.Story != arithmetic.NoStory {
			return w, arithmetic.ErrNotWhole
		}
		return arithmetic.WalkOnChart(p)
	case arithmetic.Parity:
		return arithmetic.EvenOnChart(p)
	case arithmetic.Primality:
		return arithmetic.PrimeBySieve(p)
	}
	return w, arithmetic.ErrNotWhole
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("chart: a problem that does not fit: " + err.Error())
	}
	var t telling.Telling
	switch p.Kind {
	case arithmetic.Counting, arithmetic.Multiples:
		t = tellCount(w)
	case arithmetic.CommonMultiples:
		t = tellCommon(w)
	case arithmetic.Addition, arithmetic.Subtraction:
		t = tellWalk(w)
	case arithmetic.Parity:
		t = tellEven(w)
	default:
		t = tellSieve(w)
	}
	t.Pieces = append([]telling.Piece{{Name: words.ChartPaper, Count: 1}}, t.Pieces...)
	return t
}
