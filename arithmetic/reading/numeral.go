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

// numeral makes a piece of a number, the names of its parts that may follow it
// included: 3 fourths, 2 and 3/4.
func (p *parser) numeral(t token) (piece, *fault) {
	if p.isPlural(p.at(0)) {
		p.i++
	}
	if den, ok := partNames[p.at(0).text]; ok && p.at(0).kind == word && t.num.Form == arithmetic.Whole {
		n, _ := t.num.Int64()
		t = fractionToken(t, n, den, p.at(0).end)
		p.i++
	}
	if amount, n := p.amountOfMoney(t); n > 0 { // 2 dollars and 45 cents
		if t.num.Form != arithmetic.Whole {
			return piece{}, partOfDollar(p, t)
		}
		t, t.end = amount, p.at(n-1).end
		p.i += n
		return p.counted(t)
	}
	if n := p.longestOf(percents); n > 0 { // 62 percent
		if h, ok := hundredths(t); ok {
			t, t.end = h, p.at(n-1).end
			p.i += n
		}
	}
	if t.num.Form == arithmetic.Whole && (p.at(0).text == "whole" || p.at(0).text == "wholes") && p.at(0).kind == word { // 1 whole − 3/8
		p.i++
	}
	if v, whole := t.num.Int64(); whole && t.num.Form == arithmetic.Whole && t.kind == number && p.match("dozen") > 0 && v <= MaxWhole/dozen {
		t.num, t.end = arithmetic.Int(v*dozen), p.at(0).end // 2 dozen
		p.i++
	}
	if !p.listing && p.match("and") == 1 && t.num.Form == arithmetic.Whole {
		here := p.i
		p.i++
		next := p.numberOrWord()
		if den, ok := partNames[p.at(0).text]; ok && next.kind == number && next.num.Form == arithmetic.Whole {
			n, _ := next.num.Int64()
			next = fractionToken(next, n, den, p.at(0).end)
			p.i++
		}
		if isProper(next) {
			t = mixed(t, next)
		} else {
			p.i = here
		}
	}
	if worth, n := p.unitName(t); n > 0 && t.num.Form == arithmetic.Whole && t.kind == number {
		return p.inUnits(t, worth, n)
	}
	return p.counted(t)
}

func (p *parser) counted(t token) (piece, *fault) {
	if p.count++; p.count > MaxNumbers {
		return piece{}, tooMany(p, t)
	}
	return piece{expr: t.num, spans: []Span{{Start: t.start, End: t.end}}, start: t.start, end: t.end}, nil
}
