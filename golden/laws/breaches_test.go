package laws

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// good is a small lesson that keeps every law: 2 + 1 with three tiles. Each test
// below breaks it in one way.
func good(t *testing.T) *Lesson {
	t.Helper()
	tile := func(x int, role scene.Role, of scene.Of) scene.Item {
		return scene.Item{Shape: scene.Rect{X: x, Y: 40, W: 40, H: 40}, Role: role, Of: of, Worth: fraction.Whole(1)}
	}
	label := func(x int, when scene.When, text string) scene.Item {
		return scene.Item{Shape: scene.Words(x, 150, scene.Small, text), When: when}
	}
	draw := func() *scene.Scene {
		return &scene.Scene{
			W: 400, H: 200,
			Title: scene.Telling{Shown: "2 + 1 = 3", Hidden: "2 + 1 = ?"},
			Desc:  scene.Telling{Shown: "2 tiles and 1 tile are 3 tiles.", Hidden: "2 tiles and 1 tile. How many tiles are there?"},
			Items: []scene.Item{
				tile(40, scene.First, scene.OfFirst), tile(90, scene.First, scene.OfFirst), tile(180, scene.Second, scene.OfSecond),
				label(100, scene.Always, "2 + 1"), label(200, scene.ShownOnly, "= 3"), label(200, scene.HiddenOnly, "= ?"),
			},
		}
	}
	p := arithmetic.Problem{Kind: arithmetic.Addition, Left: arithmetic.Operation{Op: arithmetic.Add, Left: arithmetic.Int(2), Right: arithmetic.Int(1)}}
	m := &models.Model{Name: "tiles", Tell: func(arithmetic.Problem) models.Telling {
		step := models.Step{Title: "Join them", Hands: words.Say("Push the tiles together."), Scene: draw(), Symbols: notation.Lines(notation.Line{notation.N("3", scene.Result)})}
		return models.Telling{Answer: arithmetic.Answer{Number: arithmetic.Int(3)}, Steps: []models.Step{step}, Whole: draw()}
	}}
	l, err := Tell(m, p)
	if err != nil {
		t.Fatal(err)
	}
	return &l
}

func TestTheGoodLessonKeepsEveryLaw(t *testing.T) {
	for _, err := range Check(good(t)) {
		t.Error(err)
	}
}

// disc turns the second and the third tile into wedges of one disc.
func disc(l *Lesson, a, b scene.Wedge) {
	for i, w := range []scene.Wedge{a, b} {
		w.X, w.Y, w.R = 300, 60, 50
		l.Whole.Items[i+1].Shape, l.Whole.Items[i+1].Of = w, scene.OfFirst
	}
}

