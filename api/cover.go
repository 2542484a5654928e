package api

import (
	"net/http"
	"slices"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/words"
)

// cover is the page that asks.
type cover struct {
	head
	C        words.CoverWords
	Front    shown // one whole story, to show what comes
	FrontURL string
	Such     []link
	Topics   []topic
}

type topic struct {
	Title, Text string
	Story       link
	Picture     shown
	Examples    []link // a few, of different kinds
	Kinds       []kind // and all
}

// kind are the examples that ask the same.
type kind struct {
	Title    string
	Examples []link
}

// newCover sorts the examples of every model under their topics and kinds, each
// problem once.
func newCover(style string, w words.Wording) cover {
	linkTo := choices{Words: w}.link
	said := inWording(w, words.Cover)
	c := cover{C: said, head: head{
		Title: "modeler: " + said.Title, Doc: said.Doc, Style: style, Skip: said.Skip, Label: said.Field, W: inWording(w, words.Pages), Words: w, Otherwise: "/?words=" + words.Wordings[1-w],
	}}
	for _, t := range words.Topics {
		one := topic{Title: t.Title, Text: w.Text(t.Story), Story: linkTo(t.Problem)}
		if l, err := models.Teach(t.Problem, ""); err == nil {
			one.Picture = show(Picture{Problem: l.Problem.String(), Hidden: true, Words: w}, l.Worded(w).Whole, false)
		}
		c.Topics = append(c.Topics, one)
	}
	seen := map[string]bool{}
	for _, m := range models.All {
		for _, text := range m.Examples {
			read, err := reading.Read(text)
			if err != nil || seen[read.Problem.String()] {
				continue
			}
			seen[read.Problem.String()] = true
			c.Topics[words.TopicOf(read.Problem)].add(read.Problem, linkTo)
		}
	}
	for i := range c.Topics {
		c.Topics[i].choose()
	}
	if l, err := models.Teach("2/3 < 3/4", ""); err == nil {
		c.Front, c.FrontURL = show(Picture{Problem: l.Problem.String(), Words: w}, l.Worded(w).Whole, false), linkTo(l.Problem.String()).URL
	}
	for _, text := range []string{"402 - 178", "7 x 8", "3/4 = 6/8"} {
		if read, err := reading.Read(text); err == nil {
			c.Such = append(c.Such, linkTo(read.Problem.String()))
		}
	}
	return c
}

// add puts a problem under its kind.
func (t *topic) add(p arithmetic.Problem, linkTo func(string) link) {
	title := words.KindTitle(p.Kind)
	at := slices.IndexFunc(t.Kinds, func(k kind) bool { return k.Title == title })
	if at < 0 {
		at = len(t.Kinds)
		t.Kinds = append(t.Kinds, kind{Title: title})
	}
	t.Kinds[at].Examples = append(t.Kinds[at].Examples, linkTo(p.String()))
}

// choose takes a few examples to show at once, the first of every kind before the
// second of any.
func (t *topic) choose() {
	const few = 4
	for turn := 0; len(t.Examples) < few; turn++ {
		before := len(t.Examples)
		for _, k := range t.Kinds {
			if turn < len(k.Examples) && len(t.Examples) < few && k.Examples[turn].URL != t.Story.URL {
				t.Examples = append(t.Examples, k.Examples[turn])
			}
		}
		if turn > few && before == len(t.Examples) {
			return
		}
	}
}

// ask serves /.
func (s *site) ask(w http.ResponseWriter, r *http.Request) {
	wording, err := ReadWording(readQuery(r.URL.RawQuery)["words"])
	if err != nil {
		s.fault(w, r, troubled(err), "", "", "/lesson")
		return
	}
	render(w, r, "ask.html", s.covers[wording](), http.StatusOK, page)
}
