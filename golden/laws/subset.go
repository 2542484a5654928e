package laws

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"

	"modeler/svg"
)

// allowed lists the elements and, for each, the attributes that ten renderers
// draw alike. Paint is inherited, so it may stand on any of them.
var allowed = map[string][]string{
	"svg":      {"xmlns", "width", "height", "viewBox", "role", "lang", "aria-label"},
	"g":        {"transform"},
	"rect":     {"x", "y", "width", "height", "rx", "ry", "transform"},
	"circle":   {"cx", "cy", "r", "transform"},
	"ellipse":  {"cx", "cy", "rx", "ry", "transform"},
	"line":     {"x1", "y1", "x2", "y2", "transform"},
	"polyline": {"points", "transform"},
	"polygon":  {"points", "transform"},
	"path":     {"d", "transform"},
	"text":     {"x", "y", "transform"},
	"title":    nil,
	"desc":     nil,
}

// paint maps the presentation attributes to the values they may have. Fonts come
// from the reader's machine; colours are six hexadecimal digits.
var paint = map[string]*regexp.Regexp{
	"fill":             regexp.MustCompile(`^(none|#[0-9a-f]{6})$`),
	"stroke":           regexp.MustCompile(`^(none|#[0-9a-f]{6})$`),
	"fill-opacity":     regexp.MustCompile(`^(0|1|0?\.\d+)$`),
	"stroke-opacity":   regexp.MustCompile(`^(0|1|0?\.\d+)$`),
	"fill-rule":        regexp.MustCompile(`^(evenodd|nonzero)$`),
	"stroke-width":     regexp.MustCompile(`^\d+(\.\d+)?$`),
	"stroke-linecap":   regexp.MustCompile(`^(butt|round|square)$`),
	"stroke-linejoin":  regexp.MustCompile(`^(miter|round|bevel)$`),
	"stroke-dasharray": regexp.MustCompile(`^\d+( \d+)*$`),
	"font-family":      regexp.MustCompile(`^[A-Za-z ",-]+$`),
	"font-size":        regexp.MustCompile(`^\d+$`),
	"font-weight":      regexp.MustCompile(`^(400|700)$`),
	"text-anchor":      regexp.MustCompile(`^(start|middle|end)$`),
}

// position matches the values of x, y, cx, r and the like.
var position = regexp.MustCompile(`^-?\d+$`)

// largestFile is what a picture may come to, in bytes.
const largestFile = 32 << 10

// Subset: the file uses only what is drawn alike wherever it is embedded, and it
// is small. The whole story is tried in every theme.
func Subset(p Picture) error {
	themes := svg.Themes
	if p.Step > 0 {
		themes = themes[:1]
	}
	for _, theme := range themes {
		file := svg.Render(p.Scene, svg.Options{Theme: theme, Hidden: p.Hidden})
		if err := InSubset(file); err != nil {
			return fmt.Errorf("theme %s: %w", theme.Name, err)
		}
		if len(file) > largestFile {
			return fmt.Errorf("theme %s: the file has %d bytes, more than %d", theme.Name, len(file), largestFile)
		}
	}
	return nil
}

// InSubset checks a file: well-formed XML, one <svg> with a size and a view box,
// first a title and a description, and nothing that is not on the lists.
func InSubset(file []byte) error {
	d := xml.NewDecoder(bytes.NewReader(file))
	var order []string
	depth := 0
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return err
		}
		switch v := token.(type) {
		case xml.StartElement:
			if err := elementAllowed(v); err != nil {
				return err
			}
			order = append(order, v.Name.Local)
			if depth++; depth == 1 && v.Name.Local != "svg" || depth > 1 && v.Name.Local == "svg" {
				return fmt.Errorf("<%s> in a wrong place", v.Name.Local)
			}
		case xml.EndElement:
			depth--
		case xml.Comment, xml.Directive:
			return errors.New("a comment or a document type")
		case xml.ProcInst:
			if v.Target != "xml" {
				return fmt.Errorf("<?%s?>", v.Target)
			}
		}
	}
	if len(order) < 3 || order[1] != "title" || order[2] != "desc" {
		return errors.New("it does not begin with a title and a description")
	}
	return nil
}

func elementAllowed(e xml.StartElement) error {
	name := e.Name.Local
	own, ok := allowed[name]
	if !ok || e.Name.Space != "http://www.w3.org/2000/svg" {
		return fmt.Errorf("<%s> is not in the subset", name)
	}
	has := func(key string) bool {
		return slices.ContainsFunc(e.Attr, func(a xml.Attr) bool { return a.Name.Local == key && a.Value != "" })
	}
	if name == "svg" && !(has("width") && has("height") && has("viewBox")) {
		return errors.New("<svg> without a size and a view box")
	}
	for _, a := range e.Attr {
		key := a.Name.Local
		if values, ok := paint[key]; ok && a.Name.Space == "" {
			if !values.MatchString(a.Value) {
				return fmt.Errorf("<%s %s=%q> is not in the subset", name, key, a.Value)
			}
			continue
		}
		if !slices.Contains(own, key) || a.Name.Space != "" {
			return fmt.Errorf("<%s %s> is not in the subset", name, key)
		}
		if len(key) <= 2 && key != "d" && !position.MatchString(a.Value) {
			return fmt.Errorf("<%s %s=%q> is not a whole number", name, key, a.Value)
		}
	}
	return nil
}
