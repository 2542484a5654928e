package api_test

import (
	"encoding/xml"
	"errors"
	"html"
	"io"
	"regexp"
	"slices"
	"strings"
	"testing"

	"modeler/models"
	"modeler/models/scene"
	"modeler/models/words"
	"modeler/svg"
)

// element is one start tag of a page.
type element struct {
	name string
	attr map[string]string
}

// elements reads a page as a browser would, near enough: tags must nest, and only
// HTML's void elements may stay open.
func elements(t *testing.T, what, page string) []element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var out []element
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		if err != nil {
			t.Fatalf("%s: %v", what, err)
		}
		if e, ok := token.(xml.StartElement); ok {
			one := element{e.Name.Local, map[string]string{}}
			for _, a := range e.Attr {
				one.attr[a.Name.Local] = a.Value
			}
			out = append(out, one)
		}
	}
}

var ownScript = regexp.MustCompile(`^/[a-z]+\.js\?v=[0-9a-f]+$`)

// WCAG 2.2: 1.1.1 (every picture has its words), 1.3.1 and 3.3.2 (labels), 2.4.1
// (a way past the top), 2.4.2 (a title), 3.1.1 (the language), 4.1.1's unique ids.
func TestPagesAreAccessibleAndSelfContained(t *testing.T) {
	targets := []string{"/", "/lesson?problem=402-178", "/lesson?problem=3/4=6/8", "/lesson?problem=3/4=5/8", "/lesson?problem=402-178&step=3", "/lesson?problem=402-178&answer=hidden&theme=ink", "/lesson?problem=73%C3%B73&writing=europe&step=2", "/lesson?problem=56%C3%B78", "/lesson?problem=ducks", "/nowhere", "/pictures", "/tools",
		"/claim", "/claim?problem=3/4=5/8", "/claim?problem=3/4=5/8&think=same&look=2", "/claim?problem=3/4=5/8&think=same&look=5", "/claim?problem=5"}
	seen := map[string]bool{} // addresses that have been looked at
	for _, target := range targets {
		page := get(t, target)
		all := elements(t, target, page)
		count := map[string]int{}
		ids := map[string]bool{}
		for _, e := range all {
			count[e.name]++
			if id := e.attr["id"]; id != "" {
				if ids[id] {
					t.Errorf("%s: the id %q stands twice", target, id)
				}
				ids[id] = true
			}
			for name := range e.attr {
				if name == "style" || strings.HasPrefix(name, "on") {
					t.Errorf("%s: <%s> has %s, which the policy forbids", target, e.name, name)
				}
			}
			switch e.name {
			case "script":
				if !ownScript.MatchString(e.attr["src"]) {
					t.Errorf("%s: has a script of its own: %v", target, e.attr)
				}
			case "style", "iframe", "object":
				t.Errorf("%s: has <%s>", target, e.name)
			case "img":
				if _, has := e.attr["alt"]; !has || e.attr["width"] == "" || e.attr["height"] == "" {
					t.Errorf("%s: a picture lacks words or size: %v", target, e.attr)
				}
			case "html":
				if e.attr["lang"] != "en" {
					t.Errorf("%s: no language", target)
				}
			}
			for _, name := range []string{"src", "srcset", "href", "action"} {
				u := e.attr[name]
				if u == "" || strings.HasPrefix(u, "#") || seen[u] || e.attr["rel"] == "alternate" {
					continue
				}
				seen[u] = true
				if !strings.HasPrefix(u, "/") || strings.HasPrefix(u, "//") {
					t.Errorf("%s: leads outside: %s", target, u)
				}
				resp := ask(t, "GET", html.UnescapeString(u))
				if resp.StatusCode != 200 && name != "action" || resp.Header.Get("X-Picture-Error") != "" && e.attr["class"] != "broken" {
					t.Errorf("%s: %s=%s gives %d %s", target, name, u, resp.StatusCode, resp.Header.Get("X-Picture-Error"))
				}
			}
		}
		form := 1
		if strings.HasPrefix(target, "/claim?problem=3/4") {
			form = 0 // there is one thing to do on each of them
		}
		for one, want := range map[string]int{"h1": 1, "main": 1, "header": 1, "footer": 1, "title": 1, "form": form, "label": form, "input": form} {
			if count[one] != want {
				t.Errorf("%s: has %d <%s>, want %d", target, count[one], one, want)
			}
		}
		for _, e := range all {
			if e.name == "a" && strings.HasPrefix(e.attr["href"], "#") && !ids[e.attr["href"][1:]] {
				t.Errorf("%s: %s leads nowhere", target, e.attr["href"])
			}
			if e.name == "label" && !ids[e.attr["for"]] {
				t.Errorf("%s: a label is for nothing", target)
			}
		}
	}
}

