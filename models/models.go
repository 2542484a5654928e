// Package models turns a problem into a lesson: the moves told with the hands,
// in a picture and in symbols. Each model is a folder of its own and one line in
// [All]; what they share is in [modeler/models/telling].
package models

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/array"
	"modeler/models/bars"
	"modeler/models/blocks"
	"modeler/models/line"
	"modeler/models/telling"
)

// The parts of a lesson, under the names that its readers use.
type (
	Model   = telling.Model
	Telling = telling.Telling
	Step    = telling.Step
)

// All lists the models in the order they are tried.
var All = []*Model{
	blocks.Model,
	array.Model,
	bars.Model,
	line.Model,
}

// Named returns the model of that name, or nil.
func Named(name string) *Model {
	for _, m := range All {
		if m.Name == name {
			return m
		}
	}
	return nil
}

// Fitting lists the models that can tell a problem, the one to use first in
// front. When there is none, why has the reasons of the models that a teacher
// would reach for; it is empty when no model is meant for the kind at all.
func Fitting(p arithmetic.Problem) (fit []*Model, why []error) {
	for _, m := range All {
		err := m.Fits(p)
		switch {
		case err == nil:
			fit = append(fit, m)
		case reachedFor(m, p.Kind):
			why = append(why, err)
		}
	}
	slices.SortStableFunc(fit, func(a, b *Model) int { return turn(a, p.Kind) - turn(b, p.Kind) })
	return fit, why
}

// reachedFor reports whether a teacher reaches for the model first.
func reachedFor(m *Model, kind arithmetic.Kind) bool { return slices.Contains(m.First, kind) }

func turn(m *Model, kind arithmetic.Kind) int {
	if reachedFor(m, kind) {
		return 0
	}
	return 1
}
