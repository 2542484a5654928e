package measure

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
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
	d := xml.NewDecoder(bytes.NewReader(file))
	r := reader{}
	// What SVG 1.1 paints where nothing is said: black surfaces, no edges.
	stack := []state{{Paint: Paint{Fill: "#000000", Stroke: "none", Width: "1"}, anchor: "start", size: 16}}
	var name string // of the innermost open element
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return r.Drawing, nil
		}
		if err != nil {
			return r.Drawing, fmt.Errorf("measure: %w", err)
		}
		switch v := token.(type) {
		case xml.StartElement:
			name = v.Name.Local
			s, err := stack[len(stack)-1].inherit(v.Attr)
			if err == nil {
				err = r.element(name, attributes(v.Attr), s)
			}
			if err != nil {
				return r.Drawing, fmt.Errorf("measure: <%s>: %w", name, err)
			}
			stack = append(stack, s)
		case xml.EndElement:
			stack, name = stack[:len(stack)-1], ""
		case xml.CharData:
			switch name {
			case "title":
				r.Title += string(v)
			case "desc":
				r.Desc += string(v)
			case "text":
				r.Texts[len(r.Texts)-1].Words += string(v)
			}
		}
	}
}

func attributes(list []xml.Attr) map[string]string {
	m := map[string]string{}
	for _, a := range list {
		m[a.Name.Local] = a.Value
	}
	return m
}

// inherit is the state inside an element with these attributes.
func (s state) inherit(list []xml.Attr) (state, error) {
	for _, a := range list {
		var err error
		switch a.Name.Local {
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
			return s, fmt.Errorf("%s=%q: %w", a.Name.Local, a.Value, err)
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

func (r *reader) element(name string, at map[string]string, s state) error {
	r.order++
	var err error
	n := func(key string) int {
		if at[key] == "" {
			return 0
		}
		v, e := strconv.Atoi(at[key])
		if e != nil && err == nil {
			err = fmt.Errorf("%s=%q is not a whole number", key, at[key])
		}
		return v
	}
	line := func(closed bool, points []Point) {
		r.Paths = append(r.Paths, Path{Points: shifted(points, s), Closed: closed, Paint: s.Paint, Order: r.order})
	}
	switch name {
	case "svg":
		box := strings.Fields(at["viewBox"])
		if len(box) != 4 || box[0] != "0" || box[1] != "0" {
			return fmt.Errorf("viewBox=%q", at["viewBox"])
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
		points, err = pairs(at["points"])
		if err == nil {
			line(name == "polygon", points)
		}
	case "path":
		var paths []Path
		if paths, err = trace(at["d"]); err != nil {
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
