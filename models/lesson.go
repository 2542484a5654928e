package models

import (
	"errors"
	"fmt"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models/words"
)

// Lesson is a problem read, worked and told: everything that the command line,
// the page and the API show.
type Lesson struct {
	reading.Reading
	Model  *Model
	Others []*Model // the other models that fit
	Telling
}

// Teach reads a problem and tells it with the named model, or with the one that
// a teacher would reach for when name is empty. Its error is always a
// *[reading.Error].
func Teach(problem, name string) (Lesson, error) {
	r, err := Read(problem)
	if err != nil {
		return Lesson{}, err
	}
	if err := arithmetic.Check(r.Problem); err != nil {
		return Lesson{}, unanswerable(r, err)
	}
	fit, why := Fitting(r.Problem)
	if len(fit) == 0 {
		return Lesson{}, noPicture(r, why)
	}
	chosen := fit[0]
	if name != "" {
		if chosen = Named(name); chosen == nil {
			return Lesson{}, unknownModel(r, name, fit)
		}
		if err := chosen.Fits(r.Problem); err != nil {
			return Lesson{}, misfit(r, chosen, err, fit)
		}
	}
	lesson := Lesson{Reading: r, Model: chosen, Telling: chosen.Tell(r.Problem)}
	for _, m := range fit {
		if m != chosen {
			lesson.Others = append(lesson.Others, m)
		}
	}
	return lesson, nil
}

// unanswerable explains why a problem that reads well has no answer to show, and
// offers the nearest one that has.
func unanswerable(r reading.Reading, err error) error {
	e := wholeText(r)
	switch {
	case errors.Is(err, arithmetic.ErrDivideByZero):
		e.Code = reading.DivideByZero
		e.Message, e.Hint = words.DivideByZero()
	case errors.Is(err, arithmetic.ErrNegative):
		e.Code = reading.Negative
		e.Message, e.Hint = words.Negative(r.Problem)
	default:
		e.Code = reading.TooLarge
		e.Message, e.Hint = words.TooLarge()
	}
	e.Try = near(r.Problem)
	return e
}

// noPicture says why no model tells a problem, and offers one near it.
func noPicture(r reading.Reading, why error) error {
	e := wholeText(r)
	e.Code = reading.NoPicture
	e.Message = "there is no picture of " + r.Problem.String()
	e.Hint, e.Try = words.NoPicture(r.Problem, why), near(r.Problem)
	return e
}

func unknownModel(r reading.Reading, name string, fit []*Model) error {
	e := wholeText(r)
	e.Code = reading.NoSuchModel
	e.Message = fmt.Sprintf("there is no model called %q", clip(name, 40))
	e.Hint = "these fit the problem: " + names(fit)
	e.Try = r.Problem.String()
	return e
}

func misfit(r reading.Reading, m *Model, why error, fit []*Model) error {
	e := wholeText(r)
	e.Code = reading.NoPicture
	e.Message = m.Title + " cannot show " + r.Problem.String() + ": " + why.Error()
	e.Hint = "these fit the problem: " + names(fit)
	e.Try = r.Problem.String()
	return e
}

func wholeText(r reading.Reading) *reading.Error {
	return &reading.Error{Text: r.Text, End: len([]rune(r.Text))}
}

func names(models []*Model) string {
	list := make([]string, len(models))
	for i, m := range models {
		list[i] = m.Name
	}
	return words.List(list)
}

func clip(s string, n int) string {
	if r := []rune(s); len(r) > n {
		return string(r[:n]) + "…"
	}
	return s
}