// breaches are ways to spoil the whole story, each with the law that notices.
var breaches = []struct {
	law   string
	spoil func(l *Lesson)
}{
	{"inside", func(l *Lesson) { l.Whole.Items[2].Shape = scene.Rect{X: 380, Y: 40, W: 40, H: 40} }},
	{"labels apart", func(l *Lesson) { l.Whole.Items[4].Shape = scene.Words(130, 150, scene.Small, "= 3") }},
	{"labels clear", func(l *Lesson) { l.Whole.Items[3].Shape = scene.Words(100, 85, scene.Small, "2 + 1") }},
	{"labels clear", func(l *Lesson) {
		l.Whole.Draw(scene.Ink, scene.Plain, scene.Line{X1: 40, Y1: 140, X2: 300, Y2: 160})
	}},
	{"labels clear", func(l *Lesson) { l.Whole.Draw(scene.Ink, scene.Plain, scene.Hop{X1: 40, X2: 180, Y: 190, Rise: 40}) }},
	{"upright", func(l *Lesson) {
		var ticks scene.Polyline
		for x := 40; x < 400; x += 40 {
			ticks = append(ticks, scene.Point{X: x, Y: 190}, scene.Point{X: x, Y: 198})
		}
		l.Whole.Draw(scene.Guide, scene.Fine, ticks)
	}},
	{"at their marks", func(l *Lesson) {
		for i, x := range []int{40, 140, 240, 340} {
			l.Whole.Draw(scene.Note, scene.Plain, scene.Words(x, 180, scene.Small, "0123"[i:i+1]))
			l.Whole.Draw(scene.Ink, scene.Fine, scene.Line{X1: x, Y1: 155, X2: x, Y2: 165})
		}
		l.Whole.Draw(scene.Ink, scene.Plain, scene.Polyline{{X: 40, Y: 160}, {X: 350, Y: 160}})
		l.Whole.Draw(scene.Second, scene.Plain, scene.Text{X: 188, Y: 180, Size: scene.Small, Runs: []scene.Run{{Text: "1"}, {Num: "1", Den: "4"}}})
	}},
	{"counting", func(l *Lesson) { l.Whole.Items = l.Whole.Items[1:] }},
	{"counting", func(l *Lesson) { l.Whole.Items[2].Worth = fraction.Whole(2) }},
	{"counting", func(l *Lesson) { l.Whole.Items[2].Of = scene.OfNothing }},
	{"counting", func(l *Lesson) { l.Whole.Items[2].When = scene.HiddenOnly }},
	{"equal size", func(l *Lesson) { l.Whole.Items[2].Shape = scene.Rect{X: 180, Y: 40, W: 41, H: 40} }},
	{"no overlap", func(l *Lesson) {
		disc(l, scene.Wedge{From: 0, Count: 2, Parts: 4}, scene.Wedge{From: 3, Count: 4, Parts: 8})
	}},
	{"equal size", func(l *Lesson) {
		disc(l, scene.Wedge{From: 0, Count: 1, Parts: 4}, scene.Wedge{From: 1, Count: 1, Parts: 3})
	}},
	{"no overlap", func(l *Lesson) { l.Whole.Items[1].Shape = scene.Rect{X: 79, Y: 40, W: 40, H: 40} }},
	{"jumps to scale", func(l *Lesson) {
		for i, x := range []int{100, 201} {
			l.Whole.Add(scene.Item{Shape: scene.Hop{X1: 50, X2: x, Y: 195, Rise: 5}, Of: scene.OfAnswer, Worth: fraction.Must(int64(i+1)*3, 3)})
		}
	}},
	{"jumps to scale", func(l *Lesson) {
		l.Whole.Add(scene.Item{Shape: scene.Hop{X1: 50, X2: 20, Y: 195, Rise: 5}, Of: scene.OfAnswer, Worth: fraction.Whole(3)})
	}},
	{"says the problem", func(l *Lesson) { l.Whole.Title.Shown = "2 + 1" }},
	{"says the problem", func(l *Lesson) { l.Whole.Desc.Shown = "Some tiles are 3 tiles." }},
	{"says the problem", func(l *Lesson) { l.Steps[0].Scene.Desc.Hidden = "" }},
	{"hiding", func(l *Lesson) { l.Whole.Title.Hidden = "2 + 1 = 3" }},
	{"hiding", func(l *Lesson) { l.Whole.Desc.Hidden = "2 tiles and 1 tile are 3 tiles." }},
	{"hiding", func(l *Lesson) { l.Whole.Items[4].When = scene.Always }},
	{"unanswered", func(l *Lesson) {
		l.Whole.Add(scene.Item{Shape: scene.Rect{X: 40, Y: 5, W: 40, H: 30}, Role: scene.Result, Of: scene.OfAnswer, Worth: fraction.Whole(3)})
	}},
	{"subset", func(l *Lesson) { l.Whole.Items[3].Shape = scene.Words(100, 150, -28, "2 + 1") }},
	{"true answer", func(l *Lesson) { l.Answer.Number = arithmetic.Int(4) }},
	{"true answer", func(l *Lesson) { l.Answer.Remainder = 1 }},
	{"three tellings", func(l *Lesson) { l.Steps = nil }},
	{"three tellings", func(l *Lesson) { l.Steps[0].Hands = nil }},
	{"three tellings", func(l *Lesson) { l.Steps[0].Symbols = notation.Block{} }},
	{"three tellings", func(l *Lesson) { l.Steps[0].Title = "" }},
	{"every step is told", func(l *Lesson) { l.Steps = append(l.Steps, l.Steps[0]) }},
	{"one scale", func(l *Lesson) {
		more := l.Steps[0]
		s := *more.Scene
		s.H++
		more.Scene = &s
		l.Steps = append(l.Steps, more)
	}},
}

