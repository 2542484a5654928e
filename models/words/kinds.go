package words

import "modeler/arithmetic"

// KindTitle heads the problems of a kind in a list of what can be asked.
func KindTitle(k arithmetic.Kind) string {
	title, known := kindTitles[k]
	if !known {
		return upper(string(k))
	}
	return title
}

var kindTitles = map[arithmetic.Kind]string{
	arithmetic.Show:            "Show a number",
	arithmetic.Addition:        "Add",
	arithmetic.Subtraction:     "Take away",
	arithmetic.Product:         "Multiply",
	arithmetic.Division:        "Divide",
	arithmetic.PartOf:          "A part of an amount",
	arithmetic.Expression:      "More than one step",
	arithmetic.Missing:         "Find the missing number",
	arithmetic.Claim:           "Is it true?",
	arithmetic.Comparison:      "Which is more?",
	arithmetic.Ordering:        "Put in order",
	arithmetic.Rounding:        "Round",
	arithmetic.Factors:         "All the factors",
	arithmetic.MixedForm:       "As a mixed number",
	arithmetic.FractionForm:    "As one fraction",
	arithmetic.SimplestForm:    "In simplest form",
	arithmetic.Renaming:        "An equal fraction",
	arithmetic.PlaceValue:      "What a digit is worth",
	arithmetic.ExpandedForm:    "In expanded form",
	arithmetic.InWords:         "In words",
	arithmetic.Parity:          "Even or odd",
	arithmetic.Counting:        "Count by a number",
	arithmetic.RuleTable:       "A rule",
	arithmetic.Estimate:        "Estimate",
	arithmetic.FactFamily:      "Fact families",
	arithmetic.WaysToMake:      "Ways to make a number",
	arithmetic.Multiples:       "Multiples",
	arithmetic.CommonMultiples: "Common multiples",
	arithmetic.CommonFactors:   "Common factors",
	arithmetic.Primality:       "Prime or not",
	arithmetic.ShapePart:       "A part of a shape",
	arithmetic.AsSum:           "As a sum",
	arithmetic.EqualNames:      "Other names of a fraction",
	arithmetic.Closer:          "Closer to 0 or 1",
	arithmetic.DecimalForm:     "As a decimal",
	arithmetic.PercentForm:     "In hundredths",
	arithmetic.Coins:           "In coins and notes",
	arithmetic.CoinsWorth:      "What coins are worth",
}
