package api

import (
	"net/http"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/words"
)

// cover is the page that asks.
type cover struct {
	head
	Front    shown // one whole story, to show what comes
	FrontURL string
	Such     []link
	Topics   []topic
}

type topic struct {
	Title, Text string
	Story       link
	Picture     shown
	Examples    []link
}

// newCover sorts the examples of every model under their topics, each problem
// once, a few of each model.
func newCover(style string) cover {
	c := cover{head: head{
		Title: "modeler: a lesson for any problem, told three times",
		Doc:   "Type a problem as it stands in the book and get the whole lesson: what to do with the pieces, what to draw, what to write.",
		Style: style, Skip: "the examples", Label: "Your problem", W: words.Pages,
	}}
	const most = 8 // links under a topic
	seen := map[string]bool{}
	for _, t := range words.Topics {
		one := topic{Title: t.Title, Text: t.Story, Story: linkTo(t.Problem, "")}
		if l, err := models.Teach(t.Problem, ""); err == nil {
			one.Picture = show(Picture{Problem: l.Problem.String(), Hidden: true}, l.Whole, false)
			seen[l.Problem.String()] = true
		}
		c.Topics = append(c.Topics, one)
	}
	for _, m := range models.All {
		for _, text := range m.Examples {
			read, err := reading.Read(text)
			if err != nil || seen[read.Problem.String()] {
				continue
			}
			problem := read.Problem.String()
			seen[problem] = true
			at := &c.Topics[words.TopicOf(read.Problem)]
			if len(at.Examples) < most {
				at.Examples = append(at.Examples, linkTo(problem, ""))
			}
		}
	}
	if l, err := models.Teach("2/3 < 3/4", ""); err == nil {
		c.Front, c.FrontURL = show(Picture{Problem: l.Problem.String()}, l.Whole, false), lessonURL("/lesson", l.Problem.String(), "")
	}
	for _, text := range []string{"402 - 178", "7 x 8", "3/4 = 6/8"} {
		if read, err := reading.Read(text); err == nil {
			c.Such = append(c.Such, linkTo(read.Problem.String(), ""))
		}
	}
	return c
}

// ask serves /.
func (s *site) ask(w http.ResponseWriter, r *http.Request) {
	render(w, r, "ask.html", s.cover, http.StatusOK, page)
}
