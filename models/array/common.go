package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// common is the arrays of two numbers to one scale, and the sides that both have:
//
//	12   ▢▢▢▢▢▢▢▢▢▢▢▢    ┃▢▢▢▢▢▢   ▢▢▢▢
//	                     ┃▢▢▢▢▢▢   ▢▢▢▢   a heavy edge is a side that
//	                               ▢▢▢▢   the other number has too
//	18   ▢▢▢▢▢▢▢▢▢▢▢▢▢▢▢▢▢▢
//
//	     1, 2, 3, 6
type common struct {
	title    scene.Telling
	sets     [2]*factors
	match    arithmetic.MatchSides
	greatest int64
	heads    [2]int // the heights of the names of the sets
	bottom   int
}

// seen is what a picture of common factors shows.
type seen struct {
	sets     int // how many of the two
	newest   bool
	sides    []int64 // those that are marked
	role     scene.Role
	when     scene.When
	list     bool
	greatest bool
}

// headTall is the room for the name of a set of arrays, over it.
const headTall = 48

// tellCommon tells the common factors of two numbers.
func tellCommon(w arithmetic.Working) telling.Telling {
	a := &common{}
	var finds [2]arithmetic.FindArrays
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindArrays:
			finds[m.Nth] = m
		case arithmetic.MatchSides:
			a.match = m
		case arithmetic.ReadGreatest:
			a.greatest = m.Greatest
		}
	}
	said := words.ArrayCommon{Numbers: [2]int64{finds[0].Number, finds[1].Number}, Pairs: [2][][2]int64{finds[0].Pairs, finds[1].Pairs}, Common: a.match.Common, Greatest: a.greatest}
	a.title = said.Title()
	a.place(finds)
	n := max(finds[0].Number, finds[1].Number)
	t := telling.Telling{Answer: w.Answer, Pieces: []telling.Piece{{Name: words.Things(words.Counters, n), Count: n}}}
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW}
		now := seen{sets: 2}
		switch m := m.(type) {
		case arithmetic.FindArrays:
			st.Title, st.Hands, st.Ask, s.Desc = said.Found(m.Nth)
			for _, pair := range m.Pairs {
				st.Symbols.Lines = append(st.Symbols.Lines, telling.Join(number(pair[0]), "×", number(pair[1]), "=", telling.Count(m.Number, claimRole(m.Nth))))
			}
			now = seen{sets: m.Nth + 1, newest: true}
		case arithmetic.MatchSides:
			st.Title, st.Hands, st.Ask, s.Desc = said.Matched()
			st.Symbols = notation.Lines(telling.Counts(",", scene.Result, m.Common...))
			now.sides, now.role, now.when, now.list = m.Common, scene.Result, scene.ShownOnly, true
		case arithmetic.ReadGreatest:
			st.Title, st.Hands, st.Ask, s.Desc = said.Read()
			st.Symbols = notation.Lines(a.greatestLine(finds))
			now.sides, now.role, now.when, now.list, now.greatest = []int64{m.Greatest}, scene.Result, scene.ShownOnly, true, true
		}
		s.H = a.draw(s, now)
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	t.Whole = &scene.Scene{Title: a.title, Desc: said.Story(), W: scene.PaperW}
	t.Whole.H = a.draw(t.Whole, seen{sets: 2, sides: a.match.Common, role: scene.Result, when: scene.ShownOnly, list: true})
	return t
}

// greatestLine writes both numbers with the greatest common factor.
func (a *common) greatestLine(finds [2]arithmetic.FindArrays) notation.Line {
	var parts []notation.Line
	for i, f := range finds {
		for _, pair := range f.Pairs {
			if pair[0] != a.greatest && pair[1] != a.greatest {
				continue
			}
			other := pair[0]
			if other == a.greatest {
				other = pair[1]
			}
			parts = append(parts, telling.Join(telling.Count(f.Number, claimRole(i)), "=", telling.Count(a.greatest, scene.Result), "×", number(other)))
			break
		}
	}
	return telling.Chain(",", parts...)
}

// place puts the arrays of the second number under those of the first, with
// squares of one size.
func (a *common) place(finds [2]arithmetic.FindArrays) {
	const largest = 34
	unit := min(largest, (scene.PaperW-2*scene.Margin)/int(max(finds[0].Number, finds[1].Number)))
	top := scene.Margin
	for i, f := range finds {
		set := &factors{n: f.Number, most: unit, top: top + headTall}
		for _, pair := range f.Pairs {
			set.pairs = append(set.pairs, arithmetic.FindPair{Rows: pair[0], Cols: pair[1]})
		}
		set.flow = true
		set.place(nil)
		a.sets[i], a.heads[i] = set, top+headTall/2-4
		top = set.bottom + setGap/2
	}
	a.bottom = a.sets[1].bottom
}

