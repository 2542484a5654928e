package models

import (
	"errors"
	"fmt"
	"slices"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models/words"
)

// Lesson is a problem read, worked and told: everything that the command line,
// the page and the API show.
type Lesson struct {
	reading.Reading
	Model *Model
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
	return TeachAsRead(r, name)
}

// TeachAsRead is [Teach] for a problem that was read already, by [Read].
func TeachAsRead(r reading.Reading, name string) (Lesson, error) {
	if err := arithmetic.Check(r.Problem); err != nil {
		return Lesson{}, unanswerable(r, err)
	}
	m, err := choose(r, name)
	if err != nil {
		return Lesson{}, err
	}
	return Lesson{Reading: r, Model: m, Telling: m.Tell(r.Problem)}, nil
}

// choose is the named model, or when name is empty the first that fits.
func choose(r reading.Reading, name string) (*Model, error) {
	if name == "" {
		m, why := first(r.Problem)
		if m == nil {
			return nil, noPicture(r, why)
		}
		return m, nil
	}
	m := Named(name)
	if m == nil {
		return nil, unknownModel(r, name)
	}
	if why := m.Fits(r.Problem); why != nil {
		return nil, misfit(r, m, why)
	}
	return m, nil
}

// Others lists the other models that fit the problem, the one to use next in front.
func (l Lesson) Others() []*Model {
	fit, _ := Fitting(l.Problem)
	return slices.DeleteFunc(fit, func(m *Model) bool { return m == l.Model })
}

// unanswerable explains why a problem that reads well has no answer to show, and
// offers the nearest one that has.
func unanswerable(r reading.Reading, err error) error {
	e := wholeText(r)
	switch {
	case errors.Is(err, arithmetic.ErrDivideByZero):
		e.Code = reading.DivideByZero
		e.Message, e.Hint = words.DivideByZero(r.Problem)
	case errors.Is(err, arithmetic.ErrNegative):
		e.Code = reading.Negative
		e.Message, e.Hint = words.Negative(r.Problem)
	case errors.Is(err, arithmetic.ErrEndless):
		e.Code = reading.Endless
		e.Message, e.Hint = words.Endless(r.Problem)
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

func unknownModel(r reading.Reading, name string) error {
	fit, why := Fitting(r.Problem)
	if len(fit) == 0 {
		return noPicture(r, why)
	}
	e := wholeText(r)
	e.Code = reading.NoSuchModel
	e.Message = fmt.Sprintf("there is no model called %q", clip(name, 40))
	e.Hint = "these fit the problem: " + names(fit)
	e.Try = r.Problem.String()
	return e
}

func misfit(r reading.Reading, m *Model, why error) error {
	fit, reason := Fitting(r.Problem)
	if len(fit) == 0 {
		return noPicture(r, reason)
	}
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
