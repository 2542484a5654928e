package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// numberOrWord reads a number, in digits or in words. It passes nothing when there
// is none.
func (p *parser) numberOrWord() token {
	if t := p.at(0); t.kind == number {
		p.i++
		return t
	}
	t, _ := p.numberWord()
	return t
}

// numberWord reads a number written in words, to 9,999,999: twelve, forty-two,
// four hundred two, half, three fourths. It passes nothing when there is none.
func (p *parser) numberWord() (token, bool) {
	here := p.i
	p.articles()
	t := p.at(0)
	if den, ok := partNames[t.text]; ok && t.kind == word { // half of 12
		p.i++
		return fractionToken(t, 1, den, t.end), true
	}
	if p.match("dozen") > 0 { // a dozen
		p.i++
		return token{kind: number, start: t.start, end: t.end, text: t.text, num: arithmetic.Int(dozen)}, true
	}
	n, ok := p.belowThousand()
	if p.match("million") > 0 && n < 10 {
		p.i++
		n, ok = max(n, 1)*1_000_000+p.after(p.belowMillion), true
	} else if p.match("thousand") > 0 {
		p.i++
		n, ok = max(n, 1)*1000+p.after(p.belowThousand), true
	}
	if !ok {
		p.i = here
		return token{}, false
	}
	if p.match("dozen") > 0 && n <= MaxWhole/dozen {
		p.i++
		n *= dozen
	}
	t.kind, t.end, t.num = number, p.at(-1).end, arithmetic.Int(n)
	return t, true
}

// dozen is twelve.
const dozen = 12

// articles passes the small words in front of a number.
func (p *parser) articles() {
	for p.at(0).kind == word && in(passedOver, p.at(0).text) {
		p.i++
	}
}

// belowThousand reads hundreds, tens and ones in words.
func (p *parser) belowThousand() (n int64, ok bool) {
	n, ok = p.belowHundred()
	if p.match("hundred") > 0 && n < 10 {
		p.i++
		return max(n, 1)*100 + p.after(p.belowHundred), true
	}
	return n, ok
}

// belowMillion reads thousands, hundreds, tens and ones in words.
func (p *parser) belowMillion() (n int64, ok bool) {
	n, ok = p.belowThousand()
	if p.match("thousand") > 0 {
		p.i++
		return max(n, 1)*1000 + p.after(p.belowThousand), true
	}
	return n, ok
}

// after reads the rest of a number behind hundred or thousand; British schools
// say "and" before it. In a list, and in front of a fraction, "and" is no part of
// a whole number.
func (p *parser) after(read func() (int64, bool)) int64 {
	here := p.i
	if p.at(0).kind == word && p.at(0).text == "and" && !p.listing {
		p.i++
	}
	rest, ok := read()
	if _, part := partNames[p.at(0).text]; !ok || p.i > here+1 && part && p.at(0).kind == word {
		p.i = here
		return 0
	}
	return rest
}

// belowHundred reads tens and ones in words.
func (p *parser) belowHundred() (n int64, ok bool) {
	t := p.at(0)
	if n, ok = small[t.text]; !ok || t.kind != word {
		return 0, false
	}
	p.i++
	if ones := p.at(0); n >= 20 && ones.kind == word && small[ones.text] > 0 && small[ones.text] < 10 {
		p.i++
		n += small[ones.text]
	}
	return n, true
}

// fractionToken is n parts of which den make a whole, from t up to end.
func fractionToken(t token, n, den int64, end int) token {
	t.kind, t.end = number, end
	t.num = arithmetic.Frac(fraction.Must(n, den))
	return t
}
