package words

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"modeler/arithmetic"
)

// Every kind has a heading of its own; one that nobody has named has its own word.
func TestEveryKindHasATitle(t *testing.T) {
	source, err := os.ReadFile("../../arithmetic/kind.go")
	if err != nil {
		t.Fatal(err)
	}
	kinds := regexp.MustCompile(`(?m)^\s+\w+\s+Kind = "([^"]+)"`).FindAllStringSubmatch(string(source), -1)
	if len(kinds) < 30 {
		t.Fatalf("found only %d kinds", len(kinds))
	}
	seen := map[string]string{}
	for _, k := range kinds {
		title := KindTitle(arithmetic.Kind(k[1]))
		if title == "" || title[:1] != strings.ToUpper(title[:1]) || seen[title] != "" {
			t.Errorf("%q is headed %q, as is %q", k[1], title, seen[title])
		}
		seen[title] = k[1]
	}
}
