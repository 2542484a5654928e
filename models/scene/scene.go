// Package scene is a picture as data: a few kinds of shape, each saying what it
// is, which number of the problem it belongs to and what it is worth.
//
// A scene has no colours and no SVG. Coordinates are whole numbers: x grows to
// the right, y down, and one unit is one pixel at the picture's natural size.
// Because every item says its worth, a test can count the picture, a page can
// light the blocks of a digit, and words can say what is drawn.
package scene

import (
	"strconv"

	"modeler/fraction"
)

// Scene is one picture. Items are painted in order, later ones on top.
type Scene struct {
	W, H  int
	Title Telling // a line: the problem, and the answer when shown
	Desc  Telling // sentences exact enough to do the problem without seeing it
	Items []Item
}

// Telling is a text in two versions, the second of which does not give the
// answer away.
type Telling struct{ Shown, Hidden string }

// Say returns the version asked for.
func (t Telling) Say(hidden bool) string {
	if hidden {
		return t.Hidden
	}
	return t.Shown
}

// Same is a telling that gives nothing away: one text for both versions.
func Same(text string) Telling { return Telling{text, text} }

// Item is one shape and what it means.
type Item struct {
	Shape  Shape
	Role   Role
	Finish Finish
	Of     Of
	Worth  fraction.Fraction // what this item alone adds to the number it belongs to; 0 for labels, outlines, guides
	When   When
}

// Of says which number of the problem an item belongs to.
type Of string

const (
	OfNothing Of = ""
	OfFirst   Of = "first"
	OfSecond  Of = "second"
	OfAnswer  Of = "answer"
	OfWhole   Of = "whole" // the whole that fractions are parts of
	OfLeft    Of = "left"  // the side of a claim before its sign, where that is more than one number
	OfRight   Of = "right" // and the side after it
)

// OfNth is the i-th number of a list, from 0.
func OfNth(i int) Of {
	if i < 2 {
		return [...]Of{OfFirst, OfSecond}[i]
	}
	return Of("number " + strconv.Itoa(i+1))
}

// Role is what an item is in the story. A theme maps it to a look; the hands
// text and the symbols use the same role for the same thing.
type Role uint8

const (
	Ink    Role = iota // labels, axes, outlines: what is neither quantity nor hint
	Note               // secondary text, light structure
	First              // the first quantity
	Second             // the second quantity
	Result             // the answer
	Hidden             // what is not known yet: drawn Dashed with a question mark
	Gone               // taken away, traded away: a ghost, and the stroke through it
	Moved              // what has just arrived, been cut or been jumped
	Guide              // grid lines, ticks, dotted links
	Tray               // the surface that pieces lie on
)

// Finish is how strongly a shape is drawn. The zero value is right for most.
type Finish uint8

const (
	Plain   Finish = iota // filled with the role's tint and edged, a line of the usual weight
	Deep                  // filled with the role's strong colour: counters, side faces, points
	Outline               // edge only
	Dashed                // edge only, dashed: ghosts, unknowns
	Bold                  // edge or line only, heavier: the stroke through what is gone, the outline of a whole
	Fine                  // edge or line only, thin: grids, ticks, links
	Dotted                // a thin dotted line: links between pictures
)

// When says in which version of the picture an item is drawn.
type When uint8

const (
	Always     When = iota
	ShownOnly       // left out when the answer is hidden
	HiddenOnly      // stands in for what is left out
)

// Visible reports whether the item is part of the version asked for.
func (w When) Visible(hidden bool) bool {
	return w == Always || (w == HiddenOnly) == hidden
}

// Add appends items.
func (s *Scene) Add(items ...Item) { s.Items = append(s.Items, items...) }

// Draw appends a shape that is worth nothing.
func (s *Scene) Draw(role Role, finish Finish, shapes ...Shape) {
	for _, sh := range shapes {
		s.Add(Item{Shape: sh, Role: role, Finish: finish})
	}
}

// View is the scene as it is drawn with the answer shown or hidden: only the
// items that are visible then.
func (s *Scene) View(hidden bool) Scene {
	v := *s
	v.Items = make([]Item, 0, len(s.Items))
	for _, it := range s.Items {
		if it.When.Visible(hidden) {
			v.Items = append(v.Items, it)
		}
	}
	return v
}

// String is the role's name, used for classes on a page.
func (r Role) String() string {
	return [...]string{"ink", "note", "first", "second", "result", "hidden", "gone", "moved", "guide", "tray"}[r]
}
