package golden

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"sort"
	"strings"
	"testing"

	"modeler/golden/laws"
	"modeler/models"
	"modeler/models/words"
)

// example is a worked example of an outside source. Those marked FromMemory were
// written down without the source at hand.
type example struct {
	ID, Source, Section, Kind, Problem, Answer string
	FromMemory                                 bool `json:"from_memory"`
}

// typed is an example as a problem that a person can type.
type typed struct {
	id, problem, answer string
	says                []string // what the description of the whole story has in it
}

func load(t *testing.T, name string, into any) {
	t.Helper()
	body, err := os.ReadFile(name)
	if err == nil {
		err = json.Unmarshal(body, into)
	}
	if err != nil {
		t.Fatal(err)
	}
}

// lines are the lines of a list that are not comments.
func lines(t *testing.T, name string) []string {
	t.Helper()
	body, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, line := range strings.Split(string(body), "\n") {
		if line != "" && line[0] != '#' {
			list = append(list, line)
		}
	}
	return list
}

func translations(t *testing.T) map[string][]typed {
	t.Helper()
	table := map[string][]typed{}
	for _, line := range lines(t, "testdata/outside.tsv") {
		f := strings.Split(line, "\t")
		if len(f) < 3 {
			t.Fatalf("testdata/outside.tsv: %q", line)
		}
		e := typed{id: f[0], problem: f[1], answer: f[2]}
		if len(f) > 3 {
			e.says = strings.Split(f[3], ";")
		}
		table[e.id] = append(table[e.id], e)
	}
	return table
}

// exceptions are the examples that are no problems for this program, with the reason.
func exceptions(t *testing.T) map[string]string {
	t.Helper()
	table := map[string]string{}
	for _, line := range lines(t, "testdata/beyond.tsv") {
		id, why, ok := strings.Cut(line, "\t")
		if !ok || why == "" || table[id] != "" {
			t.Fatalf("testdata/beyond.tsv: %q", line)
		}
		table[id] = why
	}
	return table
}

// check teaches the problem and compares the answer with the source's; it also
// holds the lesson to every law.
func (e typed) check() error {
	lesson, err := models.Teach(e.problem, "")
	if err != nil {
		return fmt.Errorf("%s: %w", e.problem, err)
	}
	got := words.Answer(lesson.Problem, lesson.Answer)
	if !slices.Contains(strings.Split(got, " = "), e.answer) && got != e.answer {
		return fmt.Errorf("%s: the answer is %s, the source says %s", e.problem, got, e.answer)
	}
	desc := lesson.Whole.Desc.Shown
	for _, part := range e.says {
		if !strings.Contains(desc, part) {
			return fmt.Errorf("%s: %q is not in the description: %s", e.problem, part, desc)
		}
	}
	l, err := laws.Tell(lesson.Model, lesson.Problem)
	if err != nil {
		return err
	}
	if broken := laws.Check(&l); len(broken) > 0 {
		return broken[0]
	}
	return nil
}

// TestOutside runs every worked example of the outside sources that is a problem
// to type. An example that was covered stays covered; with -update, one that has
// become so is added to the list. Those that are beyond the program are listed with
// the reason.
func TestOutside(t *testing.T) {
	const list = "testdata/covered.txt"
	var examples []example
	load(t, "testdata/examples.json", &examples)
	table, beyond := translations(t), exceptions(t)
	covered := lines(t, list)
	type tally struct{ done, all int }
	byKind, bySource := map[string]*tally{}, map[string]*tally{}
	count := func(m map[string]*tally, key string, done bool) {
		if m[key] == nil {
			m[key] = &tally{}
		}
		m[key].all++
		if done {
			m[key].done++
		}
	}
	var now, missing []string
	left := 0
	for _, e := range examples {
		problems, translated := table[e.ID]
		delete(table, e.ID)
		var err error
		for _, p := range problems {
			if err = p.check(); err != nil {
				break
			}
		}
		done := translated && err == nil
		if why, is := beyond[e.ID]; is {
			if delete(beyond, e.ID); translated {
				t.Errorf("%s is a problem to type and beyond this program", e.ID)
			}
			t.Logf("beyond: %s (%s): %s", e.ID, e.Problem, why)
			left++
			continue
		}
		count(byKind, e.Kind, done)
		count(bySource, e.Source, done)
		switch was := slices.Contains(covered, e.ID); {
		case done:
			now = append(now, e.ID)
			if !was && !*update {
				t.Errorf("%s is covered now; add it to %s (-update does)", e.ID, list)
			}
		case was:
			t.Errorf("%s (%s, %s) was covered: %v", e.ID, e.Source, e.Section, err)
		case translated:
			missing = append(missing, e.ID+": "+err.Error())
		default:
			missing = append(missing, e.ID+": no problem to type yet: "+e.Problem)
		}
	}
	for id := range table {
		t.Errorf("testdata/outside.tsv has %s, which is no example", id)
	}
	for id := range beyond {
		t.Errorf("testdata/beyond.tsv has %s, which is no example", id)
	}
	if *update {
		write(t, file{list, []byte("# The worked examples that are covered, kept by go test ./golden -update.\n" + strings.Join(now, "\n") + "\n")})
	}
	for _, m := range []map[string]*tally{bySource, byKind} {
		var keys []string
		for k := range m {
			keys = append(keys, k)
		}
		sort.Strings(keys)
		for _, k := range keys {
			t.Logf("%3d of %3d  %s", m[k].done, m[k].all, k)
		}
	}
	for _, m := range missing {
		t.Logf("not yet: %s", m)
	}
	t.Logf("%d of %d worked examples covered, %d not yet, %d beyond this program", len(now), len(examples), len(missing), left)
}
