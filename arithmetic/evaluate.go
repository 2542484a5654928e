package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// Evaluate is the exact value of an expression without an unknown. The result is
// not simplified, so that 1/4 + 1/4 is 2/4.
func Evaluate(e Expr) (fraction.Fraction, error) {
	switch e := e.(type) {
	case Number:
		return e.Value, nil
	case Operation:
		left, err := Evaluate(e.Left)
		if err != nil {
			return fraction.Fraction{}, err
		}
		right, err := Evaluate(e.Right)
		if err != nil {
			return fraction.Fraction{}, err
		}
		v, err := apply(e.Op, left, right)
		switch {
		case errors.Is(err, fraction.ErrOverflow):
			return v, ErrOverflow
		case errors.Is(err, fraction.ErrDivideByZero):
			return v, ErrDivideByZero
		}
		return v, err
	}
	return fraction.Fraction{}, errors.New("arithmetic: an unknown has no value of its own")
}

func apply(op Op, left, right fraction.Fraction) (fraction.Fraction, error) {
	switch op {
	case Add:
		return left.Add(right)
	case Subtract:
		return left.Sub(right)
	case Divide:
		return left.Div(right)
	}
	return left.Mul(right)
}

// Check reports why a problem that can be read has no answer a child could be
// shown: [ErrDivideByZero], [ErrNegative], [ErrOverflow] or [ErrEndless] anywhere
// in it.
func Check(p Problem) error {
	for _, side := range []Expr{p.Left, p.Right} {
		if err := check(side); err != nil {
			return err
		}
	}
	return checkAsked(p)
}

func check(e Expr) error {
	o, ok := e.(Operation)
	if !ok {
		return nil
	}
	for _, side := range []Expr{o.Left, o.Right} {
		if err := check(side); err != nil {
			return err
		}
	}
	if n, is := o.Right.(Number); is && o.Op == Divide && n.Value.Sign() == 0 {
		return ErrDivideByZero
	}
	if hasUnknown(o) {
		return nil
	}
	v, err := Evaluate(o)
	if err == nil && v.Sign() < 0 {
		err = ErrNegative
	}
	return err
}

func hasUnknown(e Expr) bool {
	switch e := e.(type) {
	case Unknown:
		return true
	case Operation:
		return hasUnknown(e.Left) || hasUnknown(e.Right)
	}
	return false
}
