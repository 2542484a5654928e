package laws

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"

	"modeler/golden/measure"
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

// largestFile is what a picture may come to, in bytes: the largest numbers in
// hatched blocks, and lists of fractions that are cut finer, are a little over the
// 32 kB of the expected files.
const largestFile = 36 << 10

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

// InSubset checks a file: plain well-formed XML, one <svg> with a size and a view
// box, first a title and a description, and nothing that is not on the lists.
func InSubset(file []byte) error {
	var first []string
	err := measure.Scan(file, measure.Sink{
		Start: func(name string, attrs []measure.Attr) error {
			if len(first) < 3 {
				first = append(first, name)
			}
			if (name == "svg") != (len(first) == 1) {
				return fmt.Errorf("<%s> in a wrong place", name)
			}
			return elementAllowed(name, attrs)
		},
		End:  func(string) {},
		Text: func(string) {},
	})
	if err != nil {
		return err
	}
	if len(first) < 3 || first[1] != "title" || first[2] != "desc" {
		return errors.New("it does not begin with a title and a description")
	}
	return nil
}

func elementAllowed(name string, attrs []measure.Attr) error {
	own, ok := allowed[name]
	if !ok {
		return fmt.Errorf("<%s> is not in the subset", name)
	}
	has := func(key, value string) bool {
		return slices.ContainsFunc(attrs, func(a measure.Attr) bool {
			return a.Name == key && a.Value != "" && (value == "" || a.Value == value)
		})
	}
	if name == "svg" && !(has("width", "") && has("height", "") && has("viewBox", "") && has("xmlns", "http://www.w3.org/2000/svg")) {
		return errors.New("<svg> without its name space, a size and a view box")
	}
	for _, a := range attrs {
		if values, ok := paint[a.Name]; ok {
			if !values.MatchString(a.Value) {
				return fmt.Errorf("<%s %s=%q> is not in the subset", name, a.Name, a.Value)
			}
			continue
		}
		if !slices.Contains(own, a.Name) {
			return fmt.Errorf("<%s %s> is not in the subset", name, a.Name)
		}
		if len(a.Name) <= 2 && a.Name != "d" && !whole(a.Value) {
			return fmt.Errorf("<%s %s=%q> is not a whole number", name, a.Name, a.Value)
		}
	}
	return nil
}

// whole reports whether the value of x, y, cx, r or the like is a whole number.
func whole(value string) bool {
	_, err := strconv.Atoi(value)
	return err == nil && value[0] != '+'
}
