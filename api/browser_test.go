package api_test

import (
	"bytes"
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"testing"
	"time"

	"modeler/api"
)

// inBrowser runs a script of the folder browser against the service in a real
// browser, and reports what the script says does not hold. elsewhere is a page of
// another place, which scripts may also open.
func inBrowser(t *testing.T, script string, elsewhere http.Handler) {
	t.Helper()
	var tools []string
	for _, name := range []string{"node", "chromium"} {
		path, err := exec.LookPath(name)
		if err == nil {
			_, err = os.Stat("../golden/eyes/node_modules/axe-core")
		}
		if err != nil && os.Getenv("CI") == "" {
			t.Skipf("%v; .ci/install installs it", err)
		} else if err != nil {
			t.Fatalf("%v; .ci/install installs it", err)
		}
		tools = append(tools, path)
	}
	site := httptest.NewServer(api.New(api.Options{}))
	defer site.Close()
	args := []string{"browser/" + script, tools[1], site.URL}
	if elsewhere != nil {
		other := httptest.NewServer(elsewhere)
		defer other.Close()
		args = append(args, other.URL)
	}
	cmd := exec.Command(tools[0], args...)
	var out, trouble bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &trouble
	cmd.WaitDelay = 5 * time.Second
	if err := cmd.Run(); err != nil {
		t.Fatalf("%s: %v\n%s", script, err, trouble.String())
	}
	var found []string
	if err := json.Unmarshal(out.Bytes(), &found); err != nil {
		t.Fatalf("%s: %v\n%s", script, err, out.String())
	}
	for _, f := range found {
		t.Error(f)
	}
}

// Nobody is shut out: WCAG 2.2 AA as far as rules can tell (axe-core), 320 pixels
// wide, text twice as large, and HTML that a validator has nothing to say about.
func TestPagesShutNobodyOut(t *testing.T) { inBrowser(t, "rules.mjs", nil) }

// The ways of a parent, a child and the maker of a tool, from end to end.
func TestTheWaysOfThoseItIsFor(t *testing.T) {
	inBrowser(t, "ways.mjs", http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		_, _ = w.Write([]byte("<!doctype html><title>Another place</title>"))
	}))
}
