// Package words makes every sentence of a lesson: what to do with the hands,
// what to ask the child, what a picture shows. Nothing else glues words
// together, so that another wording or language is a change in one place.
//
// The wording is US English: "four hundred two", "three fourths".
package words

import (
	"strings"

	"modeler/models/scene"
)

// Span is a stretch of text in one role; numbers carry the role, and so the
// colour, that they have in the picture.
type Span struct {
	Text string
	Role scene.Role
}

// Phrase is a text with roles.
type Phrase []Span

// String is the phrase without its roles.
func (p Phrase) String() string {
	var b strings.Builder
	for _, s := range p {
		b.WriteString(s.Text)
	}
	return b.String()
}

// Say joins plain strings and spans. It panics on anything else, which is a
// mistake in the program and not in what a person typed.
func Say(parts ...any) Phrase {
	var p Phrase
	for _, part := range parts {
		switch v := part.(type) {
		case string:
			p = append(p, Span{Text: v})
		case Span:
			p = append(p, v)
		case Phrase:
			p = append(p, v...)
		default:
			panic("words: neither a string nor a span")
		}
	}
	return p
}

// In puts a text in a role.
func In(role scene.Role, text string) Span { return Span{text, role} }

// List joins names as in "a, b and c".
func List(names []string) string {
	switch len(names) {
	case 0:
		return ""
	case 1:
		return names[0]
	}
	last := len(names) - 1
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// Told is a step in words: what heads it, what to do with the hands, what to ask the
// child before it, and what its picture shows.
type Told struct {
	Title      string
	Hands, Ask Phrase
	Desc       scene.Telling
}
