package line

import (
	"math/rand/v2"
	"slices"
	"testing"

	"modeler/models/scene"
)

func TestSpreadLeavesAloneWhatHasRoom(t *testing.T) {
	want := []int{100, 300, 500}
	got, ok := spread(want, []int{40, 40, 40}, 14, 0, 800)
	if !ok || !slices.Equal(got, want) {
		t.Errorf("got %v, %v; want %v", got, ok, want)
	}
}

func TestSpreadSharesThePushEqually(t *testing.T) {
	// Two labels 60 wide that both want to stand at 400 with a gap of 10 stand 70
	// apart, 35 to each side.
	got, ok := spread([]int{400, 400}, []int{30, 30}, 10, 0, 800)
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
		at, ok := spread(want, sides, gap, lo, hi)
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

// In one row or two, no box of a label overlaps another, and no leader of the
// second row passes through a label of the first.
func TestArrangedLabelsStandApart(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 2))
	twoRows := 0
	for range 5000 {
		var labels []*label
		for range 1 + r.IntN(8) {
			digits := "123456789"[:1+r.IntN(9)]
			labels = append(labels, &label{x: 40 + r.IntN(700), size: scene.Small, runs: []scene.Run{{Text: digits}}})
		}
		if !arrange(labels) {
			continue
		}
		for i, l := range labels {
			_, _, side := l.reach()
			if l.row == 1 {
				twoRows++
			}
			for _, m := range labels[i+1:] {
				_, _, other := m.reach()
				apart := m.centre - l.centre
				if l.row == m.row && abs(apart) < side+other {
					t.Fatalf("%v and %v overlap", l, m)
				}
				if l.row == 1 && m.row == 0 && abs(l.pass-m.centre) < other {
					t.Fatalf("the leader of %v passes through %v", l, m)
				}
				if m.row == 1 && l.row == 0 && abs(m.pass-l.centre) < side {
					t.Fatalf("the leader of %v passes through %v", m, l)
				}
			}
		}
	}
	if twoRows == 0 {
		t.Error("no case had two rows")
	}
}
