// Package eyes looks at the pictures of all examples in a real browser.
package eyes

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"modeler/arithmetic/reading"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

type picture struct {
	Name string `json:"name"`
	SVG  string `json:"svg"`
}

type sight struct {
	Looked int `json:"looked"`
	Texts  int `json:"texts"`
	Faults []struct {
		Name  string `json:"name"`
		Width int    `json:"width"`
		What  string `json:"what"`
	} `json:"faults"`
}

// widths are a phone, the natural size and a wall.
var widths = []int{320, 800, 1600}

// look opens the pictures in the browser at every width.
func look(t *testing.T, pictures []picture) sight {
	t.Helper()
	var s sight
	runNode(t, "look.mjs", map[string]any{"widths": widths, "pictures": pictures}, &s)
	return s
}

// runNode hands a script its request and the path of the browser, and reads its
// answer. Without the browser or its driver it skips the test, but not where CI
// is set.
func runNode(t *testing.T, script string, request map[string]any, answer any) {
	t.Helper()
	browser, err := exec.LookPath("chromium")
	if err == nil {
		_, err = os.Stat("node_modules/playwright-core")
	}
	if err == nil {
		_, err = exec.LookPath("node")
	}
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatalf("there is no browser to look with (%v); .ci/install installs it", err)
		}
		t.Skipf("there is no browser to look with (%v); .ci/install installs it", err)
	}
	request["browser"] = browser
	input, err := json.Marshal(request)
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("node", script)
	cmd.Stdin = bytes.NewReader(input)
	var out, trouble bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &trouble
	cmd.WaitDelay = 5 * time.Second
	if err := cmd.Run(); err != nil {
		t.Fatalf("%v\n%s", err, trouble.String())
	}
	if err := json.Unmarshal(out.Bytes(), answer); err != nil {
		t.Fatal(err)
	}
}

// drawn is a telling in every version that a person can ask for; a random
// problem gets its whole story only.
func drawn(name string, told models.Telling, everything bool) []picture {
	var list []picture
	add := func(part string, s *scene.Scene) {
		for _, hidden := range []bool{false, true} {
			version := map[bool]string{true: " (hidden)"}[hidden]
			list = append(list, picture{name + part + version, string(svg.Render(s, svg.Options{Hidden: hidden}))})
		}
	}
	add("", told.Whole)
	if everything {
		for i, s := range told.Steps {
			add(fmt.Sprintf(", step %d", i+1), s.Scene)
		}
	}
	return list
}

func TestNoTextTouchesAnotherOrLeavesThePaper(t *testing.T) {
	pictures := []picture{}
	for _, m := range models.All {
		for _, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil || m.Fits(r.Problem) != nil {
				continue // package golden says so
			}
			pictures = append(pictures, drawn(m.Name+": "+example, m.Tell(r.Problem), true)...)
		}
	}
	d := problems.Deal(6)
	for range 400 {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) == nil {
				pictures = append(pictures, drawn(m.Name+": "+p.String(), m.Tell(p), false)...)
			}
		}
	}
	s := look(t, pictures)
	t.Logf("looked %d times at %d pictures, at %d texts", s.Looked, len(pictures), s.Texts)
	if want := len(pictures) * len(widths); s.Looked != want {
		t.Errorf("looked %d times, not %d", s.Looked, want)
	}
	for i, f := range s.Faults {
		if i == 40 {
			t.Errorf("and %d more", len(s.Faults)-i)
			break
		}
		t.Errorf("%s, %d pixels wide: %s", f.Name, f.Width, f.What)
	}
}

// TestTheEyesCanSee shows that each fault would be noticed, at the widths where
// it is one.
func TestTheEyesCanSee(t *testing.T) {
	page := func(body string) string {
		return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="200" viewBox="0 0 800 200" font-family="Arial, Helvetica, &#34;Liberation Sans&#34;, sans-serif">` + body + `</svg>`
	}
	s := look(t, []picture{
		{"good", page(`<text x="100" y="100" font-size="28">402</text><text x="200" y="100" font-size="28">178</text>`)},
		{"touching", page(`<text x="100" y="100" font-size="28">402</text><text x="130" y="110" font-size="28">178</text>`)},
		{"leaving", page(`<text x="790" y="100" font-size="28">402</text>`)},
		{"small", page(`<text x="100" y="100" font-size="20">402</text>`)},
		{"broken", `<svg`},
	})
	seen := map[string]int{}
	for _, f := range s.Faults {
		seen[f.Name]++
		for name, word := range map[string]string{"touching": "touch", "leaving": "leaves", "small": "pixels high", "broken": "cannot read"} {
			if f.Name == name && !strings.Contains(f.What, word) {
				t.Errorf("%s: %s", name, f.What)
			}
		}
	}
	for name, want := range map[string]int{"good": 0, "touching": 3, "leaving": 3, "small": 1, "broken": 3} {
		if seen[name] != want {
			t.Errorf("%s: %d faults, want %d", name, seen[name], want)
		}
	}
}
