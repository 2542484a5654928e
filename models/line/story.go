package line

import "modeler/models/scene"

// story collects what is drawn in a lesson, each thing with the step in which
// it comes.
type story struct {
	marks  []mark
	bottom int
}

// mark is an item and the steps, from 0, in which it is drawn: from one, up
// to another that is not included, or for good when until is 0.
type mark struct {
	scene.Item
	from, until int
}

func (s *story) add(from, until int, items ...scene.Item) {
	for _, it := range items {
		s.marks = append(s.marks, mark{it, from, until})
	}
}

// picture is what there is after a step. What came in that step is shown as
// moved; in the next it is at home.
func (s *story) picture(step int) *scene.Scene {
	p := &scene.Scene{W: scene.PaperW, H: s.bottom + scene.Margin}
	for _, m := range s.marks {
		if m.from > step || m.until > 0 && m.until <= step {
			continue
		}
		if m.from == step && step > 0 && m.Role != scene.Guide && m.Role != scene.Note && m.Role != scene.Hidden {
			m.Role = scene.Moved
		}
		p.Add(m.Item)
	}
	return p
}

// whole is everything that stays, for the picture of the whole story.
func (s *story) whole() *scene.Scene {
	p := &scene.Scene{}
	for _, m := range s.marks {
		if m.until == 0 {
			p.Add(m.Item)
		}
	}
	return p
}
