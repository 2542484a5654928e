// Package models turns a problem into a lesson: the moves told with the hands,
// in a picture and in symbols. Each model is a folder of its own and one line in
// [All]; what they share is in [modeler/models/telling].
package models

import (
	"errors"
	"slices"

	"modeler/arithmetic"
	"modeler/models/area"
	"modeler/models/array"
	"modeler/models/balance"
	"modeler/models/bars"
	"modeler/models/blocks"
	"modeler/models/bond"
	"modeler/models/chart"
	"modeler/models/coins"
	"modeler/models/cubes"
	"modeler/models/diagram"
	"modeler/models/discs"
	"modeler/models/frames"
	"modeler/models/groups"
	"modeler/models/hundredths"
	"modeler/models/line"
	"modeler/models/places"
	"modeler/models/shapes"
	"modeler/models/square"
	"modeler/models/table"
	"modeler/models/telling"
	"modeler/models/wall"
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
	frames.Model,
	cubes.Model,
	array.Model,
	area.Model,
	bars.Model,
	line.Model,
	balance.Model,
	coins.Model,
	diagram.Model,
	places.Model,
	groups.Model,
	bond.Model,
	discs.Model,
	chart.Model,
	square.Model,
	table.Model,
	hundredths.Model,
	wall.Model,
	shapes.Model,
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
// front. When there is none, why is the reason of the first model that tells
// problems of that kind; it is nil when no model does.
func Fitting(p arithmetic.Problem) (fit []*Model, why error) {
	for _, m := range inTurn(p) {
		err := m.Fits(p)
		if err == nil {
			fit = append(fit, m)
		} else if why == nil && !errors.Is(err, telling.ErrNotMine) {
			why = err
		}
	}
	return fit, why
}

// first is the head of what [Fitting] lists, found without asking the rest.
func first(p arithmetic.Problem) (fit *Model, why error) {
	for _, m := range inTurn(p) {
		err := m.Fits(p)
		if err == nil {
			return m, nil
		}
		if why == nil && !errors.Is(err, telling.ErrNotMine) {
			why = err
		}
	}
	return nil, why
}

// inTurn lists all models in the order in which they are asked about a problem.
func inTurn(p arithmetic.Problem) []*Model {
	turn := make(map[*Model]int, len(All)) // it may take some work, so each is asked once
	for _, m := range All {
		turn[m] = m.Turn(p)
	}
	order := slices.Clone(All)
	slices.SortStableFunc(order, func(a, b *Model) int { return turn[a] - turn[b] })
	return order
}
