package models

import (
	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models/words"
)

// Read reads a problem. Its error is always a *[reading.Error], and its Try has a
// lesson.
func Read(text string) (reading.Reading, error) {
	r, err := reading.Read(text)
	if e, ok := err.(*reading.Error); ok {
		e.Try = teachable(e.Try)
		return r, e
	}
	return r, nil
}

// teachable is the text of a problem if it has a lesson, or else of one near it
// that has. A claim that is not true is nothing to offer: of that its first side
// is.
func teachable(text string) string {
	r, err := reading.Read(text)
	if err != nil {
		return words.AnyProblem
	}
	if hasLesson(r.Problem) && !isFalse(r.Problem) {
		return r.Problem.String()
	}
	return near(r.Problem)
}

// near is the text of a problem near p that has a lesson: an easier one of its
// kind or a part of it, or the first example of its kind with numbers like its
// own, or of its kind.
func near(p arithmetic.Problem) string {
	for _, q := range arithmetic.Nearby(p) {
		if again, err := reading.Read(q.String()); err == nil && hasLesson(again.Problem) && !isFalse(again.Problem) {
			return again.Problem.String()
		}
	}
	for _, close := range []func(q arithmetic.Problem) bool{
		func(q arithmetic.Problem) bool { return arithmetic.Alike(p, q) },
		func(q arithmetic.Problem) bool { return p.Kind == q.Kind },
	} {
		for _, m := range All {
			for _, text := range m.Examples {
				if r, err := reading.Read(text); err == nil && close(r.Problem) && !isFalse(r.Problem) {
					return r.Problem.String()
				}
			}
		}
	}
	return words.AnyProblem
}

// Next is the problem to try after a lesson: of the same kind, with numbers of the
// same type, told with the same model. ok is false when there is none.
func Next(l Lesson) (problem string, ok bool) {
	p, ok := arithmetic.Next(l.Problem)
	if !ok {
		return "", false
	}
	r, err := reading.Read(p.String())
	if err != nil || r.Problem.Kind != p.Kind || arithmetic.Check(r.Problem) != nil || l.Model.Fits(r.Problem) != nil {
		return "", false
	}
	return r.Problem.String(), true
}

func hasLesson(p arithmetic.Problem) bool {
	if arithmetic.Check(p) != nil {
		return false
	}
	fit, _ := Fitting(p)
	return len(fit) > 0
}

func isFalse(p arithmetic.Problem) bool {
	a, err := arithmetic.Judge(p)
	return err == nil && p.Kind == arithmetic.Claim && !a.True
}
