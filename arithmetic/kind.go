package arithmetic

// Kind is what a problem asks, in one word of the trade. The chooser and the
// models go by it; lesson.json prints it.
type Kind string

const (
	Show         Kind = "show"           // a number on its own
	Addition     Kind = "add"            // Left is an Operation of two Numbers
	Subtraction  Kind = "subtract"       // likewise
	Product      Kind = "multiply"       // likewise
	Division     Kind = "divide"         // likewise; Sharing says which story
	PartOf       Kind = "part of"        // Left is Number Of Number
	Expression   Kind = "expression"     // Left has more than one operation
	Missing      Kind = "unknown"        // Left = Right with one Unknown inside an operation
	Claim        Kind = "claim"          // Left Rel Right, true or false
	Comparison   Kind = "compare"        // Left and Right, the sign between them asked for
	Ordering     Kind = "order"          // List, from least to greatest
	Rounding     Kind = "round"          // Left to the nearest To, or to so many Places
	Factors      Kind = "factors"        // all factor pairs of Left
	MixedForm    Kind = "mixed number"   // Left, more than one whole, as a mixed number
	FractionForm Kind = "fraction form"  // Left, a mixed or whole number, as one fraction
	SimplestForm Kind = "simplest form"  // Left in the fewest parts
	Renaming     Kind = "equal fraction" // Left = Right, one of them a Number and the other a Blank

	PlaceValue      Kind = "place value"      // what the digit of Left in the place To, or so many Places after the point, is worth
	ExpandedForm    Kind = "expanded form"    // Left as the sum of what its digits are worth
	InWords         Kind = "in words"         // the name of Left
	Parity          Kind = "even or odd"      // of Left
	Counting        Kind = "count"            // Run: counting by a number, forward or back, and other number patterns
	RuleTable       Kind = "rule"             // Run.Op Run.By done to every number of List
	Estimate        Kind = "estimate"         // Left is an Operation of two Numbers, both rounded to To before it
	FactFamily      Kind = "fact family"      // the facts that say the same as Left, a sum or a product of two Numbers
	WaysToMake      Kind = "ways to make"     // all pairs of whole numbers whose sum is Left
	Multiples       Kind = "multiples"        // the first Run.Terms multiples of Left
	CommonMultiples Kind = "common multiples" // of Left and Right, as far as the third
	CommonFactors   Kind = "common factors"   // of Left and Right
	Primality       Kind = "prime"            // whether Left is prime

	ShapePart   Kind = "part of a shape" // Left, a fraction, of a Shape
	AsSum       Kind = "as a sum"        // Left, a fraction, as a sum of unit fractions and in other ways
	EqualNames  Kind = "equal names"     // the fractions equal to Left with denominators to 12
	Closer      Kind = "closer"          // which of Left and Right is closer to To, 0 or 1
	DecimalForm Kind = "decimal form"    // Left as a decimal
	PercentForm Kind = "percent"         // Left in hundredths
	Coins       Kind = "coins"           // Left, money, in few coins and notes
	CoinsWorth  Kind = "worth of coins"  // List, the worth of every coin on the table, together
)
