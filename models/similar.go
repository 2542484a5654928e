package models

import (
	"slices"
	"strings"
	"sync"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
)

// Similar are problems like that of a lesson to go on with. A text is empty where
// there is none.
type Similar struct{ Easier, Like, Harder string }

// load is about how much work a problem is for a child: a digit to read and a move
// to make count the same. Common practice, no source; it only orders problems that
// are alike.
type load struct {
	problem arithmetic.Problem
	text    string
	work    int
	digits  int
	size    int64 // of its numbers together
}

func loadOf(p arithmetic.Problem, m *Model) load {
	l := load{problem: p, text: p.String(), work: len(m.Tell(p).Steps)}
	run := int64(0)
	for _, c := range l.text + " " {
		switch {
		case c >= '0' && c <= '9':
			l.work, l.digits = l.work+1, l.digits+1
			run = min(run*10+int64(c-'0'), 1e12)
		case c != ',':
			l.size, run = l.size+run, 0
		}
	}
	return l
}

// within reports whether a problem has neither more digits than another nor larger
// numbers: 8 × 60 has fewer moves than 7 × 8 and is not easier.
func (l load) within(m load) bool { return l.digits <= m.digits && l.size <= m.size }

func (l load) compare(m load) int {
	if l.work != m.work {
		return l.work - m.work
	}
	switch {
	case l.size < m.size:
		return -1
	case l.size > m.size:
		return 1
	}
	return 0
}

// known are the examples of all models and a few problems that follow each, by
// their load; claims that are not true are left out.
var known = sync.OnceValue(func() []load {
	const follow = 4
	var all []load
	seen := map[string]bool{}
	for _, m := range All {
		for _, text := range m.Examples {
			for range follow {
				l, err := Teach(text, "")
				if err != nil || seen[l.Problem.String()] {
					break
				}
				seen[l.Problem.String()] = true
				if !isFalse(l.Problem) {
					all = append(all, loadOf(l.Problem, l.Model))
				}
				next, ok := Next(l)
				if !ok {
					break
				}
				text = next
			}
		}
	}
	slices.SortStableFunc(all, load.compare)
	return all
})

// LikeIt finds problems to go on with after a lesson: one that is less work, one
// that is about as much, and one that is more, of the same kind and of numbers that
// are written alike.
func LikeIt(l Lesson) Similar {
	const step = 2 // less is hardly another problem
	var s Similar
	var nearBelow, nearAbove bool // what is chosen so far is less than a step away
	s.Like, _ = Next(l)
	here := loadOf(l.Problem, l.leading())
	for _, other := range known() {
		if !alike(l.Problem, other.problem) || other.text == here.text || other.text == s.Like {
			continue
		}
		// The known ones are in order: the last below and the first above are nearest.
		switch order := other.compare(here); {
		case order < 0 && other.within(here) && (other.work+step <= here.work || s.Easier == "" || nearBelow):
			s.Easier, nearBelow = other.text, other.work+step > here.work
		case order > 0 && here.within(other) && (s.Harder == "" || nearAbove && other.work >= here.work+step):
			s.Harder, nearAbove = other.text, other.work < here.work+step
		}
	}
	for _, text := range []*string{&s.Easier, &s.Like, &s.Harder} {
		if r, err := reading.Read(*text); err != nil || !hasLesson(r.Problem) {
			*text = ""
		}
	}
	return s
}

// alike reports whether two problems ask the same in the same signs, of numbers that
// are written alike.
func alike(p, q arithmetic.Problem) bool {
	signs := func(p arithmetic.Problem) string {
		return strings.Map(func(r rune) rune {
			if strings.ContainsRune("+−×÷<>=", r) {
				return r
			}
			return -1
		}, p.String())
	}
	return arithmetic.Alike(p, q) && p.Story == q.Story && p.Rest == q.Rest && p.Grouping == q.Grouping && signs(p) == signs(q)
}

// leading is the model that a teacher would reach for, whichever tells the lesson.
func (l Lesson) leading() *Model {
	if fit, _ := Fitting(l.Problem); len(fit) > 0 {
		return fit[0]
	}
	return l.Model
}
