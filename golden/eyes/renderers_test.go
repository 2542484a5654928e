package eyes

import (
	"bytes"
	"encoding/base64"
	"image"
	"image/png"
	"os"
	"os/exec"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/svg"
)

// A picture is compared in squares of so many pixels a side: letters that are
// drawn half a pixel further on do not change the colour of a square much, a
// shape that is missing or elsewhere does.
const (
	square = 16
	differ = 32 // levels of 255 by which the mean colour of a square may differ
)

// TestTwoRenderersAgree draws the first example of each model in every theme
// with the browser and with librsvg, which have no code in common.
func TestTwoRenderersAgree(t *testing.T) {
	pictures := []picture{}
	for _, m := range models.All {
		r, err := reading.Read(m.Examples[0])
		if err != nil || m.Fits(r.Problem) != nil {
			continue // package golden says so
		}
		for _, theme := range svg.Themes {
			body := svg.Render(m.Tell(r.Problem).Whole, svg.Options{Theme: theme})
			pictures = append(pictures, picture{m.Name + ", " + theme.Name, string(body)})
		}
	}
	if len(pictures) == 0 {
		t.Skip("there are no examples")
	}
	shots := shoot(t, pictures)
	for i, p := range pictures {
		a, b := shots[i], withLibrsvg(t, p.SVG)
		if worst, at := difference(a, b); worst > differ {
			t.Errorf("%s: the two differ by %d levels at %v", p.Name, worst, at)
		} else {
			t.Logf("%s: at most %d levels", p.Name, worst)
		}
	}
}

// TestDifferenceIsSeen: a mark of 8 by 8 pixels is a difference, none is none.
func TestDifferenceIsSeen(t *testing.T) {
	a, b := image.NewGray(image.Rect(0, 0, 64, 64)), image.NewGray(image.Rect(0, 0, 64, 64))
	if worst, _ := difference(a, b); worst != 0 {
		t.Errorf("nothing differs by %d", worst)
	}
	for i := range 64 {
		b.Pix[(20+i/8)*64+20+i%8] = 255
	}
	if worst, at := difference(a, b); worst <= differ || at != image.Pt(16, 16) {
		t.Errorf("a mark differs by %d at %v", worst, at)
	}
	if worst, _ := difference(a, image.NewGray(image.Rect(0, 0, 64, 32))); worst <= differ {
		t.Error("another size is no difference")
	}
}

func shoot(t *testing.T, pictures []picture) []image.Image {
	t.Helper()
	var coded []string
	runNode(t, "shoot.mjs", map[string]any{"pictures": pictures}, &coded)
	if len(coded) != len(pictures) {
		t.Fatalf("%d shots of %d pictures", len(coded), len(pictures))
	}
	var shots []image.Image
	for _, c := range coded {
		body, err := base64.StdEncoding.DecodeString(c)
		if err != nil {
			t.Fatal(err)
		}
		shots = append(shots, decode(t, body))
	}
	return shots
}

func withLibrsvg(t *testing.T, file string) image.Image {
	t.Helper()
	tool, err := exec.LookPath("rsvg-convert")
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatalf("there is no second renderer (%v); .ci/install installs it", err)
		}
		t.Skipf("there is no second renderer (%v); .ci/install installs it", err)
	}
	cmd := exec.Command(tool)
	cmd.Stdin = bytes.NewReader([]byte(file))
	body, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	return decode(t, body)
}

func decode(t *testing.T, body []byte) image.Image {
	t.Helper()
	img, err := png.Decode(bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// difference is the largest difference between the mean colours of two squares
// in one place, and where that is.
func difference(a, b image.Image) (worst int, at image.Point) {
	if a.Bounds().Size() != b.Bounds().Size() {
		return 255, image.Point{}
	}
	size := a.Bounds().Size()
	for y := 0; y < size.Y; y += square {
		for x := 0; x < size.X; x += square {
			where := image.Rect(x, y, min(x+square, size.X), min(y+square, size.Y))
			p, q := mean(a, where), mean(b, where)
			for c := range p {
				if d := max(p[c]-q[c], q[c]-p[c]); d > worst {
					worst, at = d, where.Min
				}
			}
		}
	}
	return worst, at
}

func mean(img image.Image, where image.Rectangle) [3]int {
	var sum [3]int
	for y := where.Min.Y; y < where.Max.Y; y++ {
		for x := where.Min.X; x < where.Max.X; x++ {
			r, g, b, _ := img.At(x, y).RGBA()
			sum[0], sum[1], sum[2] = sum[0]+int(r>>8), sum[1]+int(g>>8), sum[2]+int(b>>8)
		}
	}
	n := where.Dx() * where.Dy()
	return [3]int{sum[0] / n, sum[1] / n, sum[2] / n}
}
