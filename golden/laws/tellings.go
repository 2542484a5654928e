package laws

import (
	"errors"
	"fmt"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
)

// ThreeTellings: there is a whole story and at least one step, and every step is
// told with the hands, in a picture and in symbols, and has a name.
func ThreeTellings(l *Lesson) error {
	if l.Whole == nil || len(l.Steps) == 0 {
		return errors.New("there is no whole story or no step")
	}
	for i, s := range l.Steps {
		hands, ask := s.Hands.String(), s.Ask.String()
		switch {
		case s.Title == "" || strings.HasSuffix(s.Title, "."):
			return fmt.Errorf("step %d is called %q", i+1, s.Title)
		case hands == "" || !strings.ContainsAny(hands[len(hands)-1:], ".?!"):
			return fmt.Errorf("step %d: the hands text is no sentence: %q", i+1, hands)
		case ask != "" && !strings.HasSuffix(ask, "?"):
			return fmt.Errorf("step %d: no question: %q", i+1, ask)
		case s.Scene == nil || len(s.Scene.Items) == 0:
			return fmt.Errorf("step %d has no picture", i+1)
		case strings.TrimSpace(s.Symbols.Text()) == "":
			return fmt.Errorf("step %d has no symbols", i+1)
		}
		for _, text := range []string{s.Title, hands, ask, l.Why.String()} {
			if strings.Contains(text, "  ") || strings.Contains(text, "%!") {
				return fmt.Errorf("step %d: badly joined words: %q", i+1, text)
			}
		}
	}
	for _, piece := range l.Pieces {
		if piece.Name == "" || piece.Count < 1 {
			return fmt.Errorf("%d × %q is no piece to lay out", piece.Count, piece.Name)
		}
	}
	return nil
}

// EveryStepIsTold: who hears the pictures of two steps that follow each other
// hears what the second one changes.
func EveryStepIsTold(l *Lesson) error {
	for i := 1; i < len(l.Steps); i++ {
		if before, now := l.Steps[i-1].Scene, l.Steps[i].Scene; before != nil && now != nil && before.Desc.Shown == now.Desc.Shown {
			return fmt.Errorf("steps %d and %d are described alike: %q", i, i+1, now.Desc.Shown)
		}
	}
	return nil
}

// SaysTheProblem: the title of the whole story has every number of the problem
// and, when it is shown, the answer; the description of every picture is there,
// and that of the whole story has the numbers too.
func SaysTheProblem(p Picture) error {
	title, desc := p.Scene.Title.Say(p.Hidden), p.Scene.Desc.Say(p.Hidden)
	for _, text := range []string{title, desc} {
		if strings.TrimSpace(text) == "" || strings.Contains(text, "  ") || strings.Contains(text, "%!") {
			return fmt.Errorf("a title or description is missing or badly joined: %q", text)
		}
	}
	if !strings.ContainsAny(desc[len(desc)-1:], ".?") {
		return fmt.Errorf("the description does not end: %q", desc)
	}
	if p.Step > 0 {
		return nil
	}
	if p.Hidden && p.Problem.Kind == arithmetic.Show {
		return nil // the number may be what is asked
	}
	if err := saysPlace(p, title, desc); err != nil {
		return err
	}
	for _, n := range writtenNumbers(p.Problem) {
		if !says(title, n) {
			return fmt.Errorf("%s is not in the title %q", n, title)
		}
		if !says(desc, n) && !says(desc, nameOf(n)) && !saysPlaces(desc, n) {
			return fmt.Errorf("%s is not in the description %q", n, desc)
		}
	}
	if p.Hidden {
		return nil
	}
	if said, ok := measure.Said(title); ok {
		if err := said.Check(); err != nil {
			return fmt.Errorf("the title: %w", err)
		}
	}
	if p.Problem.Kind == arithmetic.Claim {
		return nil
	}
	if asked, err := saysAsked(p, title, desc); asked {
		return err
	}
	for _, text := range []string{title, desc} {
		if !saysAnswer(p, text) {
			return fmt.Errorf("the answer is not in %q", text)
		}
	}
	return nil
}

// saysAnswer reports whether a text gives the answer in one of its forms.
func saysAnswer(p Picture, text string) bool {
	a := p.Answer
	switch p.Problem.Kind {
	case arithmetic.Comparison:
		return strings.Contains(text, a.Relation.String()) || saysAny(text, relationWords[a.Relation])
	case arithmetic.Ordering:
		last := -1
		for _, n := range a.Order {
			at := strings.Index(text[last+1:], n.String())
			if at < 0 {
				return false
			}
			last += at + 1
		}
		return true
	case arithmetic.Factors:
		for _, pair := range a.Pairs {
			if !says(text, arithmetic.Grouped(pair[0])) || !says(text, arithmetic.Grouped(pair[1])) {
				return false
			}
		}
		return true
	}
	if left := arithmetic.Grouped(a.Remainder); a.Remainder > 0 && !saysAny(text, []string{"remainder " + left, left + " left", left + " is left", left + " are left", "r " + left}) {
		return false
	}
	if a.Number.Value.Sign() == 0 && says(text, "no") {
		return true
	}
	return says(text, a.Number.String()) || a.Simplest != (arithmetic.Number{}) && says(text, a.Simplest.String())
}

// relationWords are ways to say which of two is more.
var relationWords = map[arithmetic.Relation][]string{
	arithmetic.Less:    {"less than", "more than", "shorter", "fewer", "below", "smaller"},
	arithmetic.Equal:   {"equal", "the same"},
	arithmetic.Greater: {"greater", "more than", "less than", "longer", "above", "larger"},
}

func saysAny(text string, phrases []string) bool {
	for _, phrase := range phrases {
		if strings.Contains(text, phrase) {
			return true
		}
	}
	return false
}
