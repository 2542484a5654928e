package laws

import (
	"fmt"
	"math/big"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/words"
)

// tokens are the numbers, words and signs of relation of a text, without case,
// commas in numbers and the marks around words: "402 − 178 = 224." is 402, 178,
// =, 224.
func tokens(text string) []string {
	var list []string
	fields := strings.FieldsFunc(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune(".,/-=<>%", r)
	})
	for _, f := range fields {
		f = strings.ToLower(strings.Trim(f, ".,/-"))
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

// placeNames are what a digit counts; each is worth ten of the one before.
var placeNames = []string{"one", "ten", "hundred", "thousand"}

// placeOf is the place that a word names, in one or many; -1 for other words.
func placeOf(word string) int { return slices.Index(placeNames, strings.TrimSuffix(word, "s")) }

// saysPlaces reports whether a text lists a whole number place by place: "4
// hundreds, no tens and 2 ones" is 402.
func saysPlaces(text, written string) bool {
	sum, open := int64(0), false
	list := tokens(text)
	for i := 0; i+1 < len(list); i++ {
		power := placeOf(list[i+1])
		var n int64
		if _, err := fmt.Sscanf(list[i], "%d", &n); power < 0 || err != nil && list[i] != "no" {
			if list[i] != "and" && (i == 0 || placeOf(list[i]) < 0) {
				sum, open = 0, false
			}
			continue
		}
		if !open {
			sum, open = 0, true
		}
		sum += n * arithmetic.Power10(power)
		if power == 0 && arithmetic.Grouped(sum) == written {
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
		if p.Kind != arithmetic.CoinsWorth { // they are named
			list = append(list, n.String())
		}
	}
	switch p.Kind {
	case arithmetic.Counting:
		list = append(list, p.Run.Number(p.Run.From).String(), p.Run.Step().String())
	case arithmetic.RuleTable:
		list = append(list, arithmetic.Grouped(p.Run.By))
	}
	return list
}

// nameOf is a written number in words; "" where it has none of its own.
func nameOf(written string) string {
	if written == "0" {
		return "no"
	}
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
// forms, unless the problem itself says it or it is as much as one of the
// numbers in the problem, whose other names may stand in the picture.
func secrets(p Picture) []string {
	a := p.Answer
	var list []string
	add := func(n arithmetic.Number) {
		if n == (arithmetic.Number{}) {
			return
		}
		if v, whole := n.Int64(); whole && v < 10 {
			list = append(list, smallSecrets(n.String())...)
			return
		}
		list = append(list, n.String(), words.NumberName(n))
	}
	switch p.Problem.Kind {
	case arithmetic.Claim:
		return []string{"is true", "is false", "is not true"}
	case arithmetic.Comparison:
		if _, worked := p.Problem.Left.(arithmetic.Operation); worked && p.Step > 0 {
			return nil // what that side comes to is worked out before the sign is asked for
		}
		sign := " " + a.Relation.String() + " "
		return []string{p.Problem.Left.String() + sign + p.Problem.Right.String()}
	case arithmetic.Ordering, arithmetic.Factors:
		return nil
	case arithmetic.Show:
		// A picture that asks which number it shows does not say it.
		if n := p.Problem.Left.String(); !says(p.Whole.Title.Hidden, n) {
			return []string{n}
		}
		return nil
	case arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming:
	default:
		if list, asked := askedSecrets(p); asked {
			return list
		}
		for _, n := range p.Truth.Within {
			if same(a.Number.Value, n) {
				return nil
			}
		}
	}
	add(a.Number)
	add(a.Simplest)
	if a.Remainder > 0 {
		list = append(list, "remainder "+arithmetic.Grouped(a.Remainder))
	}
	asked := p.Problem.String()
	asked += " " + strings.ReplaceAll(asked, "/", " ") // 1/10 has a 10 in it
	return slices.DeleteFunc(list, func(s string) bool { return says(asked, s) })
}

// smallSecrets are the phrases in which a number below ten is an answer. On its
// own it counts all kinds of things: "1 whole", "2 of 2 equal parts", "3 ones".
func smallSecrets(n string) []string {
	var list []string
	for _, before := range []string{"= ", "is ", "are ", "makes ", "make ", "leaves ", "rows of ", "groups of ", "shares of "} {
		list = append(list, before+n)
	}
	for _, after := range []string{" rows", " columns", " in each", " groups", " left", " in all"} {
		list = append(list, n+after)
	}
	return list
}

// Hiding: with the answer hidden, nothing that the picture says gives it away.
// The numbers along a scale are not the answer to anything, and in the middle of
// a lesson a small number may be met by chance that will be the answer.
func Hiding(p Picture) error {
	if v, whole := p.Answer.Number.Int64(); !p.Hidden || p.Step > 0 && p.Step < len(p.Steps) && whole && v < 100 {
		return nil
	}
	texts := []string{p.Scene.Title.Hidden, p.Scene.Desc.Hidden}
	marks := p.marks()
	for _, it := range p.visible() {
		t, ok := it.Shape.(scene.Text)
		if !ok {
			continue
		}
		if m, number := markOf(t); !number || !onScale(marks, m) && !onUprightScale(marks, m) || t.Bold {
			texts = append(texts, spoken(t))
		}
	}
	for _, secret := range secrets(p) {
		for _, text := range texts {
			if p.Problem.Kind == arithmetic.Expression {
				text = rowsOf.ReplaceAllString(text, "rows of") // so many lie there, which is not what is asked
			}
			if tells(text, secret) {
				return fmt.Errorf("%q gives %q away", text, secret)
			}
		}
	}
	return nil
}

// Unanswered: with the answer hidden, no pieces of a sum or a difference are drawn
// in the role of the answer that come to it. A point with a question mark may stand
// at its place.
func Unanswered(p Picture) error {
	if !p.Hidden || p.Problem.Kind != arithmetic.Addition && p.Problem.Kind != arithmetic.Subtraction || p.Truth.Value.Sign() == 0 {
		return nil
	}
	sum := new(big.Rat)
	for _, it := range p.visible() {
		if _, point := it.Shape.(scene.Circle); point {
			continue
		}
		if it.Role == scene.Result && it.Of == scene.OfAnswer && (it.Finish == scene.Plain || it.Finish == scene.Deep) {
			sum.Add(sum, rat(it.Worth))
		}
	}
	if sum.Cmp(p.Truth.Value) == 0 {
		return fmt.Errorf("the pieces of the answer come to %s", sum.RatString())
	}
	return nil
}

// rowsOf is how many rows lie there.
var rowsOf = regexp.MustCompile(`[0-9,]+ rows? of`)

// placesOnly reports whether a phrase is the name of a place: ten, or ten thousand.
func placesOnly(phrase []string) bool {
	return !slices.ContainsFunc(phrase, func(word string) bool { return placeOf(word) < 0 })
}

// tells is says, but leaves out the count of a place: that
// "1 ten and 3 ones" lie there does not tell that the answer is 3, nor does "3 of
// 4 parts".
func tells(text, secret string) bool {
	in, want := tokens(text), tokens(secret)
	for i := 0; i+len(want) <= len(in); i++ {
		end := i + len(want)
		if i > 0 && strings.Contains(want[0], "/") && strings.Trim(in[i-1], "0123456789") == "" {
			continue // the fraction of a mixed number
		}
		if i > 0 && placesOnly(want) && strings.Trim(in[i-1], "0123456789") == "" {
			continue // 1 ten or 1 ten thousand, where the answer is ten
		}
		if slices.Equal(in[i:end], want) && (end == len(in) || placeOf(in[end]) < 0 && in[end] != "of") {
			return true
		}
	}
	return false
}
