// Package laws says what is true of every lesson and every picture, whichever
// model told it. A golden notices a change; a law proves a picture.
//
// Each law is a function that returns nil, or an error that says what is wrong.
// Laws take what is drawn from the scene and what is true from package problems,
// never from the procedures that told the lesson.
package laws

import (
	"fmt"

	"modeler/arithmetic"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
)

// Lesson is a problem told by a model, with what is true of it.
type Lesson struct {
	Model   *models.Model
	Problem arithmetic.Problem
	Truth   problems.Truth
	models.Telling
}

// Tell has a model tell a problem that fits it. That a model panics is an error
// here, so that the other problems are still tried.
func Tell(m *models.Model, p arithmetic.Problem) (l Lesson, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%s: %s: it fits and then panics: %v", m.Name, p, r)
		}
	}()
	truth, err := problems.Work(p)
	if err != nil {
		return Lesson{}, fmt.Errorf("%s: %s: %w", m.Name, p, err)
	}
	return Lesson{m, p, truth, m.Tell(p)}, nil
}

// Picture is one picture of a lesson in one version.
type Picture struct {
	*Lesson
	Step   int          // 0 is the whole story
	Hidden bool         // the answer is not given away
	Scene  *scene.Scene // as the model made it, with the items of both versions
}

// Pictures are the whole story and every step, with the answer shown and hidden.
func (l *Lesson) Pictures() []Picture {
	var list []Picture
	for _, hidden := range []bool{false, true} {
		list = append(list, Picture{l, 0, hidden, l.Whole})
		for i, s := range l.Steps {
			list = append(list, Picture{l, i + 1, hidden, s.Scene})
		}
	}
	return list
}

// String names the picture: array: 7 × 8, step 2, hidden.
func (p Picture) String() string {
	name := p.Model.Name + ": " + p.Problem.String()
	if p.Step > 0 {
		name += fmt.Sprintf(", step %d", p.Step)
	}
	if p.Hidden {
		name += ", hidden"
	}
	return name
}

// visible are the items that are drawn in this version.
func (p Picture) visible() []scene.Item { return p.Scene.View(p.Hidden).Items }

// Law is something that holds for every picture.
type Law struct {
	Name  string
	Holds func(Picture) error
}

// OfPictures lists the laws of pictures.
var OfPictures = []Law{
	{"inside", Inside},
	{"labels apart", LabelsApart},
	{"labels clear", LabelsClear},
	{"upright", Upright},
	{"at their marks", AtTheirMarks},
	{"counting", Counting},
	{"equal size", EqualSize},
	{"no overlap", NoOverlap},
	{"jumps to scale", JumpsToScale},
	{"says the problem", SaysTheProblem},
	{"hiding", Hiding},
	{"unanswered", Unanswered},
	{"subset", Subset},
}

// OfLessons lists the laws of whole lessons.
var OfLessons = []struct {
	Name  string
	Holds func(*Lesson) error
}{
	{"true answer", TrueAnswer},
	{"three tellings", ThreeTellings},
	{"one scale", OneScale},
	{"every step is told", EveryStepIsTold},
}

// Check tries every law on a lesson and, when those of lessons hold, on all its
// pictures. It returns the laws that are broken, each with the first picture that
// breaks it.
func Check(l *Lesson) []error {
	var broken []error
	for _, law := range OfLessons {
		if err := law.Holds(l); err != nil {
			broken = append(broken, fmt.Errorf("the law %q: %s: %s: %w", law.Name, l.Model.Name, l.Problem, err))
		}
	}
	if len(broken) > 0 {
		return broken
	}
	for _, law := range OfPictures {
		for _, p := range l.Pictures() {
			if err := law.Holds(p); err != nil {
				broken = append(broken, fmt.Errorf("the law %q: %s: %w", law.Name, p, err))
				break
			}
		}
	}
	return broken
}
