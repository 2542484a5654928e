package arithmetic

import "errors"

// PlaceNames is how many places have a name here: ones to millions.
const PlaceNames = 7

// MaxPlaced is the largest number that can be taken apart in places.
const MaxPlaced = 9_999_999

// ErrPlaces says that a number has no places to take apart: it is not whole, is
// less than 0 or is more than [MaxPlaced].
var ErrPlaces = errors.New("arithmetic: not a whole number from 0 to 9,999,999")

// Counts is how many pieces lie in each place. The index is the power of ten:
// 0 for ones, 1 for tens. A count of 10 or more waits to be traded.
type Counts [PlaceNames]int64

// Places are the digits of n: 402 is 4 hundreds, 0 tens, 2 ones (CCSS
// 2.NBT.A.1). n is from 0 to [MaxPlaced].
func Places(n int64) (Counts, error) {
	if n < 0 || n > MaxPlaced {
		return Counts{}, ErrPlaces
	}
	var c Counts
	for power := range c {
		c[power], n = n%10, n/10
	}
	return c, nil
}

// Total is what all the pieces are worth together.
func (c Counts) Total() int64 {
	sum := int64(0)
	for power, count := range c {
		sum += count * Power10(power)
	}
	return sum
}

// Pieces is how many pieces there are, whatever they are worth.
func (c Counts) Pieces() int64 {
	sum := int64(0)
	for _, count := range c {
		sum += count
	}
	return sum
}

// Top is the highest place with a piece in it; 0 when there is none.
func (c Counts) Top() int {
	for power := PlaceNames - 1; power > 0; power-- {
		if c[power] > 0 {
			return power
		}
	}
	return 0
}

// Most is, place by place, the larger of c and d.
func (c Counts) Most(d Counts) Counts {
	for power := range c {
		c[power] = max(c[power], d[power])
	}
	return c
}

// Plus is, place by place, the sum of c and d, with nothing traded.
func (c Counts) Plus(d Counts) Counts {
	for power := range c {
		c[power] += d[power]
	}
	return c
}

// Expanded is n as the sum of what its digits are worth, the largest first and
// without the zeros: 402 is 400 + 2 (CCSS 2.NBT.A.3). 0 is 0.
func Expanded(n int64) ([]int64, error) {
	digits, err := Places(n)
	if err != nil {
		return nil, err
	}
	var parts []int64
	for power := digits.Top(); power >= 0; power-- {
		if digits[power] > 0 || n == 0 {
			parts = append(parts, digits[power]*Power10(power))
		}
	}
	return parts, nil
}

// placed is a number taken apart in places.
func placed(n Number) (int64, Counts, error) {
	v, whole := n.Int64()
	if !whole {
		return 0, Counts{}, ErrPlaces
	}
	c, err := Places(v)
	return v, c, err
}

// placedPair are the two numbers of a problem, both taken apart.
func placedPair(p Problem) (a, b int64, first, second Counts, err error) {
	x, y, two := p.Operands()
	if !two {
		return 0, 0, first, second, ErrPlaces
	}
	if a, first, err = placed(x); err != nil {
		return
	}
	b, second, err = placed(y)
	return
}
