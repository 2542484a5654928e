package arithmetic

import "modeler/fraction"

// Move is one thing done with the pieces. The moves of a procedure are declared
// beside it; each says what changed and what there is afterwards.
type Move interface{ move() }

// Working is one way to work a problem: its moves in order and the answer they
// reach.
type Working struct {
	Problem Problem
	Answer  Answer
	Moves   []Move
}

// Answer is what a problem comes to. Which fields are set goes by the problem's
// [Kind].
type Answer struct {
	Number    Number            // the value, the quotient, the unknown, the rounded number, the new form
	Simplest  Number            // the same amount as it is finally named (simplest, mixed); Number when there is nothing to do
	Remainder int64             // of a Division of whole numbers: what is left over
	Relation  Relation          // of a Comparison or Claim: what truly stands between the two; of Closer, between the distances of the two
	True      bool              // of a Claim and of Primality
	Gap       fraction.Fraction // of a Comparison or Claim: how far apart, never negative
	Order     []Number          // of an Ordering; the names of EqualNames, fewest parts first; the addends of AsSum and of an ExpandedForm of a decimal; the coins of Coins, each of them, the largest first
	Pairs     [][2]int64        // of Factors and Primality: rows and columns, rows from 1 up, both turns; of WaysToMake: the parts
	List      []int64           // of Counting (in parts, see Run), a RuleTable, Multiples, CommonMultiples and CommonFactors, in order; of an ExpandedForm of a whole number, its addends
	Even      bool              // of Parity
}
