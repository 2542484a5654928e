package api_test

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"modeler/api"
	"modeler/models"
)

var handler = api.New(api.Options{})

// ask sends a request without a body and checks what every response promises.
func ask(t *testing.T, method, target string, headers ...string) *http.Response {
	t.Helper()
	r := httptest.NewRequest(method, target, nil)
	for i := 0; i+1 < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	handler.ServeHTTP(w, r)
	resp := w.Result()
	if resp.Header.Get("X-Content-Type-Options") != "nosniff" {
		t.Errorf("%s %.200s: no nosniff", method, target)
	}
	if resp.StatusCode >= 500 && resp.StatusCode != http.StatusNotImplemented {
		t.Errorf("%s %.200s: got status %d", method, target, resp.StatusCode)
	}
	return resp
}

func body(t *testing.T, resp *http.Response) string {
	t.Helper()
	b, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func get(t *testing.T, target string) string {
	t.Helper()
	return body(t, ask(t, "GET", target))
}

// The headers of each route. Sources: RFC 9110 8.6 (Content-Length), 8.7
// (Content-Location), 8.8.3 (ETag); RFC 9111 5.2.2 (Cache-Control); the policies
// are those that image services of good repute send.
func TestEveryRouteHasItsHeaders(t *testing.T) {
	for _, c := range []struct {
		target, kind, life, policy, cors string
		tagged                           bool
	}{
		{"/v1/picture.svg?problem=402-178", "image/svg+xml", "public, max-age=86400", "default-src 'none'; sandbox", "*", true},
		{"/v1/picture.png?problem=402-178", "image/png", "public, max-age=86400", "default-src 'none'; sandbox", "*", true},
		{"/v1/picture.txt?problem=402-178", "text/plain; charset=utf-8", "public, max-age=86400", "default-src 'none'; sandbox", "*", true},
		{"/readyz", "application/json", "no-store", "default-src 'none'; sandbox", "", false},
		{"/claim.js", "text/javascript; charset=utf-8", "public, max-age=300", "default-src 'none'; sandbox", "", true},
		{"/v1/lesson.json?problem=402-178", "application/json", "public, max-age=86400", "default-src 'none'; sandbox", "*", true},
		{"/v1/models.json", "application/json", "public, max-age=86400", "default-src 'none'; sandbox", "*", true},
		{"/healthz", "application/json", "no-store", "default-src 'none'; sandbox", "", false},
		{"/", "text/html; charset=utf-8", "public, max-age=300", "default-src 'none'; style-src 'self'", "", true},
		{"/lesson?problem=402-178", "text/html; charset=utf-8", "public, max-age=300", "default-src 'none'; style-src 'self'", "", true},
		{"/style.css", "text/css; charset=utf-8", "public, max-age=300", "default-src 'none'; sandbox", "", true},
		{"/icon.svg", "image/svg+xml", "public, max-age=86400", "default-src 'none'; sandbox", "", true},
	} {
		resp := ask(t, "GET", c.target)
		text := body(t, resp)
		h := resp.Header
		if resp.StatusCode != 200 {
			t.Errorf("GET %s: got status %d: %s", c.target, resp.StatusCode, text)
			continue
		}
		if got := h.Get("Content-Type"); got != c.kind {
			t.Errorf("GET %s: Content-Type is %q, want %q", c.target, got, c.kind)
		}
		if got := h.Get("Cache-Control"); !strings.HasPrefix(got, c.life) {
			t.Errorf("GET %s: Cache-Control is %q, want %q", c.target, got, c.life)
		}
		if got := h.Get("Content-Security-Policy"); !strings.HasPrefix(got, c.policy) || strings.Contains(got, "unsafe") {
			t.Errorf("GET %s: Content-Security-Policy is %q, want %q", c.target, got, c.policy)
		}
		if got := h.Get("Access-Control-Allow-Origin"); got != c.cors {
			t.Errorf("GET %s: Access-Control-Allow-Origin is %q, want %q", c.target, got, c.cors)
		}
		if c.cors != "" && h.Get("Cross-Origin-Resource-Policy") != "cross-origin" {
			t.Errorf("GET %s: other pages may not embed it", c.target)
		}
		if got := h.Get("ETag"); (got != "") != c.tagged || c.tagged && !strings.HasPrefix(got, `"`) {
			t.Errorf("GET %s: ETag is %q, want a strong one: %v", c.target, got, c.tagged)
		}
		if h.Get("Set-Cookie") != "" {
			t.Errorf("GET %s: sets a cookie", c.target)
		}
		if h.Get("Content-Length") == "" {
			t.Errorf("GET %s: no Content-Length", c.target)
		}

		head := ask(t, "HEAD", c.target)
		if got := body(t, head); got != "" {
			t.Errorf("HEAD %s: got a body of %d bytes", c.target, len(got))
		}
		for _, name := range []string{"Content-Type", "Content-Length", "Cache-Control", "ETag", "Content-Location"} {
			if a, b := h.Get(name), head.Header.Get(name); a != b {
				t.Errorf("%s: %s is %q for GET and %q for HEAD", c.target, name, a, b)
			}
		}

		for _, method := range []string{"POST", "PUT", "DELETE", "PATCH"} {
			if method == "POST" && strings.Contains(c.target, "problem=402") && strings.HasPrefix(c.target, "/v1/") {
				continue // these take a problem in a body
			}
			resp := ask(t, method, c.target)
			if resp.StatusCode != 405 || !strings.Contains(resp.Header.Get("Allow"), "GET, HEAD") {
				t.Errorf("%s %s: got status %d and Allow %q, want 405 with GET, HEAD (RFC 9110, 15.5.6)", method, c.target, resp.StatusCode, resp.Header.Get("Allow"))
			}
		}
	}
}

// RFC 9110, 13.1.2: a list of tags, weak comparison, a star; 15.4.5: what a 304
// repeats.
func TestConditionalRequests(t *testing.T) {
	for _, target := range []string{
		"/v1/picture.svg?problem=402-178", "/v1/lesson.json?problem=402-178", "/v1/models.json", "/", "/lesson?problem=402-178", "/style.css",
	} {
		first := ask(t, "GET", target)
		tag := first.Header.Get("ETag")
		for _, c := range []struct {
			have string
			want int
		}{
			{tag, 304}, {"W/" + tag, 304}, {`"other", ` + tag, 304}, {"*", 304},
			{`"other"`, 200}, {"", 200}, {strings.Trim(tag, `"`), 200}, {`,,,"`, 200},
		} {
			resp := ask(t, "GET", target, "If-None-Match", c.have)
			if resp.StatusCode != c.want {
				t.Errorf("GET %s with If-None-Match %s: got status %d, want %d", target, c.have, resp.StatusCode, c.want)
			}
			if c.want != 304 {
				continue
			}
			if got := body(t, resp); got != "" {
				t.Errorf("GET %s with If-None-Match %s: a 304 has a body", target, c.have)
			}
			for _, name := range []string{"ETag", "Cache-Control", "Content-Location"} {
				if a, b := first.Header.Get(name), resp.Header.Get(name); a != b {
					t.Errorf("GET %s: %s is %q, and %q with a 304", target, name, a, b)
				}
			}
		}
	}
	if resp := ask(t, "GET", "/v1/picture.svg?problem=402-178&step=99", "If-None-Match", "*"); resp.StatusCode != 200 || resp.Header.Get("X-Picture-Error") == "" {
		t.Errorf("a star matched a picture that there is not: status %d", resp.StatusCode)
	}
}

func TestEqualRequestsShareOneCanonicalPicture(t *testing.T) {
	want := ask(t, "GET", "/v1/picture.svg?problem=402-178")
	for _, target := range []string{
		"/v1/picture.svg?problem=402+-+178",
		"/v1/picture.svg?problem=402%E2%88%92178",
		"/v1/picture.svg?problem=%20402%20%20-178&answer=shown&theme=colour&step=&width=&model=",
		"/v1/picture.svg?utm_source=x&problem=402-178&unknown=%00%ff&problem=7x8",
	} {
		resp := ask(t, "GET", target)
		for _, name := range []string{"ETag", "Content-Location"} {
			if a, b := want.Header.Get(name), resp.Header.Get(name); a != b {
				t.Errorf("GET %s: %s is %q, want %q", target, name, b, a)
			}
		}
	}
	for _, target := range []string{
		"/v1/picture.svg?problem=402-179", "/v1/picture.svg?problem=402-178&step=1", "/v1/picture.svg?problem=402-178&answer=hidden",
		"/v1/picture.svg?problem=402-178&theme=dark", "/v1/picture.svg?problem=402-178&width=320",
	} {
		if resp := ask(t, "GET", target); resp.Header.Get("ETag") == want.Header.Get("ETag") {
			t.Errorf("GET %s: has the tag of another picture", target)
		}
	}
}

// A bare plus in a query string means a space to every standard library.
func TestALostPlusIsPutBack(t *testing.T) {
	for _, c := range [][2]string{
		{"/v1/picture.svg?problem=345+278", "/v1/picture.svg?problem=345%2B278"},
		{"/v1/picture.svg?problem=345+%2B+278", "/v1/picture.svg?problem=345%2B278"},
		{"/v1/picture.svg?problem=3/4+1/2", "/v1/picture.svg?problem=3/4%2B1/2"},
		{"/v1/picture.svg?problem=1+1/2", "/v1/picture.svg?problem=1+1/2"},
	} {
		if got := ask(t, "GET", c[0]).Header.Get("Content-Location"); got != c[1] {
			t.Errorf("GET %s: Content-Location is %q, want %q", c[0], got, c[1])
		}
	}
}

// Every picture of every example is at the address that it says is its own.
func TestCanonicalAddressesGiveTheSamePicture(t *testing.T) {
	for _, m := range models.All {
		for _, text := range m.Examples {
			target := "/v1/picture.svg?problem=" + url.QueryEscape(text) + "&model=" + m.Name
			first := ask(t, "GET", target)
			if e := first.Header.Get("X-Picture-Error"); e != "" {
				t.Errorf("GET %s: %s", target, e)
				continue
			}
			own := first.Header.Get("Content-Location")
			again := ask(t, "GET", own)
			if body(t, first) != body(t, again) {
				t.Errorf("GET %s: the picture at %s is another", target, own)
			}
			if got := again.Header.Get("Content-Location"); got != own {
				t.Errorf("%q is at %s, which says that it is at %s", text, own, got)
			}
		}
	}
}

func TestUnknownPathsSayWhereTheWayIn(t *testing.T) {
	resp := ask(t, "GET", "/v1/pictures")
	if resp.StatusCode != 404 || resp.Header.Get("Content-Type") != "application/problem+json" {
		t.Errorf("GET /v1/pictures: got %d %s", resp.StatusCode, resp.Header.Get("Content-Type"))
	}
	resp = ask(t, "GET", "/nowhere/<script>")
	if text := body(t, resp); resp.StatusCode != 404 || !strings.Contains(text, `<form class="ask"`) || strings.Contains(text, "<script>") {
		t.Errorf("GET /nowhere: got %d without a way on", resp.StatusCode)
	}
	if resp := ask(t, "OPTIONS", "/v1/picture.svg"); resp.StatusCode != 204 || !strings.Contains(resp.Header.Get("Allow"), "GET") {
		t.Errorf("OPTIONS: got %d, Allow %q", resp.StatusCode, resp.Header.Get("Allow"))
	}
}
