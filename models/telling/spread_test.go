package telling

import (
	"math/rand/v2"
	"slices"
	"testing"
)

func TestSpreadLeavesAloneWhatHasRoom(t *testing.T) {
	want := []int{100, 300, 500}
	got, ok := Spread(want, []int{40, 40, 40}, 14, 0, 800)
	if !ok || !slices.Equal(got, want) {
		t.Errorf("got %v, %v; want %v", got, ok, want)
	}
}

func TestSpreadSharesThePushEqually(t *testing.T) {
	// Two labels 60 wide that both want to stand at 400 with a gap of 10 stand 70
	// apart, 35 to each side.
	got, ok := Spread([]int{400, 400}, []int{30, 30}, 10, 0, 800)
	if !ok || !slices.Equal(got, []int{365, 435}) {
		t.Errorf("got %v, %v; want [365 435]", got, ok)
	}
}

// Whatever the labels: they do not touch, they keep their order, they stay on
// the stretch, and they are refused only when they are wider than it.
func TestSpreadNeverOverlaps(t *testing.T) {
	const gap, lo, hi = 14, 32, 768
	r := rand.New(rand.NewPCG(3, 5))
	for range 20000 {
		n := 1 + r.IntN(9)
		want, sides, total := make([]int, n), make([]int, n), gap*(n-1)
		for i := range n {
			want[i], sides[i] = lo+r.IntN(hi-lo), 5+r.IntN(70)
			total += 2 * sides[i]
		}
		slices.Sort(want)
		at, ok := Spread(want, sides, gap, lo, hi)
		if ok != (total <= hi-lo) {
			t.Fatalf("%v with sides %v: ok is %v, they need %d of %d", want, sides, ok, total, hi-lo)
		}
		if !ok {
			continue
		}
		for i := range at {
			if at[i]-sides[i] < lo || at[i]+sides[i] > hi {
				t.Fatalf("%v with sides %v: %v leaves the stretch", want, sides, at)
			}
			if i > 0 && at[i]-sides[i]-(at[i-1]+sides[i-1]) < gap {
				t.Fatalf("%v with sides %v: %v come nearer than %d", want, sides, at, gap)
			}
		}
	}
}
