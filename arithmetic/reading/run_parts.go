package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// value is the number of a clause, whole or not.
func (c clause) value() fraction.Fraction {
	if c.part != nil {
		return *c.part
	}
	return fraction.Whole(c.n)
}

// parts reads a fraction or a mixed number: 1/4, fourths, one fourth, 1 1/2.
func (p *parser) parts() (clause, bool) {
	here := p.i
	t := p.numberOrWord()
	if den, ok := partNames[p.at(0).text]; ok && t.kind == number && t.num.Form == arithmetic.Whole && p.at(0).kind == word { // 3 fourths
		n, _ := t.num.Int64()
		t = fractionToken(t, n, den, p.at(0).end)
		p.i++
	}
	if p.isPlural(p.at(0)) {
		p.i++
	}
	if t.kind == number && t.num.Form == arithmetic.Common || t.num.Form == arithmetic.Mixed {
		return clause{token: t, given: true, part: &t.num.Value}, true
	}
	p.i = here
	return clause{}, false
}

// inParts makes the numbers of a run counts of parts of which so many make a whole,
// the fewest in which its step and its first number can be written. A step that is
// not given is one part.
func inParts(by, from, to *clause) (parts int64, ok bool) {
	parts, err := fraction.LCM(by.value().Den(), from.value().Den())
	if !by.given && err == nil {
		parts, err = fraction.LCM(parts, to.value().Den())
		one := fraction.Must(1, max(parts, 1))
		by.part = &one
	}
	if err != nil || parts > MaxParts {
		return 0, false
	}
	for _, c := range []*clause{by, from, to} {
		v := c.value()
		n, err := v.Mul(fraction.Whole(parts)) // the last number may lie between two parts
		if err != nil || n.Num()/n.Den() > MaxWhole {
			return 0, false
		}
		c.n, c.part = n.Num()/n.Den(), &v
	}
	return parts, true
}

// jumpsOf is how many jumps a run has when it is not said: to 2 wholes, or to 1 where
// the parts are many.
func jumpsOf(parts, by int64) int64 {
	for wholes := int64(2); wholes > 0 && parts > 1; wholes-- {
		if n := wholes * parts / by; n > 1 && n < MaxTerms {
			return n
		}
	}
	return defaultJumps
}

// stepOfParts reads a rule that adds or takes away a fraction: add 1/4.
func (p *parser) stepOfParts() (rule, bool) {
	here := p.i
	s, n := longest(p, ruleSteps)
	if p.at(0).kind == sign {
		s, n = signs[p.at(0).text], 1
	}
	p.i += n
	by, ok := p.parts()
	if n == 0 || !ok || s.op != arithmetic.Add && s.op != arithmetic.Subtract {
		p.i = here
		return rule{}, false
	}
	return rule{s.op, by}, true
}

// partsOfRow is in how many parts a whole is cut, the fewest in which every number of
// a row can be written.
func partsOfRow(row []token) (parts int64, ok bool) {
	parts = 1
	for _, t := range row {
		if t.kind == number && (t.num.Form == arithmetic.Common || t.num.Form == arithmetic.Mixed) {
			var err error
			if parts, err = fraction.LCM(parts, t.num.Value.Den()); err != nil || parts > MaxParts {
				return 0, false
			}
		}
	}
	return parts, true
}
