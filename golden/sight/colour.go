// Package sight says how a picture looks to different eyes: which colours can be
// told from one another, by people who see all colours, by people who do not,
// and on paper without any.
package sight

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"math"
	"strconv"
)

// The least contrast that WCAG 2.2 asks for: success criteria 1.4.3 for text and
// 1.4.11 for graphics.
const (
	LeastText    = 4.5
	LeastGraphic = 3.0
)

// Vision is a way of seeing: a matrix that linear red, green and blue go through.
type Vision struct {
	Name   string
	matrix [3][3]float64
}

//go:embed testdata/colour.json
var colourTables []byte

// Visions are full colour vision and, in full strength, the lack of each kind of
// cone (Machado, Oliveira & Fernandes 2009, severity 1.0).
var Visions = visions()

func visions() []Vision {
	var table struct{ Visions map[string][3][3]float64 }
	if err := json.Unmarshal(colourTables, &table); err != nil {
		panic("sight: " + err.Error()) // it is embedded
	}
	list := []Vision{{"full colour", [3][3]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}}
	for _, name := range []string{"protanopia", "deuteranopia", "tritanopia"} {
		list = append(list, Vision{name, table.Visions[name]})
	}
	return list
}

// See is a colour, as #rrggbb, as the vision sees it.
func (v Vision) See(hex string) string {
	in, out := linear(hex), "#"
	for _, row := range v.matrix {
		c := row[0]*in[0] + row[1]*in[1] + row[2]*in[2]
		out += fmt.Sprintf("%02x", int(math.Round(255*companded(min(max(c, 0), 1)))))
	}
	return out
}

// Contrast is the contrast ratio of WCAG 2.2 between two colours, from 1 to 21.
func Contrast(a, b string) float64 {
	x, y := Luminance(a), Luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// LeastContrast is the contrast between two colours for the eyes that see the
// least of it.
func LeastContrast(a, b string) (least float64, vision string) {
	least = math.Inf(1)
	for _, v := range Visions {
		if c := Contrast(v.See(a), v.See(b)); c < least {
			least, vision = c, v.Name
		}
	}
	return least, vision
}

// Luminance is the relative luminance of WCAG 2.2, from 0 to 1.
func Luminance(hex string) float64 {
	c := linear(hex)
	return 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2]
}

// linear is the light of a colour: its sRGB values without their curve.
func linear(hex string) (c [3]float64) {
	n, err := strconv.ParseUint(hex[1:], 16, 32)
	if err != nil || len(hex) != 7 || hex[0] != '#' {
		panic("sight: not a colour: " + hex)
	}
	for i := range c {
		v := float64(n>>(16-8*i)&255) / 255
		if v <= 0.04045 {
			c[i] = v / 12.92
		} else {
			c[i] = math.Pow((v+0.055)/1.055, 2.4)
		}
	}
	return c
}

func companded(v float64) float64 {
	if v <= 0.0031308 {
		return v * 12.92
	}
	return 1.055*math.Pow(v, 1/2.4) - 0.055
}

// Difference is how far apart two colours are in CIELAB (1976, white point D65):
// about 2 is just seen side by side, 10 at a glance.
func Difference(a, b string) float64 {
	x, y := lab(a), lab(b)
	return math.Sqrt((x[0]-y[0])*(x[0]-y[0]) + (x[1]-y[1])*(x[1]-y[1]) + (x[2]-y[2])*(x[2]-y[2]))
}

func lab(hex string) [3]float64 {
	c := linear(hex)
	f := func(t float64) float64 {
		if t > 216.0/24389 {
			return math.Cbrt(t)
		}
		return (24389.0/27*t + 16) / 116
	}
	// sRGB to XYZ (IEC 61966-2-1), each divided by that of the white point.
	x := f((0.4124*c[0] + 0.3576*c[1] + 0.1805*c[2]) / 0.9505)
	y := f(0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2])
	z := f((0.0193*c[0] + 0.1192*c[1] + 0.9505*c[2]) / 1.089)
	return [3]float64{116*y - 16, 500 * (x - y), 200 * (y - z)}
}
