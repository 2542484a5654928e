package sight

import (
	"encoding/json"
	"math"
	"testing"
)

// The examples stand in testdata with their source.
func TestContrastOfTheUsualExamples(t *testing.T) {
	var table struct {
		Contrast []struct {
			Fg, Bg string
			Ratio  float64
		}
	}
	if err := json.Unmarshal(colourTables, &table); err != nil || len(table.Contrast) < 10 {
		t.Fatal(len(table.Contrast), err)
	}
	for _, c := range table.Contrast {
		for _, got := range []float64{Contrast(c.Fg, c.Bg), Contrast(c.Bg, c.Fg)} {
			if math.Abs(got-c.Ratio) > 0.005 {
				t.Errorf("contrast of %s and %s is %.3f, want %.3f", c.Fg, c.Bg, got, c.Ratio)
			}
		}
	}
}

// Greys look the same to all: the rows of each matrix add up to 1.
func TestGreysStayGrey(t *testing.T) {
	if len(Visions) != 4 {
		t.Fatalf("%d visions", len(Visions))
	}
	for _, v := range Visions {
		for i, row := range v.matrix {
			if sum := row[0] + row[1] + row[2]; math.Abs(sum-1) > 1e-5 {
				t.Errorf("%s: row %d adds up to %f", v.Name, i, sum)
			}
		}
		for _, grey := range []string{"#000000", "#777777", "#ffffff"} {
			if got := v.See(grey); got != grey {
				t.Errorf("%s sees %s as %s", v.Name, grey, got)
			}
		}
	}
}

// Red and green of one lightness are the pair that is confused without red or
// green cones, and blue and green the one without blue cones (common knowledge).
func TestVisionsConfuseWhatPeopleConfuse(t *testing.T) {
	difference := func(vision int, a, b string) float64 {
		return Difference(Visions[vision].See(a), Visions[vision].See(b))
	}
	for _, c := range []struct {
		vision int
		a, b   string
	}{{1, "#a00000", "#404000"}, {2, "#c06060", "#80803c"}, {3, "#4080a0", "#408c80"}} {
		full, less := difference(0, c.a, c.b), difference(c.vision, c.a, c.b)
		if less > full/2 {
			t.Errorf("%s and %s differ by %.0f in full colour and by %.0f in %s", c.a, c.b, full, less, Visions[c.vision].Name)
		}
	}
}

// Black to white is 100 by definition; the values of red are those of CIE 15 for
// sRGB red under D65 (L* 53.24, a* 80.09, b* 67.20), from memory.
func TestDifference(t *testing.T) {
	if got := Difference("#000000", "#ffffff"); math.Abs(got-100) > 0.1 {
		t.Errorf("black and white differ by %.2f", got)
	}
	got := lab("#ff0000")
	for i, want := range [3]float64{53.24, 80.09, 67.20} {
		if math.Abs(got[i]-want) > 0.1 {
			t.Errorf("lab of red is %.2f", got)
		}
	}
}
