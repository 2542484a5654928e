// Package telling is what the models share: what a model is, the lesson that it
// tells, and the hand that draws its pictures. It knows no model.
package telling

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// Model is one kind of picture. It computes nothing: it has a procedure of the
// arithmetic package work the problem and tells the moves.
type Model struct {
	Name     string            // in flags, URLs and golden folders: lower case, words joined by hyphens
	Title    string            // in headings and lists
	Doc      string            // one sentence: what it is for
	Kinds    []arithmetic.Kind // the kinds of problem that it tells
	Examples []string          // problems it tells; they feed the goldens, the laws, the fuzz seeds, the gallery and the docs

	// Fits is nil when the model can tell the problem, or else says why not. Of
	// a problem that is not one of its kind, it is [NotMine]. All limits on size
	// live here: after it, Tell cannot fail.
	Fits func(arithmetic.Problem) error

	// Turn is the model's place among the pictures of a problem: a teacher reaches
	// first for the one whose turn is [Leads]. Equal turns go in the order of the
	// registry. It is asked of any problem, also of one that does not fit.
	Turn func(arithmetic.Problem) int

	// Tell works the problem and tells every move.
	Tell func(arithmetic.Problem) Telling
}

// Telling is a problem worked and told by one model.
type Telling struct {
	Answer arithmetic.Answer
	Pieces []Piece      // what to have on the table
	Steps  []Step       // at least one
	Whole  *scene.Scene // the one picture that tells the whole story
	Why    words.Phrase // of a claim or comparison: the sentence that says why
}

// Piece is a kind of piece and how many of it the lesson needs.
type Piece struct {
	Name  string
	Count int64
	Cut   bool // with scissors
}

// Step is one move told three ways.
type Step struct {
	Title   string // a few words: "Trade a hundred"
	Hands   words.Phrase
	Ask     words.Phrase // the question to ask the child before the move; may be empty
	Scene   *scene.Scene
	Symbols notation.Block
	Europe  notation.Block // the same written as much of Europe does; no lines where it is the same
	Link    words.Phrase   // says how that writing is the same move; may be empty
}

// The turns of a model.
const (
	Leads   = iota + 1 // the picture that a teacher reaches for first
	Follows            // a good second picture
	Serves             // one more way to see it
)

// LeadsFor is the turn of a model that leads for some kinds, whatever the numbers.
// Where a story compares two numbers, it follows: the picture of the calculation is
// not the picture of the story.
func LeadsFor(kinds ...arithmetic.Kind) func(arithmetic.Problem) int {
	return func(p arithmetic.Problem) int {
		switch {
		case !slices.Contains(kinds, p.Kind):
			return Serves
		case p.Story != arithmetic.NoStory:
			return Follows
		}
		return Leads
	}
}
