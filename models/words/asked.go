package words

import (
	"strings"

	"modeler/arithmetic"
)

// Asked is the title of every picture of a problem while its answer is hidden:
// 402 − 178 = ?, 3/4 = 6/8?, 3/4 ? 5/8. A problem that has its blank, and one
// that says in words what to do, is asked as it stands.
func Asked(p arithmetic.Problem) string {
	if p.Story != arithmetic.NoStory {
		return strings.TrimSuffix(p.String(), "?") + "?"
	}
	switch p.Kind {
	case arithmetic.Division:
		o, ok := p.Left.(arithmetic.Operation)
		usual := arithmetic.LeftOver // what is done when it is not said: 3 ÷ 4 is 3/4
		if ok && arithmetic.IsPartOfOne(o) && !p.Grouping {
			usual = arithmetic.AsPart
		}
		if p.Rest != usual {
			return p.String()
		}
		return p.Left.String() + " = ?"
	case arithmetic.Parity, arithmetic.Primality, arithmetic.Closer:
		return p.String() + "?"
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.PartOf, arithmetic.Expression:
		return p.Left.String() + " = ?"
	case arithmetic.Claim:
		return p.String() + "?"
	case arithmetic.Comparison:
		return p.Left.String() + " ? " + p.Right.String()
	}
	return p.String()
}
