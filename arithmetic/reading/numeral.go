package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// numberWord reads a number written in words: twelve, forty two, three hundred,
// half, three fourths. It passes nothing when there is none.
func (p *parser) numberWord() (token, bool) {
	here := p.i
	for p.at(0).kind == word && in(passedOver, p.at(0).text) {
		p.i++
	}
	t := p.at(0)
	if t.kind != word {
		p.i = here
		return token{}, false
	}
	if den, ok := partNames[t.text]; ok { // half of 12
		p.i++
		return fractionToken(t, 1, den, t.end), true
	}
	n, ok := small[t.text]
	if !ok || n > 90 {
		p.i = here
		return token{}, false
	}
	p.i++
	t.kind = number
	switch next := p.at(0); {
	case next.kind != word:
	case n >= 20 && n%10 == 0 && small[next.text] > 0 && small[next.text] < 10:
		n, t.end = n+small[next.text], next.end
		p.i++
	case n > 0 && n < 10 && small[next.text] >= 100:
		n, t.end = n*small[next.text], next.end
		p.i++
	}
	t.num = arithmetic.Int(n)
	return t, true
}

// fractionToken is n parts of which den make a whole, from t up to end.
func fractionToken(t token, n, den int64, end int) token {
	t.kind, t.end = number, end
	t.num = arithmetic.Frac(fraction.Must(n, den))
	return t
}
