package words

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// DiagramEqual describes the whole story of equal parts.
func DiagramEqual(p arithmetic.Problem, plan arithmetic.EqualBars, scaled bool) scene.Telling {
	t := equalStory(plan, p.Kind == arithmetic.Product)
	if !scaled {
		t.Shown, t.Hidden = t.Shown+" It is not to scale.", "It is not to scale. "+t.Hidden
	}
	return t
}

// equalStory describes equal parts with their answer and without it. laid says that
// the parts are known and the total asked.
func equalStory(plan arithmetic.EqualBars, laid bool) scene.Telling {
	n, size, total := plan.Count, plan.Size, plan.Total
	parts := equalParts(n.N)
	if plan.Taken > 0 {
		f := fraction.Must(plan.Taken, n.N).String() + " of " + g(total.N)
		bar := "A bar for " + g(total.N) + " in " + parts
		took := g(plan.Taken) + " of them " + areIs(plan.Taken) + " marked"
		return scene.Telling{
			Shown:  bar + ", " + g(size.N) + " in each. " + took + ": " + f + " is " + g(plan.Sum) + ".",
			Hidden: bar + ". " + took + ". What is " + f + "?",
		}
	}
	if plan.Unit {
		bars := "A bar for " + g(size.N) + " and under it a bar for " + g(total.N) + ", " + g(n.N) + " times as long."
		t := scene.Telling{Shown: bars}
		switch {
		case laid:
			t.Hidden = "A bar for " + g(size.N) + " and under it one that is " + g(n.N) + " times as long. What is its number?"
		case n.Nth == arithmetic.Asked:
			t.Hidden = "A bar for " + g(size.N) + " and under it a bar for " + g(total.N) + ". How many times as long is it?"
		default:
			t.Hidden = "A bar for " + g(total.N) + " in " + parts + ". The bar above it is as long as one part. What is its number?"
		}
		return t
	}
	t := scene.Telling{Shown: "A bar for " + g(total.N) + " in " + parts + ", " + g(size.N) + " in each"}
	if plan.Left > 0 {
		t.Shown += ", and " + g(plan.Left) + " left over"
	}
	t.Shown += "."
	switch {
	case laid:
		t.Hidden = "A bar of " + parts + ", " + g(size.N) + " in each. How much is the whole?"
	case n.Nth == arithmetic.Asked:
		t.Hidden = "A bar for " + g(total.N) + ". One group of " + g(size.N) + " is marked off. How many such groups does it make?"
	default:
		t.Hidden = "A bar for " + g(total.N) + " in " + parts + ". How much is each part?"
	}
	return t
}
