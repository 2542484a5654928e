package array

import (
	"slices"
	"strings"

	"modeler/models/scene"
)

// conceal puts a question mark in place of the answer wherever a step of the
// picture happens to write the same number, as 15 left in 45 ÷ 3.
func (l *statement) conceal(s *scene.Scene, secret ...string) {
	given := append(tokens(l.asked.Text()), "")
	for i, it := range s.Items {
		t, is := it.Shape.(scene.Text)
		if !is || it.When != scene.Always {
			continue
		}
		runs := slices.Clone(t.Runs)
		changed := false
		for k, run := range runs {
			for _, n := range secret {
				if slices.Contains(tokens(run.Text), n) && !slices.Contains(given, n) {
					runs[k].Text, changed = concealed(runs[k].Text, n), true
				}
			}
		}
		if changed {
			s.Items[i].When = scene.ShownOnly
			t.Runs = runs
			it.Shape, it.When = t, scene.HiddenOnly
			s.Add(it)
		}
	}
}

// tokens are the numbers and words of a text.
func tokens(s string) []string {
	return strings.Fields(strings.NewReplacer("(", " ", ")", " ").Replace(s))
}

func concealed(s, token string) string {
	words := strings.Split(s, " ")
	for i, w := range words {
		if w == token {
			words[i] = "?"
		}
	}
	return strings.Join(words, " ")
}
