package blocks

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// said lists the texts of a picture.
func said(s *scene.Scene, hidden bool) (list []string) {
	for _, it := range s.View(hidden).Items {
		if t, ok := it.Shape.(scene.Text); ok {
			line := ""
			for _, run := range t.Runs {
				line += run.Text
			}
			list = append(list, strings.TrimSpace(line))
		}
	}
	return list
}

// ones are the rooms of the solid ones of a picture.
func ones(s *scene.Scene) (list []scene.Box) {
	for _, it := range s.View(false).Items {
		if g, ok := it.Shape.(scene.Grid); ok && g.Cols*g.Rows == 1 && it.Finish == scene.Plain {
			list = append(list, g.Box())
		}
	}
	return list
}

// What stays of the ones after a trade lies in one row or in full rows of five
// and the rest, all at one distance, as it is pushed together with the hands.
func TestWhatStaysLiesTogether(t *testing.T) {
	for a := int64(1); a <= 9; a++ {
		for b := 11 - a; b <= 9; b++ {
			p := plus(10+a, 20+b)
			w := mustWork(arithmetic.AddByPlace(p))
			for i, step := range Model.Tell(p).Steps {
				trade, ok := w.Moves[i].(arithmetic.TradeUp)
				if !ok {
					continue
				}
				list := ones(step.Scene)
				if int64(len(list)) != trade.Left || trade.Left != a+b-10 {
					t.Fatalf("%s: %d ones stay, want %d", p, len(list), a+b-10)
				}
				for j, room := range list {
					if row := list[j/5*5]; room.Y != row.Y || j%5 > 0 && room.X-list[j-1].X != list[1].X-list[0].X {
						t.Errorf("%s: the ones that stay lie at %v", p, list)
						break
					}
				}
			}
		}
	}
}

// The numbers stand beside their rows until the first pieces of the rows are
// pushed together, and not any more when the rows hold something else.
func TestNumbersStandBesideTheirRowsOnly(t *testing.T) {
	for _, p := range []arithmetic.Problem{plus(345, 278), plus(16, 27), plus(1_204, 97), plus(120, 35)} {
		a, b, _ := p.Operands()
		joined := false
		w := mustWork(arithmetic.AddByPlace(p))
		for i, step := range Model.Tell(p).Steps {
			if _, ok := w.Moves[i].(arithmetic.JoinPlace); ok {
				joined = true
			}
			texts := said(step.Scene, false)
			for _, want := range []string{a.String(), b.String(), "+"} {
				if slices.Contains(texts, want) == joined {
					t.Errorf("%s, step %d: %q stands there: %v", p, i+1, want, joined)
				}
			}
		}
	}
}

// Joining moves none of the first number's pieces, and every piece keeps its size.
func TestJoiningMovesTheSecondNumberOnly(t *testing.T) {
	first := func(s *scene.Scene) (list []scene.Box) {
		for _, it := range s.Items {
			if it.Of == scene.OfFirst {
				list = append(list, it.Shape.Box())
			}
		}
		return list
	}
	r := rand.New(rand.NewPCG(7, 8))
	for range 100 {
		p := plus(r.Int64N(5_000), r.Int64N(5_000))
		steps := Model.Tell(p).Steps
		if laid, joined := first(steps[1].Scene), first(steps[2].Scene); !slices.Equal(laid, joined) {
			t.Errorf("%s: %v lay at %v", p, joined, laid)
		}
	}
}

// In the whole story what is solid is what the digits under the trays say: the
// pieces of each tray, however they came there.
func TestTheWholeStoryOfASumIsTheSum(t *testing.T) {
	problems := []arithmetic.Problem{plus(345, 278), plus(999, 999), plus(4_872, 3_659), plus(7, 8), plus(120, 35), plus(99, 1), plus(0, 0)}
	r := rand.New(rand.NewPCG(9, 10))
	for range 200 {
		problems = append(problems, plus(r.Int64N(5_000), r.Int64N(5_000)))
	}
	for _, p := range problems {
		a, b, _ := p.Operands()
		x, _ := a.Int64()
		y, _ := b.Int64()
		s := Model.Tell(p).Whole.View(false)
		var trays []scene.Box // of the trays, the largest place first
		for _, it := range s.Items {
			if _, ok := it.Shape.(scene.Rect); ok && it.Role == scene.Tray {
				trays = append(trays, it.Shape.Box())
			}
		}
		rest := x + y
		for i := len(trays) - 1; i >= 0; i-- {
			solid := int64(0)
			for _, it := range s.Items {
				if _, ok := it.Shape.(scene.Grid); ok && it.Finish == scene.Plain && trays[i].Contains(it.Shape.Box()) {
					solid++
				}
			}
			if digit := rest % 10; solid != digit {
				t.Errorf("%s: %d pieces lie in tray %d from the left, want %d", p, solid, i+1, digit)
			}
			rest /= 10
		}
		if rest != 0 {
			t.Errorf("%s: there are %d trays", p, len(trays))
		}
	}
}
