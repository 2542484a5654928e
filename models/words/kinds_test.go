package words

import (
	"os"
	"regexp"
	"testing"

	"modeler/arithmetic"
)

// Every kind that the arithmetic has is named in a list of what can be asked.
func TestEveryKindHasATitle(t *testing.T) {
	source, err := os.ReadFile("../../arithmetic/kind.go")
	if err != nil {
		t.Fatal(err)
	}
	kinds := regexp.MustCompile(`(?m)^\s+\w+\s+Kind = "([^"]+)"`).FindAllStringSubmatch(string(source), -1)
	if len(kinds) < 30 {
		t.Fatalf("found only %d kinds", len(kinds))
	}
	for _, k := range kinds {
		if _, named := kindTitles[arithmetic.Kind(k[1])]; !named {
			t.Errorf("%q has no title", k[1])
		}
	}
}
