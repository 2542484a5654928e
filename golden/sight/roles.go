package sight

import (
	"fmt"

	"modeler/models/scene"
	"modeler/svg"
)

// told are the roles that say whose a quantity is. Ink, notes, guides and trays
// are no quantities; what is hidden or gone has no surface.
var told = []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved}

// ToldApart reports the first two roles of a picture that only their colours tell
// apart. Roles whose surfaces stand in one picture differ by at least one thing
// that a person without colour sees:
//
//   - the lightness of their surfaces, by 3:1 in every vision (WCAG 2.2,
//     understanding 1.4.1);
//   - the lines that the surfaces are filled with;
//   - shape, as points differ from bars;
//   - place: all of the one lies beside, above or below all of the other, or a
//     line of full weight runs between them;
//   - a name or a frame: a label, bracket or outline in the role of one of them,
//     or a label at each surface of one. An equation is no label: it says which
//     number a colour is of, but not where that stands in the picture.
func ToldApart(items []scene.Item, theme *svg.Theme) error {
	for i, a := range told {
		for _, b := range told[i+1:] {
			one, other := surfacesOf(items, a), surfacesOf(items, b)
			if len(one) == 0 || len(other) == 0 {
				continue
			}
			apart := namedOrFramed(items, a) || namedOrFramed(items, b) || standApart(one, other) ||
				lookApart(one, other, theme) || ruledApart(items, one, other) || eachLabelled(items, one) || eachLabelled(items, other)
			if !apart {
				return fmt.Errorf("only colour tells %s from %s", a, b)
			}
		}
	}
	return nil
}

// surfacesOf are the filled shapes of a role.
func surfacesOf(items []scene.Item, role scene.Role) []scene.Item {
	var list []scene.Item
	for _, it := range items {
		if it.Role != role || it.Finish != scene.Plain && it.Finish != scene.Deep {
			continue
		}
		switch it.Shape.(type) {
		case scene.Rect, scene.Grid, scene.Circle, scene.Polygon, scene.Wedge:
			list = append(list, it)
		}
	}
	return list
}

// namedOrFramed reports whether a role has a label, a line or an outline.
func namedOrFramed(items []scene.Item, role scene.Role) bool {
	for _, it := range items {
		switch sh := it.Shape.(type) {
		case scene.Text:
			if labels(it, sh) == role {
				return true
			}
		default:
			if it.Role == role && it.Finish != scene.Plain && it.Finish != scene.Deep && it.Finish != scene.Fine {
				return true
			}
		}
	}
	return false
}

// labels is the one role that a text is written in; Ink when it has several.
func labels(it scene.Item, t scene.Text) scene.Role {
	role := func(r scene.Run) scene.Role {
		if r.Role == scene.Ink {
			return it.Role
		}
		return r.Role
	}
	for _, r := range t.Runs {
		if role(r) != role(t.Runs[0]) {
			return scene.Ink
		}
	}
	return role(t.Runs[0])
}

// eachLabelled reports whether a text stands straight above or below every surface.
func eachLabelled(items []scene.Item, surfaces []scene.Item) bool {
	for _, s := range surfaces {
		const near = scene.Small
		b, found := s.Shape.Box(), false
		for _, it := range items {
			if _, is := it.Shape.(scene.Text); !is {
				continue
			}
			t := it.Shape.Box()
			middle := t.X + t.W/2
			gap := max(t.Y-b.Bottom(), b.Y-t.Bottom())
			found = found || b.X <= middle && middle <= b.Right() && gap >= 0 && gap <= near
		}
		if !found {
			return false
		}
	}
	return true
}

// ruledApart reports whether a line of full weight runs between any two surfaces.
func ruledApart(items, one, other []scene.Item) bool {
	between := func(a, b scene.Box) bool {
		for _, it := range items {
			l, is := it.Shape.(scene.Line)
			if !is || it.Finish != scene.Bold && it.Finish != scene.Plain {
				continue
			}
			upright := l.X1 == l.X2 && (a.Right() <= l.X1 && l.X1 <= b.X || b.Right() <= l.X1 && l.X1 <= a.X)
			level := l.Y1 == l.Y2 && (a.Bottom() <= l.Y1 && l.Y1 <= b.Y || b.Bottom() <= l.Y1 && l.Y1 <= a.Y)
			if upright || level {
				return true
			}
		}
		return false
	}
	for _, a := range one {
		for _, b := range other {
			if !between(a.Shape.Box(), b.Shape.Box()) {
				return false
			}
		}
	}
	return true
}

func standApart(one, other []scene.Item) bool { return !around(one).Overlaps(around(other)) }

func around(items []scene.Item) scene.Box {
	b := items[0].Shape.Box()
	for _, it := range items[1:] {
		c := it.Shape.Box()
		right, bottom := max(b.Right(), c.Right()), max(b.Bottom(), c.Bottom())
		b.X, b.Y = min(b.X, c.X), min(b.Y, c.Y)
		b.W, b.H = right-b.X, bottom-b.Y
	}
	return b
}

// lookApart reports whether every surface of the one looks unlike every surface
// of the other without colour.
func lookApart(one, other []scene.Item, theme *svg.Theme) bool {
	for _, a := range one {
		for _, b := range other {
			if round(a) != round(b) || theme.Hatching(a) != theme.Hatching(b) {
				continue
			}
			fill, beside := theme.Fill(a), theme.Fill(b)
			if fill == "none" || beside == "none" {
				return false
			}
			if c, _ := LeastContrast(fill, beside); c < LeastGraphic {
				return false
			}
		}
	}
	return true
}

func round(it scene.Item) bool {
	_, is := it.Shape.(scene.Circle)
	return is
}
