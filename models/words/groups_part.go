package words

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// Take takes some of the plates.
func (a EqualGroups) Take(f fraction.Fraction, m arithmetic.TakeGroups) (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Take " + Count(m.Groups, "plate")
	all := In(scene.Result, g(m.Sum))
	hands = Say("Take "+g(m.Groups)+" of the "+Count(m.Of, "plate")+". There are ", all, " on them.")
	ask = Say("How many plates does the " + g(f.Num()) + " above the bar ask for? How many are on them?")
	switch {
	case m.Groups == 0:
		title, hands = "Take no plates", Say("Take none of the "+Count(m.Of, "plate")+": that is ", all, ".")
	case m.Groups == 1:
		hands = Say("Take 1 of the "+Count(m.Of, "plate")+". There are ", all, " on it.")
		if m.Sum == 1 {
			hands = Say("Take 1 of the "+Count(m.Of, "plate")+". There is ", all, " on it.")
		}
	}
	plates := g(a.Total) + " shared equally on " + Count(m.Of, "plate")
	of := f.String() + " of " + g(a.Total)
	taken := capital(Name(m.Groups)) + " of them " + map[bool]string{true: "is", false: "are"}[m.Groups == 1] + " taken"
	desc.Shown = plates + ", " + g(m.Each) + " on each. " + taken + ": " + of + " is " + g(m.Sum) + "."
	desc.Hidden = plates + ". " + taken + ". What is " + of + "?"
	return title, hands, ask, desc
}
