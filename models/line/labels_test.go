package line

import (
	"math/rand/v2"
	"testing"

	"modeler/models/scene"
)

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
