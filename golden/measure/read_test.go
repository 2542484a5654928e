package measure

import (
	"reflect"
	"testing"
)

const head = `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60" viewBox="0 0 80 60">`

// The expected shapes follow SVG 1.1 (second edition): chapters 8 (paths),
// 9 (basic shapes), 7.6 (transform) and 11 (painting, inherited).
func TestReadSeesWhatIsPainted(t *testing.T) {
	d, err := Read([]byte(head + `<title>a &lt; b</title><desc>words</desc>
<g fill="#112233" transform="translate(10, 5)"><rect x="1" y="2" width="3" height="4"/>
<g stroke="#445566" fill="none" transform="translate(100)"><circle cx="1" cy="2" r="3"/></g></g>
<line x1="1" y1="2" x2="3" y2="4" stroke="#000000"/>
<polygon points="0,0 4,0 4,4"/>
<path d="M10 20v5h-3l1-1ZM1 1L2 2 3 3" stroke="#777777" fill="none"/>
<path d="M0 50C10 30 20 30 30 50"/>
<g font-size="28" font-weight="700" text-anchor="middle"><text x="40" y="50">7 &#215; 8</text></g></svg>`))
	if err != nil {
		t.Fatal(err)
	}
	if d.W != 80 || d.H != 60 || d.Title != "a < b" || d.Desc != "words" {
		t.Errorf("head: %d %d %q %q", d.W, d.H, d.Title, d.Desc)
	}
	if got := d.Rects[0]; got.Box != (Box{11, 7, 3, 4}) || got.Fill != "#112233" || got.Stroked() {
		t.Errorf("rect: %+v", got)
	}
	if got := d.Circles[0]; got.X != 111 || got.Y != 7 || got.R != 3 || got.Filled() || got.Stroke != "#445566" {
		t.Errorf("circle: %+v", got)
	}
	want := [][]Point{{{1, 2}, {3, 4}}, {{0, 0}, {4, 0}, {4, 4}}, {{10, 20}, {10, 25}, {7, 25}, {8, 24}}, {{1, 1}, {2, 2}, {3, 3}}, {{0, 50}, {30, 50}}}
	for i, p := range d.Paths {
		if !reflect.DeepEqual(p.Points, want[i]) {
			t.Errorf("path %d: %v, want %v", i, p.Points, want[i])
		}
	}
	if d.Paths[0].Closed || !d.Paths[1].Closed || !d.Paths[2].Closed || d.Paths[3].Closed {
		t.Error("closed in the wrong places")
	}
	if c := d.Paths[4].Curves; len(c) != 1 || c[0] != [4]Point{{0, 50}, {10, 30}, {20, 30}, {30, 50}} {
		t.Errorf("curve: %v", c)
	}
	if got := d.Texts[0]; got.X != 40 || got.Y != 50 || got.Anchor != "middle" || got.Size != 28 || !got.Bold || got.Words != "7 × 8" {
		t.Errorf("text: %+v", got)
	}
}

func TestReadRefusesWhatItCannotMeasure(t *testing.T) {
	for _, body := range []string{
		`<ellipse cx="1" cy="1" rx="2" ry="3"/>`,
		`<rect x="1.5" y="2" width="3" height="4"/>`,
		`<g transform="rotate(45)"/>`,
		`<path d="M0 0A1 1 0 0 0 5 5"/>`,
		`<path d="M0 0L1.5 2"/>`,
		`<path d="L1 2"/>`,
		`<polygon points="1 2 3"/>`,
		`<rect x="1" y="2" width="3" height="4">`,
		`<text x="1" y="2">&nbsp;</text>`,
	} {
		if _, err := Read([]byte(head + body + `</svg>`)); err == nil {
			t.Errorf("%s: measured", body)
		}
	}
}
