package reading

import (
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
)

// number reads a whole or decimal number. Commas, or thin spaces, stand between
// groups of three digits.
func (s *scanner) number() (token, *fault) {
	n := s.run(isDigit)
	grouped := false
	for n > 0 && s.group(n) && (grouped || n <= 3) {
		n += 4
		grouped = true
	}
	if s.peek(n) == '.' && isDigit(s.peek(n+1)) {
		for n++; isDigit(s.peek(n)); n++ {
		}
	}
	if s.peek(n) == '.' && isDigit(s.peek(n+1)) {
		rest := n
		for isDigit(s.peek(rest)) || s.peek(rest) == '.' && isDigit(s.peek(rest+1)) {
			rest++
		}
		t := s.cut(number, rest)
		return t, twoPoints(s.text, t)
	}
	t := s.cut(number, n)
	t.commas = grouped
	plain := strings.NewReplacer(",", "", string(thin), "").Replace(t.text)
	whole, places, _ := strings.Cut(plain, ".")
	if whole = strings.TrimLeft(whole, "0"); len(whole) > len("9999999") {
		return t, tooLarge(s.text, t)
	}
	if len(places) > MaxPlaces {
		return t, tooManyPlaces(s.text, t)
	}
	var err error
	if t.num, err = arithmetic.ParseDecimal(plain); err != nil {
		return t, tooLarge(s.text, t)
	}
	return t, nil
}

// group reports whether a group of exactly three digits, with its comma, stands
// n characters on.
func (s *scanner) group(n int) bool {
	c := s.peek(n)
	return (c == ',' || c == thin) && isDigit(s.peek(n+1)) && isDigit(s.peek(n+2)) && isDigit(s.peek(n+3)) && !isDigit(s.peek(n+4))
}

// joinFractions joins a number, a bar and a number to a fraction, and a whole
// number and a fraction that is less than one to a mixed number.
//
// A bar with a space beside it can be meant as a division sign, 56 / 8. It is
// taken as one where a bar without spaces stands elsewhere in the text, in a
// chain of bars, and where it is the only bar and the first number is not the
// smaller.
func joinFractions(text []rune, in []token) ([]token, *fault) {
	dividing := barsDivide(in)
	var out []token
	for i := 0; i < len(in); i++ {
		t := in[i]
		if isClock(in[i:]) {
			return nil, clock(text, in[i], in[i+2])
		}
		if !barred(in, i) || dividing && !tight(in, i) {
			out = append(out, t)
			continue
		}
		if i+3 < len(in) && barred(in, i+2) && tight(in, i+2) {
			return nil, twoBars(text, in[i], in[i+4])
		}
		joined, f := join(text, t, in[i+2])
		if f != nil {
			return nil, f
		}
		i += 2
		out = append(out, joined)
	}
	return mix(out), nil
}

// barred reports whether a bar with a number or blank on both sides starts at i.
func barred(in []token, i int) bool {
	operand := func(t token) bool { return t.kind == number || t.kind == blank }
	return i+2 < len(in) && operand(in[i]) && in[i+1].kind == slash && operand(in[i+2]) &&
		!(in[i].kind == blank && in[i+2].kind == blank)
}

// isClock reports whether a time of day comes first: 3:15.
func isClock(in []token) bool {
	if len(in) < 3 || in[1].text != ":" || in[1].spaced || in[2].spaced || in[0].kind != number || in[2].kind != number {
		return false
	}
	hours, _ := in[0].num.Int64()
	minutes, _ := in[2].num.Int64()
	return len(in[0].text) <= 2 && hours <= 24 && len(in[2].text) == 2 && minutes < 60
}

func tight(in []token, i int) bool { return !in[i+1].spaced && !in[i+2].spaced }

func onlyBar(in []token) bool {
	bars := 0
	for _, t := range in {
		if t.kind == slash {
			bars++
		}
	}
	return bars == 1
}

func barsDivide(in []token) bool {
	for i := range in {
		if !barred(in, i) {
			continue
		}
		if tight(in, i) || barred(in, i+2) {
			return true
		}
		if onlyBar(in) {
			a, b := in[i], in[i+2]
			return a.kind == blank || b.kind == blank || a.num.Value.Cmp(b.num.Value) >= 0
		}
	}
	return false
}

func join(text []rune, top, bottom token) (token, *fault) {
	t := token{kind: number, text: top.text + "/" + bottom.text, start: top.start, end: bottom.end, spaced: top.spaced}
	for _, side := range []token{top, bottom} {
		if side.kind == number && side.num.Form != arithmetic.Whole {
			return t, unevenFraction(text, top, bottom)
		}
	}
	n, _ := top.num.Int64()
	d, _ := bottom.num.Int64()
	if bottom.kind == number {
		if d == 0 {
			return t, zeroParts(text, t, n)
		}
		if d > MaxParts {
			return t, tooManyParts(text, bottom)
		}
	}
	if top.kind == blank || bottom.kind == blank {
		if top.kind == number && n == 0 {
			return t, zeroOverBlank(text, t)
		}
		t.kind = blankPart
		t.part = arithmetic.Blank{Num: n, Den: d}
		return t, nil
	}
	t.num = arithmetic.Frac(fraction.Must(n, d))
	return t, nil
}

// mix joins a whole number and the fraction less than one behind it.
func mix(in []token) []token {
	var out []token
	for _, t := range in {
		last := len(out) - 1
		if last >= 0 && t.spaced && isProper(t) && out[last].kind == number && out[last].num.Form == arithmetic.Whole {
			out[last] = mixed(out[last], t)
			continue
		}
		out = append(out, t)
	}
	return out
}

// isProper reports whether t is a fraction more than 0 and less than 1.
func isProper(t token) bool {
	v := t.num.Value
	return t.kind == number && t.num.Form == arithmetic.Common && v.Sign() > 0 && v.Num() < v.Den()
}

func mixed(whole, part token) token {
	wholes, _ := whole.num.Int64()
	t := token{kind: number, text: whole.text + " " + part.text, start: whole.start, end: part.end, spaced: whole.spaced, num: part.num}
	if wholes == 0 {
		return t
	}
	v, err := fraction.FromMixed(wholes, part.num.Value)
	if err != nil {
		panic("reading: the bounds on numbers keep a mixed number small")
	}
	t.num = arithmetic.Number{Value: v, Form: arithmetic.Mixed}
	return t
}
