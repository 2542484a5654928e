package api_test

import (
	"bytes"
	"compress/gzip"
	"image/png"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"modeler/api"
)

func post(t *testing.T, target, kind, body string) *http.Response {
	t.Helper()
	r := httptest.NewRequest("POST", target, strings.NewReader(body))
	if kind != "" {
		r.Header.Set("Content-Type", kind)
	}
	w := httptest.NewRecorder()
	handler.ServeHTTP(w, r)
	return w.Result()
}

// A PNG is as wide as it is asked to be, and a wrong problem is a readable PNG too.
func TestPNG(t *testing.T) {
	for query, width := range map[string]int{
		"problem=402-178": 800, "problem=402-178&width=320": 320, "problem=402-178&scale=2": 1600, "problem=402-178&scale=2&width=100": 100,
		"problem=402-178&width=4000": 4000, "problem=ducks": 800, "problem=ducks&width=200": 200, "problem=7x8&theme=ink&answer=hidden&step=1": 800,
	} {
		resp := ask(t, "GET", "/v1/picture.png?"+query)
		picture, err := png.DecodeConfig(resp.Body)
		if err != nil || picture.Width != width || resp.Header.Get("Content-Type") != "image/png" {
			t.Errorf("%s: %d wide, %v, %s", query, picture.Width, err, resp.Header.Get("Content-Type"))
		}
		if wrong := strings.Contains(query, "ducks"); wrong != (resp.Header.Get("X-Picture-Error") != "") {
			t.Errorf("%s: X-Picture-Error is %q", query, resp.Header.Get("X-Picture-Error"))
		}
		if resp.Header.Get("Content-Encoding") != "" || resp.Header.Get("Vary") != "" {
			t.Errorf("%s: a PNG is packed again", query)
		}
	}
}

func TestWordsOfAPicture(t *testing.T) {
	shown, hidden := get(t, "/v1/picture.txt?problem=402-178"), get(t, "/v1/picture.txt?problem=402-178&answer=hidden")
	if !strings.HasPrefix(shown, "402 − 178 = 224\n") || strings.Contains(hidden, "224") || !strings.Contains(hidden, "402 − 178") {
		t.Errorf("shown: %s\nhidden: %s", shown, hidden)
	}
	if resp := ask(t, "GET", "/v1/picture.txt?problem=ducks"); resp.StatusCode != 400 || resp.Header.Get("Content-Type") != "application/problem+json" {
		t.Errorf("a wrong problem gives %d %s", resp.StatusCode, resp.Header.Get("Content-Type"))
	}
}

// What comes with POST gives what the same URL gives, and says which that is.
func TestPost(t *testing.T) {
	for _, c := range []struct{ target, kind, body, location string }{
		{"/v1/picture.svg", "", "345 + 278", "/v1/picture.svg?problem=345%2B278"},
		{"/v1/picture.svg", "text/plain; charset=utf-8", "345 + 278", "/v1/picture.svg?problem=345%2B278"},
		{"/v1/picture.svg?theme=ink", "text/plain", "7 x 8", "/v1/picture.svg?problem=7x8&theme=ink"},
		{"/v1/picture.svg", "application/json", `{"problem": "7 x 8", "theme": "dark", "width": 320, "step": null}`, "/v1/picture.svg?problem=7x8&theme=dark&width=320"},
		{"/v1/picture.svg", "application/x-www-form-urlencoded", "problem=3%2F4%3D6%2F8&answer=hidden", "/v1/picture.svg?problem=3/4=6/8&answer=hidden"},
		{"/v1/lesson.json", "text/plain", "7 x 8", "/v1/lesson.json?problem=7+x+8"},
	} {
		resp := post(t, c.target, c.kind, c.body)
		text := body(t, resp)
		if resp.StatusCode != 200 || resp.Header.Get("Content-Location") != c.location || resp.Header.Get("Cache-Control") != "no-store" {
			t.Errorf("POST %s %s: %d, %q, %q", c.target, c.body, resp.StatusCode, resp.Header.Get("Content-Location"), resp.Header.Get("Cache-Control"))
			continue
		}
		if text != get(t, c.location) {
			t.Errorf("%s gives something else than POST", c.location)
		}
	}
	for _, c := range []struct {
		kind, body string
		status     int
	}{
		{"text/plain", "ducks", 400},
		{"text/plain", "5 - 8", 422},
		{"application/json", "[1]", 400},
		{"application/json", `{"problem": ["7"]}`, 400},
		{"application/json", `{"problem": "7 x 8", "width": 3.5}`, 400},
		{"application/json", `{"problem"`, 400},
		{"image/png", "7 x 8", 415},
		{"text/plain", strings.Repeat("7", 17<<10), 413},
	} {
		resp := post(t, "/v1/picture.svg", c.kind, c.body)
		if text := body(t, resp); resp.StatusCode != c.status || resp.Header.Get("Content-Type") != "application/problem+json" || !strings.Contains(text, `"hint"`) {
			t.Errorf("POST %s %.30s: %d %s", c.kind, c.body, resp.StatusCode, text)
		}
	}
}

