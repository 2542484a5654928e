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
	}
	return o.String() + p.Rest.asked()
}

func (r Rest) asked() string {
	return [...]string{"", " as a mixed number", " as a decimal", " rounded up"}[r]
}

// asked writes a problem that says in words what it asks.
func (p Problem) asked() string {
	switch p.Kind {
	case PlaceValue:
		return "value of the " + PlaceName(p.To) + " digit in " + p.Left.String()
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
	from, by := Grouped(r.From), Grouped(r.By)
	if r.Op == Multiply || len(list) == 0 {
		return "start at " + from + ", × " + by + ", " + strconv.Itoa(r.Terms) + " terms"
	}
	count, last := "count by ", Grouped(list[len(list)-1])
	if r.Op == Subtract {
		count = "count back by "
	}
	return count + by + " from " + from + " to " + last
}

// PlaceName is the name of a place by what a one in it is worth: ones, tens,
// hundreds, to millions. Any other number is written in digits.
func PlaceName(worth int64) string {
	names := map[int64]string{1: "ones", 10: "tens", 100: "hundreds", 1_000: "thousands", 10_000: "ten thousands", 100_000: "hundred thousands", 1_000_000: "millions"}
	if name, ok := names[worth]; ok {
		return name
	}
	return Grouped(worth)
}
