package golden

import (
	"fmt"
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
	"modeler/models/words"
	"modeler/svg"
)

// file is one expected file: its path below this folder and what is in it.
type file struct {
	name string
	body []byte
}

// lesson is an example told by its own model, which is named and not chosen, so
// that no other model can quietly draw it.
type lesson struct {
	model   *models.Model
	example string
	first   bool // of its model
	reading reading.Reading
	telling models.Telling
}

// lessons tells every example of every model.
func lessons(t testing.TB) []lesson {
	t.Helper()
	var all []lesson
	for _, m := range models.All {
		for i, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil {
				t.Errorf("%s: the example %q cannot be read: %v", m.Name, example, err)
				continue
			}
			if err := m.Fits(r.Problem); err != nil {
				t.Errorf("%s: the example %q does not fit: %v", m.Name, example, err)
				continue
			}
			all = append(all, lesson{m, example, i == 0, r, m.Tell(r.Problem)})
		}
	}
	return all
}

// files are the expected files of a lesson. The first example of each model is
// drawn in every theme and with the answer hidden.
func (l lesson) files() []file {
	base := l.model.Name + "/" + slug(l.reading.Problem.String())
	list := []file{{base + ".txt", []byte(l.text())}, {base + ".svg", svg.Render(l.telling.Whole, svg.Options{})}}
	for i, s := range l.telling.Steps {
		list = append(list, file{fmt.Sprintf("%s.step%d.svg", base, i+1), svg.Render(s.Scene, svg.Options{})})
	}
	if l.first {
		list = append(list, file{base + ".hidden.svg", svg.Render(l.telling.Whole, svg.Options{Hidden: true})})
		for _, theme := range svg.Themes[1:] {
			list = append(list, file{base + "." + theme.Name + ".svg", svg.Render(l.telling.Whole, svg.Options{Theme: theme})})
		}
	}
	return list
}

// text is the lesson as a person reads it.
func (l lesson) text() string {
	var b strings.Builder
	line := func(name, text string) {
		if text != "" {
			fmt.Fprintf(&b, "%s%s\n", name, strings.ReplaceAll(text, "\n", "\n         "))
		}
	}
	line("problem  ", l.example)
	line("reading  ", l.reading.Problem.String())
	line("says     ", words.ReadBack(l.reading.Problem))
	for _, p := range l.reading.Also {
		line("or       ", p.String())
	}
	line("kind     ", string(l.reading.Problem.Kind))
	line("answer   ", words.Answer(l.reading.Problem, l.telling.Answer))
	line("why      ", l.telling.Why.String())
	for _, p := range l.telling.Pieces {
		line("piece    ", fmt.Sprintf("%d × %s", p.Count, p.Name))
	}
	telling := func(name string, t scene.Telling) {
		line(name, t.Shown)
		if t.Hidden != t.Shown {
			line("  hidden ", t.Hidden)
		}
	}
	telling("title    ", l.telling.Whole.Title)
	telling("alt      ", l.telling.Whole.Desc)
	for i, s := range l.telling.Steps {
		fmt.Fprintf(&b, "\n%d. %s\n", i+1, s.Title)
		line("hands    ", s.Hands.String())
		line("ask      ", s.Ask.String())
		line("write    ", s.Symbols.Text())
		telling("title    ", s.Scene.Title)
		telling("alt      ", s.Scene.Desc)
	}
	return b.String()
}

// slugs are the names that signs have in a file name.
var slugs = strings.NewReplacer("+", "plus", "−", "minus", "×", "times", "÷", "divided by", "=", "equals", "<", "less than",
	">", "more than", "?", "what", "/", "over", ".", "point", "$", "dollars ", ",", "", "(", "", ")", "", ";", "")

// slug is a problem as a file name.
func slug(problem string) string {
	return strings.Join(strings.Fields(slugs.Replace(problem)), "-")
}

func TestSlug(t *testing.T) {
	for problem, want := range map[string]string{
		"402 − 178": "402-minus-178", "3/4 = 6/8": "3over4-equals-6over8", "1,204": "1204",
		"2 × (8 + 7)": "2-times-8-plus-7", "$5.00 − $3.27": "dollars-5point00-minus-dollars-3point27",
	} {
		if got := slug(problem); got != want {
			t.Errorf("%s: %s, want %s", problem, got, want)
		}
	}
}
