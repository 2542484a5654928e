package measure

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
)

// state is what an element hands down to the elements inside it.
type state struct {
	Paint
	dx, dy int
	anchor string
	size   int
	bold   bool
}

type reader struct {
	Drawing
	order int
}

// Read reads a file. Elements that it does not know are an error rather than
// passed over, since they might paint something.
func Read(file []byte) (Drawing, error) {
	r := reader{}
	// What SVG 1.1 paints where nothing is said: black surfaces, no edges.
	stack := []state{{Paint: Paint{Fill: "#000000", Stroke: "none", Width: "1"}, anchor: "start", size: 16}}
	var open string // the innermost open element
	err := Scan(file, Sink{
		Start: func(name string, attrs []Attr) error {
			open = name
			s, err := stack[len(stack)-1].inherit(attrs)
			if err == nil {
				err = r.element(name, attrs, s)
			}
			if err != nil {
				return fmt.Errorf("<%s>: %w", name, err)
			}
			stack = append(stack, s)
			return nil
		},
		End: func(string) { stack, open = stack[:len(stack)-1], "" },
		Text: func(text string) {
			switch open {
			case "title":
				r.Title += text
			case "desc":
				r.Desc += text
			case "text":
				r.Texts[len(r.Texts)-1].Words += text
			}
		},
	})
	if err != nil {
		return r.Drawing, fmt.Errorf("measure: %w", err)
	}
	return r.Drawing, nil
}

// inherit is the state inside an element with these attributes.
func (s state) inherit(list []Attr) (state, error) {
	for _, a := range list {
		var err error
		switch a.Name {
		case "fill":
			s.Fill = a.Value
		case "stroke":
			s.Stroke = a.Value
		case "stroke-width":
			s.Width = a.Value
		case "stroke-dasharray":
			s.Dash = a.Value
		case "text-anchor":
			s.anchor = a.Value
		case "font-size":
			s.size, err = strconv.Atoi(a.Value)
		case "font-weight":
			s.bold = a.Value == "700"
		case "transform":
			var dx, dy int
			dx, dy, err = translation(a.Value)
			s.dx, s.dy = s.dx+dx, s.dy+dy
		}
		if err != nil {
			return s, fmt.Errorf("%s=%q: %w", a.Name, a.Value, err)
		}
	}
	return s, nil
}

// translation reads translate(x y); the measurer knows no other transform.
func translation(text string) (dx, dy int, err error) {
	inside, ok := strings.CutPrefix(strings.TrimSpace(text), "translate(")
	inside, closed := strings.CutSuffix(inside, ")")
	parts := strings.Fields(strings.ReplaceAll(inside, ",", " "))
	if !ok || !closed || len(parts) == 0 || len(parts) > 2 {
		return 0, 0, errors.New("only a shift can be measured")
	}
	if dx, err = strconv.Atoi(parts[0]); err == nil && len(parts) == 2 {
		dy, err = strconv.Atoi(parts[1])
	}
	return dx, dy, err
}

func (r *reader) element(name string, attrs []Attr, s state) error {
	r.order++
	var err error
	at := func(key string) string {
		for _, a := range attrs {
			if a.Name == key {
				return a.Value
			}
		}
		return ""
	}
	n := func(key string) int {
		value := at(key)
		if value == "" {
			return 0
		}
		v, e := strconv.Atoi(value)
		if e != nil && err == nil {
			err = fmt.Errorf("%s=%q is not a whole number", key, value)
		}
		return v
	}
	line := func(closed bool, points []Point) {
		r.Paths = append(r.Paths, Path{Points: shifted(points, s), Closed: closed, Paint: s.Paint, Order: r.order})
	}
	switch name {
	case "svg":
		box := strings.Fields(at("viewBox"))
		if len(box) != 4 || box[0] != "0" || box[1] != "0" {
			return fmt.Errorf("viewBox=%q", at("viewBox"))
		}
		if r.W, err = strconv.Atoi(box[2]); err == nil {
			r.H, err = strconv.Atoi(box[3])
		}
	case "g", "title", "desc":
	case "rect":
		r.Rects = append(r.Rects, Rect{Box{n("x") + s.dx, n("y") + s.dy, n("width"), n("height")}, s.Paint, r.order})
	case "circle":
		r.Circles = append(r.Circles, Circle{n("cx") + s.dx, n("cy") + s.dy, n("r"), s.Paint, r.order})
	case "line":
		line(false, []Point{{n("x1"), n("y1")}, {n("x2"), n("y2")}})
	case "polyline", "polygon":
		var points []Point
		points, err = pairs(at("points"))
		if err == nil {
			line(name == "polygon", points)
		}
	case "path":
		if strings.ContainsAny(at("d"), "A.") {
			return r.arcs(at("d"), s)
		}
		var paths []Path
		if paths, err = trace(at("d")); err != nil {
			return err
		}
		for _, p := range paths {
			p.Points, p.Paint, p.Order = shifted(p.Points, s), s.Paint, r.order
			for i, c := range p.Curves {
				p.Curves[i] = [4]Point(shifted(c[:], s))
			}
			r.Paths = append(r.Paths, p)
		}
	case "text":
		r.Texts = append(r.Texts, Text{n("x") + s.dx, n("y") + s.dy, s.anchor, s.size, s.bold, "", s.Paint, r.order})
	default:
		return errors.New("not an element that can be measured")
	}
	return err
}

func shifted(points []Point, s state) []Point {
	out := make([]Point, len(points))
	for i, p := range points {
		out[i] = Point{p.X + s.dx, p.Y + s.dy}
	}
	return out
}

func pairs(text string) ([]Point, error) {
	var points []Point
	fields := strings.Fields(strings.ReplaceAll(text, ",", " "))
	if len(fields)%2 != 0 || len(fields) == 0 {
		return nil, errors.New("points come in pairs")
	}
	for i := 0; i < len(fields); i += 2 {
		x, errX := strconv.Atoi(fields[i])
		y, errY := strconv.Atoi(fields[i+1])
		if err := errors.Join(errX, errY); err != nil {
			return nil, err
		}
		points = append(points, Point{x, y})
	}
	return points, nil
}