// RFC 9110, 8.8.3 (a tag for each encoding), 12.5.3 (Accept-Encoding) and 12.5.5 (Vary).
func TestEncodings(t *testing.T) {
	for _, target := range []string{"/v1/picture.svg?problem=402-178", "/v1/lesson.json?problem=402-178", "/lesson?problem=402-178", "/style.css", "/v1/models.json"} {
		plain := ask(t, "GET", target)
		text := body(t, plain)
		for accept, packed := range map[string]bool{
			"gzip": true, "gzip, deflate, br, zstd": true, "*": true, "GZIP;q=0.5": true, "x-gzip": true,
			"gzip;q=0": false, "gzip; q=0.000, *": false, "br": false, "identity": false, "*;q=0": false, "gzipped": false, "gzip;q=x": false,
		} {
			resp := ask(t, "GET", target, "Accept-Encoding", accept)
			b, err := io.ReadAll(resp.Body)
			if err != nil {
				t.Fatal(err)
			}
			if got := resp.Header.Get("Content-Encoding") == "gzip"; got != packed {
				t.Errorf("%s with %q: packed is %v", target, accept, got)
				continue
			}
			if resp.Header.Get("Vary") != "Accept-Encoding" {
				t.Errorf("%s with %q: Vary is %q", target, accept, resp.Header.Get("Vary"))
			}
			if packed {
				r, err := gzip.NewReader(bytes.NewReader(b))
				if err != nil {
					t.Fatal(err)
				}
				if b, err = io.ReadAll(r); err != nil {
					t.Fatal(err)
				}
			}
			if string(b) != text {
				t.Errorf("%s with %q: another body", target, accept)
			}
			tag := resp.Header.Get("ETag")
			if (tag != plain.Header.Get("ETag")) != packed {
				t.Errorf("%s with %q: the tag is %s, plain it is %s", target, accept, tag, plain.Header.Get("ETag"))
			}
			for _, again := range []string{accept, "identity", "gzip"} {
				resp := ask(t, "GET", target, "Accept-Encoding", again, "If-None-Match", tag)
				same := (again != "identity") == packed || again == accept
				if (resp.StatusCode == 304) != same {
					t.Errorf("%s: %s, asked for with %q, gives %d", target, tag, again, resp.StatusCode)
				}
				if resp.StatusCode == 304 && (resp.Header.Get("ETag") != tag || resp.Header.Get("Vary") == "" || resp.Header.Get("Cache-Control") == "") {
					t.Errorf("%s: a 304 without what it repeats: %v", target, resp.Header)
				}
			}
		}
	}
}

// All spellings of a problem share one picture, one tag and one location, and what
// is not a parameter changes nothing.
func TestSpellingsShareOnePicture(t *testing.T) {
	first := ask(t, "GET", "/v1/picture.svg?problem=7x8")
	want := body(t, first)
	for _, target := range []string{
		"/v1/picture.svg?problem=7+%C3%97+8", "/v1/picture.svg?problem=7*8&utm=1", "/v1/picture.svg?utm=2&problem=7%20times%208",
		"/v1/picture.svg?answer=shown&problem=7x8", "/v1/picture.svg?problem=7x8&theme=colour", "/v1/picture.svg?problem=7x8&scale=1",
	} {
		for range 2 { // made, and kept
			resp := ask(t, "GET", target)
			if got := body(t, resp); got != want {
				t.Errorf("%s is another picture", target)
			}
			for _, name := range []string{"ETag", "Content-Location"} {
				if got := resp.Header.Get(name); got != first.Header.Get(name) {
					t.Errorf("%s: %s is %q, want %q", target, name, got, first.Header.Get(name))
				}
			}
		}
	}
}

func TestRateLimit(t *testing.T) {
	h := api.New(api.Options{Rate: 5})
	statuses := map[int]int{}
	for i := range 40 {
		r := httptest.NewRequest("GET", "/v1/picture.svg?problem=7x8", nil)
		r.RemoteAddr = "192.0.2.1:1000"
		if i >= 30 {
			r.RemoteAddr = "192.0.2.2:1000"
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		statuses[w.Code]++
		if w.Code == 429 && (w.Header().Get("Retry-After") != "1" || w.Header().Get("Cache-Control") != "no-store") {
			t.Errorf("Retry-After is %q, Cache-Control %q", w.Header().Get("Retry-After"), w.Header().Get("Cache-Control"))
		}
	}
	if statuses[200] < 20 || statuses[200] > 22 || statuses[200]+statuses[429] != 40 {
		t.Errorf("statuses %v, want 10 for each client and 429 for the rest", statuses)
	}
}

func TestReadyzSaysWhenItLeaves(t *testing.T) {
	s := api.New(api.Options{})
	status := func() int {
		w := httptest.NewRecorder()
		s.ServeHTTP(w, httptest.NewRequest("GET", "/readyz", nil))
		return w.Code
	}
	if got := status(); got != 200 {
		t.Errorf("got %d, want 200", got)
	}
	s.Leave()
	if got := status(); got != 503 {
		t.Errorf("leaving, got %d, want 503", got)
	}
}

// The numbers count requests by route and know no problem.
func TestMetrics(t *testing.T) {
	s := api.New(api.Options{})
	for _, target := range []string{"/v1/picture.svg?problem=7x8", "/v1/picture.svg?problem=7x8", "/secret/place"} {
		s.ServeHTTP(httptest.NewRecorder(), httptest.NewRequest("GET", target, nil))
	}
	w := httptest.NewRecorder()
	s.Metrics().ServeHTTP(w, httptest.NewRequest("GET", "/metrics", nil))
	text := w.Body.String()
	for _, want := range []string{
		`modeler_request_duration_seconds_count{route="/v1/picture.svg",status="200"} 2`,
		`modeler_request_duration_seconds_count{route="other",status="404"} 1`, "modeler_store_entries 1", "go_goroutines",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("the numbers lack %s", want)
		}
	}
	if strings.Contains(text, "secret") || strings.Contains(text, "7x8") {
		t.Error("the numbers tell what was asked")
	}
}
