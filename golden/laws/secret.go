package laws

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/words"
)

// tokens are the numbers and words of a text, without case, commas in numbers
// and the marks around words: "402 − 178 = 224." is 402, 178, 224.
func tokens(text string) []string {
	var list []string
	fields := strings.FieldsFunc(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune(".,/-$", r)
	})
	for _, f := range fields {
		f = strings.TrimLeft(strings.ToLower(strings.Trim(f, ".,/-")), "$")
		if f != "" && unicode.IsDigit([]rune(f)[0]) {
			f = strings.ReplaceAll(f, ",", "")
		}
		if f != "" {
			list = append(list, f)
		}
	}
	return list
}

// says reports whether a text has the tokens of a phrase next to each other.
func says(text, phrase string) bool {
	in, want := tokens(text), tokens(phrase)
	if len(want) == 0 {
		return false
	}
	for i := 0; i+len(want) <= len(in); i++ {
		if slices.Equal(in[i:i+len(want)], want) {
			return true
		}
	}
	return false
}

// writtenNumbers are the numbers of a problem as it is written.
func writtenNumbers(p arithmetic.Problem) []string {
	var list []string
	var walk func(e arithmetic.Expr)
	walk = func(e arithmetic.Expr) {
		switch e := e.(type) {
		case arithmetic.Number:
			list = append(list, e.String())
		case arithmetic.Operation:
			walk(e.Left)
			walk(e.Right)
		}
	}
	walk(p.Left)
	walk(p.Right)
	for _, n := range p.List {
		list = append(list, n.String())
	}
	return list
}

// nameOf is a written number in words; "" where it has none of its own.
func nameOf(written string) string {
	var a, b int64
	if n, _ := fmt.Sscanf(written+" ", "%d/%d ", &a, &b); n == 2 && b > 0 {
		return words.NumberName(arithmetic.Frac(fraction.Must(a, b)))
	}
	if n, _ := fmt.Sscanf(strings.ReplaceAll(written, ",", "")+" end", "%d end", &a); n == 1 {
		return words.Name(a)
	}
	return ""
}

// secrets are the phrases that give the answer away: the answer in each of its
// forms, unless the problem itself says it.
func secrets(p Picture) []string {
	a := p.Answer
	var list []string
	add := func(n arithmetic.Number) {
		if n == (arithmetic.Number{}) {
			return
		}
		list = append(list, n.String())
		// Small numbers in words are ordinary words ("one length", "two numbers"),
		// and so are the names of places.
		if v, whole := n.Int64(); !whole || v > 12 && v != 100 && v != 1000 {
			list = append(list, words.NumberName(n))
		}
	}
	switch p.Problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		list = append(list, "true", "false")
		if p.Problem.Kind == arithmetic.Comparison {
			list = append(list, p.Problem.Left.String()+" "+a.Relation.String()+" "+p.Problem.Right.String())
		}
		return list
	case arithmetic.Ordering, arithmetic.Factors, arithmetic.Show:
		return nil
	}
	add(a.Number)
	add(a.Simplest)
	if a.Remainder > 0 {
		list = append(list, "remainder "+arithmetic.Grouped(a.Remainder))
	}
	asked := p.Problem.String()
	return slices.DeleteFunc(list, func(s string) bool { return says(asked, s) })
}

// Hiding: with the answer hidden, nothing that the picture says gives it away.
// The numbers along a scale are not the answer to anything.
func Hiding(p Picture) error {
	if !p.Hidden {
		return nil
	}
	texts := []string{p.Scene.Title.Hidden, p.Scene.Desc.Hidden}
	var labels []scene.Text
	for _, it := range p.visible() {
		if t, ok := it.Shape.(scene.Text); ok {
			labels = append(labels, t)
		}
	}
	for i, t := range labels {
		if !onScale(labels, i) {
			texts = append(texts, label(t))
		}
	}
	for _, secret := range secrets(p) {
		for _, text := range texts {
			if says(text, secret) || strings.ContainsAny(secret, "<>=") && strings.Contains(text, secret) {
				return fmt.Errorf("%q gives %q away", text, secret)
			}
		}
	}
	return nil
}
