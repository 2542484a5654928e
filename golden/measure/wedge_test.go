package measure

import "testing"

func TestWedgesAreMeasured(t *testing.T) {
	const before, after = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400" viewBox="0 0 400 400"><path fill="#ff0000" d="`, `"/></svg>`
	for _, c := range []struct {
		d                  string
		parts, from, count int
		ok                 bool
	}{
		{"M200 200L200 100A100 100 0 0 1 300 200Z", 4, 0, 1, true},
		{"M200 200L300 200A100 100 0 1 1 200 100Z", 4, 1, 3, true},
		{"M200 200L200 100A100 100 0 0 1 286.6 250Z", 3, 0, 1, true},
		{"M200 200L200 100A100 100 0 0 1 286.6 250Z", 4, 0, 1, false},
	} {
		d, err := Read([]byte(before + c.d + after))
		if err != nil || len(d.Wedges) != 1 {
			t.Fatalf("%s: %v, %d wedges", c.d, err, len(d.Wedges))
		}
		from, count, ok := d.Wedges[0].Cut(c.parts)
		if ok != c.ok || ok && (from != c.from || count != c.count) {
			t.Errorf("%s in %d parts: from %d, %d of them, %v", c.d, c.parts, from, count, ok)
		}
	}
	for _, bad := range []string{
		"M200 200L200 100A100 100 0 1 1 300 200Z", // the long way is not clockwise
		"M200 200L200 100A100 90 0 0 1 300 200Z",
		"M200 200L200 100A100 100 0 0 1 300 210Z",
		"M200 100A100 100 0 0 1 300 200",
	} {
		if _, err := Read([]byte(before + bad + after)); err == nil {
			t.Errorf("%s was measured", bad)
		}
	}
}
