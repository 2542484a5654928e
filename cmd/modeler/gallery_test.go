package main

import (
	"fmt"
	"html"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"

	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// write runs the command and reads the two pages.
func write(dir string) (pages [2]string, err error) {
	dir = filepath.Join(dir, "new", "gallery")
	var out, errs strings.Builder
	if status := run([]string{"gallery", "-o", dir}, &out, &errs); status != done {
		return pages, fmt.Errorf("exit %d: %s", status, errs.String())
	}
	for i, name := range []string{examplesFile, extremesFile} {
		path := filepath.Join(dir, name)
		b, err := os.ReadFile(path)
		if err != nil {
			return pages, err
		}
		if !strings.Contains(out.String(), path+": ") {
			return pages, fmt.Errorf("the command does not say that it wrote %s:\n%s", path, out.String())
		}
		pages[i] = string(b)
	}
	return pages, nil
}

// written are the pages, written once for all tests that only read them.
func written(t *testing.T) (examples, extremes string) {
	t.Helper()
	pages, err := once()
	if err != nil {
		t.Fatal(err)
	}
	return pages[0], pages[1]
}

var (
	figure  = regexp.MustCompile(`(?s)<figure[^>]*>\s*(<svg.*?</svg>\n?)<figcaption>.*?<code>(.*?)</code>`)
	outside = regexp.MustCompile(`(?i)<script|<link [^>]*stylesheet|@import|url\(|(?:src|srcset|action)=|href="[a-z]+:[^"]`)
	target  = regexp.MustCompile(`href="#([^"]+)"`)
	named   = regexp.MustCompile(` id="([^"]+)"`)
)

var once = sync.OnceValues(func() (pages [2]string, err error) {
	dir, err := os.MkdirTemp("", "gallery")
	if err != nil {
		return pages, err
	}
	defer os.RemoveAll(dir)
	return write(dir)
})

func TestGalleryHasEveryExampleInEveryTheme(t *testing.T) {
	examples, _ := written(t)
	want := 0
	for _, m := range models.All {
		for _, example := range m.Examples {
			l, err := models.Teach(example, m.Name)
			if err != nil {
				t.Fatal(err)
			}
			want += (2 + len(l.Steps)) * len(svg.Themes)
		}
	}
	if got := len(figure.FindAllString(examples, -1)); got != want {
		t.Errorf("%d pictures, want %d", got, want)
	}
}

// What is written under a picture draws that picture.
func TestGalleryCommandsDrawWhatTheyStandUnder(t *testing.T) {
	examples, extremes := written(t)
	for i, f := range figure.FindAllStringSubmatch(examples+extremes, -1) {
		command := html.UnescapeString(f[2])
		if i%7 != 0 && strings.HasPrefix(f[0], `<figure class="step"`) {
			continue // one step in seven, and all whole stories
		}
		rest, is := strings.CutPrefix(command, "modeler ")
		if !is {
			t.Fatalf("no command: %q", command)
		}
		var out, errs strings.Builder
		if status := run(arguments(rest), &out, &errs); status != done || out.String() != f[1] {
			t.Errorf("%s (exit %d) does not draw the picture in the page\n%s", command, status, errs.String())
		}
	}
}

func TestGalleryAsksForNothingAndItsLinksLead(t *testing.T) {
	examples, extremes := written(t)
	for name, page := range map[string]string{examplesFile: examples, extremesFile: extremes} {
		text := strings.ReplaceAll(page, `<link rel="icon" href="data:,">`, "")
		if m := outside.FindString(text); m != "" {
			t.Errorf("%s asks for something: %q", name, m)
		}
		if strings.Contains(page, "ZgotmplZ") {
			t.Errorf("%s: a value was not safe where it stands", name)
		}
		ids := map[string]bool{}
		for _, m := range named.FindAllStringSubmatch(page, -1) {
			if ids[m[1]] {
				t.Errorf("%s: two places are called %s", name, m[1])
			}
			ids[m[1]] = true
		}
		for _, m := range target.FindAllStringSubmatch(page, -1) {
			if !ids[m[1]] {
				t.Errorf("%s: no place is called %s", name, m[1])
			}
		}
	}
}

func TestGalleryIsTheSameTwice(t *testing.T) {
	again, err := write(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	if first, _ := once(); first != again {
		t.Error("two runs differ")
	}
}

func TestExtremesAreInOrder(t *testing.T) {
	drawn := func(problem, kind string, score int) scored {
		return scored{shot{problem: problem, scene: &scene.Scene{W: 100, H: 100}}, kind, score}
	}
	list := []scored{drawn("a", "k", 3), drawn("b", "k", 9), drawn("b", "k", 9), drawn("c", "k", 5), drawn("d", "other", 1)}
	g := extremeGroup(extremes[1], list)
	var got []string
	for _, r := range g.Rows {
		got = append(got, r.Title+" "+r.Note)
	}
	// The same picture stands once. The third of the kind k is left out, so that one kind does not fill the page.
	if want := "b 9 items; c 5 items; d 1 items"; strings.Join(got, "; ") != want {
		t.Errorf("got %s, want %s", strings.Join(got, "; "), want)
	}
}
