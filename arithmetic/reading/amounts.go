package reading

import "modeler/arithmetic"

// dollars reads an amount of money behind a dollar sign.
func (s *scanner) dollars() (token, *fault) {
	mark := s.cut(sign, 1)
	for s.peek(0) == ' ' {
		s.i++
	}
	if !isDigit(s.peek(0)) && !(s.peek(0) == '.' && isDigit(s.peek(1))) {
		return mark, noAmount(s.text, mark)
	}
	t, f := s.number()
	if f != nil {
		return t, f
	}
	t.start = mark.start
	n := t.num
	switch {
	case n.Places == 1: // $1.5 is $1.50
		n = arithmetic.InPlaces(n.Value.Num()*10, 2)
	case n.Places > 2:
		return t, tooManyCents(s.text, t)
	}
	n.Form = arithmetic.Money
	t.num = n
	return t, nil
}

// cents makes the whole number in front of a cent sign an amount of money.
func (s *scanner) cents() *fault {
	mark := s.cut(sign, 1)
	if last := len(s.out) - 1; last >= 0 {
		t := &s.out[last]
		if v, _ := t.num.Int64(); t.kind == number && t.num.Form == arithmetic.Whole {
			t.num = arithmetic.InPlaces(v, 2)
			t.num.Form = arithmetic.Money
			t.end = mark.end
			return nil
		}
	}
	return noAmount(s.text, mark)
}

// percent makes the number in front of a percent sign hundredths.
func (s *scanner) percent() *fault {
	mark := s.cut(sign, 1)
	if last := len(s.out) - 1; last >= 0 {
		if s.out[last].kind == blank { // ?%
			s.out[last].num.Form, s.out[last].end = arithmetic.Percent, mark.end
			return nil
		}
		if n, ok := hundredths(s.out[last]); ok {
			n.end = mark.end
			s.out[last] = n
			return nil
		}
	}
	return noPercent(s.text, mark)
}

// hundredths is a whole or decimal number t as that many percent.
func hundredths(t token) (token, bool) {
	if t.kind != number || t.num.Form != arithmetic.Whole && t.num.Form != arithmetic.Decimal {
		return t, false
	}
	t.num = arithmetic.InPercent(t.num.Value.Num(), t.num.Places)
	return t, true
}
