package laws

import (
	"flag"
	"fmt"
	"slices"
	"sort"
	"sync"
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/words"
)

var (
	count = flag.Int("problems", 20_000, "how many random problems to hold to the laws")
	seed  = flag.Uint64("seed", 1, "which random problems")
)

func TestEveryExampleKeepsTheLaws(t *testing.T) {
	for _, m := range models.All {
		if len(m.Examples) == 0 {
			t.Errorf("%s has no examples", m.Name)
		}
		for _, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil {
				t.Errorf("%s: %q: %v", m.Name, example, err)
				continue
			}
			if err := m.Fits(r.Problem); err != nil {
				t.Errorf("%s: %q does not fit: %v", m.Name, example, err)
				continue
			}
			l, err := Tell(m, r.Problem)
			if err != nil {
				t.Error(err)
				continue
			}
			for _, err := range Check(&l) {
				t.Error(err)
			}
		}
	}
}

// In British words every picture keeps the laws too: longer words have room.
func TestBritishWordsKeepTheLaws(t *testing.T) {
	changed := 0
	for _, m := range models.All {
		for _, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil {
				t.Fatal(err)
			}
			l, err := Tell(m, r.Problem)
			if err != nil {
				t.Error(err)
				continue
			}
			us := l.Whole.Desc.Shown
			l.Telling = models.Worded(l.Telling, words.British)
			if l.Whole.Desc.Shown != us {
				changed++
			}
			if l.Problem.Kind == arithmetic.InWords {
				continue // its answer is a name, and the truth has the one of the United States
			}
			for _, err := range Check(&l) {
				t.Errorf("in British words: %v", err)
			}
		}
	}
	if changed == 0 {
		t.Error("no words are other words")
	}
}

// TestRandomProblemsKeepTheLaws holds random problems of every kind to the laws.
// A few of each sort of breach are printed, with how often it happened.
func TestRandomProblemsKeepTheLaws(t *testing.T) {
	var lock sync.Mutex
	told, broken := map[string]int{}, map[string][]string{}
	Deal(*seed, *count, func(m *models.Model, p arithmetic.Problem) {
		l, err := Tell(m, p)
		faults := []error{err}
		if err == nil {
			faults = Check(&l)
		}
		lock.Lock()
		defer lock.Unlock()
		told[m.Name+", "+string(p.Kind)]++
		for _, err := range faults {
			sort := fmt.Sprintf("%s, %s, %.24s", m.Name, p.Kind, err.Error())
			broken[sort] = append(broken[sort], err.Error())
		}
	})
	for _, sort := range sorted(broken) {
		list := broken[sort]
		slices.Sort(list)
		t.Errorf("%d × %v", len(list), list[0])
		for _, err := range list[1:min(3, len(list))] {
			t.Errorf("      %v", err)
		}
	}
	lessons := 0
	for _, sort := range sorted(told) {
		t.Logf("%5d  %s", told[sort], sort)
		lessons += told[sort]
	}
	t.Logf("%d lessons", lessons)
	for _, m := range models.All {
		for _, kind := range m.Kinds {
			if told[m.Name+", "+string(kind)] == 0 && *count > 1000 {
				t.Errorf("no problem of the kind %q was told by %s, which says that it tells them", kind, m.Name)
			}
		}
	}
}

func sorted[V any](m map[string]V) []string {
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
