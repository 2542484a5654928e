package arithmetic

import (
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"
)

func two(kind Kind, op Op, a, b int64) Problem {
	return Problem{Kind: kind, Left: Operation{op, Int(a), Int(b)}}
}

func TestSubtractionTradesAcrossAZero(t *testing.T) {
	w, err := SubtractByPlace(two(Subtraction, Subtract, 402, 178))
	if err != nil {
		t.Fatal(err)
	}
	// Worked by hand: 4 hundreds 0 tens 2 ones; 3, 10, 2; 3, 9, 12; left 2, 2, 4.
	want := []Move{
		LayOut{0, 402, Counts{2, 0, 4}},
		TradeDown{From: 2, Short: 0, Have: 2, Need: 8, After: Counts{2, 10, 3}},
		TradeDown{From: 1, Short: 0, Have: 2, Need: 8, After: Counts{12, 9, 3}},
		TakePlace{Power: 0, From: 12, Count: 8, Left: 4, After: Counts{4, 9, 3}},
		TakePlace{Power: 1, From: 9, Count: 7, Left: 2, After: Counts{4, 2, 3}},
		TakePlace{Power: 2, From: 3, Count: 1, Left: 2, After: Counts{4, 2, 2}},
		ReadOff{224, Counts{4, 2, 2}},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("402 − 178:\n got %v\nwant %v", w.Moves, want)
	}
}

func TestSubtractionTradesFirst(t *testing.T) {
	// 425 − 278 is 3 hundreds 11 tens 15 ones before anything is taken
	// (Progressions, base ten, grade 2; from memory).
	w, err := SubtractByPlace(two(Subtraction, Subtract, 425, 278))
	if err != nil {
		t.Fatal(err)
	}
	last := Counts{}
	for _, m := range w.Moves {
		if trade, ok := m.(TradeDown); ok {
			last = trade.After
		}
	}
	if want := (Counts{15, 11, 3}); last != want {
		t.Errorf("after the trades there are %v, want %v", last, want)
	}
	if v, _ := w.Answer.Number.Int64(); v != 147 {
		t.Errorf("425 − 278 = %d, want 147", v)
	}
}

func TestNothingIsTakenFromAPlaceThatATradeEmptied(t *testing.T) {
	// 14 − 6: the ten is traded, so only ones are left to take from.
	w, err := SubtractByPlace(two(Subtraction, Subtract, 14, 6))
	if err != nil {
		t.Fatal(err)
	}
	want := []Move{
		LayOut{0, 14, Counts{4, 1}},
		TradeDown{From: 1, Short: 0, Have: 4, Need: 6, After: Counts{14}},
		TakePlace{Power: 0, From: 14, Count: 6, Left: 8, After: Counts{8}},
		ReadOff{8, Counts{8}},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("14 − 6:\n got %v\nwant %v", w.Moves, want)
	}
}

func TestAdditionComposesTensAndHundreds(t *testing.T) {
	// 278 + 147 = 425 with a new ten and a new hundred (Progressions, base ten,
	// grade 2; from memory).
	w, err := AddByPlace(two(Addition, Add, 278, 147))
	if err != nil {
		t.Fatal(err)
	}
	want := []Move{
		LayOut{0, 278, Counts{8, 7, 2}},
		LayOut{1, 147, Counts{7, 4, 1}},
		JoinPlace{0, 8, 7, 0, 15, Counts{15, 11, 3}},
		TradeUp{0, 8, 2, 0, 5, Counts{5, 12, 3}},
		JoinPlace{1, 7, 4, 1, 12, Counts{5, 12, 3}},
		TradeUp{1, 7, 3, 0, 2, Counts{5, 2, 4}},
		JoinPlace{2, 2, 1, 1, 4, Counts{5, 2, 4}},
		ReadOff{425, Counts{5, 2, 4}},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("278 + 147:\n got %v\nwant %v", w.Moves, want)
	}
}

func TestTheTradedTenIsUsedWhenItIsNeeded(t *testing.T) {
	// 45 + 58: 4 tens and 5 tens are 9, and the traded one makes the tenth.
	w, err := AddByPlace(two(Addition, Add, 45, 58))
	if err != nil {
		t.Fatal(err)
	}
	if got, want := w.Moves[5], (TradeUp{1, 4, 5, 1, 0, Counts{3, 0, 1}}); got != want {
		t.Errorf("the trade of tens is %v, want %v", got, want)
	}
}

func TestComparingStopsAtTheFirstPlaceThatDiffers(t *testing.T) {
	p := Problem{Kind: Claim, Left: Int(347), Right: Int(374), Rel: Greater}
	w, err := CompareByPlace(p)
	if err != nil {
		t.Fatal(err)
	}
	want := []Move{
		LayOut{0, 347, Counts{7, 4, 3}}, LayOut{1, 374, Counts{4, 7, 3}},
		ComparePlace{2, 3, 3, Equal}, ComparePlace{1, 4, 7, Less}, WriteSign{347, 374, Less},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("347 > 374:\n got %v\nwant %v", w.Moves, want)
	}
	if w.Answer.True || w.Answer.Relation != Less || w.Answer.Gap.Num() != 27 {
		t.Errorf("347 > 374: answer %+v, want false, less, 27 apart", w.Answer)
	}
}

