package bars

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// equations are the problem with a question mark, and all its names up to the
// last. Where they have no room, the last name is left out first: what was
// regrouped is what the picture shows.
func (d *adding) equations() (asked, answered notation.Line) {
	const smallest = 36 // a long equation is written a little smaller before names are left out
	problem := d.sum(telling.Numeral(d.numbers[0], scene.First), telling.Numeral(d.numbers[1], scene.Second))
	between, results := d.names()
	last := len(results) - 1
	for _, names := range [][]notation.Line{
		slices.Concat(between, results), slices.Concat(between, results[:1]), results, {results[0], results[last]}, results[last:],
	} {
		answered = problem
		for i, name := range names {
			if i == 0 || name.Text() != names[i-1].Text() {
				answered = telling.Join(answered, notation.S("="), name)
			}
		}
		if telling.Width(answered, smallest, true) <= scene.PaperW-2*scene.Margin {
			break
		}
	}
	return telling.Join(problem, notation.S("="), telling.Unknown()), answered
}

// names are the problem once its parts are cut as they are needed, if they are,
// and the names of the result in the order in which they are met.
func (d *adding) names() (between, results []notation.Line) {
	amounts := d.laid
	for _, move := range d.working.Moves {
		switch m := move.(type) {
		case arithmetic.CutParts:
			amounts[m.Nth] = m.To
		case arithmetic.OpenWholes:
			amounts[m.Nth] = m.To
		case arithmetic.CountParts:
			results = append(results, stripsLine(m.Total, scene.Result))
		case arithmetic.MakeWholes:
			results = append(results, stripsLine(m.To, scene.Result))
		case arithmetic.MergeParts:
			results = append(results, stripsLine(m.To, scene.Result))
		}
	}
	if amounts != d.laid {
		between = []notation.Line{d.sum(stripsLine(amounts[0], scene.First), stripsLine(amounts[1], scene.Second))}
	}
	if d.working.Answer.Simplest.Value.Num() == 0 {
		results = append(results, telling.Numeral(d.working.Answer.Simplest, scene.Result))
	}
	return between, results
}
