package reading

import (
	"slices"

	"modeler/arithmetic"
)

// shapes are the names of the shapes of which a part is shown.
var shapes = map[string]arithmetic.Shape{
	"circle": arithmetic.Circle, "disc": arithmetic.Circle, "disk": arithmetic.Circle, "pizza": arithmetic.Circle, "pie": arithmetic.Circle,
	"square": arithmetic.Square, "rectangle": arithmetic.Rectangle, "oblong": arithmetic.Rectangle, "strip": arithmetic.Rectangle, "bar": arithmetic.Rectangle, "triangle": arithmetic.Triangle,
	"pentagon": arithmetic.Pentagon, "hexagon": arithmetic.Hexagon, "octagon": arithmetic.Octagon,
}

var (
	shapeAdjectives = []string{"one", "whole", "regular", "equilateral"}
	shadedWords     = []string{"shaded", "colored", "coloured", "filled", "filled in", "shaded in", "with", "where", "that is", "is", "has", "shade", "color", "shade in", "color in"}
)

// shapeFollows reports whether the name of a shape stands n tokens on.
func (p *parser) shapeFollows(n int) bool {
	here := p.i
	defer func() { p.i = here }()
	p.i += n
	_, ok := p.shape()
	return ok
}

// shape passes the name of a shape.
func (p *parser) shape() (arithmetic.Shape, bool) {
	here := p.i
	for p.at(0).kind == word && (in(passedOver, p.at(0).text) || in(shapeAdjectives, p.at(0).text)) {
		p.i++
	}
	if s, ok := shapes[p.at(0).text]; ok && p.at(0).kind == word {
		p.i++
		return s, true
	}
	p.i = here
	return "", false
}

// shaped reads the end of 3/4 of a circle, half a hexagon and 3/4 as a circle.
func (p *parser) shaped(c piece) (Reading, *fault, bool) {
	here := p.i
	p.any([]string{"parts", "equal parts"}) // 3 out of 4 equal parts
	p.any([]string{"of", "as", "in", "on"})
	shape, ok := p.shape()
	if !ok || c.unknowns > 0 || c.isOperation() {
		p.i = here
		return Reading{}, nil, false
	}
	r, f := p.shapePart(c, shape)
	return r, f, true
}

// shapeFirst reads a circle with 3/4 shaded.
func (p *parser) shapeFirst() (Reading, *fault, bool) {
	here := p.i
	shape, ok := p.shape()
	if !ok {
		return Reading{}, nil, false
	}
	p.pause()
	p.any(shadedWords)
	c, f := p.operand()
	if f != nil {
		p.i = here
		return Reading{}, nil, false
	}
	p.any([]string{"of it"})
	p.any(shadedWords)
	p.any(shadedWords) // is shaded
	r, f := p.shapePart(c, shape)
	return r, f, true
}

func (p *parser) shapePart(c piece, shape arithmetic.Shape) (Reading, *fault) {
	p.any(shadedWords)
	n, ok := c.expr.(arithmetic.Number)
	if !ok || !slices.Contains([]arithmetic.Form{arithmetic.Common, arithmetic.Mixed}, n.Form) {
		return Reading{}, notAFraction(p, c, arithmetic.ShapePart)
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.ShapePart, Left: n, Shape: shape}, Spans: c.spans}
	return r, p.finish()
}