func TestShowingKeepsTheEmptyPlace(t *testing.T) {
	// 706 is 7 hundreds, 0 tens, 6 ones (CCSS 2.NBT.A.1).
	w, err := ShowByPlace(Problem{Kind: Show, Left: Int(706)})
	if err != nil {
		t.Fatal(err)
	}
	want := []Move{LayPlace{2, 7, 700}, LayPlace{1, 0, 0}, LayPlace{0, 6, 6}, ReadOff{706, Counts{6, 0, 7}}}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("706:\n got %v\nwant %v", w.Moves, want)
	}
}

func TestColumnsAgreeWithBigArithmetic(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 5000 {
		limit := Power10(1 + r.IntN(7))
		x, y := r.Int64N(limit), r.Int64N(limit)
		x, y = max(x, y), min(x, y)
		checkSubtraction(t, x, y)
		checkAddition(t, x, y)
	}
}

// checkSubtraction checks that no trade changes what lies on the table, that no
// more is taken from a place than it has, and that the rest is right.
func checkSubtraction(t *testing.T, x, y int64) {
	t.Helper()
	w, err := SubtractByPlace(two(Subtraction, Subtract, x, y))
	if err != nil {
		t.Fatalf("%d − %d: %v", x, y, err)
	}
	taken := int64(0)
	for _, m := range w.Moves {
		switch m := m.(type) {
		case TradeDown:
			if m.After.Total() != x {
				t.Errorf("%d − %d: after a trade there is %d", x, y, m.After.Total())
			}
		case TakePlace:
			taken += m.Count * Power10(m.Power)
			if m.Count > m.From || m.From-m.Count != m.Left || m.After.Total() != x-taken {
				t.Errorf("%d − %d: bad taking %+v", x, y, m)
			}
		}
	}
	want := new(big.Int).Sub(big.NewInt(x), big.NewInt(y)).Int64()
	last := w.Moves[len(w.Moves)-1].(ReadOff)
	if v, _ := w.Answer.Number.Int64(); v != want || last.Number != want || last.Counts.Total() != want {
		t.Errorf("%d − %d = %d, %+v; want %d", x, y, v, last, want)
	}
}

func checkAddition(t *testing.T, x, y int64) {
	t.Helper()
	want := new(big.Int).Add(big.NewInt(x), big.NewInt(y)).Int64()
	w, err := AddByPlace(two(Addition, Add, x, y))
	if want > MaxPlaced {
		if err != ErrPlaces {
			t.Errorf("%d + %d: %v, want ErrPlaces", x, y, err)
		}
		return
	}
	if err != nil {
		t.Fatalf("%d + %d: %v", x, y, err)
	}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case JoinPlace:
			if m.First+m.Second+m.Carried != m.Sum || m.On[m.Power] != m.Sum || m.On.Total() != want {
				t.Errorf("%d + %d: bad joining %+v", x, y, m)
			}
		case TradeUp:
			if m.FromFirst+m.FromSecond+m.FromCarried != 10 || m.FromCarried > 1 {
				t.Errorf("%d + %d: not ten pieces: %+v", x, y, m)
			}
			if m.Left < 0 || m.Left > 9 || m.After[m.From] != m.Left || m.After.Total() != want {
				t.Errorf("%d + %d: bad trade %+v", x, y, m)
			}
		}
	}
	if last := w.Moves[len(w.Moves)-1].(ReadOff); last.Number != want || last.Counts.Total() != want {
		t.Errorf("%d + %d is read as %+v, want %d", x, y, last, want)
	}
}

func TestColumnsRefuseWhatHasNoPlaces(t *testing.T) {
	half := InPlaces(5, 1)
	for name, p := range map[string]Problem{
		"a decimal":   {Kind: Addition, Left: Operation{Add, half, Int(1)}},
		"too large":   two(Addition, Add, MaxPlaced, 1),
		"an unknown":  {Kind: Missing, Left: Operation{Add, Unknown{}, Int(1)}, Right: Int(2), Rel: Equal},
		"too large b": two(Addition, Add, 1, MaxPlaced+1),
	} {
		if _, err := AddByPlace(p); err != ErrPlaces {
			t.Errorf("%s: %v, want ErrPlaces", name, err)
		}
	}
	if _, err := SubtractByPlace(two(Subtraction, Subtract, 3, 5)); err != ErrNegative {
		t.Errorf("3 − 5: %v, want ErrNegative", err)
	}
	if _, err := ShowByPlace(Problem{Kind: Show, Left: half}); err != ErrPlaces {
		t.Errorf("0.5: %v, want ErrPlaces", err)
	}
}
