package arithmetic

import "modeler/fraction"

// Rest is what a division does with what is left over: 98 ÷ 4 is 24 remainder 2,
// 24 2/4, 24.5, or 25 where all must have a place (National curriculum in England,
// 2013, year 5).
type Rest uint8

const (
	LeftOver  Rest = iota // it stays outside the groups
	AsPart                // it is cut, and the quotient is a mixed number
	AsDecimal             // likewise, written as a decimal
	OneMore               // it needs a group of its own: the quotient is rounded up
)

// Story is a situation that a picture follows, and not only the calculation
// (CCSS glossary, tables 1 and 2).
type Story uint8

const (
	NoStory     Story = iota
	TimesAsMany       // Left times as many as Right; of a Division, how many times as many, or the smaller of the two
	HowManyMore       // of a Subtraction: how many more Left is than Right
	Change            // of a Subtraction of money: what comes back from Left when Right is paid
)

// Shape is what a fraction is a part of, where that is said.
type Shape string

const (
	Circle    Shape = "circle"
	Square    Shape = "square"
	Rectangle Shape = "rectangle"
	Triangle  Shape = "triangle" // of equal sides, like those below
	Pentagon  Shape = "pentagon"
	Hexagon   Shape = "hexagon"
	Octagon   Shape = "octagon"
)

// Run is a row of numbers that starts at From: to each number By is added, or
// taken away, or it is multiplied by By, until there are Terms of them. Where Parts
// is more than 1, From, By and the numbers count parts of which so many make a
// whole: From 0 and By 1 in 4 Parts are 0/4, 1/4, 2/4.
type Run struct {
	From, By int64
	Op       Op
	Terms    int
	Parts    int64
}

// Number is a number of the run that counts so many parts: of a run of fourths, 2
// is 2/4, 4 is 1 and 6 is 1 2/4.
func (r Run) Number(count int64) Number {
	if r.Parts > 1 {
		return AsMixed(fraction.Must(count, r.Parts))
	}
	return Int(count)
}

// Step is By as a number: 1/4 of a run of fourths, 5 of a run of fives. As a factor
// it is a whole number.
func (r Run) Step() Number {
	if r.Parts > 1 && r.Op != Multiply {
		return Frac(fraction.Must(r.By, r.Parts))
	}
	return Int(r.By)
}

// List is the numbers of the run, which may end early at a number that can't be
// worked: one below 0, or too large.
func (r Run) List() []int64 {
	var list []int64
	for n := r.From; len(list) < r.Terms && n >= 0; {
		list = append(list, n)
		next, err := Evaluate(Operation{r.Op, Int(n), Int(r.By)})
		if err != nil {
			break
		}
		n = next.Num()
	}
	return list
}
