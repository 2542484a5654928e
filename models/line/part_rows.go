package line

import (
	"modeler/models/scene"
)

// nameFreeWholes names the wholes of a row of fractions or decimals where there is
// room beside the landings, whose names matter more.
func (k *sketch) nameFreeWholes() {
	// Where there are more wholes than the paper has room for, none has a name: the time
	// that is taken must not grow with the numbers.
	if k.scale.Parts <= 1 || (k.hi-k.lo)/k.scale.Parts > scene.PaperW/labelGap {
		return
	}
	wide := func(runs []scene.Run) int { return scene.Text{Size: scene.Middle, Runs: runs}.Width() }
	landings := k.stops
	const gap = 2 * labelGap // so that 0 and 3/12 are not read as one number
	for at := (k.lo + k.scale.Parts - 1) / k.scale.Parts * k.scale.Parts; at <= k.hi; at += k.scale.Parts {
		name := stop{at: at, label: runsOf("", k.scale.WriteShort(at)), role: scene.Note}
		free := true
		for _, s := range landings {
			free = free && abs(k.x(s.at)-k.x(at)) >= (wide(s.label)+wide(name.label))/2+gap
		}
		if free {
			k.addStop(name)
		}
	}
}

// shifted reports whether a name stands so far beside its place that it could be
// taken for that of a neighbor.
func (k *sketch) shifted() bool {
	for _, l := range k.below {
		if abs(l.centre-l.x) > straight {
			return true
		}
	}
	return false
}
