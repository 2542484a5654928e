package api

import (
	"flag"
	"testing"

	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// How large answers get, in bytes and units; deploy/RUNNING.md states them.
const (
	largestPicture = 64 << 10
	largestPacked  = 12 << 10
	largestLesson  = 64 << 10
	highestPaper   = 1600
)

var dealt = flag.Int("dealt", 300, "problems dealt to find the largest answers")

// largest is the largest of something that was met, and where.
type largest struct {
	size int
	at   string
}

func (l *largest) meet(size int, at string) {
	if size > l.size {
		*l = largest{size, at}
	}
}

// Answers stay within the sizes that are stated, over every example and over problems
// dealt at random.
//
//	go test ./api -run Largest -v -dealt 20000
func TestLargestAnswers(t *testing.T) {
	var picture, packed, lesson, paper largest
	look := func(text string, m *models.Model) {
		l, err := models.Teach(text, m.Name)
		if err != nil {
			return // dealt for another model
		}
		lesson.meet(len(NewDocument(l, m.Name).JSON()), text+" as "+m.Name)
		scenes := []*scene.Scene{l.Whole}
		for _, s := range l.Steps {
			scenes = append(scenes, s.Scene)
		}
		for i, s := range scenes {
			for _, theme := range []string{"colour", "ink"} {
				p := Picture{Problem: text, Model: m.Name, Step: i, Theme: svg.Named(theme)}
				a := answer{body: svg.Render(s, svg.Options{Theme: p.Theme})}
				a.pack()
				picture.meet(len(a.body), p.URL())
				packed.meet(len(a.packed), p.URL())
				paper.meet(s.H, p.URL())
			}
		}
	}
	for _, m := range models.All {
		for _, text := range m.Examples {
			look(text, m)
		}
	}
	d := problems.Deal(1)
	for range *dealt {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) == nil {
				look(p.String(), m)
			}
		}
	}
	for _, c := range []struct {
		what string
		met  largest
		most int
	}{
		{"picture", picture, largestPicture}, {"picture as gzip", packed, largestPacked}, {"lesson", lesson, largestLesson}, {"paper, in units of height", paper, highestPaper},
	} {
		t.Logf("%s: %d at %s", c.what, c.met.size, c.met.at)
		if c.met.size > c.most || c.met.size == 0 {
			t.Errorf("%s: %d at %s; at most %d is stated", c.what, c.met.size, c.met.at, c.most)
		}
	}
}
