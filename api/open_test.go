package api_test

import (
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"modeler/api"
)

// Fetch standard, 3.2 (CORS protocol): a script of another place that sends
// If-None-Match asks beforehand with OPTIONS, and can read no answer, an error
// included, that does not allow its origin.
func TestOtherPlacesMayUseAllOfV1(t *testing.T) {
	h := api.New(api.Options{})
	for _, c := range []struct {
		method, target string
		status         int
	}{
		{"OPTIONS", "/v1/picture.svg?problem=7x8", 204},
		{"OPTIONS", "/v1/lesson.json?problem=7x8", 204},
		{"POST", "/v1/lesson.json?problem=7x8", 200},
		{"PUT", "/v1/lesson.json?problem=7x8", 405},
		{"GET", "/v1/nothing", 404},
		{"GET", "/v1/lesson.json?problem=ducks", 400},
	} {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest(c.method, c.target, nil))
		head := w.Result().Header
		if w.Code != c.status || head.Get("Access-Control-Allow-Origin") != "*" {
			t.Errorf("%s %s gives %d, open to %q", c.method, c.target, w.Code, head.Get("Access-Control-Allow-Origin"))
		}
		if c.method == http.MethodOptions && (head.Get("Access-Control-Allow-Headers") != "*" || !strings.Contains(head.Get("Access-Control-Allow-Methods"), "GET")) {
			t.Errorf("%s %s allows %q and %q", c.method, c.target, head.Get("Access-Control-Allow-Methods"), head.Get("Access-Control-Allow-Headers"))
		}
	}
}

// RFC 9110, 8.7: the location gives the same content.
func TestLessonSaysWhereItLives(t *testing.T) {
	resp := ask(t, "GET", "/v1/lesson.json?utm=1&model=array&problem=7+x+8")
	first, location := body(t, resp), resp.Header.Get("Content-Location")
	if location != "/v1/lesson.json?problem=7+x+8&model=array" {
		t.Errorf("the lesson lives at %q", location)
	}
	if again := get(t, location); again != first {
		t.Errorf("%s gives something else", location)
	}
}

// A lost plus is put back where URLs are written by hand. The form of the page
// escapes it, so there a space is a space.
func TestALostPlusIsPutBackUnderV1Only(t *testing.T) {
	for target, status := range map[string]int{
		"/v1/lesson.json?problem=345+278": 200, "/lesson?problem=345+278": 400, "/lesson?problem=345%2B278": 200,
		"/v1/lesson.json?problem=1+5/4": 400, "/lesson?problem=1+5/4": 400, "/lesson?problem=1+1/4": 200,
	} {
		if resp := ask(t, "GET", target); resp.StatusCode != status {
			t.Errorf("%s gives %d, want %d", target, resp.StatusCode, status)
		}
	}
}
