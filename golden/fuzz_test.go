package golden

import (
	"errors"
	"os"
	"strings"
	"testing"
	"time"

	"modeler/arithmetic/reading"
	"modeler/golden/laws"
	"modeler/models"
	"modeler/svg"
)

// patience is how long any text may take from the first letter to the last
// picture. A machine that is busy with other work may be slow once, not always:
// the quickest of several tries counts.
const (
	patience = 100 * time.Millisecond
	tries    = 4
)

// FuzzLesson takes any text all the way to its pictures. Whatever is typed,
// there is a lesson whose pictures are well formed and in the subset, or an
// error that says something.
func FuzzLesson(f *testing.F) {
	for _, m := range models.All {
		for _, example := range m.Examples {
			f.Add(example)
		}
	}
	if list, err := os.ReadFile("testdata/unreadable.txt"); err == nil {
		for _, text := range strings.Split(string(list), "\n") {
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		took := patience + 1
		for range tries {
			start := time.Now()
			lesson, err := models.Teach(text, "")
			if err != nil {
				complain(t, text, err)
			} else {
				draw(t, lesson)
			}
			if took = min(took, time.Since(start)); took <= patience {
				return
			}
		}
		t.Errorf("%q took %v", text, took)
	})
}

func complain(t *testing.T, text string, err error) {
	var e *reading.Error
	if !errors.As(err, &e) {
		t.Fatalf("%q: a strange error: %v", text, err)
	}
	if e.Message == "" || e.Code == "" || e.Block() == "" {
		t.Errorf("%q: an error that says nothing: %+v", text, e)
	}
	if e.Start < 0 || e.End < e.Start || e.End > len([]rune(text)) {
		t.Errorf("%q: the words at fault are %d to %d", text, e.Start, e.End)
	}
	if e.Try != "" {
		if _, err := models.Teach(e.Try, ""); err != nil {
			t.Errorf("%q: %q is proposed, which has no lesson: %v", text, e.Try, err)
		}
	}
}

func draw(t *testing.T, lesson models.Lesson) {
	if lesson.Text == "" || len(lesson.Steps) == 0 {
		t.Errorf("%q: a lesson without a text or a step", lesson.Text)
	}
	for _, hidden := range []bool{false, true} {
		check := func(body []byte) {
			if err := laws.InSubset(body); err != nil {
				t.Errorf("%q: %v", lesson.Text, err)
			}
			if len(body) > mostBytes {
				t.Errorf("%q: a picture of %d bytes", lesson.Text, len(body))
			}
		}
		check(svg.Render(lesson.Whole, svg.Options{Hidden: hidden}))
		for _, s := range lesson.Steps {
			check(svg.Render(s.Scene, svg.Options{Hidden: hidden}))
		}
	}
}
