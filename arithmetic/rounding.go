package arithmetic

// Neighbors are the round numbers on both sides of a number.
type Neighbors struct{ Low, High Number }

// FindHalfway marks the number halfway between the neighbors, and says on which
// side of it the number lies: -1 before, 0 on it, 1 past it.
type FindHalfway struct {
	At   Number
	Side int
}

// GoNearer goes from the number to the nearer neighbor.
type GoNearer struct {
	From, To Number
	Gap      Number // how far it is
	OtherGap Number // how far the other neighbor is
	Halfway  bool   // both are equally far, and it goes up by convention
	Already  bool   // the number is round already
}

func (Neighbors) move()   {}
func (FindHalfway) move() {}
func (GoNearer) move()    {}

// RoundOnLine works a Rounding of a whole or decimal number: the neighbors, the
// halfway number, the nearer neighbor (CCSS 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4).
// A number exactly halfway goes up; that is a convention of school arithmetic and
// not a fact about distance. A number that is round already needs the last move
// only. To is a power of ten, from 1; a decimal can also be rounded to so many
// Places.
func RoundOnLine(p Problem) (Working, Stretch, error) {
	n, ok := p.Left.(Number)
	if !ok || p.Places == 0 && !powerOfTen(p.To) || n.Form == Common || n.Form == Mixed || n.Form == Percent ||
		p.Places > 0 && n.Form != Decimal || max(n.Places, p.Places+1) > mostRounded {
		return Working{}, Stretch{}, errNotOnLine
	}
	s, err := CommonScale(n)
	if err != nil {
		return Working{}, Stretch{}, err
	}
	if p.Places > 0 {
		s.Places = max(s.Places, p.Places+1) // room between the neighbors
		s.Parts = Power10(s.Places)
	}
	if p.To > maxRounded/s.Parts || n.Value.Num() > maxRounded || n.Value.Num()/n.Value.Den() > maxRounded/s.Parts {
		return Working{}, Stretch{}, ErrOverflow
	}
	at, size := s.Count(n), p.To*s.Parts
	if p.Places > 0 {
		size = Power10(s.Places - p.Places)
	}
	if size == 1 {
		return Working{}, Stretch{}, errNotOnLine // a whole number to the nearest one
	}
	low := at / size * size
	high, half := low+size, low+size/2
	round := func(units int64) Number {
		if p.Places > 0 {
			return InPlaces(units/size, p.Places)
		}
		whole := Int(units / s.Parts)
		if n.Form == Money {
			whole.Form = Money
		}
		return whole
	}
	if at == low {
		// It is shown among the round numbers around it.
		from := max(0, low-2*size)
		w := Working{Problem: p, Moves: []Move{GoNearer{From: n, To: round(low), Gap: s.Write(0), OtherGap: s.Write(size), Already: true}}}
		return w.ends(round(low)), Stretch{Scale: s, Lo: from, Hi: from + 4*size, Mark: size / 10, Long: size}, nil
	}
	side := 0
	switch {
	case at < half:
		side = -1
	case at > half:
		side = 1
	}
	nearer := GoNearer{From: n, To: round(high), Gap: s.Write(high - at), OtherGap: s.Write(at - low), Halfway: side == 0}
	if side < 0 {
		nearer.To, nearer.Gap, nearer.OtherGap = round(low), s.Write(at-low), s.Write(high-at)
	}
	w := Working{Problem: p, Moves: []Move{Neighbors{round(low), round(high)}, FindHalfway{s.Write(half), side}, nearer}}
	return w.ends(nearer.To), Stretch{Scale: s, Lo: low, Hi: high, Mark: size / 10, Long: size / 2}, nil
}

// maxRounded bounds the units of a rounding, so that nothing overflows, and
// mostRounded its places after the point.
const (
	maxRounded  = 1_000_000_000_000
	mostRounded = 4
)

func powerOfTen(n int64) bool {
	for n >= 10 && n%10 == 0 {
		n /= 10
	}
	return n == 1
}