// TestEveryLawNoticesItsBreach breaks the good lesson and looks for the law that
// says so.
func TestEveryLawNoticesItsBreach(t *testing.T) {
	noticed := map[string]bool{}
	for i, b := range breaches {
		l := good(t)
		b.spoil(l)
		for _, law := range OfLessons {
			if law.Name == b.law {
				noticed[b.law] = true
				if law.Holds(l) == nil {
					t.Errorf("breach %d: the law %q holds", i, b.law)
				}
			}
		}
		for _, law := range OfPictures {
			if law.Name != b.law {
				continue
			}
			noticed[b.law] = true
			held := true
			for _, p := range l.Pictures() {
				held = held && law.Holds(p) == nil
			}
			if held {
				t.Errorf("breach %d: the law %q holds", i, b.law)
			}
		}
	}
	for _, law := range OfPictures {
		if !noticed[law.Name] {
			t.Errorf("nothing breaks the law %q", law.Name)
		}
	}
	for _, law := range OfLessons {
		if !noticed[law.Name] {
			t.Errorf("nothing breaks the law %q", law.Name)
		}
	}
}

// The subset is that of ten renderers; each of these is drawn differently or not
// at all by some of them.
func TestTheSubsetRefusesWhatRenderersDisagreeOn(t *testing.T) {
	head := `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60" viewBox="0 0 80 60">`
	start := head + `<title>a</title><desc>b</desc>`
	if err := InSubset([]byte(start + `<rect x="1" y="2" width="3" height="4" fill="#112233"/></svg>`)); err != nil {
		t.Errorf("a plain rectangle: %v", err)
	}
	for _, file := range []string{
		`<svg width="80" height="60" viewBox="0 0 80 60"><title>a</title><desc>b</desc></svg>`,
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 60"><title>a</title><desc>b</desc></svg>`,
		head + `<rect x="1"/></svg>`,
		start + `<style>rect{}</style></svg>`,
		start + `<rect style="fill:red"/></svg>`,
		start + `<rect fill="red"/></svg>`,
		start + `<rect fill="rgba(0,0,0,0.5)"/></svg>`,
		start + `<rect fill="transparent"/></svg>`,
		start + `<rect id="a"/></svg>`,
		start + `<rect class="a"/></svg>`,
		start + `<rect onclick="a()"/></svg>`,
		start + `<g opacity="0.5"/></svg>`,
		start + `<text dy="5">a</text></svg>`,
		start + `<text dominant-baseline="middle">a</text></svg>`,
		start + `<text textLength="5">a</text></svg>`,
		start + `<use href="#a"/></svg>`,
		start + `<image href="a.png"/></svg>`,
		start + `<script>a()</script></svg>`,
		start + `<foreignObject/></svg>`,
		start + `<path d="M0 0" stroke-dashoffset="3"/></svg>`,
		start + `<path d="M0 0" marker-end="url(#a)"/></svg>`,
		start + `<!-- a --></svg>`,
		start + `<svg/></svg>`,
		`<!DOCTYPE svg>` + start + `</svg>`,
		start + `<g></svg>`,
	} {
		if InSubset([]byte(file)) == nil {
			t.Errorf("allowed: %s", file)
		}
	}
}
