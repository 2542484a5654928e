package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// ErrUneven says that an amount cannot be written in whole parts of that size.
var ErrUneven = errors.New("arithmetic: the parts do not come out whole")

// ErrSame says that a number is in the form asked for already.
var ErrSame = errors.New("arithmetic: the number is in that form already")

// ShowByCutting works the [Show] of a fraction or mixed number: strips are cut
// in equal parts and some are shaded. (CCSS 3.NF.A.1)
func ShowByCutting(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, errNotTwo
	}
	s := StripsOf(n)
	cut := (s.Part.Num() + s.Part.Den() - 1) / s.Part.Den()
	if cut == 0 && s.Wholes == 0 {
		cut = 1 // no parts of one whole: 0/4
	}
	moves := []Move{CutWholes{s.Wholes, cut, s.Part.Den()}, LayStrips{0, n, s}}
	return Working{p, Answer{Number: n, Simplest: AsMixed(n.Value.Simplest())}, moves}, nil
}

// NameByCutting works the kinds that give one amount another name: [MixedForm],
// [FractionForm], [SimplestForm] and [Renaming]. The length never changes; parts
// are joined or cut. [ErrSame] and [ErrUneven] say that there is nothing to do,
// or nothing that comes out whole.
func NameByCutting(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, errNotTwo
	}
	laid := StripsOf(n)
	moves := []Move{LayStrips{0, n, laid}}
	switch p.Kind {
	case MixedForm:
		return mixedForm(p, moves, laid)
	case FractionForm:
		return fractionForm(p, moves, laid)
	case SimplestForm:
		return simplestForm(p, moves, laid)
	}
	return renaming(p, moves, laid)
}

func mixedForm(p Problem, moves []Move, laid Strips) (Working, error) {
	if laid.Wholes > 0 || laid.Part.Num() < laid.Part.Den() {
		return Working{}, ErrSame
	}
	more, last := finish(laid)
	return Working{p, Answer{Number: AsMixed(laid.Part), Simplest: last.Number()}, append(moves, more...)}, nil
}

func fractionForm(p Problem, moves []Move, laid Strips) (Working, error) {
	if laid.Wholes == 0 {
		return Working{}, ErrSame
	}
	to, err := laid.open(laid.Wholes)
	if err != nil {
		return Working{}, err
	}
	moves = append(moves, OpenWholes{From: laid, To: to, Wholes: laid.Wholes}, CountParts{to})
	return Working{p, Answer{Number: Frac(to.Part), Simplest: Frac(to.Part)}, moves}, nil
}

func simplestForm(p Problem, moves []Move, laid Strips) (Working, error) {
	if laid.Part.Den() == 1 {
		return Working{}, ErrSame
	}
	to := Strips{laid.Wholes, laid.Part.Simplest()}
	moves = append(moves, MergeParts{laid, to, laid.Part.Den() / to.Part.Den()})
	more, last := finish(to)
	return Working{p, Answer{Number: to.Number(), Simplest: last.Number()}, append(moves, more...)}, nil
}

func renaming(p Problem, moves []Move, laid Strips) (Working, error) {
	value, err := laid.Value()
	if err != nil {
		return Working{}, err
	}
	to, err := filled(value, p.Blank)
	if err != nil {
		return Working{}, err
	}
	if laid.Wholes > 0 && to.Den()%value.Den() == 0 {
		opened := Strips{0, value}
		moves = append(moves, OpenWholes{From: laid, To: opened, Wholes: laid.Wholes})
	}
	// Where the old parts cannot be cut evenly in the new ones, larger parts that
	// fit both come between: 2/4 is 1/2 is 3/6.
	if to.Den()%value.Den() != 0 {
		joined, err := value.In(fraction.GCD(value.Den(), to.Den()))
		if err != nil {
			return Working{}, ErrUneven
		}
		moves = append(moves, MergeParts{Strips{0, value}, Strips{0, joined}, value.Den() / joined.Den()})
		value = joined
	}
	if into := to.Den() / value.Den(); into > 1 {
		moves = append(moves, CutParts{0, Strips{0, value}, Strips{0, to}, into})
	}
	if len(moves) == 1 {
		return Working{}, ErrSame
	}
	moves = append(moves, CountParts{Strips{0, to}})
	return Working{p, Answer{Number: Frac(to), Simplest: Frac(to)}, moves}, nil
}

// filled is the fraction of a blank that is worth value.
func filled(value fraction.Fraction, b Blank) (fraction.Fraction, error) {
	if b.Num == 0 && b.Den > 0 {
		to, err := value.In(b.Den)
		if errors.Is(err, fraction.ErrUneven) {
			return to, ErrUneven
		}
		return to, err
	}
	s := value.Simplest()
	if s.Num() == 0 || b.Num%s.Num() != 0 {
		return s, ErrUneven
	}
	to, err := s.CutFiner(b.Num / s.Num())
	if err != nil {
		return s, ErrOverflow
	}
	return to, nil
}
