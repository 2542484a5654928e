package raster

import (
	"bytes"
	"errors"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func expected(t testing.TB) []string {
	files, err := filepath.Glob("../../golden/*/*.svg")
	if err != nil || len(files) < 100 {
		t.Fatalf("%d expected pictures, %v", len(files), err)
	}
	return files
}

// Every expected picture can be drawn, of the size that is asked for.
func TestEveryExpectedPicture(t *testing.T) {
	for _, name := range expected(t) {
		svg, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		out, err := PNG(svg, 160)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if p, err := png.DecodeConfig(bytes.NewReader(out)); err != nil || p.Width != 160 {
			t.Errorf("%s: %d pixels wide, %v", name, p.Width, err)
		}
	}
}

const open = `<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100" viewBox="0 0 100 100">`

// The colours of single pixels, worked out by hand.
func TestPixels(t *testing.T) {
	const white = `<rect x="0" y="0" width="100" height="100" fill="#ffffff"/>`
	for _, c := range []struct {
		shape string
		x, y  int
		want  uint32 // of the green part
	}{
		{`<rect x="10" y="10" width="20" height="20" fill="#008000"/>`, 20, 20, 0x80},
		{`<rect x="10" y="10" width="20" height="20" fill="#008000"/>`, 35, 20, 0xff},
		{`<circle cx="50" cy="50" r="20" fill="#008000"/>`, 50, 32, 0x80},
		{`<circle cx="50" cy="50" r="20" fill="#008000"/>`, 33, 33, 0xff},
		{`<path d="M50 50L50 10A40 40 0 0 1 90 50Z" fill="#008000"/>`, 70, 30, 0x80}, // the upper right quarter
		{`<path d="M50 50L50 10A40 40 0 0 1 90 50Z" fill="#008000"/>`, 30, 30, 0xff}, // and no other
		{`<path d="M50 50L90 50A40 40 0 1 1 50 10Z" fill="#008000"/>`, 30, 70, 0x80}, // three quarters
		{`<path d="M50 50L90 50A40 40 0 1 1 50 10Z" fill="#008000"/>`, 70, 30, 0xff},
		{`<path d="M10 10h30v30Z" fill="#008000"/>`, 35, 20, 0x80},
		{`<path d="M10 10h30v30Z" fill="#008000"/>`, 15, 35, 0xff},
		{`<line x1="10" y1="50" x2="90" y2="50" stroke="#008000" stroke-width="6"/>`, 50, 51, 0x80},
		{`<g fill="none" stroke="#008000" stroke-width="6" stroke-dasharray="20 20"><path d="M10 50L90 50"/></g>`, 40, 50, 0xff},
		{`<g fill="#008000" font-size="90" font-weight="700" text-anchor="middle"><text x="50" y="82">1</text></g>`, 52, 60, 0x80},
	} {
		out, err := PNG([]byte(open+white+c.shape+"</svg>"), 0)
		if err != nil {
			t.Errorf("%s: %v", c.shape, err)
			continue
		}
		img, err := png.Decode(bytes.NewReader(out))
		if err != nil {
			t.Fatal(err)
		}
		if _, green, _, _ := img.At(c.x, c.y).RGBA(); green>>8 != c.want {
			t.Errorf("%s: the green at %d, %d is %#x, want %#x", c.shape, c.x, c.y, green>>8, c.want)
		}
	}
}

func TestRefuses(t *testing.T) {
	for _, bad := range []string{
		"", "<svg", open + "<image/></svg>", open + `<path d="Q1 2"/></svg>`, open + `<path d="M1"/></svg>`, "<rect/>", "<text>7</text>",
		open + `<rect x="ten"/></svg>`, `<svg viewBox="0 0 1 90000000" width="1"/>`,
	} {
		if _, err := PNG([]byte(bad), 0); err == nil {
			t.Errorf("%q was drawn", bad)
		}
	}
	if _, err := PNG([]byte(strings.Replace(open, "0 0 100 100", "0 0 100 900", 1)+"</svg>"), MaxWidth); !errors.Is(err, ErrTooLarge) {
		t.Errorf("got %v, want %v", err, ErrTooLarge)
	}
}

// FuzzPNG: whatever the file, it is drawn or refused.
func FuzzPNG(f *testing.F) {
	f.Add([]byte(open + `<g fill="#008000"><path d="M50 50L50 10A40 40 0 0 1 90 50Z"/><text x="1" y="2">3</text></g></svg>`))
	f.Fuzz(func(t *testing.T, svg []byte) {
		if len(svg) < 2000 {
			_, _ = PNG(svg, 40)
		}
	})
}

func BenchmarkPNG(b *testing.B) {
	svg, err := os.ReadFile("../../golden/base-ten-blocks/402-minus-178.svg")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := PNG(svg, 800); err != nil {
			b.Fatal(err)
		}
	}
}
