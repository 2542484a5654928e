package telling

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// LongDivision is a written division by a number of one digit as it grows: digit
// by digit of the quotient, what that takes away, and what is left with the next
// digit brought down beside it.
//
//	    1 0 2
//	   ------
//	6 ) 6 1 2      the dividend under the bar, the quotient over it
//	  − 6
//	    -
//	    0 1 2      what is left, and the digits brought down
//	    − 1 2
//	    -----
//	        0
type LongDivision struct {
	Divisor   int64
	Dividend  arithmetic.Counts
	rows      []longRow
	quotient  [arithmetic.PlaceNames]string
	found     [arithmetic.PlaceNames]bool // digits of the quotient that are new
	touched   [arithmetic.PlaceNames]bool // digits of the dividend that the move reads
	remainder string
}

// longRow is a row below the dividend.
type longRow struct {
	low    int // the place of its last digit
	digits string
	taken  bool // it is taken away from the row above
	fresh  int  // how many of its last digits are new
}

// Settle ends a move: nothing is new any more.
func (d *LongDivision) Settle() {
	d.found, d.touched = [arithmetic.PlaceNames]bool{}, [arithmetic.PlaceNames]bool{}
	for i := range d.rows {
		d.rows[i].fresh = 0
	}
}

// Share writes what the sharing of one place comes to.
func (d *LongDivision) Share(m arithmetic.SharePlace) {
	d.bringDown(m.Power)
	if m.Leading {
		d.touch(m.Power)
		return
	}
	d.quotient[m.Power], d.found[m.Power] = Digits(m.Each), true
	if m.Each == 0 && len(d.rows) > 0 {
		return // what is there is too little: the 0 is all that is written
	}
	taken, left := Digits(m.Shared), Digits(m.Left)
	d.rows = append(d.rows, longRow{m.Power, taken, true, len(taken)}, longRow{m.Power, left, false, len(left)})
}

// BringDown writes the next digit of the dividend beside what is left.
func (d *LongDivision) BringDown(m arithmetic.TradeLeft) { d.bringDown(m.From - 1) }

// bringDown writes the digits of the dividend down to a place beside what is left,
// as far as they do not stand there.
func (d *LongDivision) bringDown(power int) {
	if len(d.rows) == 0 {
		d.touch(power)
		return
	}
	last := &d.rows[len(d.rows)-1]
	for last.low > power {
		last.low--
		last.digits += Digits(d.Dividend[last.low])
		last.fresh++
	}
}

// touch marks the digits of the dividend from its first one down to a place.
func (d *LongDivision) touch(power int) {
	for i := power; i <= d.Dividend.Top(); i++ {
		d.touched[i] = true
	}
}

// Rest writes what is left over beside the quotient.
func (d *LongDivision) Rest(left int64) { d.remainder = Digits(left) }

// Block is the division as it is written in the US: the divisor left of the
// dividend, the quotient above it.
func (d *LongDivision) Block() notation.Block {
	const before = 2 // the cells of the divisor and of what stands between the two
	top := d.Dividend.Top()
	quotient := make(notation.Line, before)
	dividend := notation.Line{notation.N(Digits(d.Divisor), scene.Second), notation.S(")")}
	for power := top; power >= 0; power-- {
		quotient = append(quotient, d.quotientDigit(power))
		digit := d.dividendDigit(power)
		digit.Over = true
		dividend = append(dividend, digit)
	}
	quotient = append(quotient, d.rest()...)
	return notation.Block{Columns: true, Lines: append([]notation.Line{quotient, dividend}, d.below(before)...)}
}

// Europe is the division as it is written in much of Europe: dividend, divisor and
// quotient on one line (from memory).
//
//	  7 2 ÷ 3 = 2 4
//	− 6
//	  -
//	  1 2
//	− 1 2
//	  ---
//	    0
func (d *LongDivision) Europe() notation.Block {
	const before = 1 // the cell of the sign
	line := notation.Line{{}}
	for power := d.Dividend.Top(); power >= 0; power-- {
		line = append(line, d.dividendDigit(power))
	}
	line = append(line, notation.S("÷"), notation.N(Digits(d.Divisor), scene.Second), notation.S("="))
	for power := d.Dividend.Top(); power >= 0; power-- {
		if digit := d.quotientDigit(power); digit.Text != "" {
			line = append(line, digit)
		}
	}
	line = append(line, d.rest()...)
	return notation.Block{Columns: true, Lines: append([]notation.Line{line}, d.below(before)...)}
}

func (d *LongDivision) quotientDigit(power int) notation.Term {
	role := scene.Result
	if d.found[power] {
		role = scene.Moved
	}
	return notation.N(d.quotient[power], role)
}

func (d *LongDivision) dividendDigit(power int) notation.Term {
	role := scene.First
	if d.touched[power] {
		role = scene.Moved
	}
	return notation.N(Digits(d.Dividend[power]), role)
}

// rest is what stands after the quotient.
func (d *LongDivision) rest() notation.Line {
	if d.remainder == "" || d.remainder == "0" {
		return nil
	}
	return notation.Line{notation.W("r"), notation.N(d.remainder, scene.First)}
}

// below are the rows under the dividend, whose digits start after so many cells.
// A rule stands under the digits of what is taken.
func (d *LongDivision) below(before int) []notation.Line {
	var lines []notation.Line
	ruleFrom, ruleTo := 0, 0
	for _, row := range d.rows {
		line := make(notation.Line, before+d.Dividend.Top()+1)
		end := len(line) - row.low
		start := end - len(row.digits)
		for i := range row.digits {
			role := scene.First
			if i >= len(row.digits)-row.fresh {
				role = scene.Moved
			}
			line[start+i] = notation.N(row.digits[i:i+1], role)
		}
		if row.taken {
			line[start-1] = notation.S("−")
			ruleFrom, ruleTo = start, end
		} else {
			for i := ruleFrom; i < ruleTo; i++ {
				line[i].Over = true
			}
		}
		lines = append(lines, line)
	}
	return lines
}
