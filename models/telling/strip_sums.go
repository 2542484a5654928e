package telling

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// SumOfStrips joins two terms by the sign of a sum or a difference.
func SumOfStrips(p arithmetic.Problem, a, b notation.Line) notation.Line {
	sign := arithmetic.Add
	if p.Kind == arithmetic.Subtraction {
		sign = arithmetic.Subtract
	}
	return Join(a, notation.S(sign.String()), b)
}

// SumEquations are a sum or difference with a question mark, and with all its names
// up to the last. Where they have no room, the last name is left out first: what was
// regrouped is what the picture shows.
func SumEquations(w arithmetic.Working) (asked, answered notation.Line) {
	const smallest = 36 // a long equation is written a little smaller before names are left out
	a, b, _ := w.Problem.Operands()
	problem := SumOfStrips(w.Problem, Numeral(a, scene.First), Numeral(b, scene.Second))
	between, results := sumNames(w)
	last := len(results) - 1
	for _, names := range [][]notation.Line{
		slices.Concat(between, results), slices.Concat(between, results[:1]), results, {results[0], results[last]}, results[last:],
	} {
		answered = problem
		for i, name := range names {
			if i == 0 || name.Text() != names[i-1].Text() {
				answered = Join(answered, notation.S("="), name)
			}
		}
		if Width(answered, smallest, true) <= scene.PaperW-2*scene.Margin {
			break
		}
	}
	return Join(problem, notation.S("="), Unknown()), answered
}

// sumNames are the problem once its parts are cut as they are needed, if they are,
// and the names of the result in the order in which they are met.
func sumNames(w arithmetic.Working) (between, results []notation.Line) {
	var laid, amounts [2]arithmetic.Strips
	for _, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayStrips:
			laid[m.Nth], amounts[m.Nth] = m.Strips, m.Strips
		case arithmetic.CutParts:
			amounts[m.Nth] = m.To
		case arithmetic.OpenWholes:
			amounts[m.Nth] = m.To
		case arithmetic.CountParts:
			results = append(results, Strips(m.Total, scene.Result))
		case arithmetic.MakeWholes:
			results = append(results, Strips(m.To, scene.Result))
		case arithmetic.MergeParts:
			results = append(results, Strips(m.To, scene.Result))
		}
	}
	if amounts != laid {
		between = []notation.Line{SumOfStrips(w.Problem, Strips(amounts[0], scene.First), Strips(amounts[1], scene.Second))}
	}
	if w.Answer.Simplest.Value.Num() == 0 {
		results = append(results, Numeral(w.Answer.Simplest, scene.Result))
	}
	return between, results
}
