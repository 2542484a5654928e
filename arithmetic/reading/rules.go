package reading

import "modeler/arithmetic"

// The words of a rule that is followed again and again, or by every number of a
// list.
var (
	ruleSteps = map[string]infix{
		"add": plus, "plus": plus, "subtract": minus, "minus": minus, "take away": minus, "take": minus,
		"times": times, "multiply by": times, "multiplied by": times, "multiply": times, "x": times, "divide by": divide, "divided by": divide,
	}
	ruleTimes    = map[string]int64{"double": 2, "double it": 2, "triple": 3, "triple it": 3}
	ruleOpeners  = []string{"rule", "table", "table for", "table with rule", "table for rule", "function table", "rule table", "rule is"}
	ruleEndings  = []string{"each time", "every time", "again and again", "to each", "to every number"}
	ruleListings = []string{"for", "to", "on", "with", "of", "for numbers", "for inputs", "to numbers"}
	startWords   = []string{"start at", "start with", "start from", "start", "starting at", "starting with", "starting from", "starting number",
		"begin at", "begin with", "beginning at", "starting number is", "first number", "first number is", "first term", "first term is"}
)

// rule is what is done to a number.
type rule struct {
	op arithmetic.Op
	by clause
}

// step reads a rule: add 3, × 2, double; ok is false when there is none here.
func (p *parser) step() (rule, *fault, bool) {
	here, t := p.i, p.at(0)
	if n, m := longest(p, ruleTimes); m > 0 {
		p.i += m
		return rule{arithmetic.Multiply, clause{token: t, n: n, given: true}}, nil, true
	}
	s, n := longest(p, ruleSteps)
	if t.kind == sign || t.kind == slash {
		s, n = signs[t.text], 1
	}
	if n == 0 {
		return rule{}, nil, false
	}
	p.i += n
	by, v, ok := p.amount()
	if !ok {
		p.i = here
		return rule{}, nil, false
	}
	if v == 0 && s.op == arithmetic.Divide {
		return rule{}, dividesByNothing(p, by), true
	}
	return rule{s.op, clause{token: by, n: v, given: true}}, nil, true
}

// starting reads a pattern by its first number and its rule, in either order:
// start at 1, add 3.
func (p *parser) starting() (Reading, *fault, bool) {
	here := p.i
	var from, terms clause
	var how rule
	started := false
	p.any([]string{"rule", "rule is", "pattern"})
	for {
		at := p.i
		p.pause()
		if ok, f := p.clause(startWords, &from); f != nil && started {
			return Reading{}, f, true
		} else if ok {
			started = true
		}
		p.pause()
		p.any([]string{"rule", "rule is"})
		p.pause()
		if !how.by.given {
			var f *fault
			r, ok := p.stepOfParts()
			if !ok {
				r, f, ok = p.step()
			}
			if f != nil {
				return Reading{}, f, true
			}
			if ok {
				how = r
				p.any(ruleEndings)
			}
		}
		p.pause()
		p.length(&terms)
		if p.i == at {
			break
		}
	}
	if !from.given {
		p.i = here
		return Reading{}, nil, false
	}
	if !how.by.given {
		return Reading{}, noRule(p, from), true
	}
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	switch {
	case from.part != nil || how.by.part != nil:
		if how.op != arithmetic.Add && how.op != arithmetic.Subtract {
			return Reading{}, addsFractions(p, how.by.token), true
		}
		if !terms.given && how.op == arithmetic.Add {
			terms = clause{token: from.token, n: defaultTerms, given: true}
		}
		r, f := p.runOf(how.by, from, clause{}, terms, how.op == arithmetic.Subtract)
		return r, f, true
	case how.by.n == 0, how.op == arithmetic.Multiply && (how.by.n == 1 || from.n == 0):
		return Reading{}, byNothing(p, how.by.token), true
	case how.op == arithmetic.Divide:
		return Reading{}, noDividing(p, how.by), true
	}
	run := arithmetic.Run{From: from.n, By: how.by.n, Op: how.op}
	if !terms.given {
		terms.n, terms.token = defaultTerms, from.token
		if how.op == arithmetic.Subtract { // not below 0
			terms.n = min(terms.n, from.n/how.by.n+1)
		}
	}
	r, f := p.running(run, terms, []clause{from, how.by})
	return r, f, true
}

// ruled reads a rule for a list of numbers: rule × 3 for 1; 2; 3, add 4 to 1, 2, 3.
func (p *parser) ruled() (Reading, *fault, bool) {
	here := p.i
	opened := p.any(ruleOpeners)
	p.pause()
	at := p.at(0)
	r, f, ok := p.step()
	if f != nil {
		return Reading{}, f, true
	}
	if !ok && !opened { // multiply 1, 2, 3 by 4
		return p.ruledLast()
	}
	if !ok {
		return Reading{}, whichRule(p, at), true
	}
	p.any(ruleEndings)
	colon := p.at(0).text == ":"
	p.pause()
	listed := colon || p.any(ruleListings) || r.op == arithmetic.Subtract && p.any([]string{"from"})
	p.pause()
	count := p.count
	if opened && p.at(0).kind == end && !listed {
		problem := arithmetic.Problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{By: r.by.n, Op: r.op}}
		for n := range int64(defaultInputs) { // multiples of what is divided by or taken away
			switch r.op {
			case arithmetic.Divide:
				n = (n + 1) * r.by.n
			case arithmetic.Subtract:
				n += max(r.by.n, 1)
			default:
				n++
			}
			problem.List = append(problem.List, arithmetic.Int(n))
		}
		reading, f := p.table(problem, nil, r)
		return reading, f, true
	}
	if p.at(0).kind != number && !opened {
		p.i = here
		return p.ruledLast()
	}
	all, f := p.list()
	if f == nil {
		f = p.finish()
	}
	if !opened && (f != nil || len(all) < 2 || !listed) {
		p.i, p.count, p.listing = here, count, false
		return p.ruledLast()
	}
	if f != nil {
		return Reading{}, f, true
	}
	reading, f := p.table(arithmetic.Problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{By: r.by.n, Op: r.op}}, all, r)
	return reading, f, true
}

// defaultInputs is how many numbers a table has when none are given.
const defaultInputs = 5
