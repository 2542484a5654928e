package raster

import (
	"errors"
	"fmt"
	"math"
)

// operands is how many numbers each command of path data takes (SVG 1.1, 8.3).
var operands = map[byte]int{'M': 2, 'L': 2, 'H': 1, 'V': 1, 'C': 6, 'A': 7, 'Z': 0}

// trace follows path data.
func (p *painter) trace(d string) error {
	var x, y, startX, startY float64
	for pos := 0; pos < len(d); {
		command := d[pos]
		if command == ' ' {
			pos++
			continue
		}
		count, known := operands[command&^0x20]
		if !known {
			return fmt.Errorf("path command %q", command)
		}
		pos++
		v := make([]float64, count)
		for i := range v {
			var err error
			if v[i], pos, err = number(d, pos); err != nil {
				return err
			}
		}
		fromX, fromY := 0.0, 0.0
		if command >= 'a' {
			fromX, fromY = x, y
		}
		s := p.scale
		switch command &^ 0x20 {
		case 'M':
			x, y = fromX+v[0], fromY+v[1]
			startX, startY = x, y
			p.MoveTo(x*s, y*s)
		case 'L':
			x, y = fromX+v[0], fromY+v[1]
			p.LineTo(x*s, y*s)
		case 'H':
			x = fromX + v[0]
			p.LineTo(x*s, y*s)
		case 'V':
			y = fromY + v[0]
			p.LineTo(x*s, y*s)
		case 'C':
			p.CubicTo((fromX+v[0])*s, (fromY+v[1])*s, (fromX+v[2])*s, (fromY+v[3])*s, (fromX+v[4])*s, (fromY+v[5])*s)
			x, y = fromX+v[4], fromY+v[5]
		case 'A':
			if v[0] != v[1] || v[2] != 0 || v[4] != 1 {
				return errors.New("an arc that is not of a circle and clockwise")
			}
			toX, toY := fromX+v[5], fromY+v[6]
			p.arc(x, y, toX, toY, v[0], v[3] == 1)
			x, y = toX, toY
		case 'Z':
			p.ClosePath()
			x, y = startX, startY
		}
	}
	return nil
}

// arc goes on clockwise along a circle of radius r.
func (p *painter) arc(x1, y1, x2, y2, r float64, large bool) {
	midX, midY := (x1+x2)/2, (y1+y2)/2
	half := math.Hypot(x2-x1, y2-y1) / 2
	if half == 0 {
		return
	}
	r = max(r, half)
	off := math.Sqrt(r*r-half*half) / half
	if !large {
		off = -off
	}
	// The centre lies beside the middle of the chord; y grows downward.
	cx, cy := midX+off*(y2-y1)/2, midY-off*(x2-x1)/2
	a1, a2 := math.Atan2(y1-cy, x1-cx), math.Atan2(y2-cy, x2-cx)
	if a2 <= a1 {
		a2 += 2 * math.Pi
	}
	p.DrawArc(cx*p.scale, cy*p.scale, r*p.scale, a1, a2)
}

// number reads the next number of path data, and where it ends.
func number(d string, pos int) (float64, int, error) {
	for pos < len(d) && (d[pos] == ' ' || d[pos] == ',') {
		pos++
	}
	from := pos
	if pos < len(d) && d[pos] == '-' {
		pos++
	}
	for pos < len(d) && (d[pos] >= '0' && d[pos] <= '9' || d[pos] == '.') {
		pos++
	}
	v, err := parse(d[from:pos])
	return v, pos, err
}
