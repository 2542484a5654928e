package reading

import "modeler/arithmetic"

// ruledLast reads a rule with its list in front of its number: multiply 1, 2, 3 by
// 4, subtract 2 from 5, 6 and 7.
func (p *parser) ruledLast() (Reading, *fault, bool) {
	here, count := p.i, p.count
	back := func() (Reading, *fault, bool) {
		p.i, p.count, p.listing = here, count, false
		return Reading{}, nil, false
	}
	s, n := longest(p, map[string]infix{"multiply": times, "divide": divide, "double": times, "triple": times})
	if n == 0 {
		return back()
	}
	name := p.at(0)
	p.i += n
	p.any([]string{"each of", "all of", "each"})
	if p.at(0).kind != number {
		return back()
	}
	all, f := p.numbers()
	if f != nil || len(all) < 2 {
		return back()
	}
	r := rule{op: s.op}
	if factor := multiples[name.text]; factor > 0 {
		r.by = clause{token: name, n: factor, given: true}
	} else if ok, f := p.clause([]string{"by"}, &r.by); !ok || f != nil {
		return back()
	}
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	reading, f := p.table(arithmetic.Problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{By: r.by.n, Op: r.op}}, all, r)
	return reading, f, true
}

// numbers reads numbers with commas or "and" between them, and no signs: 1, 2, 3 by
// 4 is no product.
func (p *parser) numbers() (all []piece, f *fault) {
	p.listing = true
	for {
		c, f := p.operand()
		if f != nil {
			return nil, f
		}
		all = append(all, c)
		here := p.i
		for p.at(0).kind == separator || p.match("and") == 1 {
			p.i++
		}
		if p.i == here {
			return all, nil
		}
	}
}

// table checks the numbers of a rule table.
func (p *parser) table(problem arithmetic.Problem, all []piece, r rule) (Reading, *fault) {
	if len(all) > MaxList {
		return Reading{}, longTable(p, all)
	}
	spans := []Span{{Start: r.by.start, End: r.by.end}}
	for _, c := range all {
		n, ok := c.expr.(arithmetic.Number)
		if !ok {
			return Reading{}, oneNumber(p, c)
		}
		if n.Form != arithmetic.Whole {
			return Reading{}, notWhole(p, problem.Kind, c)
		}
		problem.List = append(problem.List, n)
		spans = append(spans, c.spans...)
	}
	for i, n := range problem.List {
		if r.op == arithmetic.Divide && r.by.n == 0 {
			return Reading{}, dividesByNothing(p, r.by.token)
		}
		if v, _ := n.Int64(); r.op == arithmetic.Divide && v%r.by.n != 0 {
			return Reading{}, leavesSome(p, all[i], v, r.by.n)
		}
	}
	return Reading{Problem: problem, Spans: spans}, nil
}
