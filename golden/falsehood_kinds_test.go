package golden

import (
	"slices"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/laws"
	"modeler/models/scene"
)

// falsehood spoils a lesson in one place; it reports false where there is nothing
// of the sort to spoil.
type falsehood struct {
	name  string
	plant func(*laws.Lesson) bool
}

// last is the place of the last item that is drawn with the answer shown and that
// passes; -1 when there is none.
func last(s *scene.Scene, passes func(scene.Item) bool) int {
	for i := len(s.Items) - 1; i >= 0; i-- {
		if it := s.Items[i]; it.When.Visible(false) && passes(it) {
			return i
		}
	}
	return -1
}

// inWhole plants in the last item of the whole story that passes.
func inWhole(passes func(scene.Item) bool, spoil func(*scene.Item) bool) func(*laws.Lesson) bool {
	return func(l *laws.Lesson) bool {
		i := last(l.Whole, passes)
		return i >= 0 && spoil(&l.Whole.Items[i])
	}
}

// without leaves the last item out that passes.
func without(passes func(scene.Item) bool) func(*laws.Lesson) bool {
	return func(l *laws.Lesson) bool {
		i := last(l.Whole, passes)
		if i >= 0 {
			l.Whole.Items = slices.Delete(l.Whole.Items, i, i+1)
		}
		return i >= 0
	}
}

func isPiece(it scene.Item) bool {
	switch it.Shape.(type) {
	case scene.Rect, scene.Grid, scene.Circle:
		return it.Worth.Sign() != 0 && it.Role != scene.Gone
	}
	return false
}

func isPlane(it scene.Item) bool {
	_, circle := it.Shape.(scene.Circle)
	return isPiece(it) && !circle
}

func isCounter(it scene.Item) bool {
	_, circle := it.Shape.(scene.Circle)
	return isPiece(it) && circle
}

// toScale reports whether a picture does not say that it is not.
func toScale(l *laws.Lesson) bool {
	return !slices.ContainsFunc(l.Whole.Items, func(it scene.Item) bool {
		t, ok := it.Shape.(scene.Text)
		return ok && len(t.Runs) == 1 && strings.Contains(t.Runs[0].Text, "not to scale")
	})
}

// only plants where the whole story passes.
func only(passes func(*laws.Lesson) bool, plant func(*laws.Lesson) bool) func(*laws.Lesson) bool {
	return func(l *laws.Lesson) bool { return passes(l) && plant(l) }
}

// On a number line points are no pieces, and strips may be as high as they look
// best.
func onLine(l *laws.Lesson) bool { return l.Model.Name == "number-line" }

func offLine(l *laws.Lesson) bool { return !onLine(l) }

// first spoils the first item that passes.
func first(passes func(scene.Item) bool, spoil func(*scene.Item) bool) func(*laws.Lesson) bool {
	return func(l *laws.Lesson) bool {
		i := slices.IndexFunc(l.Whole.Items, func(it scene.Item) bool { return it.When.Visible(false) && passes(it) })
		return i >= 0 && spoil(&l.Whole.Items[i])
	}
}

func isJump(it scene.Item) bool {
	_, hop := it.Shape.(scene.Hop)
	return hop && it.Finish != scene.Dashed
}

func isPoint(it scene.Item) bool {
	c, ok := it.Shape.(scene.Circle)
	return ok && c.R <= 10 && it.Finish == scene.Deep && it.Worth.Sign() == 0
}

// number is the number that an item's text is, and nothing but that.
func number(it scene.Item) (n int64, ok bool) {
	t, is := it.Shape.(scene.Text)
	if !is || len(t.Runs) != 1 || t.Runs[0].Den != "" {
		return 0, false
	}
	n, err := strconv.ParseInt(strings.ReplaceAll(t.Runs[0].Text, ",", ""), 10, 64)
	return n, err == nil
}

func isNumber(it scene.Item) bool {
	_, ok := number(it)
	return ok
}

// reword changes the runs of a text.
func reword(it *scene.Item, change func([]scene.Run) bool) bool {
	t := it.Shape.(scene.Text)
	t.Runs = slices.Clone(t.Runs)
	if !change(t.Runs) {
		return false
	}
	it.Shape = t
	return true
}

func addOne(text string) string {
	n, _ := strconv.ParseInt(strings.ReplaceAll(text, ",", ""), 10, 64)
	return arithmetic.Grouped(n + 1)
}

// isEquation passes the equation at the foot.
func isEquation(it scene.Item) bool {
	t, ok := it.Shape.(scene.Text)
	return ok && t.Bold && it.When == scene.ShownOnly && len(t.Runs) > 2 && slices.ContainsFunc(t.Runs, func(r scene.Run) bool {
		return strings.ContainsAny(r.Text, "=<>≠")
	})
}

// swapRole gives an item the role of the other number.
func swapRole(it *scene.Item) bool {
	switch it.Role {
	case scene.First:
		it.Role = scene.Second
	case scene.Second:
		it.Role = scene.First
	default:
		return false
	}
	return true
}

// wider makes a piece wider by dw and higher by dh, whole cells of it.
func wider(it *scene.Item, dw, dh int) bool {
	switch sh := it.Shape.(type) {
	case scene.Rect:
		sh.W, sh.H = sh.W+dw, sh.H+dh
		it.Shape = sh
	case scene.Grid:
		sh.W, sh.H = sh.W+dw*sh.Cols, sh.H+dh*sh.Rows
		it.Shape = sh
	default:
		return false
	}
	return true
}
