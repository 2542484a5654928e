package measure

import (
	"math/big"
	"testing"
)

func mustRead(t *testing.T, body string) Drawing {
	t.Helper()
	d, err := Read([]byte(head + body + `</svg>`))
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// A ten standing, a strip cut unequally, the paper, and a cut that is under its
// rectangle or falls short of its edge: by the definition of a rectangle cut in
// equal parts, no source.
func TestFacesAreCutWhereLinesCrossThem(t *testing.T) {
	d := mustRead(t, `<rect width="80" height="60"/>
<path d="M30 10v40" stroke="#000000"/>
<rect x="0" y="0" width="4" height="40"/><path d="M0 4h4M0 8h4M0 12h4M0 16h4M0 20h4M0 24h4M0 28h4M0 32h4M0 36h4" stroke="#000000"/>
<rect x="20" y="10" width="30" height="40"/><path d="M28 10v40M40 11v39" stroke="#000000"/>`)
	faces := d.Faces()
	if len(faces) != 2 {
		t.Fatalf("%d faces", len(faces))
	}
	if f := faces[0]; f.Cols() != 1 || f.Rows() != 10 || f.Cells() != 10 {
		t.Errorf("a ten: %d × %d", f.Cols(), f.Rows())
	}
	if f := faces[1]; f.Cols() != 0 || len(f.Across) != 1 {
		t.Errorf("an unequal strip: %v", f.Across)
	}
}

func TestCubeHasTwoFacesLeaningOnIt(t *testing.T) {
	front := `<rect x="10" y="20" width="20" height="20"/>`
	top, side := `<path d="M10 20L16 14L36 14L30 20Z"/>`, `<path d="M30 20L36 14L36 34L30 40Z"/>`
	for body, want := range map[string]bool{front: false, front + top: false, front + side: false, front + top + side: true,
		front + `<path d="M10 20L16 14L36 14L36 34L30 40"/>`: true} {
		d := mustRead(t, body)
		if got := d.Cube(d.Faces()[0]); got != want {
			t.Errorf("%s: %v", body, got)
		}
	}
}

func TestScaleReadsPlacesOnALine(t *testing.T) {
	d := mustRead(t, `<g font-size="10" text-anchor="middle"><text x="10" y="50">0</text><text x="50" y="50">2</text>
<text x="20" y="42">1</text><text x="20" y="54">2</text></g><line x1="17" y1="44" x2="23" y2="44" stroke="#000000"/>
<path d="M10 30C14 10 26 10 30 30" fill="none" stroke="#000000"/>`)
	f := d.Fractions()
	if len(f) != 1 || f[0].Num.Words != "1" || f[0].Den.Words != "2" || f[0].X != 20 {
		t.Fatalf("fractions: %v", f)
	}
	s := ScaleOf(Mark{10, 50, big.NewRat(0, 1)}, Mark{50, 50, big.NewRat(2, 1)})
	if got := s.Value(20); got.Cmp(big.NewRat(1, 2)) != 0 {
		t.Errorf("20 is at %v", got)
	}
	if j := d.Jumps(); len(j) != 1 || j[0].X1 != 10 || j[0].X2 != 30 {
		t.Errorf("jumps: %v", j)
	}
}

func TestLattice(t *testing.T) {
	square := []Circle{{X: 1, Y: 1}, {X: 5, Y: 1}, {X: 9, Y: 1}, {X: 1, Y: 5}, {X: 5, Y: 5}, {X: 9, Y: 5}}
	if c, r, full := Lattice(square); c != 3 || r != 2 || !full {
		t.Errorf("%d × %d, %v", c, r, full)
	}
	if _, _, full := Lattice(square[:5]); full {
		t.Error("a gap is not seen")
	}
}
