package arithmetic

import (
	"errors"
	"strings"
)

// Op is what an [Operation] does with its two sides.
type Op uint8

const (
	Add Op = iota
	Subtract
	Multiply
	Divide
	Of // a fraction of an amount
)

// String is the sign that a book prints.
func (o Op) String() string { return [...]string{"+", "−", "×", "÷", "of"}[o] }

// Relation is the sign between the two sides of a statement.
type Relation uint8

const (
	NoRelation Relation = iota
	Equal
	Less
	Greater
)

// String is the sign that a book prints; NoRelation has none.
func (r Relation) String() string { return [...]string{"", "=", "<", ">"}[r] }

// Expr is a [Number], an [Operation] or the [Unknown].
type Expr interface {
	String() string
	expr()
}

// Operation is two expressions joined by a sign. The first factor of a product
// is the number of groups, the second the size of each (CCSS 3.OA.A.1).
type Operation struct {
	Op          Op
	Left, Right Expr
}

// Unknown is the blank that a problem asks for.
type Unknown struct{}

func (Number) expr()    {}
func (Operation) expr() {}
func (Unknown) expr()   {}

func (Unknown) String() string { return "?" }

// String writes the operation with brackets where they are needed. Signs of the
// same rank go from left to right, but a part of a part from the inside out: 1/2
// of 1/3 of 12.
func (o Operation) String() string {
	left, right := o.Left.String(), o.Right.String()
	if l, ok := o.Left.(Operation); ok && (l.Op.rank() < o.Op.rank() || o.Op == Of) {
		left = "(" + left + ")"
	}
	if r, ok := o.Right.(Operation); ok && (r.Op.rank() < o.Op.rank() || r.Op.rank() == o.Op.rank() && o.Op != Of) {
		right = "(" + right + ")"
	}
	return left + " " + o.Op.String() + " " + right
}

func (o Op) rank() int {
	switch o {
	case Add, Subtract:
		return 1
	case Multiply, Divide:
		return 2
	}
	return 3
}

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
	Rounding     Kind = "round"          // Left to the nearest To
	Factors      Kind = "factors"        // all factor pairs of Left
	MixedForm    Kind = "mixed number"   // Left, more than one whole, as a mixed number
	FractionForm Kind = "fraction form"  // Left, a mixed or whole number, as one fraction
	SimplestForm Kind = "simplest form"  // Left in the fewest parts
	Renaming     Kind = "equal fraction" // Left = Right, one of them a Number and the other a Blank

	PlaceValue      Kind = "place value"      // what the digit of Left in the place To is worth
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
)

// Problem is what a person asks: a small tree with at most one unknown. Which
// fields are set is said beside each [Kind].
type Problem struct {
	Kind        Kind
	Left, Right Expr
	Rel         Relation
	List        []Number // of an Ordering, in the order given
	To          int64    // of a Rounding: 10, 100, 1,000 ...
	Grouping    bool     // of a Division: false shares among Right groups, true makes groups of Right
	Rest        Rest     // of a Division: what is done with what is left over
	Story       Story    // of a Product, a Division or a Subtraction: the situation, where it is told
	Blank       Blank    // of a Renaming
	Run         Run      // of Counting and Multiples; its Op and By of a RuleTable
}

// Rest is what a division does with what is left over: 98 ÷ 4 is 24 remainder 2,
// 24 2/4, 24.5, or 25 where all must have a place (National curriculum in England,
// 2013, year 5).
type Rest uint8

const (
	LeftOver  Rest = iota // it stays outside the groups
	AsPart                // it is cut, and the quotient is a mixed number
	AsDecimal             // likewise, written as a decimal
	OneMore               // it needs a group of its own: the quotient is rounded up
)

// Story is a situation that a picture follows, and not only the calculation
// (CCSS glossary, tables 1 and 2).
type Story uint8

const (
	NoStory     Story = iota
	TimesAsMany       // Left times as many as Right; of a Division, how many times as many, or the smaller of the two
	HowManyMore       // of a Subtraction: how many more Left is than Right
)

