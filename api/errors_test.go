package api_test

import (
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"net/http"
	"strings"
	"testing"
)

// RFC 9457: the members of problem details. The statuses are those of DESIGN's
// contract for /v1/; the near values are ours.
func TestErrorsPointAndOfferANearValue(t *testing.T) {
	for _, c := range []struct {
		query     string
		status    int
		code, try string
		parameter string
	}{
		{"problem=", 400, "empty", "", "problem"},
		{"problem=23%20%20ducks", 400, "", "", "problem"},
		{"problem=7/0", 422, "zero-denominator", "", "problem"},
		{"problem=7+%C3%B7+0", 422, "divide-by-zero", "", "problem"},
		{"problem=5-8", 422, "negative", "8 − 5", "problem"},
		{"problem=402-178&step=0", 400, "bad-step", "1", "step"},
		{"problem=402-178&step=99", 422, "no-such-step", "", "step"},
		{"problem=402-178&step=two", 400, "bad-step", "1", "step"},
		{"problem=402-178&step=99999999999999999999", 400, "bad-step", "1000", "step"},
		{"problem=402-178&width=9", 400, "bad-width", "64", "width"},
		{"problem=402-178&width=9000", 400, "bad-width", "4000", "width"},
		{"problem=402-178&width=1e3", 400, "bad-width", "64", "width"},
		{"problem=402-178&answer=hiden", 400, "bad-answer", "hidden", "answer"},
		{"problem=402-178&theme=drak", 400, "bad-theme", "dark", "theme"},
		{"problem=402-178&model=nosuch", 422, "no-such-model", "", "model"},
		{"problem=" + strings.Repeat("1%2B", 2000), 414, "too-long", "", "problem"},
	} {
		resp := ask(t, "GET", "/v1/picture.svg?errors=status&"+c.query)
		text := body(t, resp)
		var d struct {
			Type, Title, Detail, Code, Hint, Parameter, Text, Try string
			Status                                                int
			Position                                              *int
			Length                                                int
		}
		if err := json.Unmarshal([]byte(text), &d); err != nil {
			t.Errorf("%.80s: %v in %s", c.query, err, text)
			continue
		}
		if resp.StatusCode != c.status || d.Status != c.status {
			t.Errorf("%.80s: got status %d and says %d, want %d: %s", c.query, resp.StatusCode, d.Status, c.status, text)
		}
		if resp.Header.Get("Content-Type") != "application/problem+json" || d.Type != "about:blank" || d.Title != http.StatusText(c.status) {
			t.Errorf("%.80s: not problem details after RFC 9457: %s", c.query, text)
		}
		if c.code != "" && d.Code != c.code || c.try != "" && d.Try != c.try || d.Parameter != c.parameter {
			t.Errorf("%.80s: got code %q, try %q, parameter %q; want %q, %q, %q", c.query, d.Code, d.Try, d.Parameter, c.code, c.try, c.parameter)
		}
		if d.Detail == "" || d.Hint == "" || d.Position == nil {
			t.Errorf("%.80s: says too little: %s", c.query, text)
		}
		if d.Position != nil && *d.Position+d.Length > len([]rune(d.Text)) {
			t.Errorf("%.80s: points beyond the text: %s", c.query, text)
		}

		picture := ask(t, "GET", "/v1/picture.svg?"+c.query)
		mark := picture.Header.Get("X-Picture-Error")
		if picture.StatusCode != 200 || !strings.HasPrefix(mark, d.Code+"; position=") || picture.Header.Get("ETag") != "" {
			t.Errorf("%.80s: the picture of the error has status %d, mark %q and tag %q", c.query, picture.StatusCode, mark, picture.Header.Get("ETag"))
		}
		if got := picture.Header.Get("Cache-Control"); got != "public, max-age=60" {
			t.Errorf("%.80s: an error may be kept: %q", c.query, got)
		}
		wellFormed(t, c.query, body(t, picture))
	}
	if resp := ask(t, "GET", "/v1/picture.svg?problem=402-178&errors=loud"); !strings.HasPrefix(resp.Header.Get("X-Picture-Error"), "bad-errors;") {
		t.Errorf("errors=loud: got %q", resp.Header.Get("X-Picture-Error"))
	}
}

// wellFormed checks that a picture is XML with nothing in it that could run.
func wellFormed(t *testing.T, what, picture string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(picture))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Errorf("%.80q: not XML: %v", what, err)
			return
		}
		if e, ok := token.(xml.StartElement); ok {
			switch e.Name.Local {
			case "svg", "title", "desc", "g", "rect", "circle", "path", "line", "text":
			default:
				t.Errorf("%.80q: has the element <%s>", what, e.Name.Local)
			}
			for _, a := range e.Attr {
				if strings.HasPrefix(a.Name.Local, "on") || a.Name.Local == "href" {
					t.Errorf("%.80q: has the attribute %s", what, a.Name.Local)
				}
			}
		}
	}
}
