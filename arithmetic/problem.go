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

// Problem is what a person asks: a small tree with at most one unknown. Which
// fields are set is said beside each [Kind].
type Problem struct {
	Kind        Kind
	Left, Right Expr
	Rel         Relation
	List        []Number // of an Ordering, in the order given; of a RuleTable and of CoinsWorth
	To          int64    // of a Rounding: 1, 10, 100 ...; of a PlaceValue; of Closer: 0 or 1
	Places      int      // of a Rounding or PlaceValue of a decimal: digits after the point, where that is the place; To is then 0
	Shape       Shape    // of a ShapePart
	Grouping    bool     // of a Division: false shares among Right groups, true makes groups of Right
	Rest        Rest     // of a Division: what is done with what is left over
	Story       Story    // of a Product, a Division or a Subtraction: the situation, where it is told
	Blank       Blank    // of a Renaming
	Run         Run      // of Counting; its Terms of Multiples, its Op and By of a RuleTable
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
		return "round " + p.Left.String() + " to the nearest " + p.nearest()
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
	case PlaceValue, ExpandedForm, InWords, Parity, Counting, RuleTable, Estimate, FactFamily, WaysToMake, Multiples, CommonMultiples, CommonFactors, Primality,
		ShapePart, AsSum, EqualNames, Closer, DecimalForm, PercentForm, Coins, CoinsWorth:
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
