package api

import (
	"html/template"
	"slices"

	"modeler/models"
	"modeler/models/words"
)

// Writings are the ways to write a calculation where they differ: as in the United
// States, or as in much of Europe.
var Writings = []string{"us", "europe"}

// ReadWriting reads the name of a writing; "" is the first. Its error is a
// *[Trouble].
func ReadWriting(v string) (europe bool, err error) {
	name := word(v)
	if name == "" {
		return false, nil
	}
	if !slices.Contains(Writings, name) {
		return false, oneOf("writing", name, Writings)
	}
	return name == Writings[1], nil
}

// writes reports whether any step of a lesson is also written as in Europe.
func writes(steps []models.Step) bool {
	return slices.ContainsFunc(steps, func(s models.Step) bool { return len(s.Europe.Lines) > 0 })
}

// inWriting gives the page the symbols of the writing that was asked for, and a
// link to the other one.
func (v *lessonPage) inWriting(l models.Lesson, c choices) {
	if !writes(l.Steps) {
		return
	}
	other := c
	other.Europe = !c.Europe
	v.Writing = link{Text: words.Pages.Europe, URL: other.url(l.Problem.String())}
	if !c.Europe {
		return
	}
	v.Writing.Text = words.Pages.US
	for i, s := range l.Steps {
		if len(s.Europe.Lines) > 0 {
			v.Steps[i].Symbols = template.HTML(s.Europe.MathML()) // its texts are escaped where they are written
			v.Steps[i].Spoken = spoken(s.Europe)
			v.Steps[i].Link = phrase(s.Link)
		}
	}
}
