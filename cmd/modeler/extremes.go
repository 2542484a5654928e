package main

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// What the page of extremes is made from. The same seed deals the same problems.
const (
	dealtProblems = 3400
	dealtSeed     = 1
	eachKind      = 2  // pictures of one kind of problem in one model, of each extreme
	eachExtreme   = 12 // pictures in all
)

// extreme is a way in which a picture can be hard to draw well. A higher score
// is harder; ok is false where a picture has nothing to score.
type extreme struct {
	name, doc string
	score     func(items []scene.Item, s *scene.Scene) (score int, ok bool)
	says      func(score int) string
}

var extremes = []extreme{
	{"narrowest", "The narrowest gap between two labels.", narrowestGap, func(n int) string { return fmt.Sprintf("%d units between two labels", -n) }},
	{"most", "The most items.", func(items []scene.Item, _ *scene.Scene) (int, bool) { return len(items), true }, func(n int) string { return fmt.Sprintf("%d items", n) }},
	{"smallest", "The smallest piece or cell.", smallestPiece, func(n int) string { return fmt.Sprintf("a piece %d units across", -n) }},
	{"longest", "The widest line of text.", widestText, func(n int) string { return fmt.Sprintf("a line %d units wide", n) }},
	{"tallest", "The tallest paper.", func(_ []scene.Item, s *scene.Scene) (int, bool) { return s.H, true }, func(n int) string { return strconv.Itoa(n) + " units high" }},
	{"flattest", "The flattest paper.", func(_ []scene.Item, s *scene.Scene) (int, bool) { return -s.H, true }, func(n int) string { return strconv.Itoa(-n) + " units high" }},
}

// scored is a picture of a dealt problem with its score.
type scored struct {
	shot
	kind  string // of problem, and the model
	score int
}

// extremesPage deals problems, scores every picture of them in every way, and
// shows the highest scores. It says how many pictures were scored.
func extremesPage() (page, int) {
	all := make([][]scored, len(extremes))
	count := 0
	d := problems.Deal(dealtSeed)
	for range dealtProblems {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) != nil {
				continue
			}
			told := m.Tell(p)
			scenes := []*scene.Scene{told.Whole}
			for _, s := range told.Steps {
				scenes = append(scenes, s.Scene)
			}
			shots := shotsOf(shot{problem: p.String(), model: m.Name}, scenes)
			count += len(shots)
			for i, e := range extremes {
				if best, ok := hardest(e, shots); ok {
					best.kind = m.Name + ", " + string(p.Kind)
					all[i] = append(all[i], best)
				}
			}
		}
	}
	one := newPart(svg.Themes[0])
	one.ID, one.Title = "extremes", fmt.Sprintf("%d dealt problems", dealtProblems)
	for i, e := range extremes {
		one.Groups = append(one.Groups, extremeGroup(e, all[i]))
	}
	return page{Title: "The extremes", Doc: "The pictures that are hardest to draw well, among those of many problems dealt at random.",
		Pages: []link{{examplesFile, "Every example"}}, Parts: []part{one}}, count
}

// shotsOf are the pictures of a lesson, each with its answer shown and hidden.
func shotsOf(s shot, scenes []*scene.Scene) []shot {
	var list []shot
	for i, drawn := range scenes {
		for _, hidden := range []bool{false, true} {
			s.scene, s.step, s.hidden = drawn, i, hidden
			list = append(list, s)
		}
	}
	return list
}

// hardest is the picture of a lesson with the highest score, the first of equals.
func hardest(e extreme, shots []shot) (best scored, ok bool) {
	for _, s := range shots {
		score, has := e.score(s.scene.View(s.hidden).Items, s.scene)
		if has && (!ok || score > best.score) {
			best, ok = scored{shot: s, score: score}, true
		}
	}
	return best, ok
}

func extremeGroup(e extreme, list []scored) group {
	slices.SortStableFunc(list, func(a, b scored) int { return b.score - a.score })
	g := group{ID: e.name, Title: e.doc}
	of, shown := map[string]int{}, map[string]bool{}
	for _, s := range list {
		// The same problem may be dealt twice.
		if of[s.kind] == eachKind || len(g.Rows) == eachExtreme || shown[s.command()] {
			continue
		}
		of[s.kind]++
		shown[s.command()] = true
		g.Rows = append(g.Rows, row{ID: fmt.Sprintf("%s-%d", e.name, len(g.Rows)+1), Title: s.problem, Note: e.says(s.score),
			Pictures: []picture{s.picture(s.kind)}})
	}
	return g
}

// narrowestGap is the gap between the two labels that stand nearest, with a
// minus: the wider of the gaps across and down.
func narrowestGap(items []scene.Item, _ *scene.Scene) (int, bool) {
	var boxes []scene.Box
	least := math.MaxInt
	for _, it := range items {
		if _, is := it.Shape.(scene.Text); !is {
			continue
		}
		b := it.Shape.Box()
		for _, c := range boxes {
			across := max(b.X-c.Right(), c.X-b.Right())
			down := max(b.Y-c.Bottom(), c.Y-b.Bottom())
			least = min(least, max(across, down))
		}
		boxes = append(boxes, b)
	}
	return -least, len(boxes) > 1
}

// smallestPiece is the shorter side of the smallest piece that is worth
// something, or of its cells, with a minus.
func smallestPiece(items []scene.Item, _ *scene.Scene) (int, bool) {
	least, found := math.MaxInt, false
	for _, it := range items {
		if it.Worth.Sign() == 0 {
			continue
		}
		switch sh := it.Shape.(type) {
		case scene.Rect, scene.Circle:
			b := sh.Box()
			least, found = min(least, b.W, b.H), true
		case scene.Grid:
			least, found = min(least, sh.W/sh.Cols, sh.H/sh.Rows), true
		}
	}
	return -least, found
}

func widestText(items []scene.Item, _ *scene.Scene) (int, bool) {
	most, found := 0, false
	for _, it := range items {
		if t, is := it.Shape.(scene.Text); is {
			most, found = max(most, t.Width()), true
		}
	}
	return most, found
}
