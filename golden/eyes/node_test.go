package eyes

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"
)

// missing skips a test for want of a tool, but fails it where CI is set.
func missing(t *testing.T, what string, err error) {
	t.Helper()
	if os.Getenv("CI") != "" {
		t.Fatalf("there is no %s (%v); .ci/install installs it", what, err)
	}
	t.Skipf("there is no %s (%v); .ci/install installs it", what, err)
}

// tool is the path of a program that a test needs.
func tool(t *testing.T, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		missing(t, name, err)
	}
	return path
}

// runNode starts a script, hands it values, a line of JSON for each, while they
// are being made, and reads the one value that it answers.
func runNode(t *testing.T, script string, send func(func(any)), answer any) {
	t.Helper()
	node := tool(t, "node")
	for _, module := range []string{"playwright-core", "@resvg/resvg-js", "fraction.js", "decimal.js"} {
		if _, err := os.Stat("node_modules/" + module); err != nil {
			missing(t, module, err)
		}
	}
	cmd := exec.Command(node, script)
	input, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	var out, trouble bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &trouble
	cmd.WaitDelay = 5 * time.Second
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	lines := json.NewEncoder(input)
	var broken error // the script stopped reading; what it said is reported below
	send(func(value any) {
		if broken == nil {
			broken = lines.Encode(value)
		}
	})
	input.Close()
	if err := cmd.Wait(); err != nil || broken != nil {
		t.Fatalf("%s: %v, %v\n%s", script, err, broken, trouble.String())
	}
	if err := json.Unmarshal(out.Bytes(), answer); err != nil {
		t.Fatalf("%s: %v", script, err)
	}
}

// TestTheLockNamesNoRegistry: what is installed is pinned by its hash; where it
// comes from is for whoever installs it to say.
func TestTheLockNamesNoRegistry(t *testing.T) {
	for _, name := range []string{"package-lock.json", ".npmrc"} {
		body, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, word := range []string{`"resolved"`, "registry=", "registry."} {
			if strings.Contains(string(body), word) {
				t.Errorf("%s has %s in it", name, word)
			}
		}
	}
	var manifest struct{ Dependencies map[string]string }
	body, err := os.ReadFile("package.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(body, &manifest); err != nil {
		t.Fatal(err)
	}
	if len(manifest.Dependencies) == 0 {
		t.Error("package.json names no libraries")
	}
	for name, version := range manifest.Dependencies {
		if strings.Trim(version, "0123456789.") != "" {
			t.Errorf("%s is not pinned: %s", name, version)
		}
	}
}
