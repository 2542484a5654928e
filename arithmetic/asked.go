package arithmetic

import (
	"strconv"
	"strings"
)

// told writes a problem of one operation with its story.
func (p Problem) told(o Operation) string {
	left, right := o.Left.String(), o.Right.String()
	switch {
	case p.Kind == Product && p.Story == TimesAsMany:
		return left + " times as many as " + right
	case p.Kind == Subtraction && p.Story == HowManyMore:
		return "how many more is " + left + " than " + right
	case p.Kind == Subtraction && p.Story == Change:
		return "change from " + left + " for " + right
	case p.Kind == Division && p.Story == TimesAsMany && p.Grouping:
		return left + " is how many times as many as " + right
	case p.Kind == Division && p.Story == TimesAsMany:
		return left + " is " + right + " times as many as ?"
	case p.Kind == Division && p.Grouping:
		return left + " in groups of " + right + p.Rest.asked()
	case p.Kind == Division && IsPartOfOne(o) && p.Rest == LeftOver:
		return o.String() + " with remainder" // 3 ÷ 4 alone is 3/4
	case p.Kind == Division && IsPartOfOne(o) && p.Rest == AsPart:
		return o.String() + " as a fraction"
	}
	return o.String() + p.Rest.asked()
}

func (r Rest) asked() string {
	return [...]string{"", " as a mixed number", " as a decimal", " rounded up"}[r]
}

// IsPartOfOne reports whether an operation divides a whole number by a larger one:
// 3 ÷ 4, which is the fraction 3/4 (CCSS 5.NF.B.3).
func IsPartOfOne(o Operation) bool {
	a, okA := o.Left.(Number)
	b, okB := o.Right.(Number)
	return o.Op == Divide && okA && okB && a.Form == Whole && b.Form == Whole && a.Value.Sign() > 0 && a.Value.Cmp(b.Value) < 0
}

// asked writes a problem that says in words what it asks.
func (p Problem) asked() string {
	switch p.Kind {
	case PlaceValue:
		return "value of the " + p.PlaceName() + " digit in " + p.Left.String()
	case ExpandedForm:
		return p.Left.String() + " in expanded form"
	case InWords:
		return p.Left.String() + " in words"
	case Parity:
		return "is " + p.Left.String() + " even or odd"
	case Counting:
		return p.Run.asked()
	case RuleTable:
		names := make([]string, len(p.List))
		for i, n := range p.List {
			names[i] = n.String()
		}
		return "rule " + p.Run.Op.String() + " " + Grouped(p.Run.By) + " for " + strings.Join(names, "; ")
	case Estimate:
		return "estimate " + p.Left.String() + " to the nearest " + Grouped(p.To)
	case FactFamily:
		return "fact family of " + p.Left.String()
	case WaysToMake:
		return "ways to make " + p.Left.String()
	case Multiples:
		return "first " + strconv.Itoa(p.Run.Terms) + " multiples of " + p.Left.String()
	case CommonMultiples:
		return "common multiples of " + p.Left.String() + " and " + p.Right.String()
	case CommonFactors:
		return "common factors of " + p.Left.String() + " and " + p.Right.String()
	}
	return p.askedOfParts()
}

// askedOfParts writes what is asked of fractions and money, and of primes.
func (p Problem) askedOfParts() string {
	if p.Kind == CoinsWorth {
		return CoinNames(p.List) + " = ? cents"
	}
	left := p.Left.String()
	switch p.Kind {
	case ShapePart:
		article := " of a "
		if p.Shape == Octagon {
			article = " of an "
		}
		return left + article + string(p.Shape)
	case AsSum:
		return left + " as a sum"
	case EqualNames:
		return "fractions equal to " + left
	case Closer:
		return "which is closer to " + Grouped(p.To) + ", " + left + " or " + p.Right.String()
	case DecimalForm:
		return left + " as a decimal"
	case PercentForm:
		return left + " as a percent"
	case Coins:
		return left + " in coins"
	}
	return "is " + left + " prime"
}

// asked writes a run: count by 5 from 10 to 50, start at 3, × 2, 5 terms.
func (r Run) asked() string {
	list := r.List()
	from, by := r.Number(r.From).String(), r.Step().String()
	if r.Op == Multiply || len(list) == 0 {
		return "start at " + from + ", × " + by + ", " + strconv.Itoa(r.Terms) + " terms"
	}
	count, last := "count by ", r.Number(list[len(list)-1]).String()
	if r.Op == Subtract {
		count = "count back by "
	}
	return count + by + " from " + from + " to " + last
}
