package wall

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellNames tells the other names of a fraction: it is shaded in its own row, and
// each row in which a part ends on the same line is lit.
func tellNames(w arithmetic.Working, wall wall) telling.Telling {
	n := w.Problem.Left.(arithmetic.Number)
	d := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	st := &telling.Story{}
	wall.rows(st, n.Value)
	first := telling.Numeral(n, scene.First)
	asked, answered := telling.Join(first, "=", blank(w.Problem)), telling.Join(first)
	found := 1 // names of the number so far
	for i, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.BuildWall:
			d.Step(words.WallBuild(m), first)
		case arithmetic.ShadeRow:
			wall.shade(st, i, n, scene.First, scene.OfFirst, scene.Always)
			wall.endLine(st, i, n.Value)
			d.Step(words.WallShade(m), asked)
		case arithmetic.FindInRow:
			of := scene.OfAnswer
			if w.Problem.Kind == arithmetic.EqualNames {
				of = scene.OfNth(found) // each name is an amount of its own
			}
			found++
			wall.shade(st, i, m.Name, scene.Result, of, scene.ShownOnly)
			if w.Problem.Kind == arithmetic.Renaming {
				wall.ask(st, i, m.Name.Value)
			}
			name := telling.Join(first, "=", telling.Numeral(m.Name, scene.Result))
			answered = telling.Join(answered, "=", telling.Numeral(m.Name, scene.Result))
			d.Step(words.WallFind(w.Problem, m, found), name)
		case arithmetic.ReadRows:
			if answered = inOrder(n, m.Names); len(m.Names) == 1 {
				answered = telling.Join(answered, notation.W(words.WallOnly))
			}
			d.Step(words.WallRead(n, m), answered)
		}
	}
	if w.Problem.Blank.First {
		asked = telling.Join(blank(w.Problem), "=", first)
	}
	t := d.Pictures(st, wall.bottom()+endRoom, words.WallTitle(w.Problem, w.Answer), words.WallDesc(w, wall.Rows))
	t.Pieces = []telling.Piece{{Name: words.WallStrips, Count: int64(len(wall.Rows)), Cut: true}}
	t.Why = words.WallWhy(n, w.Answer)
	telling.Equation(t.Whole, wall.bottom()+endRoom, asked, answered)
	return t
}

// endRoom is how far the line goes on under the wall.
const endRoom = 8

// inOrder are all names of a number, fewest parts first, the number itself in its
// own role.
func inOrder(n arithmetic.Number, names []arithmetic.Number) notation.Line {
	var links []notation.Line
	for _, name := range names {
		role := scene.Result
		if name == n {
			role = scene.First
		}
		links = append(links, telling.Numeral(name, role))
	}
	return telling.Chain("=", links...)
}

// blank is what stands for the name that is asked for.
func blank(p arithmetic.Problem) notation.Line {
	if p.Kind != arithmetic.Renaming {
		return telling.Join(telling.Unknown())
	}
	num, den := "?", "?"
	if p.Blank.Num > 0 {
		num = strconv.FormatInt(p.Blank.Num, 10)
	}
	if p.Blank.Den > 0 {
		den = strconv.FormatInt(p.Blank.Den, 10)
	}
	return telling.Join(notation.F(num, den, scene.Hidden))
}
