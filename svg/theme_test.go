package svg

import (
	"math"
	"strconv"
	"testing"

	"modeler/models/scene"
)

// Contrast ratio as WCAG 2.2 defines it: relative luminance from linear sRGB,
// (lighter + 0.05) / (darker + 0.05).
func contrast(a, b string) float64 {
	x, y := luminance(a), luminance(b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

func luminance(hex string) float64 {
	channel := func(at int) float64 {
		v, _ := strconv.ParseUint(hex[at:at+2], 16, 8)
		c := float64(v) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*channel(1) + 0.7152*channel(3) + 0.0722*channel(5)
}

// The examples that the contrast formula is commonly checked with.
func TestContrastFormula(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want float64
	}{
		{"#000000", "#ffffff", 21}, {"#767676", "#ffffff", 4.542}, {"#777777", "#ffffff", 4.478},
		{"#ff0000", "#ffffff", 3.998}, {"#0000ff", "#ffffff", 8.592},
	} {
		if got := contrast(c.a, c.b); math.Abs(got-c.want) > 0.001 {
			t.Errorf("contrast(%s, %s) = %.3f, want %.3f", c.a, c.b, got, c.want)
		}
	}
}

// WCAG 2.2 success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1). Text
// may lie on paper, on a tray and on the tint of its own role.
func TestEveryThemeMeetsWCAGContrast(t *testing.T) {
	for _, theme := range Themes {
		tray := theme.roles[scene.Tray].tint
		for role := scene.Ink; role <= scene.Tray; role++ {
			c := theme.roles[role]
			check := func(what, fg, bg string, least float64) {
				t.Helper()
				if got := contrast(fg, bg); got < least {
					t.Errorf("%s: %s %s %s on %s has contrast %.2f, want at least %.1f", theme.Name, role, what, fg, bg, got, least)
				}
			}
			for _, bg := range []string{theme.paper, tray, c.tint} {
				check("text", c.text, bg, 4.5)
				if role == scene.Tray { // the edge of a tray only decorates
					continue
				}
				check("edge", c.edge, bg, 3)
				check("heavy stroke", c.bold, bg, 3)
			}
			if role != scene.Tray {
				check("outline of a solid mark", c.edge, theme.paper, 3)
			}
		}
		// Labels in ink lie on every tint.
		for role := scene.Ink; role <= scene.Tray; role++ {
			if got := contrast(theme.roles[scene.Ink].text, theme.roles[role].tint); got < 4.5 {
				t.Errorf("%s: ink on the tint of %s has contrast %.2f", theme.Name, role, got)
			}
		}
	}
}
