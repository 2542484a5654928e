package api_test

import (
	"encoding/json"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// A linter that is not ours finds nothing to say about the description.
func TestOpenAPIPassesALinter(t *testing.T) {
	lint, err := filepath.Abs("../golden/eyes/node_modules/.bin/redocly")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(lint); err != nil {
		t.Fatalf("%v; .ci/install gets it", err)
	}
	file := filepath.Join(t.TempDir(), "openapi.json")
	if err := os.WriteFile(file, []byte(get(t, "/openapi.json")), 0o600); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(lint, "lint", file, "--skip-rule=info-license")
	cmd.Dir = filepath.Dir(file)
	cmd.Env = append(os.Environ(), "REDOCLY_TELEMETRY=off", "REDOCLY_SUPPRESS_UPDATE_NOTICE=true")
	if out, err := cmd.CombinedOutput(); err != nil || strings.Contains(string(out), "[1]") { // it numbers what it finds
		t.Errorf("%v\n%s", err, out)
	}
}

// described is as much of the description as the test follows.
type described struct {
	Paths map[string]map[string]struct {
		ID        string `json:"operationId"`
		Responses map[string]json.RawMessage
	}
}

// Every operation is called, in good ways and bad, and every answer is one that the
// description has, with a body that fits its schema (JSON Schema 2020-12, judged by
// a library that is not ours).
func TestEveryAnswerIsAsDescribed(t *testing.T) {
	text := get(t, "/openapi.json")
	var doc described
	if err := json.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatal(err)
	}
	parsed, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("openapi.json", parsed); err != nil {
		t.Fatal(err)
	}
	schema := map[string]string{"lesson": "Lesson", "postLesson": "Lesson", "models": "Catalogue", "oembed": "Photo", "health": "State", "ready": "State"}
	good := map[string][]string{
		"/v1/models.json": {""}, "/healthz": {""}, "/readyz": {""},
		"/oembed": {"url=/lesson%3Fproblem%3D7x8", "url=/lesson%3Fproblem%3D7x8&maxwidth=300&maxheight=90&format=json"},
	}
	bad := map[string][]string{
		"/oembed": {"", "url=https://example.org/lesson", "url=/lesson%3Fproblem%3Dducks", "url=/lesson%3Fproblem%3D5-8", "url=/lesson%3Fproblem%3D7x8&format=xml", "url=/lesson%3Fproblem%3D7x8&maxwidth=x"},
	}
	asks := []string{"problem=402-178", "problem=3/4=5/8", "problem=24/6", "problem=1/2%2B1/4&model=number-line", "problem=5-8", "problem=ducks", "problem=7x8&model=nothing", "problem=" + strings.Repeat("7", 300), ""}
	called := 0
	for path, methods := range doc.Paths {
		for method, op := range methods {
			queries := append(append([]string{}, good[path]...), bad[path]...)
			if len(queries) == 0 {
				queries = asks
			}
			for _, q := range queries {
				var resp *http.Response
				if method == "post" {
					values := strings.TrimPrefix(strings.ReplaceAll(q, "%2B", "+"), "problem=")
					problem, rest, _ := strings.Cut(values, "&")
					resp = post(t, path+"?"+rest, "text/plain", problem)
				} else {
					if strings.HasPrefix(path, "/v1/picture") && q != "" {
						q += "&errors=status"
					}
					resp = ask(t, "GET", path+"?"+q)
				}
				called++
				checkAnswer(t, compiler, method+" "+path+"?"+q, op.Responses, schema[op.ID], resp)
			}
		}
	}
	t.Logf("%d answers to %d paths", called, len(doc.Paths))
}

func checkAnswer(t *testing.T, compiler *jsonschema.Compiler, what string, responses map[string]json.RawMessage, name string, resp *http.Response) {
	t.Helper()
	text := body(t, resp)
	if _, has := responses[strconv.Itoa(resp.StatusCode)]; !has {
		t.Errorf("%s: status %d is not described", what, resp.StatusCode)
	}
	switch kind, _, _ := strings.Cut(resp.Header.Get("Content-Type"), ";"); {
	case kind == "application/problem+json":
		name = "Trouble"
	case kind != "application/json":
		return
	}
	s, err := compiler.Compile("openapi.json#/components/schemas/" + name)
	if err != nil {
		t.Fatal(err)
	}
	value, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	if err := s.Validate(value); err != nil {
		t.Errorf("%s: %v", what, err)
	}
}

// oEmbed 1.0: the photo is within what is asked for, and is there.
func TestOembed(t *testing.T) {
	for query, most := range map[string][2]int{"": {800, 2000}, "&maxwidth=300": {300, 2000}, "&maxheight=100": {800, 100}, "&maxwidth=200&maxheight=150": {200, 150}} {
		var p struct {
			URL           string
			Width, Height int
		}
		if err := json.Unmarshal([]byte(get(t, "/oembed?url=/lesson%3Fproblem%3D402-178"+query)), &p); err != nil {
			t.Fatal(err)
		}
		if p.Width > most[0] || p.Height > most[1] || p.Width < 64 {
			t.Errorf("%s: %d × %d, want at most %v", query, p.Width, p.Height, most)
		}
		_, target, _ := strings.Cut(p.URL, "example.com")
		if resp := ask(t, "GET", target); resp.StatusCode != 200 || resp.Header.Get("Content-Type") != "image/png" || resp.Header.Get("X-Picture-Error") != "" {
			t.Errorf("%s: %s gives %d", query, p.URL, resp.StatusCode)
		}
	}
	page := get(t, "/lesson?problem=7x8")
	for _, want := range []string{`type="application/json+oembed" href="http://example.com/oembed?url=http`, `property="og:image" content="http://example.com/v1/picture.png?problem=7x8&amp;answer=hidden&amp;width=1200"`} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
}
