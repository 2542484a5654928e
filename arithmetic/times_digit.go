package arithmetic

import "errors"

// RepeatRows lays a number out in equal rows, as many as it is to be taken.
type RepeatRows struct {
	Times, Number int64
	Row           Counts // one row
	All           Counts // all rows together
}

// CountPlaceRows counts the pieces of one place: so many rows of a digit, and what the
// trade before has brought.
type CountPlaceRows struct {
	Power          int
	Times, Digit   int64
	Rows           int64 // Times rows of Digit
	Carried, Total int64
	On             Counts
}

// TradeTensUp gives every ten pieces of a place for 1 piece of the next larger place.
type TradeTensUp struct {
	From       int
	Tens, Gone int64 // how many tens, and how many pieces they are
	Left       int64
	After      Counts
}

func (RepeatRows) move()     {}
func (CountPlaceRows) move() {}
func (TradeTensUp) move()    {}

// ErrNoDigit says that no factor has one digit from 2 to 9 beside one of two to
// four digits.
var ErrNoDigit = errors.New("arithmetic: not a number of one digit times one of two to four digits")

// TimesDigit is which factor is taken several times, 0 for the first: the one of
// two to four digits. The other has one digit, from 2 to 9.
func TimesDigit(p Problem) (nth int, number, times int64, ok bool) {
	a, b, two := p.Operands()
	x, wholeX := a.Int64()
	y, wholeY := b.Int64()
	if !two || p.Kind != Product || !wholeX || !wholeY || a.Form != Whole || b.Form != Whole {
		return 0, 0, 0, false
	}
	one := func(n int64) bool { return n >= 2 && n <= 9 }
	more := func(n int64) bool { return n >= 10 && n <= 9_999 }
	switch {
	case one(x) && more(y):
		return 1, y, x, true
	case one(y) && more(x):
		return 0, x, y, true
	}
	return 0, 0, 0, false
}

// MultiplyByDigit multiplies by one digit by the written procedure: from the ones
// up, count the rows of a place and trade every ten (CCSS 4.NBT.B.5; the written
// form is common practice, no source). Its error is [ErrNoDigit].
func MultiplyByDigit(p Problem) (Working, error) {
	nth, number, times, ok := TimesDigit(p)
	if !ok {
		return Working{}, ErrNoDigit
	}
	row, err := Places(number)
	if err != nil {
		return Working{}, err
	}
	product, err := Places(number * times)
	if err != nil {
		return Working{}, err
	}
	on := row
	for power := range on {
		on[power] *= times
	}
	answer := Int(number * times)
	w := Working{Problem: p, Answer: Answer{Number: answer, Simplest: answer}}
	w.Moves = append(w.Moves, LayOut{nth, number, row}, RepeatRows{times, number, row, on})
	carried := int64(0)
	for power := 0; power <= row.Top(); power++ {
		count := CountPlaceRows{power, times, row[power], row[power] * times, carried, on[power], on}
		w.Moves = append(w.Moves, count)
		if carried = count.Total / 10; carried > 0 {
			on[power] -= 10 * carried
			on[power+1] += carried
			w.Moves = append(w.Moves, TradeTensUp{power, carried, 10 * carried, on[power], on})
		}
	}
	w.Moves = append(w.Moves, ReadOff{number * times, product})
	return w, nil
}
