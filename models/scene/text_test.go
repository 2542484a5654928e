package scene

import (
	"fmt"
	"testing"
)

func TestBoxFollowsTheAnchor(t *testing.T) {
	for _, c := range []struct {
		anchor Anchor
		x      func(Box) int // the point of the box that stands at X
	}{
		{Left, func(b Box) int { return b.X }},
		{Centre, func(b Box) int { return b.X + b.W/2 }},
		{Right, func(b Box) int { return b.Right() }},
	} {
		b := Text{X: 300, Y: 100, Anchor: c.anchor, Size: Small, Runs: []Run{{Text: "402"}}}.Box()
		if c.x(b) != 300 {
			t.Errorf("anchor %d: the box %v does not stand at 300", c.anchor, b)
		}
		if b.Y >= 100 || b.Bottom() <= 100 {
			t.Errorf("anchor %d: the box %v does not hold the middle line", c.anchor, b)
		}
	}
}

func TestEveryRunStaysInsideTheBox(t *testing.T) {
	text := Text{X: 400, Y: 100, Size: Middle, Bold: true, Runs: []Run{{Text: "1"}, {Num: "11", Den: "120"}, {Text: " = "}, {Num: "7", Den: "8", Struck: true}}}
	box := text.Box()
	glyphs, bars := text.Typeset()
	for _, g := range glyphs {
		half := Advance(g.Text, text.Size, true) / 2
		// Digits reach 0.72 of the size above the baseline.
		room := Box{g.X - half, g.Y - 72*text.Size/100, 2 * half, 72 * text.Size / 100}
		if !box.Contains(room) {
			t.Errorf("%q at %v leaves the box %v", g.Text, room, box)
		}
	}
	if len(bars) != 3 {
		t.Fatalf("%d bars, want two fraction bars and one stroke", len(bars))
	}
	for _, b := range bars {
		if !box.Contains(b.Box()) {
			t.Errorf("the bar %v leaves the box %v", b, box)
		}
	}
}

func TestAFractionIsStackedAroundTheMiddleLine(t *testing.T) {
	glyphs, bars := Text{X: 0, Y: 200, Size: 100, Runs: []Run{{Num: "3", Den: "4"}}}.Typeset()
	if len(glyphs) != 2 || len(bars) != 1 {
		t.Fatal(glyphs, bars)
	}
	// A digit is 72 high above its baseline: the numerator ends above the bar and
	// the denominator begins below it, equally far.
	above, below := bars[0].Y1-glyphs[0].Y, glyphs[1].Y-72-bars[0].Y1
	if above <= 0 || above != below {
		t.Errorf("gaps to the bar: %d above, %d below", above, below)
	}
}

func TestUnknownCharactersGetTheWidestRoom(t *testing.T) {
	if Advance("漢", 100, false) < Advance("W", 100, false) {
		t.Error("a character without an advance has less room than a W")
	}
}

func ExampleScene_View() {
	s := Scene{W: 100, H: 50}
	s.Draw(Ink, Plain, Words(50, 25, Small, "3 + 4"))
	s.Add(Item{Shape: Words(80, 25, Small, "7"), When: ShownOnly}, Item{Shape: Words(80, 25, Small, "?"), When: HiddenOnly})
	for _, it := range s.View(true).Items {
		fmt.Println(it.Shape.(Text).Runs[0].Text)
	}
	// Output:
	// 3 + 4
	// ?
}