// draw draws what is to be seen, and returns how high the paper is.
func (a *common) draw(s *scene.Scene, now seen) int {
	for i, set := range a.sets[:now.sets] {
		role := claimRole(i)
		head := scene.Words(scene.Margin, a.heads[i], scene.Small, words.ArrayArraysOf(set.n))
		head.Anchor = scene.Left
		s.Add(scene.Item{Shape: head, Role: role})
		for k, m := range set.pairs {
			b := set.at[k]
			it := scene.Item{Role: role, Of: a.of(i, k), Worth: fraction.Whole(set.n), Shape: scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}}
			if set.toScale() {
				it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: int(m.Cols), Rows: int(m.Rows)}
			}
			s.Add(it)
			a.edges(s, b, m, now)
			a.named(s, set.names[k], m, now)
		}
	}
	y := a.bottom + 12
	if !a.sets[0].toScale() || !a.sets[1].toScale() {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, y+noteTall/2, scene.Small, words.ArrayNotToScale))
		y += noteTall
	}
	if now.list {
		a.list(s, y, now.greatest)
	}
	return y + 40 + scene.Large*5/4 + scene.Margin
}

// of is the number of an array: the first array of each number stands for it.
func (a *common) of(i, k int) scene.Of {
	switch {
	case k == 0:
		return scene.OfNth(i)
	case i == 0:
		return scene.OfNth(1 + k)
	}
	return scene.OfNth(len(a.sets[0].pairs) + k)
}

// edges marks the sides of an array that are common.
func (a *common) edges(s *scene.Scene, b scene.Box, m arithmetic.FindPair, now seen) {
	const thick = 8
	add := func(r scene.Rect) {
		s.Add(scene.Item{Shape: r, Role: now.role, Finish: scene.Deep, When: now.when})
	}
	if slices.Contains(now.sides, m.Rows) {
		add(scene.Rect{X: b.X - thick, Y: b.Y, W: thick, H: b.H})
	}
	if slices.Contains(now.sides, m.Cols) {
		add(scene.Rect{X: b.X, Y: b.Y - thick, W: b.W, H: thick})
	}
}

// named writes the sides of an array under it, those that are common in the role
// of the mark.
func (a *common) named(s *scene.Scene, at scene.Point, m arithmetic.FindPair, now seen) {
	side := func(n int64) notation.Term {
		if slices.Contains(now.sides, n) {
			return telling.Count(n, now.role)
		}
		return number(n)
	}
	by := notation.W(words.ArrayBy) // two sides, and no product to be worked
	plain := scene.Text{X: at.X, Y: at.Y, Size: scene.Small, Runs: telling.Join(number(m.Rows), by, number(m.Cols)).Runs()}
	if len(now.sides) == 0 {
		s.Add(scene.Item{Shape: plain})
		return
	}
	marked := plain
	marked.Bold = slices.Contains(now.sides, m.Rows) || slices.Contains(now.sides, m.Cols)
	marked.Runs = telling.Join(side(m.Rows), by, side(m.Cols)).Runs()
	s.Add(scene.Item{Shape: marked, When: scene.ShownOnly}, scene.Item{Shape: plain, When: scene.HiddenOnly})
}

// list writes the common factors at the foot, or the greatest of them.
func (a *common) list(s *scene.Scene, y int, greatest bool) {
	name, found := words.ArrayCommonAre(a.sets[0].n, a.sets[1].n), words.List(nil)
	for i, n := range a.match.Common {
		if i > 0 {
			found += ", "
		}
		found += arithmetic.Grouped(n)
	}
	if greatest {
		name, found = words.ArrayGreatestIs, arithmetic.Grouped(a.greatest)
	}
	s.Add(telling.Text(scene.Ink, scene.PaperW/2, y+20, scene.Small, name))
	for _, n := range []caption{revealed(found, scene.Result), blanked("?")} {
		it := captionAt(n, scene.PaperW/2, y+40+scene.Large*3/4)
		t := it.Shape.(scene.Text)
		t.Size = scene.Large
		for t.Width() > scene.PaperW-2*scene.Margin {
			t.Size--
		}
		it.Shape = t
		s.Add(it)
	}
}
