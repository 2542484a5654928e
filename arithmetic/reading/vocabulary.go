package reading

import (
	"maps"
	"slices"
	"strings"
)

// vocabulary is every word that the reader knows, sorted.
var vocabulary = func() []string {
	known := map[string]bool{}
	add := func(phrases ...string) {
		for _, p := range phrases {
			for _, w := range strings.Fields(p) {
				known[w] = true
			}
		}
	}
	for _, list := range [][]string{passedOver, openers, rewriters, askers, ordering, versus, between, upward, downward,
		factoring, rounding, simplest, unknowns, unknownWords, inDigits, noSigns, evenOdd, allOf, asMany, digitOpeners, digitEndings, countForward, countBack, countBy, countFrom,
		countTo, countTerms, countTimes, ruleOpeners, ruleEndings, ruleListings, startWords, nextOpeners, familyOpeners, estimateOpeners, estimateTo} {
		add(list...)
	}
	for start, list := range pairs {
		add(start)
		for _, p := range list {
			add(p.between)
		}
	}
	add(slices.Collect(maps.Keys(infixes))...)
	add(slices.Collect(maps.Keys(turnedInfixes))...)
	add(slices.Collect(maps.Keys(relations))...)
	add(slices.Collect(maps.Keys(forms))...)
	add(slices.Collect(maps.Keys(places))...)
	add(slices.Collect(maps.Keys(small))...)
	add(slices.Collect(maps.Keys(partNames))...)
	add(slices.Collect(maps.Keys(multiples))...)
	add(slices.Collect(maps.Keys(choosing))...)
	add(slices.Collect(maps.Keys(unitNames))...)
	add(slices.Collect(maps.Keys(timesAs))...)
	add(slices.Collect(maps.Keys(questions))...)
	add(slices.Collect(maps.Keys(rests))...)
	add(slices.Collect(maps.Keys(steps))...)
	add(slices.Collect(maps.Keys(properties))...)
	add(slices.Collect(maps.Keys(asking))...)
	add(slices.Collect(maps.Keys(pluralWords))...)
	add(slices.Collect(maps.Keys(ruleSteps))...)
	add(slices.Collect(maps.Keys(ruleTimes))...)
	for _, list := range [][]string{percents, equalOpeners, breakOpeners, coinOpeners, changeOpeners, changeFor, changeFrom, closerWords, closerOpeners, shapeAdjectives, shadedWords} {
		add(list...)
	}
	add(slices.Collect(maps.Keys(shapes))...)
	add(slices.Collect(maps.Keys(coinNames))...)
	for _, list := range [][]string{dollarNames, centNames, coinValues, coinMakers} {
		add(list...)
	}
	add(slices.Collect(maps.Keys(smallPlaces))...)
	add(slices.Collect(maps.Keys(wholes))...)
	add("go", "into", "fit", "can", "you", "from", "does", "than", "digit", "place", "worth", "first", "rule", "pattern", "back", "backward", "backwards", "forward", "forwards", "each", "then", "next", "so", "on", "number")
	add("denominator", "out", "parts", "equal parts", "wholes", "compare", "round off", "halve", "same", "dozen", "how many", "in", "there are in", "make", "on number line", "over", "array")
	return slices.Sorted(maps.Keys(known))
}()
