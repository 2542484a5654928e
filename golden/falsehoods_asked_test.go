package golden

import (
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/laws"
	"modeler/models/scene"
)

// falsehoodsAsked spoil what a lesson says of a number or of a row of numbers, and
// the names and places in its picture.
var falsehoodsAsked = []falsehood{
	{"a row of numbers ends in another", func(l *laws.Lesson) bool {
		n := len(l.Answer.List)
		if n == 0 {
			return false
		}
		l.Answer.List = slices.Clone(l.Answer.List)
		l.Answer.List[n-1]++
		return true
	}},
	{"a row of numbers is one too short", func(l *laws.Lesson) bool {
		n := len(l.Answer.List)
		if n > 0 {
			l.Answer.List = l.Answer.List[:n-1]
		}
		return n > 0
	}},
	{"a pair is left out", func(l *laws.Lesson) bool {
		n := len(l.Answer.Pairs)
		if n > 0 {
			l.Answer.Pairs = l.Answer.Pairs[:n-1]
		}
		return n > 0
	}},
	{"even is said to be odd", of(arithmetic.Parity, func(l *laws.Lesson) { l.Answer.Even = !l.Answer.Even })},
	{"prime is said to be composite", of(arithmetic.Primality, func(l *laws.Lesson) { l.Answer.True = !l.Answer.True })},
	{"one more is left over", func(l *laws.Lesson) bool {
		l.Answer.Remainder++
		return l.Problem.Kind == arithmetic.Division
	}},
	{"what is left over is not said", func(l *laws.Lesson) bool {
		if l.Answer.Remainder == 0 || l.Problem.Rest != arithmetic.LeftOver {
			return false
		}
		left := arithmetic.Grouped(l.Answer.Remainder)
		l.Whole.Title.Shown = strings.TrimSuffix(l.Whole.Title.Shown, left) + "some"
		return true
	}},
	{"the description ends the row sooner", func(l *laws.Lesson) bool {
		n := len(l.Answer.List)
		if n == 0 {
			return false
		}
		last := l.Problem.Run.Number(l.Answer.List[n-1]).String()
		if strings.Count(l.Whole.Desc.Shown, last) != 1 {
			return false
		}
		l.Whole.Desc.Shown = strings.Replace(l.Whole.Desc.Shown, last, "more", 1)
		return true
	}},
	{"a place has another name", inWhole(func(it scene.Item) bool { return otherPlace(it) != "" }, func(it *scene.Item) bool {
		name := otherPlace(*it)
		return reword(it, func(r []scene.Run) bool {
			r[0].Text = name
			return true
		})
	})},
	{"odd is written for even", inWhole(func(it scene.Item) bool {
		t, ok := it.Shape.(scene.Text)
		return ok && slices.ContainsFunc(t.Runs, func(r scene.Run) bool { return parity.Replace(r.Text) != r.Text })
	}, func(it *scene.Item) bool {
		return reword(it, func(runs []scene.Run) bool {
			for i, r := range runs {
				runs[i].Text = parity.Replace(r.Text)
			}
			return true
		})
	})},
	{"a surface is one place further", only(offLine, inWhole(func(it scene.Item) bool {
		r, ok := it.Shape.(scene.Rect)
		return ok && r.Round == 0 && slices.Contains([]scene.Role{scene.First, scene.Second, scene.Result, scene.Moved}, it.Role) && (it.Finish == scene.Plain || it.Finish == scene.Deep)
	}, oneFurther))},
	{"a gap lies one place further", only(func(l *laws.Lesson) bool { return l.Model.Name == "fraction-bars" && len(l.Truth.Numbers) == 2 }, inWhole(func(it scene.Item) bool {
		_, ok := it.Shape.(scene.Rect)
		return ok && it.Role == scene.Result && it.Finish == scene.Dashed
	}, oneFurther))},
}

// oneFurther moves a rectangle by its own width.
func oneFurther(it *scene.Item) bool {
	r := it.Shape.(scene.Rect)
	if r.X+2*r.W > scene.PaperW-scene.Margin {
		r.X -= 2 * r.W
	}
	r.X += r.W
	it.Shape = r
	return true
}

// of plants in the lessons of one kind of problem.
func of(kind arithmetic.Kind, spoil func(*laws.Lesson)) func(*laws.Lesson) bool {
	return func(l *laws.Lesson) bool {
		if l.Problem.Kind == kind {
			spoil(l)
		}
		return l.Problem.Kind == kind
	}
}

// parity puts odd for even and the other way around.
var parity = strings.NewReplacer("even", "odd", "odd", "even")

// otherPlace is the name of the next place, where a text is the name of one.
func otherPlace(it scene.Item) string {
	places := []string{"ones", "tens", "hundreds", "thousands", "ten thousands", "hundred thousands", "millions"}
	t, ok := it.Shape.(scene.Text)
	if !ok || len(t.Runs) != 1 {
		return ""
	}
	at := slices.Index(places, t.Runs[0].Text)
	if at < 0 {
		return ""
	}
	return places[(at+1)%len(places)]
}
