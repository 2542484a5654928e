package measure

import (
	"errors"
	"fmt"
	"strconv"
)

// operands is how many numbers each command of path data takes (SVG 1.1, 8.3).
// Arcs are read by wedge and arcs.
var operands = map[byte]int{'M': 2, 'L': 2, 'H': 1, 'V': 1, 'C': 6, 'Z': 0}

// trace reads path data, one Path for every stretch that starts with a move.
func trace(d string) ([]Path, error) {
	var paths []Path
	var at, start Point
	s := scanner{text: d}
	for {
		command, ok := s.command()
		if !ok {
			break
		}
		upper := command &^ 0x20
		count, known := operands[upper]
		if !known {
			return nil, fmt.Errorf("path command %q cannot be measured", command)
		}
		if len(paths) == 0 && upper != 'M' {
			return nil, errors.New("a path starts with a move")
		}
		if upper == 'Z' {
			paths[len(paths)-1].Closed = true
			at = start
			continue
		}
		for first := true; first || s.more(); first = false {
			if upper == 'M' && !first {
				upper = 'L' // what follows the first pair of a move is lines
			}
			v := make([]int, count)
			for i := range v {
				var err error
				if v[i], err = s.number(); err != nil {
					return nil, err
				}
			}
			from := Point{}
			if command >= 'a' {
				from = at
			}
			if upper == 'M' {
				at = Point{from.X + v[0], from.Y + v[1]}
				start = at
				paths = append(paths, Path{Points: []Point{at}})
				continue
			}
			p := &paths[len(paths)-1]
			switch upper {
			case 'L':
				at = Point{from.X + v[0], from.Y + v[1]}
			case 'H':
				at.X = from.X + v[0]
			case 'V':
				at.Y = from.Y + v[0]
			case 'C':
				curve := [4]Point{at, {from.X + v[0], from.Y + v[1]}, {from.X + v[2], from.Y + v[3]}, {from.X + v[4], from.Y + v[5]}}
				at = curve[3]
				p.Curves = append(p.Curves, curve)
			}
			p.Points = append(p.Points, at)
		}
	}
	return paths, s.err
}

// scanner walks through path data, where a sign or a letter may follow a number
// without a space.
type scanner struct {
	text string
	pos  int
	err  error
}

func (s *scanner) space() {
	for s.pos < len(s.text) && (s.text[s.pos] == ' ' || s.text[s.pos] == ',' || s.text[s.pos] == '\n') {
		s.pos++
	}
}

func (s *scanner) command() (byte, bool) {
	s.space()
	if s.pos == len(s.text) {
		return 0, false
	}
	c := s.text[s.pos]
	if c|0x20 < 'a' || c|0x20 > 'z' {
		s.err = fmt.Errorf("%q where a path command belongs", c)
		return 0, false
	}
	s.pos++
	return c, true
}

// more reports whether another number follows before the next command.
func (s *scanner) more() bool {
	s.space()
	return s.pos < len(s.text) && (s.text[s.pos] == '-' || s.text[s.pos] >= '0' && s.text[s.pos] <= '9')
}

func (s *scanner) number() (int, error) {
	s.space()
	from := s.pos
	if s.pos < len(s.text) && s.text[s.pos] == '-' {
		s.pos++
	}
	for s.pos < len(s.text) && (s.text[s.pos] >= '0' && s.text[s.pos] <= '9') {
		s.pos++
	}
	if s.pos < len(s.text) && s.text[s.pos] == '.' {
		return 0, errors.New("a position is not a whole number")
	}
	return strconv.Atoi(s.text[from:s.pos])
}
