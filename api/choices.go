package api

import (
	"slices"
	"strconv"

	"modeler/models/words"
	"modeler/svg"
)

// choices are what the address of a lesson's page chooses beside the problem, so
// that a lesson as it is looked at is a bookmark.
type choices struct {
	Model  string // "" is the one a teacher would reach for
	Step   int    // the move that is shown alone, from 1; 0 is all of them
	Hidden bool   // without the answers, for the child
	Ink    bool   // in black on white
	Europe bool   // written as in much of Europe
	Words  words.Wording
}

// inks are the values of the page's parameter theme. Dark is for the reader's screen
// to say.
var inks = []string{"colour", "ink"}

// readChoices reads the parameters by their names. Its error is a *[Trouble], and
// what could be read is returned beside it.
func readChoices(q query) (c choices, err error) {
	keep := func(e error) {
		if err == nil {
			err = e
		}
	}
	one := func(name string, values []string) bool {
		v := word(q[name])
		if v != "" && !slices.Contains(values, v) {
			keep(oneOf(name, v, values))
		}
		return v == values[1]
	}
	var e error
	if c.Model, e = readModel(q["model"]); e != nil {
		keep(e)
	}
	if v := q["step"]; v != "" {
		n, t := number("step", v, 1, 1000)
		if t != nil {
			keep(t)
		}
		c.Step = n
	}
	c.Hidden = one("answer", []string{"shown", "hidden"})
	c.Ink = one("theme", inks)
	c.Europe = one("writing", Writings)
	if c.Words, e = ReadWording(q["words"]); e != nil {
		keep(e)
	}
	return c, err
}

// url is the address of a problem's lesson with these choices.
func (c choices) url(problem string) string {
	u := lessonURL("/lesson", problem, c.Model)
	if c.Step > 0 {
		u += "&step=" + strconv.Itoa(c.Step)
	}
	if c.Hidden {
		u += "&answer=hidden"
	}
	if c.Ink {
		u += "&theme=ink"
	}
	if c.Europe {
		u += "&writing=europe"
	}
	return u + inWords(c.Words)
}

// at is the same with another move alone; 0 is all of them.
func (c choices) at(step int) choices {
	c.Step = step
	return c
}

// kept are the choices that go along to another problem: how things are written.
func (c choices) kept() choices { return choices{Europe: c.Europe, Words: c.Words} }

// picture is how the pictures of the page are drawn.
func (c choices) picture(problem string) Picture {
	p := Picture{Problem: problem, Model: c.Model, Hidden: c.Hidden, Words: c.Words}
	if c.Ink {
		p.Theme = svg.Named("ink")
	}
	return p
}

// link leads to a problem's lesson with these choices.
func (c choices) link(problem string) link {
	return link{Text: problem, URL: c.url(problem), Pieces: typeset(problem)}
}