// Run is a row of numbers that starts at From: to each number By is added, or
// taken away, or it is multiplied by By, until there are Terms of them.
type Run struct {
	From, By int64
	Op       Op
	Terms    int
}

// List is the numbers of the run, which may end early at a number that can't be
// worked: one below 0, or too large.
func (r Run) List() []int64 {
	var list []int64
	for n := r.From; len(list) < r.Terms && n >= 0; {
		list = append(list, n)
		next, err := Evaluate(Operation{r.Op, Int(n), Int(r.By)})
		if err != nil {
			break
		}
		n = next.Num()
	}
	return list
}

// Blank is a fraction with one of its two numbers unknown, as in 1/2 = ?/8.
type Blank struct {
	Num, Den int64 // the unknown one is 0
	First    bool  // the blank stands left of the equal sign
}

// String writes the problem as a book would, and reading it gives the problem
// back.
func (p Problem) String() string {
	switch p.Kind {
	case Ordering:
		names := make([]string, len(p.List))
		for i, n := range p.List {
			names[i] = n.String()
		}
		// A list with commas cannot have numbers with commas in it.
		return "order " + strings.Join(names, "; ")
	case Comparison:
		return "compare " + p.Left.String() + " and " + p.Right.String()
	case Rounding:
		return "round " + p.Left.String() + " to the nearest " + Grouped(p.To)
	case Factors:
		return "factors of " + p.Left.String()
	case MixedForm:
		return p.Left.String() + " as a mixed number"
	case FractionForm:
		return p.Left.String() + " as a fraction"
	case SimplestForm:
		return p.Left.String() + " in simplest form"
	case Renaming:
		blank := p.Blank.String()
		if p.Blank.First {
			return blank + " = " + p.Left.String()
		}
		return p.Left.String() + " = " + blank
	case Division, Product, Subtraction:
		if o, ok := p.Left.(Operation); ok {
			return p.told(o)
		}
	case PlaceValue, ExpandedForm, InWords, Parity, Counting, RuleTable, Estimate, FactFamily, WaysToMake, Multiples, CommonMultiples, CommonFactors, Primality:
		return p.asked()
	}
	if p.Right == nil {
		return p.Left.String()
	}
	return p.Left.String() + " " + p.Rel.String() + " " + p.Right.String()
}

// String writes the blank with a question mark for the unknown number.
func (b Blank) String() string {
	write := func(n int64) string {
		if n == 0 {
			return "?"
		}
		return Int(n).Value.String()
	}
	return write(b.Num) + "/" + write(b.Den)
}

// Operands are the two numbers of a problem with one operation, a comparison or
// a claim about two numbers; ok is false for every other problem.
func (p Problem) Operands() (a, b Number, ok bool) {
	left, right := p.Left, p.Right
	if o, is := left.(Operation); is && right == nil {
		left, right = o.Left, o.Right
	}
	a, okA := left.(Number)
	b, okB := right.(Number)
	return a, b, okA && okB
}

// PartsOf lists the operations on two numbers that stand inside a problem, as
// problems of their own, from left to right.
func PartsOf(p Problem) []Problem {
	var parts []Problem
	for _, side := range []Expr{p.Left, p.Right} {
		parts = append(parts, partsOf(side)...)
	}
	return parts
}

func partsOf(e Expr) []Problem {
	o, ok := e.(Operation)
	if !ok {
		return nil
	}
	_, left := o.Left.(Number)
	_, right := o.Right.(Number)
	if left && right {
		return []Problem{{Kind: KindOf(o.Op), Left: o}}
	}
	return append(partsOf(o.Left), partsOf(o.Right)...)
}

// KindOf is the kind of a problem that is one operation on two numbers.
func KindOf(op Op) Kind { return [...]Kind{Addition, Subtraction, Product, Division, PartOf}[op] }

// ErrOverflow says that a result is too large to be worked exactly.
var ErrOverflow = errors.New("arithmetic: the numbers are too large")

// ErrDivideByZero says that something was to be shared among none.
var ErrDivideByZero = errors.New("arithmetic: cannot divide by 0")

// ErrNegative says that more was to be taken away than there is.
var ErrNegative = errors.New("arithmetic: there is less than is to be taken away")
