package api_test

import (
	"html"
	"regexp"
	"strings"
	"testing"
)

var (
	nextLink = regexp.MustCompile(`<a rel="next"[^>]* href="([^"]+)"`)
	lightPic = regexp.MustCompile(`<img class="light" src="([^"]+)"`)
)

// A child says what they think of a claim, sees every picture of it and then
// whether it is so. Nothing on the way gives it away before they have said.
func TestTheWayThroughAClaim(t *testing.T) {
	for _, c := range []struct{ problem, think, stands, true string }{
		{"3/4=6/8", "same", "is true.", ""},
		{"3/4=6/8", "first", "is true.", ""},
		{"3/4=5/8", "same", "is not true.", "/claim?problem=3/4=6/8"},
		{"0.5=1/2", "second", "is true.", ""},
		{"7x8=54", "first", "is not true.", "/claim?problem=7x8=56"},
		{"compare+98+and+102", "second", "98 &lt; 102", "/claim?problem=98%3C102"},
	} {
		start := get(t, "/claim?problem="+c.problem)
		start, _, _ = strings.Cut(start, "<footer")
		if strings.Contains(start, "<img") || strings.Contains(start, "true") {
			t.Errorf("%s: the page shows it before the child has said what they think", c.problem)
		}
		at := regexp.MustCompile(`href="([^"]*think=` + c.think + `[^"]*)"`).FindStringSubmatch(start)
		if at == nil {
			t.Fatalf("%s: %s can't be said", c.problem, c.think)
		}
		url, seen := html.UnescapeString(at[1]), map[string]bool{}
		for {
			page := get(t, url)
			picture := lightPic.FindStringSubmatch(page)
			if picture == nil || seen[picture[1]] {
				t.Fatalf("%s: no new picture", url)
			}
			seen[picture[1]] = true
			if on := nextLink.FindStringSubmatch(page); on != nil {
				url = html.UnescapeString(on[1])
				continue
			}
			if !strings.Contains(page, c.stands) {
				t.Errorf("%s: the end does not say %q", url, c.stands)
			}
			if c.true != "" && !strings.Contains(page, `href="`+html.EscapeString(c.true)+`"`) {
				t.Errorf("%s: no link to %s", url, c.true)
			}
			break
		}
	}
}

func TestClaimRefusesKindly(t *testing.T) {
	for _, c := range []struct {
		url    string
		status int
		try    string
	}{
		{"/claim?problem=402-178", 422, "/claim?problem=402-178=224"},
		{"/claim?problem=3/4=6/8&think=maybe", 400, "/claim?problem=3/4=6/8"},
		{"/claim?problem=3/4=6/8&think=same&look=99", 400, "/claim?problem=3/4=6/8"},
		{"/claim?problem=ducks", 400, "/claim?problem="},
	} {
		resp := ask(t, "GET", c.url)
		if page := body(t, resp); resp.StatusCode != c.status || !strings.Contains(page, `href="`+html.EscapeString(c.try)) {
			t.Errorf("%s: status %d, and no link to %s", c.url, resp.StatusCode, c.try)
		}
	}
}