func TestLessonPageTellsEveryMoveThreeWays(t *testing.T) {
	l, err := models.Teach("402 - 178", "")
	if err != nil {
		t.Fatal(err)
	}
	page := get(t, "/lesson?problem=402-178")
	if !strings.Contains(page, "four hundred two, take away one hundred seventy-eight") {
		t.Error("the page does not say back what was read")
	}
	for i, s := range l.Steps {
		for _, want := range []string{html.EscapeString(s.Title), s.Symbols.MathML()} {
			if !strings.Contains(page, want) {
				t.Errorf("move %d: the page lacks %s", i+1, want)
			}
		}
		for _, span := range s.Hands {
			if span.Role != scene.Ink && !strings.Contains(span.Text, "/") && !strings.Contains(page, `<b class="`+span.Role.String()+`">`+html.EscapeString(span.Text)+`</b>`) {
				t.Errorf("move %d: %q is not in the colour of its role", i+1, span.Text)
			}
		}
	}
	if got := strings.Count(page, `<li class="move"`); got != len(l.Steps) {
		t.Errorf("got %d moves, want %d", got, len(l.Steps))
	}
}

func TestErrorPagePointsAndLinks(t *testing.T) {
	resp := ask(t, "GET", "/lesson?problem=23+ducks<b>")
	page := body(t, resp)
	if resp.StatusCode != 400 || !strings.Contains(page, "<mark>") || strings.Contains(page, "<b>") || !strings.Contains(page, `aria-invalid="true"`) {
		t.Errorf("status %d, page %s", resp.StatusCode, page)
	}
	if resp := ask(t, "GET", "/lesson?problem=5-8"); resp.StatusCode != 422 || !strings.Contains(body(t, resp), `href="/lesson?problem=8-5"`) {
		t.Errorf("5 − 8: status %d, and no link to 8 − 5", resp.StatusCode)
	}
}

func TestStyleSheetHasTheColoursOfTheThemes(t *testing.T) {
	page := get(t, "/")
	at := regexp.MustCompile(`/style\.css\?v=[0-9a-f]+`).FindString(page)
	resp := ask(t, "GET", at)
	if got := resp.Header.Get("Cache-Control"); got != "public, max-age=31536000, immutable" {
		t.Errorf("the sheet at %s may be kept for %q", at, got)
	}
	sheet := body(t, resp)
	for _, theme := range []*svg.Theme{svg.Themes[0], svg.Named("dark")} {
		for _, r := range []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved, scene.Gone} {
			if want := "--" + r.String() + ":" + theme.Text(r) + ";"; !strings.Contains(sheet, want) {
				t.Errorf("the sheet lacks %s of the theme %s", want, theme.Name)
			}
		}
	}
	used := regexp.MustCompile(`var\(--([a-z-]+)\)`).FindAllStringSubmatch(sheet, -1)
	for _, u := range used {
		if !strings.Contains(sheet, "--"+u[1]+":") {
			t.Errorf("the sheet uses --%s, which it does not set", u[1])
		}
	}
	if strings.Contains(sheet, "url(") || strings.Contains(sheet, "@import") {
		t.Error("the sheet loads something")
	}
}

// Every story of the cover asks a problem that can be taught, under its topic.
func TestTopicsCanBeTaught(t *testing.T) {
	for i, topic := range words.Topics {
		l, err := models.Teach(topic.Problem, "")
		if err != nil {
			t.Errorf("%s: %v", topic.Problem, err)
			continue
		}
		if got := words.TopicOf(l.Problem); got != i {
			t.Errorf("%s stands under %s, not %s", topic.Problem, words.Topics[got].Title, topic.Title)
		}
	}
	if i := slices.IndexFunc(words.Topics, func(t words.Topic) bool { return t.Story == "" || t.Title == "" }); i >= 0 {
		t.Errorf("topic %d has no story", i)
	}
}
