// Package table draws tables of a rule: what goes in and what comes out, or the
// numbers of a run one under the other.
package table

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows a rule done to one number after another (CCSS 4.OA.C.5, 5.OA.B.3).
var Model = &telling.Model{
	Name:  "function-table",
	Title: "Function table",
	Doc:   "A table of what goes into a rule and what comes out, and of the numbers of a pattern one under the other.",
	Kinds: []arithmetic.Kind{
		arithmetic.RuleTable,
		arithmetic.Counting,
	},
	Examples: []string{
		"rule × 3 for 1; 2; 3; 4", "rule + 8 for 5; 12; 20", "rule ÷ 6 for 54; 24; 6; 48", "rule − 25 for 100; 75; 250",
		"start at 3, × 2, 5 terms", "start at 1, + 3, 6 terms", "count back by 10 from 120 to 60",
	},
	Fits: fits,
	Turn: turn,
	Tell: func(p arithmetic.Problem) telling.Telling {
		w, err := arithmetic.FillTable(p)
		if err != nil {
			panic("table: a problem that does not fit: " + err.Error())
		}
		if p.Kind == arithmetic.Counting {
			return tellRun(w)
		}
		return tellRule(w)
	},
}

// What a table has room for: rows under one another on one sheet, and numbers in a
// cell.
const (
	mostRows  = 12
	mostInRow = 9_999_999
	mostBy    = 9_999
)

// turn leads where a rule is asked for, and where the numbers of a run grow too fast
// for equal jumps.
func turn(p arithmetic.Problem) int {
	if p.Kind == arithmetic.RuleTable || p.Kind == arithmetic.Counting && p.Run.Op == arithmetic.Multiply {
		return telling.Leads
	}
	return telling.Serves
}

func fits(p arithmetic.Problem) error {
	if p.Kind != arithmetic.RuleTable && p.Kind != arithmetic.Counting {
		return telling.NotMine(words.ErrTableKind)
	}
	w, err := arithmetic.FillTable(p)
	if err != nil {
		return words.TableMisfit(err)
	}
	rows := len(w.Answer.List)
	for _, n := range append(w.Moves[0].(arithmetic.SayRule).In, w.Answer.List...) {
		if n > mostInRow {
			return words.ErrTableLarge
		}
	}
	switch {
	case rows > mostRows:
		return words.ErrTableLong
	case p.Run.By > mostBy:
		return words.ErrTableRule
	}
	return nil
}
