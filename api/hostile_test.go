package api_test

import (
	"encoding/json"
	"fmt"
	"io"
	"maps"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strings"
	"testing"
)

// hostile are values that mean harm to a reader, a page, a picture, a log or a
// header: too much of something, markup, control and direction marks, broken
// encodings, templates, paths, numbers of other kinds.
var hostile = []string{
	strings.Repeat("1", 10_000), strings.Repeat("(", 300), strings.Repeat("9", 300), "99999999999999999999 + 1",
	"<script>alert(1)</script>", `"><img src=x onerror=alert(1)>`, "</title></svg><script>", "'><svg/onload=alert(1)>", "]]>", "&amp;&lt;&#0;", "<!--", "<![CDATA[x", "<?xml?>",
	"javascript:alert(1)", "data:text/html,<script>alert(1)</script>", "//example.org/", "https://example.org/lesson?problem=1",
	"\x00\x01\x1b[31m", "402\r\nSet-Cookie: a=b", "402\nX-Evil: 1", "\xff\xfe\xc0", "😀😀😀", "\u202e402", "\u2066402", "é́́́́́", "../../etc/passwd", "%", "%zz", "%00", "{{.}}", "${x}", "';--", "`id`", "$(id)",
	"-1", "1e999", "NaN", "Infinity", "0", "0x10", "null", "true", strings.Repeat("a", 500), strings.Repeat("é", 2000), strings.Repeat("\u0301", 300), strings.Repeat("<", 300),
}

// paths are all routes that read a query.
var paths = []string{
	"/v1/picture.svg", "/v1/picture.png", "/v1/picture.txt", "/v1/lesson.json", "/v1/models.json", "/openapi.json", "/oembed",
	"/modeler-picture.js", "/", "/lesson", "/claim", "/pictures", "/tools", "/style.css", "/icon.svg", "/healthz", "/readyz",
}

// names are all parameters, and two that there are not.
var names = []string{
	"problem", "model", "step", "answer", "theme", "width", "scale", "errors", "writing", "think", "look", "url", "format", "maxwidth", "maxheight",
	"cover", "moves", "words", "unknown", "<script>",
}

// costly reports whether answers of a route take so long to make that only some of
// the values are tried there.
func costly(path string) bool {
	return path == "/v1/picture.png" || !strings.HasPrefix(path, "/v1/") && !strings.Contains(path[1:], ".")
}

// judged are the bodies that were found harmless or not already.
var judged = map[string]bool{}

// harmless holds an answer to what is true of every answer, whatever was asked.
func harmless(t *testing.T, what string, resp *http.Response) {
	t.Helper()
	text := body(t, resp)
	switch resp.StatusCode {
	case 200, 303, 304, 400, 404, 405, 413, 414, 415, 422, 501:
	default:
		t.Errorf("%.160s: got status %d", what, resp.StatusCode)
	}
	if len(resp.Header["Set-Cookie"]) > 0 || resp.Header.Get("X-Evil") != "" {
		t.Errorf("%.160s: a header was injected: %v", what, resp.Header)
	}
	for name, values := range resp.Header {
		for _, v := range values {
			if strings.ContainsFunc(v, func(r rune) bool { return r < ' ' && r != '\t' || r == 0x7f }) {
				t.Errorf("%.160s: the header %s has a control character: %q", what, name, v)
			}
		}
	}
	if to := resp.Header.Get("Location"); to != "" && (!strings.HasPrefix(to, "/") || strings.HasPrefix(to, "//")) {
		t.Errorf("%.160s: leads away, to %q", what, to)
	}
	const most = 1 << 20
	if len(text) > most {
		t.Errorf("%.160s: %d bytes", what, len(text))
	}
	kind, _, _ := strings.Cut(resp.Header.Get("Content-Type"), ";")
	if kind != "image/png" {
		for _, bad := range []string{"\x00", "\x1b", "\u202e", "\u2066"} {
			if strings.Contains(text, bad) {
				t.Errorf("%.160s: %q comes back as it was", what, bad)
			}
		}
	}
	if judged[text] {
		return // most routes answer most harm with the same words
	}
	judged[text] = true
	switch kind {
	case "image/svg+xml":
		if strings.HasPrefix(text, "<svg") && !strings.Contains(what, "/icon.svg") {
			wellFormed(t, what, text)
		}
	case "text/html":
		for _, e := range elements(t, what, text) {
			own := e.name != "script" || strings.HasPrefix(e.attr["src"], "/") || e.attr["type"] == "application/ld+json"
			for name, value := range e.attr {
				link := name == "href" || name == "src" || name == "action"
				own = own && !strings.HasPrefix(name, "on") && !(link && strings.HasPrefix(strings.ToLower(strings.TrimSpace(value)), "javascript:"))
			}
			if !own {
				t.Errorf("%.160s: has <%s %v>", what, e.name, e.attr)
			}
		}
	case "application/json", "application/problem+json", "application/vnd.oai.openapi+json":
		if text != "" && !json.Valid([]byte(text)) {
			t.Errorf("%.160s: is no JSON: %.80q", what, text)
		}
	}
}

func TestHostileValuesInEveryParameter(t *testing.T) {
	for _, path := range paths {
		for _, name := range names {
			for i, value := range hostile {
				if costly(path) && name != "problem" && i%7 != 0 {
					continue // the reading of parameters is shared with the other routes
				}
				q := url.Values{name: {value}}
				if name != "problem" {
					q.Set("problem", "402 - 178")
				}
				target := path + "?" + q.Encode()
				harmless(t, target, ask(t, "GET", target))
			}
		}
	}
}

