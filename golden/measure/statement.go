package measure

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
)

// Statement is what a picture says in symbols: 3/4 = 6/8, 58 ÷ 8 = 7 r 2.
type Statement []Word

// String writes the statement with a space between its words.
func (s Statement) String() string {
	words := make([]string, len(s))
	for i, w := range s {
		words[i] = w.Text
	}
	return strings.Join(words, " ")
}

// Said is a line of text as a statement: 1 3/4 is one word. ok is false where it
// has other words in it, something unknown, or no relation.
func Said(text string) (s Statement, ok bool) {
	for _, w := range split(Text{Words: text, Size: 1}) {
		if n := len(s); n > 0 && strings.Contains(w.Text, "/") && s[n-1].number() {
			s[n-1].Text += " " + w.Text
			continue
		}
		s = append(s, w)
	}
	for _, w := range s {
		_, number := w.Value()
		if !number && relations[w.Text] == nil && !strings.Contains(signs, " "+w.Text+" ") {
			return nil, false
		}
		ok = ok || relations[w.Text] != nil
	}
	return s, ok
}

// follows stands between a statement and what it is rounded to: 17 ÷ 5 = 3 r 2 → 4.
const follows = "→"

// signs are the other words of a statement.
const signs = " + − × ÷ ( ) r of "

// relations are the signs between two sides, each with how the left side must
// stand to the right one. What is about equal is not held to anything.
var relations = map[string]func(order int) bool{
	"=": func(o int) bool { return o == 0 }, "≠": func(o int) bool { return o != 0 },
	"<": func(o int) bool { return o < 0 }, ">": func(o int) bool { return o > 0 },
	"≈": func(int) bool { return true },
}

// Statements are the lines of symbols with a relation in them and nothing unknown.
// Where two numbers follow each other, or an arrow leads to what comes of it, one
// statement ends and another begins.
func (d Drawing) Statements() []Statement {
	var list []Statement
	for _, line := range d.Lines() {
		var s Statement
		related, known := false, true
		end := func() {
			if related && known && s[0].starts() {
				list = append(list, s)
			}
			s, related, known = nil, false, true
		}
		for _, w := range line {
			if w.Text == follows {
				end()
				continue
			}
			_, number := w.Value()
			if n := len(s); n > 0 {
				_, before := s[n-1].Value()
				if s[n-1].Size != w.Size || number && (before || s[n-1].Text == ")") || w.Text == "(" && before {
					end()
				}
			}
			related = related || relations[w.Text] != nil
			known = known && (number || relations[w.Text] != nil || strings.Contains(signs, " "+w.Text+" "))
			s = append(s, w)
		}
		end()
	}
	return list
}

func (w Word) starts() bool {
	_, number := w.Value()
	return number || w.Text == "("
}

// Check works both sides of every relation in a statement, and says which of
// them does not hold.
func (s Statement) Check() error {
	p := &parser{words: s}
	left, err := p.sum()
	for err == nil && len(p.words) > 0 {
		sign := p.words[0].Text
		holds := relations[sign]
		if holds == nil {
			return fmt.Errorf("%q cannot be read", s)
		}
		p.words = p.words[1:]
		divisor := p.divisor
		var right *big.Rat
		if right, err = p.sum(); err != nil {
			break
		}
		if p.take("r") {
			var rest *big.Rat
			if rest, err = p.part(); err != nil || divisor == nil {
				return fmt.Errorf("%q cannot be read", s)
			}
			if rest.Cmp(divisor) >= 0 {
				return fmt.Errorf("%q has too much left over", s)
			}
			right = right.Add(right, rest.Quo(rest, divisor))
		}
		if !holds(left.Cmp(right)) {
			return fmt.Errorf("%q is not so", s)
		}
		left = right
	}
	if err != nil {
		return fmt.Errorf("%q: %w", s, err)
	}
	return nil
}

// parser works an expression: signs of the same rank from left to right.
type parser struct {
	words   []Word
	divisor *big.Rat // of the last division
}

func (p *parser) take(sign string) bool {
	if len(p.words) == 0 || p.words[0].Text != sign {
		return false
	}
	p.words = p.words[1:]
	return true
}

func (p *parser) sum() (*big.Rat, error) {
	v, err := p.product()
	for err == nil {
		minus := false
		if !p.take("+") {
			if minus = p.take("−"); !minus {
				break
			}
		}
		var next *big.Rat
		if next, err = p.product(); err == nil && minus {
			v = new(big.Rat).Sub(v, next)
		} else if err == nil {
			v = new(big.Rat).Add(v, next)
		}
	}
	return v, err
}

func (p *parser) product() (*big.Rat, error) {
	v, err := p.part()
	for err == nil {
		divide := false
		if !p.take("×") && !p.take("of") {
			if divide = p.take("÷"); !divide {
				break
			}
		}
		var next *big.Rat
		switch next, err = p.part(); {
		case err != nil:
		case divide && next.Sign() == 0:
			err = errors.New("divided by 0")
		case divide:
			p.divisor = next
			v = new(big.Rat).Quo(v, next)
		default:
			v = new(big.Rat).Mul(v, next)
		}
	}
	return v, err
}

func (p *parser) part() (*big.Rat, error) {
	if p.take("(") {
		v, err := p.sum()
		if err == nil && !p.take(")") {
			err = errors.New("a bracket that is not closed")
		}
		return v, err
	}
	if len(p.words) == 0 {
		return nil, errors.New("a number is missing")
	}
	v, ok := p.words[0].Value()
	if !ok {
		return nil, fmt.Errorf("%q where a number belongs", p.words[0].Text)
	}
	p.words = p.words[1:]
	return v, nil
}
