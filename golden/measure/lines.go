package measure

import (
	"math/big"
	"slices"
	"strings"
	"unicode"
)

// Word is a piece of a line of text: a number, a sign or other characters. A
// fraction with a bar is one word, 3/4, and so is a mixed number, 1 3/4.
type Word struct {
	Text        string
	X, Y        int // its middle, and the baseline that its line stands on
	Size        int
	Left, Right int // about where it begins and ends, since faces differ in width
}

// Value is the number that a word is, whether as 402, 1,204, 0.5, $3.27, 3/4 or
// 1 3/4; ok is false for other words.
func (w Word) Value() (v *big.Rat, ok bool) {
	text, percent := strings.CutSuffix(strings.ReplaceAll(strings.TrimPrefix(w.Text, "$"), ",", ""), "%")
	if text == "" || strings.Trim(text, "0123456789./ ") != "" || !unicode.IsDigit(rune(text[0])) {
		return nil, false
	}
	sum := new(big.Rat)
	for _, part := range strings.Fields(text) {
		v, ok := new(big.Rat).SetString(part)
		if !ok {
			return nil, false
		}
		sum.Add(sum, v)
	}
	if percent {
		sum.Quo(sum, big.NewRat(100, 1))
	}
	return sum, true
}

// Lines are the texts of a drawing as they are read: from left to right along
// each baseline, from the top down.
func (d Drawing) Lines() [][]Word {
	var words []Word
	inFraction := map[int]bool{}
	for _, f := range d.Fractions() {
		inFraction[f.Num.Order], inFraction[f.Den.Order] = true, true
		half := f.Num.Size * 3 / 10 * max(len(f.Num.Words), len(f.Den.Words))
		words = append(words, Word{f.Num.Words + "/" + f.Den.Words, f.X, (f.Num.Y + f.Den.Y) / 2, f.Num.Size, f.X - half, f.X + half})
	}
	for _, t := range d.Texts {
		if !inFraction[t.Order] {
			words = append(words, split(t)...)
		}
	}
	slices.SortStableFunc(words, func(a, b Word) int {
		if off := a.Y - b.Y; off > 2 || off < -2 {
			return off
		}
		return a.X - b.X
	})
	var lines [][]Word
	for i, w := range words {
		if i == 0 || w.Y-words[i-1].Y > 2 {
			lines = append(lines, nil)
		}
		at := len(lines) - 1
		line := lines[at]
		if n := len(line); n > 0 && strings.Contains(w.Text, "/") && line[n-1].number() && w.Left-line[n-1].Right < w.Size/2 {
			last := &line[n-1]
			last.Text, last.X, last.Right = last.Text+" "+w.Text, (last.Left+w.Right)/2, w.Right
			continue
		}
		lines[at] = append(line, w)
	}
	return lines
}

// number reports whether a word is a whole number.
func (w Word) number() bool { return strings.Trim(w.Text, "0123456789,") == "" }

// split is a text as words. Signs stand alone even where no space is around them.
func split(t Text) []Word {
	const signs = "+−×÷=≠<>≈()?"
	width := t.Size * 55 / 100
	x := t.X
	switch n := len([]rune(t.Words)); t.Anchor {
	case "middle":
		x -= n * width / 2
	case "end":
		x -= n * width
	}
	var words []Word
	var add func(text string, from, to int)
	add = func(text string, from, to int) {
		if short, after := strings.CutSuffix(text, ","); after && short != "" {
			add(short, from, to-1)
			add(",", to-1, to)
			return
		}
		left, end := x+from*width, x+to*width
		words = append(words, Word{text, (left + end) / 2, t.Y, t.Size, left, end})
	}
	from, text := 0, []rune(t.Words)
	for i, r := range text {
		sign := strings.ContainsRune(signs, r)
		if !sign && r != ' ' {
			continue
		}
		if from < i {
			add(string(text[from:i]), from, i)
		}
		if sign {
			add(string(r), i, i+1)
		}
		from = i + 1
	}
	if from < len(text) {
		add(string(text[from:]), from, len(text))
	}
	if len(words) == 1 {
		words[0].X = t.X
		if t.Anchor != "middle" {
			words[0].X = (words[0].Left + words[0].Right) / 2
		}
	}
	return words
}