func TestHostileQueriesAndPaths(t *testing.T) {
	for _, raw := range []string{
		"problem", "problem=%", "problem=%4", "=", "&&&", ";", "problem=1;2", "%70roblem=402-178", "problem=1&problem=2", "problem[]=1", "problem=%00",
		strings.Repeat("a=b&", 900), strings.Repeat("a=b&", 2000), strings.Repeat("&", 5000), "problem=" + strings.Repeat("%25", 1000),
	} {
		for _, path := range paths {
			r := httptest.NewRequest("GET", path, nil)
			r.URL.RawQuery = raw
			w := httptest.NewRecorder()
			handler.ServeHTTP(w, r)
			harmless(t, path+"?"+raw, w.Result())
		}
	}
	for _, path := range []string{
		"//", "/..", "/../../etc/passwd", "/v1/../healthz", "/%2e%2e/", "/v1/picture.svg/", "/v1//picture.svg", "/V1/PICTURE.SVG", "/lesson.js/../../x", "/<script>",
		"/%00", "/" + strings.Repeat("a", 9000), "/v1/picture.gif", "/.git/config", "/*",
	} {
		r := httptest.NewRequest("GET", "/", nil)
		r.URL = &url.URL{Path: path, RawQuery: "problem=402-178"}
		r.RequestURI = r.URL.String()
		w := httptest.NewRecorder()
		handler.ServeHTTP(w, r)
		harmless(t, path, w.Result())
	}
}

// Headers of a request may hold anything that a client can send; none is trusted.
func TestHostileHeaders(t *testing.T) {
	for _, name := range []string{
		"Accept", "Accept-Encoding", "Accept-Language", "If-None-Match", "If-Modified-Since", "Range", "Origin", "Referer", "Cookie", "Forwarded",
		"X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "X-Original-URL", "X-HTTP-Method-Override", "Content-Length", "Transfer-Encoding", "Expect",
	} {
		for _, value := range hostile {
			for _, path := range []string{"/v1/picture.svg?problem=402-178", "/v1/lesson.json?problem=402-178", "/lesson?problem=402-178", "/oembed?url=/lesson?problem=402-178", "/"} {
				harmless(t, fmt.Sprintf("GET %s with %s: %.40q", path, name, value), ask(t, "GET", path, name, value))
			}
		}
	}
	for _, host := range []string{"", "evil.example", "evil.example:99999", `"><script>`, "a b", strings.Repeat("h", 5000)} {
		for _, path := range paths {
			r := httptest.NewRequest("GET", path+"?problem=402-178", nil)
			r.Host = host
			w := httptest.NewRecorder()
			handler.ServeHTTP(w, r)
			harmless(t, fmt.Sprintf("GET %s of host %.40q", path, host), w.Result())
		}
	}
}

func TestHostileBodies(t *testing.T) {
	deep := strings.Repeat(`{"problem":`, 5000) + "1" + strings.Repeat("}", 5000)
	bodies := map[string]string{
		"deep": deep, "list": `["402 - 178"]`, "null": "null", "number": `{"problem":402}`, "long": `{"problem":"` + strings.Repeat("1", 15_000) + `"}`,
		"half": `{"problem":"402 - 1`, "twice": `{"problem":"1","problem":"2"}`, "more": `{"problem":"1 + 1","nosuch":1}`, "huge number": `{"problem":"1 + 1","width":1e400}`,
		"bad UTF-8": "{\"problem\":\"\xff\xfe\"}", "empty": "", "space": "   ", "beyond": strings.Repeat("x", 20_000), "two": `{"problem":"1 + 1"}{"problem":"2 + 2"}`,
	}
	for i, v := range hostile {
		bodies[fmt.Sprint("value ", i)] = v
		text, err := json.Marshal(map[string]string{"problem": v, "theme": v, "answer": v})
		if err != nil {
			t.Fatal(err)
		}
		bodies[fmt.Sprint("JSON ", i)] = string(text)
	}
	for _, name := range slices.Sorted(maps.Keys(bodies)) {
		for _, kind := range []string{"application/json", "text/plain; charset=utf-8", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "<script>", ""} {
			for _, path := range paths {
				r := httptest.NewRequest("POST", path, strings.NewReader(bodies[name]))
				r.Header.Set("Content-Type", kind)
				w := httptest.NewRecorder()
				handler.ServeHTTP(w, r)
				harmless(t, fmt.Sprintf("POST %s as %s: %s", path, kind, name), w.Result())
			}
		}
	}
	// A body that never ends is read no further than the bound.
	endless := &counted{}
	r := httptest.NewRequest("POST", "/v1/picture.svg", endless)
	r.Header.Set("Content-Type", "text/plain")
	w := httptest.NewRecorder()
	handler.ServeHTTP(w, r)
	if w.Code != http.StatusRequestEntityTooLarge || endless.read > 64<<10 {
		t.Errorf("of a body without end %d bytes were read, status %d", endless.read, w.Code)
	}
}

// counted is a body without end that counts what was read of it.
type counted struct{ read int }

func (c *counted) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = '1'
	}
	c.read += len(p)
	return len(p), nil
}

var _ io.Reader = (*counted)(nil)

func TestOnlyTheMethodsThatThereAre(t *testing.T) {
	for _, method := range []string{"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "PROPFIND", "get", "<script>"} {
		for _, path := range paths {
			r := httptest.NewRequest("GET", path+"?problem=402-178", nil)
			r.Method = method
			w := httptest.NewRecorder()
			handler.ServeHTTP(w, r)
			if resp := w.Result(); resp.StatusCode == 200 && method != "OPTIONS" {
				t.Errorf("%s %s: got 200", method, path)
			} else if resp.StatusCode != 204 {
				harmless(t, method+" "+path, resp)
			}
		}
	}
}
