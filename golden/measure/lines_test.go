package measure

import (
	"fmt"
	"testing"
)

func written(parts ...string) string {
	body := `<g font-size="40" text-anchor="middle">`
	for i, p := range parts {
		body += fmt.Sprintf(`<text x="%d" y="50">%s</text>`, 100*(i+1), p)
	}
	return body + `</g>`
}

// The truth of these is arithmetic as everybody knows it; no source.
func TestStatementsAreWorked(t *testing.T) {
	for _, c := range []struct {
		parts []string
		holds bool
	}{
		{[]string{"402 − 178 = 224"}, true}, {[]string{"402 − 178 = 234"}, false},
		{[]string{"402", "−", "178", "=", "224"}, true}, {[]string{"402", "−", "178", "=", "225"}, false},
		{[]string{"58 ÷ 8 = 7 r 2"}, true}, {[]string{"58 ÷ 8 = 7 r 3"}, false}, {[]string{"58 ÷ 8 = 6 r 10"}, false},
		{[]string{"2 × (8 + 7) = 16 + 14 = 30"}, true}, {[]string{"2 × (8 + 7) = 16 + 15 = 30"}, false},
		{[]string{"1,200 &lt; 1,204"}, true}, {[]string{"1,204 &lt; 1,200"}, false}, {[]string{"7 × 8 ≠ 54"}, true},
		{[]string{"20 − 8 − 2 = 10"}, true}, {[]string{"$5.00 − $3.27 = $1.73"}, true}, {[]string{"7 ÷ 0 = 0"}, false},
	} {
		list := mustRead(t, written(c.parts...)).Statements()
		if len(list) != 1 {
			t.Errorf("%v: %d statements", c.parts, len(list))
			continue
		}
		if err := list[0].Check(); (err == nil) != c.holds {
			t.Errorf("%v: %v", c.parts, err)
		}
	}
	if list := mustRead(t, written("3 − 1 = 2", "9 − 7 = 2")).Statements(); len(list) != 2 {
		t.Errorf("two side by side are read as %v", list)
	}
	for _, open := range []string{"7 × 8 = ?", "7 rows", "+70", "0"} {
		if list := mustRead(t, written(open)).Statements(); len(list) != 0 {
			t.Errorf("%s is read as %v", open, list)
		}
	}
}

func TestFractionsAreWords(t *testing.T) {
	d := mustRead(t, `<g font-size="40" text-anchor="middle"><text x="50" y="64">1</text><text x="80" y="40">1</text><text x="80" y="88">2</text>
<text x="120" y="64">=</text><text x="160" y="40">3</text><text x="160" y="88">2</text></g>
<line x1="66" y1="50" x2="94" y2="50" stroke="#000000"/><line x1="146" y1="50" x2="174" y2="50" stroke="#000000"/>`)
	list := d.Statements()
	if len(list) != 1 || list[0].String() != "1 1/2 = 3/2" || list[0].Check() != nil {
		t.Errorf("%v", list)
	}
}
