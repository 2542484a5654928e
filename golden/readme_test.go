package golden

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"modeler/models"
)

func read(t *testing.T, name string) string {
	t.Helper()
	body, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(body)
}

// The pictures that the README shows are expected files of this folder.
func TestReadmeShowsFilesThatAreThere(t *testing.T) {
	shown := regexp.MustCompile(`\]\(((?:golden/|DEVELOPERS)[^)]+)\)`).FindAllStringSubmatch(read(t, "../README.md"), -1)
	if len(shown) < 8 {
		t.Fatalf("found only %d links to files", len(shown))
	}
	for _, s := range shown {
		if _, err := os.Stat("../" + s[1]); err != nil {
			t.Error(err)
		}
	}
}

// Every problem that the README says can be typed has a lesson.
func TestReadmeProblemsHaveLessons(t *testing.T) {
	_, table, ok := strings.Cut(read(t, "../README.md"), "| you type | you get |")
	table, _, _ = strings.Cut(table, "\n\n")
	if !ok {
		t.Fatal("the README has no table of problems")
	}
	n := 0
	for _, row := range strings.Split(table, "\n") {
		cells := strings.Split(row, "|")
		if len(cells) < 3 {
			continue
		}
		for _, typed := range regexp.MustCompile("`([^`]+)`").FindAllStringSubmatch(cells[1], -1) {
			n++
			if _, err := models.Teach(typed[1], ""); err != nil {
				t.Errorf("the README says that %q has a lesson: %v", typed[1], err)
			}
		}
	}
	if n < 20 {
		t.Errorf("found only %d problems", n)
	}
}

// CI runs the test command of the README, word for word.
func TestReadmeTestCommandIsWhatCIRuns(t *testing.T) {
	command := ".ci/install && go test ./..."
	if !strings.Contains(read(t, "../README.md"), "\n"+command+"\n") || !strings.Contains(read(t, "../.ci/run"), "\n"+command+"\n") {
		t.Errorf("README.md and .ci/run do not both have the line %q", command)
	}
}
