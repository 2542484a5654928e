package words

import "testing"

func TestColumnsAreSaidFromTheTop(t *testing.T) {
	traded := []Row{
		{Cells: []Cell{{}, {Text: "3", Small: true}, {Text: "10", Small: true}, {}}},
		{Cells: []Cell{{}, {Text: "4", Struck: true}, {Text: "0", Struck: true}, {Text: "2"}}},
		{Cells: []Cell{{Text: "−"}, {Text: "1"}, {Text: "7"}, {Text: "8"}}},
		{Cells: []Cell{{}, {}}},
		{Ruled: true, Cells: []Cell{{}, {}, {}, {Text: "?"}}},
	}
	if got, want := Columns(traded), "Small 3 small 10; 4 crossed out 0 crossed out 2; minus 1 7 8; line, unknown."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := Columns(nil); got != "" {
		t.Errorf("of nothing is said %q", got)
	}
}
