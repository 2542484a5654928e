package coins

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// lesson is a working while it is told. part is the units of one move: they come in
// one step, and what they come to stands under the last of them.
type lesson struct {
	arithmetic.Working
	bands  []band
	parts  []part
	bottom int
}

// part is what a move lays out or counts.
type part struct {
	band, from, to int // its units
	step           int // the step in which they come
	counted        int // the step from which their label stands there
	role           scene.Role
	of             scene.Of
	label          notation.Line
	answer         bool // they are left out while the answer is hidden
}

func newLesson(w arithmetic.Working) *lesson {
	l := &lesson{Working: w, bands: make([]band, 1)}
	switch w.Problem.Kind {
	case arithmetic.Addition, arithmetic.Subtraction:
		l.bands = make([]band, 2)
	}
	for i, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.TakeCoins:
			l.put(part{step: i, role: scene.Result, of: scene.OfAnswer, label: priced(m.Group.Worth, scene.Ink), answer: true}, m.Group)
		case arithmetic.LayMoney:
			l.bands[m.Nth].head = telling.Numeral(m.Number, telling.RoleOf(m.Nth))
			l.put(part{band: m.Nth, step: i, role: telling.RoleOf(m.Nth), of: scene.OfNth(m.Nth)}, m.Groups...)
		case arithmetic.CountCoins:
			l.count(i, m)
		case arithmetic.CountUp:
			if len(l.bands[1].units) == 0 {
				l.bands[1].units = append(l.bands[1].units, unit{tag: priced(m.From, scene.Second)})
				l.parts = append(l.parts, part{band: 1, to: 1})
			}
			role := scene.Ink
			if m.Paid {
				role = scene.First
			}
			var u unit
			for _, g := range m.Groups {
				for range g.Count {
					u.coins = append(u.coins, g.Coin)
				}
			}
			at := len(l.bands[1].units)
			l.bands[1].units = append(l.bands[1].units, u)
			l.parts = append(l.parts, part{band: 1, from: at, to: at + 1, step: i, counted: i, role: scene.Result, of: scene.OfAnswer, label: priced(m.To, role), answer: true})
		}
	}
	return l
}

// put lays groups of coins as one part each.
func (l *lesson) put(p part, groups ...arithmetic.CoinGroup) {
	for _, g := range groups {
		b := &l.bands[p.band]
		p.from = len(b.units)
		b.units = append(b.units, chunks(g, p.label == nil && p.band == 0 && l.Problem.Kind != arithmetic.CoinsWorth)...)
		p.to, p.counted = len(b.units), p.step
		l.parts = append(l.parts, p)
	}
}

// count puts a label under coins that lie there, or lays coins that are counted.
func (l *lesson) count(step int, m arithmetic.CountCoins) {
	label := priced(m.Totals[len(m.Totals)-1], scene.Result)
	if l.Problem.Kind == arithmetic.CoinsWorth {
		l.put(part{role: scene.First, of: scene.OfAnswer}, m.Group)
		last := &l.parts[len(l.parts)-1]
		last.label, last.counted = label, step
		return
	}
	for i := range l.parts {
		p := &l.parts[i]
		if p.band == 1 && l.bands[1].units[p.from].coins[0] == m.Group.Coin {
			p.label, p.counted = label, step
		}
	}
}

func priced(cents int64, role scene.Role) notation.Line {
	return notation.Line{notation.N(words.Price(cents), role)}
}

// lay gives all units their place and returns where they end.
func (l *lesson) lay() int {
	y := scene.Margin
	for i := range l.bands {
		y = l.bands[i].lay(y)
	}
	l.bottom = y - bandGap
	return l.bottom
}

// picture is what there is after a step; posed is the problem as it is asked.
func (l *lesson) picture(step int, posed bool) *scene.Scene {
	s := &scene.Scene{}
	for i := range l.bands {
		if i == 0 || step > 0 || posed {
			l.bands[i].title(s)
		}
	}
	for _, p := range l.parts {
		units := l.bands[p.band].units[p.from:p.to]
		if p.step > step || posed && p.answer {
			continue
		}
		role := p.role
		counting := l.Problem.Kind == arithmetic.CoinsWorth || l.Problem.Kind == arithmetic.Addition && p.band == 1 && p.label != nil
		if !posed && (p.step == step && !counting && step > 0 || counting && p.counted == step) {
			role = scene.Moved
		}
		for _, u := range units {
			u.draw(s, role, p.of)
			if role == scene.Moved && u.tag == nil {
				u.frame(s)
			}
		}
		if p.label != nil && !posed && p.counted <= step {
			units[len(units)-1].label(s, p.label)
		}
	}
	if posed {
		l.unknown(s)
	}
	return s
}

// unknown is a dashed outline with a question mark, where the answer will lie.
func (l *lesson) unknown(s *scene.Scene) {
	last := l.bands[len(l.bands)-1]
	switch l.Problem.Kind {
	case arithmetic.Coins:
		middle := (last.units[0].box.Y + last.units[len(last.units)-1].box.Bottom()) / 2
		box := scene.Rect{X: scene.PaperW/2 - billW, Y: middle - billH/2, W: 2 * billW, H: billH, Round: 10}
		s.Draw(scene.Hidden, scene.Dashed, box)
		s.Add(telling.Text(scene.Hidden, scene.PaperW/2, box.Y+billH/2, scene.Middle, "?"))
	case arithmetic.Subtraction:
		tag := last.units[0].box
		left := tag.Right() + unitGap
		box := scene.Rect{X: left, Y: tag.Y, W: 2 * billW, H: billH, Round: 10}
		if box.X+box.W > scene.PaperW-scene.Margin {
			box.X, box.Y = scene.PaperW/2-billW, tag.Y+rowH
		}
		s.Draw(scene.Hidden, scene.Dashed, box)
		s.Add(telling.Text(scene.Hidden, box.X+box.W/2, box.Y+billH/2, scene.Middle, "?"))
	}
}
