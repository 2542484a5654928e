package line

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// countUp tells a difference as the way from the second number up to the first.
func (pl *plan) countUp(k *sketch, p arithmetic.Problem, a, b arithmetic.Number) {
	start := pl.working.Moves[0].(arithmetic.StartAt)
	jumps := jumpsOf(pl.working)
	k.addStop(stop{at: k.scale.Count(b), label: runsOf("", b), role: scene.Second, of: scene.OfSecond, worth: b.Value, dot: true})
	k.addStop(stop{at: k.scale.Count(a), label: runsOf("", a), role: scene.First, of: scene.OfFirst, worth: a.Value, dot: true})
	pl.step(words.LineCountUpStart(start, a, b), pl.asked, inPlacesLine(start, a),
		telling.Join(telling.Numeral(b, scene.Second), notation.S("+"), telling.Unknown(), notation.S("="), telling.Numeral(a, scene.First)))
	pl.wayBetween(k, b, a, jumps, "+", 1)
	pl.desc = words.LineWayDesc(p, b, a, jumps, pl.working.Answer, k.broken)
}

// wayBetween tells the hops from one known number to another. With the answer
// hidden it is one dashed hop with a question mark. begin is the step of the
// first hop.
func (pl *plan) wayBetween(k *sketch, from, to arithmetic.Number, jumps []arithmetic.Jump, sign string, begin int) {
	question := []scene.Run{{Text: "?"}}
	pose := hop{from: k.scale.Count(from), to: k.scale.Count(to), label: question, role: scene.Hidden, finish: scene.Dashed, alone: true}
	if len(jumps) > 0 {
		hidden, first := pose, pose
		hidden.when = scene.HiddenOnly
		first.when, first.until = scene.ShownOnly, begin
		k.hops = append(k.hops, hidden, first)
	}
	for i, m := range jumps {
		label := runsOf(sign, m.By)
		k.hops = append(k.hops, hop{from: k.scale.Count(m.From), to: k.scale.Count(m.To), label: label,
			role: scene.Result, of: scene.OfAnswer, worth: m.By.Value, when: scene.ShownOnly, step: begin + i})
		k.addStop(stop{at: k.scale.Count(m.To), label: runsOf("", m.To), step: begin + i, when: scene.ShownOnly})
		told := words.LineJump(m, i == len(jumps)-1, pl.working.Answer)
		told.Desc.Hidden = words.LineWayAsked(from, to)
		pl.step(told, jumpLine(m, sign, false))
	}
	for _, m := range pl.working.Moves {
		if m, ok := m.(arithmetic.AddJumps); ok {
			pl.step(words.LineAddJumps(m, from, to), sumLine(m), pl.answered)
		}
	}
}
