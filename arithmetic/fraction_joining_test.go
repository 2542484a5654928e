package arithmetic

import "testing"

func TestPartsAreAlikeBeforeTheyAreJoined(t *testing.T) {
	for _, test := range []struct {
		p                    Problem
		first, second, moves string
		source               string
	}{
		{sumOf(parts(2, 3), parts(5, 4)), "8/12", "15/12", "LayStrips LayStrips CutParts CutParts PutTogether CountParts MakeWholes", "CCSS 5.NF.A.1: 2/3 + 5/4 = 8/12 + 15/12 = 23/12"},
		{sumOf(parts(1, 2), parts(1, 3)), "3/6", "2/6", "LayStrips LayStrips CutParts CutParts PutTogether CountParts", "common practice, no source"},
		{sumOf(parts(1, 4), parts(2, 4)), "1/4", "2/4", "LayStrips LayStrips PutTogether CountParts", "CCSS 4.NF.B.3, like denominators"},
		{sumOf(parts(1, 2), parts(1, 4)), "2/4", "1/4", "LayStrips LayStrips CutParts PutTogether CountParts", "common practice, no source"},
	} {
		w, err := AddByJoining(test.p)
		if err != nil {
			t.Errorf("%s: %v", test.p, err)
			continue
		}
		if got := written(w.Moves); got != test.moves {
			t.Errorf("%s is worked by\n%s, want\n%s (%s)", test.p, got, test.moves, test.source)
		}
		for _, move := range w.Moves {
			if m, ok := move.(PutTogether); ok && (m.First.Part.String() != test.first || m.Second.Part.String() != test.second) {
				t.Errorf("%s: %s and %s are joined, want %s and %s (%s)", test.p, m.First.Part, m.Second.Part, test.first, test.second, test.source)
			}
		}
	}
}
