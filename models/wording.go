package models

import (
	"slices"

	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Worded is the lesson in another wording: the same moves, pictures of the same
// shapes, other names of numbers and parts. The lesson itself is not changed.
func (l Lesson) Worded(w words.Wording) Lesson {
	if w != words.American {
		l.Telling = Worded(l.Telling, w)
	}
	return l
}

// Worded is what a model tells in another wording.
func Worded(t Telling, w words.Wording) Telling {
	t.Why = w.Phrase(t.Why)
	t.Pieces = slices.Clone(t.Pieces)
	for i := range t.Pieces {
		t.Pieces[i].Name = w.Text(t.Pieces[i].Name)
	}
	t.Whole = drawn(t.Whole, w)
	t.Steps = slices.Clone(t.Steps)
	for i, s := range t.Steps {
		t.Steps[i] = telling.Step{
			Title: w.Text(s.Title), Hands: w.Phrase(s.Hands), Ask: w.Phrase(s.Ask), Scene: drawn(s.Scene, w),
			Symbols: written(s.Symbols, w), Europe: written(s.Europe, w), Link: w.Phrase(s.Link),
		}
	}
	return t
}

// drawn is a scene with its words in the wording.
func drawn(s *scene.Scene, w words.Wording) *scene.Scene {
	out := *s
	out.Title = scene.Telling{Shown: w.Text(s.Title.Shown), Hidden: w.Text(s.Title.Hidden)}
	out.Desc = scene.Telling{Shown: w.Text(s.Desc.Shown), Hidden: w.Text(s.Desc.Hidden)}
	out.Items = slices.Clone(s.Items)
	for i, it := range out.Items {
		if text, is := it.Shape.(scene.Text); is {
			text.Runs = slices.Clone(text.Runs)
			for j := range text.Runs {
				text.Runs[j].Text = w.Text(text.Runs[j].Text)
			}
			out.Items[i].Shape = text
		}
	}
	return &out
}

// written is a block of symbols with its words in the wording.
func written(b notation.Block, w words.Wording) notation.Block {
	lines := func(all []notation.Line) []notation.Line {
		out := make([]notation.Line, len(all))
		for i, l := range all {
			out[i] = slices.Clone(l)
			for j := range out[i] {
				out[i][j].Text = w.Text(l[j].Text)
			}
		}
		return out
	}
	b.Lines, b.Beside = lines(b.Lines), lines(b.Beside)
	return b
}
