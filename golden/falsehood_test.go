package golden

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"modeler/golden/laws"
	"modeler/golden/measure"
	"modeler/models/scene"
	"modeler/svg"
)

// copied is a lesson with scenes of its own, to be spoiled.
func copied(l laws.Lesson) *laws.Lesson {
	own := func(s *scene.Scene) *scene.Scene {
		c := *s
		c.Items = slices.Clone(s.Items)
		return &c
	}
	l.Steps = slices.Clone(l.Steps)
	for i := range l.Steps {
		l.Steps[i].Scene = own(l.Steps[i].Scene)
	}
	l.Whole = own(l.Whole)
	return &l
}

// catchers names what notices that a lesson is false: laws and readers.
func catchers(l *laws.Lesson, paint palette) []string {
	var list []string
	for _, err := range laws.Check(l) {
		_, name, _ := strings.Cut(err.Error(), `the law "`)
		name, _, _ = strings.Cut(name, `"`)
		list = append(list, "law: "+name)
	}
	return append(list, noticed(readBack(l, paint))...)
}

// noticed names the readers that find a fault, or that can no longer read what
// they read before.
func noticed(found []finding) []string {
	var list []string
	for _, f := range found {
		if f.err != nil {
			list = append(list, "reader: "+f.reader)
		}
	}
	return list
}

// ledger counts, for every falsehood, where it was planted and what caught it.
type ledger struct {
	planted map[string]int
	models  map[string]map[string]bool
	by      map[string]map[string]int
}

func newLedger() *ledger {
	return &ledger{map[string]int{}, map[string]map[string]bool{}, map[string]map[string]int{}}
}

// enter notes a falsehood and fails the test when nothing caught it.
func (g *ledger) enter(t *testing.T, name string, l lesson, caught []string) {
	t.Helper()
	if g.by[name] == nil {
		g.by[name], g.models[name] = map[string]int{}, map[string]bool{}
	}
	g.planted[name]++
	g.models[name][l.model.Name] = true
	for _, c := range caught {
		g.by[name][c]++
	}
	if len(caught) == 0 {
		t.Errorf("%s: %s: %s, and nothing notices", l.model.Name, l.example, name)
	}
}

// table prints what caught each falsehood, most often first.
func (g *ledger) table(t *testing.T, names []string) {
	t.Helper()
	for _, name := range names {
		if g.planted[name] == 0 {
			t.Errorf("%s: there was nowhere to plant it", name)
			continue
		}
		var by []string
		for c := range g.by[name] {
			by = append(by, c)
		}
		slices.SortFunc(by, func(a, b string) int {
			if d := g.by[name][b] - g.by[name][a]; d != 0 {
				return d
			}
			return strings.Compare(a, b)
		})
		for i, c := range by {
			by[i] = fmt.Sprintf("%s %d", c, g.by[name][c])
		}
		t.Logf("%-46s planted %3d in %d models; %s", name, g.planted[name], len(g.models[name]), strings.Join(by, ", "))
	}
}

// TestFalsehoodsInScenesAreCaught plants every falsehood in every example of
// every model that has a place for it. Each must be caught by a law or a reader.
func TestFalsehoodsInScenesAreCaught(t *testing.T) {
	paint, g := paints(t), newLedger()
	var names []string
	for _, f := range slices.Concat(falsehoods, falsehoodsAsked) {
		names = append(names, f.name)
	}
	for _, l := range lessons(t) {
		told, err := laws.Tell(l.model, l.reading.Problem)
		if err != nil {
			t.Error(err)
			continue
		}
		if c := catchers(&told, paint); len(c) > 0 {
			t.Errorf("%s: %s is caught as it is: %v", l.model.Name, l.example, c)
			continue
		}
		for _, f := range slices.Concat(falsehoods, falsehoodsAsked) {
			if spoiled := copied(told); f.plant(spoiled) {
				g.enter(t, f.name, l, catchers(spoiled, paint))
			}
		}
	}
	g.table(t, names)
}

// TestFalsehoodsInFilesAreCaught does the same with the bytes of the whole story,
// which only the readers see.
func TestFalsehoodsInFilesAreCaught(t *testing.T) {
	paint, g := paints(t), newLedger()
	var names []string
	for _, f := range forgeries {
		names = append(names, f.name)
	}
	for _, l := range lessons(t) {
		told, err := laws.Tell(l.model, l.reading.Problem)
		if err != nil {
			t.Error(err)
			continue
		}
		var steps []sight
		for _, step := range told.Steps {
			s, err := see(&told, step.Scene, paint)
			if err != nil {
				t.Fatal(err)
			}
			steps = append(steps, s)
		}
		body := string(svg.Render(told.Whole, svg.Options{}))
		for _, f := range forgeries {
			forged, ok := f.forge(body, paint)
			if !ok || forged == body {
				continue
			}
			d, err := measure.Read([]byte(forged))
			if err != nil {
				g.enter(t, f.name, l, []string{"reader: measure"})
				continue
			}
			g.enter(t, f.name, l, noticed(readSights(l.model.Name, sight{d, l.reading.Problem, paint}, steps, told.Truth)))
		}
	}
	g.table(t, names)
}
