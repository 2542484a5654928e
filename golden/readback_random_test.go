package golden

import (
	"errors"
	"flag"
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"

	"modeler/arithmetic"
	"modeler/golden/laws"
	"modeler/models"
)

var (
	count = flag.Int("problems", 20_000, "how many random problems to read back")
	seed  = flag.Uint64("seed", 2, "which random problems")
)

// unsure reports whether a reader may pass over one picture in thirty of a kind: now
// and then two numbers on a line stand so close that neither the scale nor the names
// can be read for certain. All other readers read every picture.
func unsure(key string) bool {
	return strings.HasPrefix(key, "number-line, ") && (strings.HasSuffix(key, ", whole") || strings.HasSuffix(key, ", steps"))
}

// TestReadingBack measures the pictures of every example and of random problems,
// the whole story and every step, and compares what it finds with the exact
// answer.
func TestReadingBack(t *testing.T) {
	paint := paints(t)
	var lock sync.Mutex
	read, unread, faults := map[string]int{}, map[string]int{}, map[string][]string{}
	first := map[string]string{} // of those that are not read, the first in the alphabet
	pictures := 0
	look := func(m *models.Model, p arithmetic.Problem) {
		l, err := laws.Tell(m, p)
		found := []finding{{"telling", err}}
		if err == nil {
			found = readBack(&l, paint)
		}
		lock.Lock()
		defer lock.Unlock()
		pictures += 1 + len(l.Steps)
		for _, f := range found {
			key := fmt.Sprintf("%s, %s, %s", m.Name, p.Kind, f.reader)
			switch {
			case f.err == nil:
				read[key]++
			case errors.Is(f.err, errUnread):
				unread[key]++
				if was := first[key]; was == "" || p.String() < was {
					first[key] = p.String()
				}
			default:
				faults[key] = append(faults[key], fmt.Sprintf("%s: %v", p, f.err))
			}
		}
	}
	for _, l := range lessons(t) {
		look(l.model, l.reading.Problem)
	}
	laws.Deal(*seed, *count, look)
	var keys []string
	for _, m := range []map[string]int{read, unread} {
		for key := range m {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	for _, key := range slices.Compact(keys) {
		all := read[key] + unread[key]
		t.Logf("%5d read, %5d not read  %s", read[key], unread[key], key)
		if missed := unread[key]; missed > 0 && (!unsure(key) || missed > 1+all/30) {
			t.Errorf("%s: only %d of %d pictures are read back; not %s", key, read[key], all, first[key])
		}
	}
	for key, list := range faults {
		slices.Sort(list)
		t.Errorf("%d × %s: %s", len(list), key, list[0])
		for _, other := range list[1:min(3, len(list))] {
			t.Errorf("      %s", other)
		}
	}
	t.Logf("%d pictures", pictures)
}
