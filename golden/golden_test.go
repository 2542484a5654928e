package golden

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models"
)

var update = flag.Bool("update", false, "accept the lessons and pictures as they are now")

// accept is the command that accepts a change.
const accept = "look at it, and when it is right: go test ./golden -update"

// Bounds on the size of a picture, in bytes.
const (
	mostBytes   = 32 << 10
	aimForBytes = 8 << 10
)

// expected are all files that there should be, sorted by name.
func expected(t testing.TB) []file {
	var all []file
	for _, l := range lessons(t) {
		all = append(all, l.files()...)
	}
	all = append(all, file{"unreadable.txt", unreadable(t)})
	slices.SortFunc(all, func(a, b file) int { return strings.Compare(a.name, b.name) })
	for i := range all[1:] {
		if all[i].name == all[i+1].name {
			t.Errorf("two examples are both called %s", all[i].name)
		}
	}
	return all
}

// present lists the expected files that stand in this folder: those in the
// folders of the models, also of models that are gone.
func present(t *testing.T) []string {
	t.Helper()
	var names []string
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && slices.Contains([]string{"measure", "laws", "problems", "eyes", "sight", "testdata"}, path):
			return fs.SkipDir
		case !d.IsDir() && strings.Contains(path, "/") && !strings.Contains(path, ".got."), path == "unreadable.txt":
			names = append(names, filepath.ToSlash(path))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return names
}

func TestGoldens(t *testing.T) {
	if *update && os.Getenv("CI") != "" {
		t.Fatal("-update is for a person who has looked; it is refused where CI is set")
	}
	want := expected(t)
	var changed []string
	for _, f := range want {
		old, err := os.ReadFile(f.name)
		got := gotName(f.name)
		switch {
		case err == nil && bytes.Equal(old, f.body):
			os.Remove(got)
			continue
		case *update:
			write(t, f)
			os.Remove(got)
			continue
		case errors.Is(err, fs.ErrNotExist):
			t.Errorf("%s is missing; %s", f.name, accept)
		default:
			t.Errorf("%s has changed; %s is beside it, both are in golden/report.html; %s", f.name, got, accept)
		}
		write(t, file{got, f.body})
		changed = append(changed, f.name)
	}
	for _, name := range present(t) {
		if slices.ContainsFunc(want, func(f file) bool { return f.name == name }) {
			continue
		}
		if *update {
			os.Remove(name)
			os.Remove(filepath.Dir(name)) // only when it is empty
			continue
		}
		t.Errorf("%s belongs to no example; %s", name, accept)
	}
	report(t, changed)
}

// gotName is the name under which a changed file is left beside the old one.
func gotName(name string) string {
	at := strings.LastIndexByte(name, '.')
	return name[:at] + ".got" + name[at:]
}

func write(t *testing.T, f file) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(f.name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(f.name, f.body, 0o644); err != nil {
		t.Fatal(err)
	}
}

// moment matches what must not stand in a file that is compared byte for byte:
// dates and hexadecimal hashes.
var moment = regexp.MustCompile(`\b20\d\d-\d\d-\d\d\b|\b[0-9a-f]{12,}\b`)

func TestOutputIsSmallCleanAndTheSameTwice(t *testing.T) {
	once, twice := expected(t), expected(t)
	large := 0
	for i, f := range once {
		if !bytes.Equal(f.body, twice[i].body) {
			t.Errorf("%s is different the second time", f.name)
		}
		if !strings.HasSuffix(f.name, ".svg") {
			continue
		}
		if m := moment.Find(f.body); m != nil {
			t.Errorf("%s has a date or a hash in it: %s", f.name, m)
		}
		if err := wellFormed(f.body); err != nil {
			t.Errorf("%s: %v", f.name, err)
		}
		if len(f.body) > mostBytes {
			t.Errorf("%s has %d bytes, more than %d", f.name, len(f.body), mostBytes)
		}
		if len(f.body) > aimForBytes {
			large++
		}
	}
	t.Logf("%d of %d files are larger than %d bytes", large, len(once), aimForBytes)
}

// wellFormed parses a file as XML to its end.
func wellFormed(body []byte) error {
	d := xml.NewDecoder(bytes.NewReader(body))
	for {
		switch _, err := d.Token(); {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return err
		}
	}
}

// unreadable tells what is said about texts that give no lesson.
func unreadable(t testing.TB) []byte {
	t.Helper()
	list, err := os.ReadFile("testdata/unreadable.txt")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	for _, text := range strings.Split(strings.TrimRight(string(list), "\n"), "\n") {
		_, err := models.Teach(text, "")
		var e *reading.Error
		if !errors.As(err, &e) {
			t.Errorf("%q gives a lesson or a strange error: %v", text, err)
			continue
		}
		b.WriteString("> " + text + "\n[" + string(e.Code) + "] " + strings.TrimRight(e.Block(), "\n") + "\n\n")
	}
	return b.Bytes()
}
