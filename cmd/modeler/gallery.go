package main

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/pflag"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

var galleryCommand = command{
	name: "gallery",
	use:  "-o DIR",
	doc:  "write pages of every example in every theme, and of extreme problems",
	flags: func(fs *pflag.FlagSet) {
		fs.StringP("output", "o", "", "write the pages into this `directory`, which is made if need be")
	},
	run: gallery,
}

//go:embed gallery.html
var galleryHTML string

var galleryPage = template.Must(template.New("gallery").Parse(galleryHTML))

// page is what both pages show: headed rows of pictures. Pictures stand in the
// page itself, so that one file can be sent and opened anywhere.
type page struct {
	Title, Doc string
	Pages      []link // the other page
	Parts      []part
}

// part is a stretch of a page with a background of its own.
type part struct {
	ID, Title, Doc string
	Paper, Ink     string // colours
	Groups         []group
}

type group struct {
	ID, Title, Doc string
	Rows           []row
}

// row is a lesson: its pictures, and the same lesson in the other parts.
type row struct {
	ID, Title, Note string
	Elsewhere       []link
	Pictures        []picture
}

type link struct{ Href, Text string }

type picture struct {
	Caption, Command string
	Step             bool // drawn small
	SVG              template.HTML
}

const (
	examplesFile = "index.html"
	extremesFile = "extremes.html"
)

func gallery(c call) int {
	dir := c.value("output")
	if dir == "" || c.text != "" {
		return complain(c.errors, &reading.Error{
			Text: c.text, End: len([]rune(c.text)),
			Message: "gallery needs -o with a directory, and nothing else",
			Hint:    "name the directory to write the pages into", Try: "modeler gallery -o gallery",
		})
	}
	examples, drawn, err := examplesPage()
	if err != nil {
		return complain(c.errors, err)
	}
	extremes, dealt := extremesPage()
	for _, file := range []struct {
		name string
		page page
		says string
	}{
		{examplesFile, examples, fmt.Sprintf("%d examples in %d themes", drawn, len(svg.Themes))},
		{extremesFile, extremes, fmt.Sprintf("the extremes of %d pictures", dealt)},
	} {
		var b bytes.Buffer
		path := filepath.Join(dir, file.name)
		err := galleryPage.Execute(&b, file.page)
		if err == nil {
			err = os.MkdirAll(dir, 0o755)
		}
		if err == nil {
			err = os.WriteFile(path, b.Bytes(), 0o644)
		}
		if err != nil {
			fmt.Fprintln(c.errors, err)
			return failed
		}
		fmt.Fprintf(c.out, "%s: %s\n", path, file.says)
	}
	return done
}

// examplesPage has every example of every model in every theme, and how many
// they are. Its error is that of an example that gives no lesson.
func examplesPage() (page, int, error) {
	p := page{Title: "Every example", Doc: "Every example of every model: the whole story, the same with its answer hidden, and each step.",
		Pages: []link{{extremesFile, "The extremes"}}}
	drawn := 0
	for _, theme := range svg.Themes {
		one := newPart(theme)
		drawn = 0
		for _, m := range models.All {
			g := group{ID: theme.Name + "-" + m.Name, Title: m.Title, Doc: m.Doc}
			for i, example := range m.Examples {
				l, err := models.Teach(example, m.Name)
				if err != nil {
					return p, 0, fmt.Errorf("%s: %w", m.Name, err)
				}
				g.Rows = append(g.Rows, lessonRow(l, fmt.Sprintf("%s-%d", m.Name, i+1), theme))
				drawn++
			}
			one.Groups = append(one.Groups, g)
		}
		p.Parts = append(p.Parts, one)
	}
	return p, drawn, nil
}

func newPart(theme *svg.Theme) part {
	return part{ID: theme.Name, Title: "Theme: " + theme.Name, Paper: theme.Paper(), Ink: theme.Text(scene.Ink)}
}

// lessonRow is a lesson in one theme. name tells the rows of a theme apart.
func lessonRow(l models.Lesson, name string, theme *svg.Theme) row {
	r := row{ID: theme.Name + "-" + name, Title: l.Problem.String()}
	for _, other := range svg.Themes {
		if other != theme {
			r.Elsewhere = append(r.Elsewhere, link{"#" + other.Name + "-" + name, other.Name})
		}
	}
	draw := shot{problem: l.Problem.String(), model: l.Model.Name, theme: theme}
	add := func(caption string, s *scene.Scene, step int, hidden bool) {
		draw.scene, draw.step, draw.hidden = s, step, hidden
		r.Pictures = append(r.Pictures, draw.picture(caption))
	}
	add("The whole story", l.Whole, 0, false)
	add("With the answer hidden", l.Whole, 0, true)
	for i, s := range l.Steps {
		add(fmt.Sprintf("%d. %s", i+1, s.Title), s.Scene, i+1, false)
	}
	return r
}

// shot is one picture of one lesson, and so a command that draws it.
type shot struct {
	problem, model string
	step           int // 0 is the whole story
	hidden         bool
	theme          *svg.Theme // nil is the usual one
	scene          *scene.Scene
}

func (s shot) picture(caption string) picture {
	drawn := svg.Render(s.scene, svg.Options{Theme: s.theme, Hidden: s.hidden})
	return picture{caption, s.command(), s.step > 0, template.HTML(drawn)}
}

// command is what to type for the picture alone.
func (s shot) command() string {
	words := []string{"modeler draw '" + s.problem + "' --model " + s.model}
	if s.step > 0 {
		words = append(words, fmt.Sprintf("--step %d", s.step))
	}
	if s.hidden {
		words = append(words, "--answer hidden")
	}
	if s.theme != nil && s.theme != svg.Themes[0] {
		words = append(words, "--theme "+s.theme.Name)
	}
	return strings.Join(words, " ")
}
