package telling

import "modeler/models/scene"

// Story collects what is drawn in a lesson, each thing with the step, from 0, in
// which it comes.
type Story struct{ marks []drawn }

// drawn is an item and the steps in which it is there: from one, up to another that
// is not included, or for good when until is 0.
type drawn struct {
	scene.Item
	from, until int
	final       bool // only in the picture of the whole story
	still       bool // it has not moved in the step in which it comes
}

// Add draws items from a step on, for good.
func (s *Story) Add(from int, items ...scene.Item) { s.Until(from, 0, items...) }

// Until draws items from a step on, and no more in the step until.
func (s *Story) Until(from, until int, items ...scene.Item) {
	for _, it := range items {
		s.marks = append(s.marks, drawn{Item: it, from: from, until: until})
	}
}

// Only draws items in the steps from one on, and not in the whole story.
func (s *Story) Only(from int, items ...scene.Item) { s.Until(from, never, items...) }

// Still draws items in the steps from one on, as [Story.Until] does, that were there
// before in another form and have not moved.
func (s *Story) Still(from, until int, items ...scene.Item) {
	for _, it := range items {
		s.marks = append(s.marks, drawn{Item: it, from: from, until: until, still: true})
	}
}

// never is a step that no lesson reaches.
const never = 1 << 20

// Finally draws items in the whole story alone.
func (s *Story) Finally(items ...scene.Item) {
	for _, it := range items {
		s.marks = append(s.marks, drawn{Item: it, final: true})
	}
}

// Picture is what there is after a step. The pieces of the two quantities that came
// in that step have just moved; in the next they are at home.
func (s *Story) Picture(step int) *scene.Scene {
	p := &scene.Scene{}
	for _, m := range s.marks {
		if m.final || m.from > step || m.until > 0 && m.until <= step {
			continue
		}
		_, words := m.Shape.(scene.Text)
		if m.from == step && step > 0 && !words && !m.still && (m.Role == scene.First || m.Role == scene.Second) {
			m.Role = scene.Moved
		}
		p.Add(m.Item)
	}
	return p
}

// Whole is everything that stays, for the picture of the whole story.
func (s *Story) Whole() *scene.Scene {
	p := &scene.Scene{}
	for _, m := range s.marks {
		if m.until == 0 {
			p.Add(m.Item)
		}
	}
	return p
}

// Join draws everything of another story, after what there is.
func (s *Story) Join(other *Story) { s.marks = append(s.marks, other.marks...) }
