package api_test

import (
	"html"
	"regexp"
	"strings"
	"testing"

	"modeler/models"
)

// Every model stands on the page of pictures with all its examples, and every
// address to copy gives the picture that stands above it.
func TestTheGalleryShowsEveryExample(t *testing.T) {
	page := get(t, "/pictures")
	for _, m := range models.All {
		_, section, found := strings.Cut(page, `<h2 id="`+m.Name+`">`+html.EscapeString(m.Title))
		if !found {
			t.Errorf("%s is not there", m.Name)
			continue
		}
		section, _, _ = strings.Cut(section, "</section>")
		sources := regexp.MustCompile(`<img class="light" src="([^"]+)"`).FindAllStringSubmatch(section, -1)
		copies := regexp.MustCompile(`class="copy" data-src="([^"]+)"`).FindAllStringSubmatch(section, -1)
		if len(sources) != len(m.Examples) || len(copies) != len(sources) {
			t.Errorf("%s: %d pictures and %d to copy of %d examples", m.Name, len(sources), len(copies), len(m.Examples))
			continue
		}
		for i := range sources {
			if copies[i][1] != "http://example.com"+sources[i][1] {
				t.Errorf("%s: %s stands below %s", m.Name, copies[i][1], sources[i][1])
			}
		}
	}
}

// What the page for makers shows is what the service says.
func TestTheToolsPageTellsTheTruth(t *testing.T) {
	page := html.UnescapeString(get(t, "/tools"))
	for _, name := range []string{"problem", "model", "step", "answer", "theme", "width", "scale", "errors"} {
		if !strings.Contains(page, `<th scope="row"><code>`+name+`</code></th>`) {
			t.Errorf("the parameter %s is not explained", name)
		}
	}
	calls := regexp.MustCompile(`curl (?:-o \S+ )?'http://example.com([^']+)'`).FindAllStringSubmatch(page, -1)
	if len(calls) < 6 {
		t.Errorf("only %d calls are shown", len(calls))
	}
	for _, c := range calls {
		resp := ask(t, "GET", c[1])
		text := body(t, resp)
		if want := strings.Contains(c[1], "ducks"); want != (resp.StatusCode >= 400) {
			t.Errorf("%s has status %d", c[1], resp.StatusCode)
		} else if want && !strings.Contains(page, strings.TrimSpace(text)) {
			t.Errorf("%s answers otherwise than the page says: %s", c[1], text)
		}
	}
	if mark := ask(t, "GET", "/v1/picture.svg?problem=23+ducks").Header.Get("X-Picture-Error"); mark == "" || !strings.Contains(page, "X-Picture-Error: "+mark) {
		t.Errorf("the page says another mark than %q", mark)
	}
	if lesson := get(t, "/v1/lesson.json?problem=3/4=6/8"); !strings.Contains(page, lesson[:strings.Index(lesson, "steps")]) {
		t.Error("the lesson on the page is another")
	}
}

// The largest page stays small on its way to a phone; its pictures come when they are
// looked at.
func TestPagesAreSmallOnTheWire(t *testing.T) {
	const most = 60_000 // bytes
	for _, target := range []string{"/", "/pictures", "/tools", "/lesson?problem=4567890%2B2345678", "/lesson?problem=3000-1456", "/claim?problem=3/4=5/8&think=same&look=2"} {
		resp := ask(t, "GET", target, "Accept-Encoding", "gzip")
		size := len(body(t, resp))
		if resp.Header.Get("Content-Encoding") != "gzip" || size > most {
			t.Errorf("%s is %d bytes, encoded %q", target, size, resp.Header.Get("Content-Encoding"))
		}
		if strings.HasPrefix(target, "/pic") {
			t.Logf("%s: %d bytes", target, size)
		}
	}
}
