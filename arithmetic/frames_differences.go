package arithmetic

// TakeInFrames works a difference of whole numbers to 20 with counters in ten
// frames. What is taken goes from the last counters on, and stops at ten on the way:
// 14 − 6 = 14 − 4 − 2 (CCSS 1.OA.C.6: 13 − 4 = 13 − 3 − 1). Its error is
// [ErrNegative] where there are too few.
func TakeInFrames(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	switch {
	case err != nil || p.Kind != Subtraction || p.Story == HowManyMore:
		return Working{}, ErrNotWhole
	case b > a:
		return Working{}, ErrNegative
	case a > MostInFrames:
		return Working{}, ErrFrames
	}
	w := Working{Problem: p, Answer: whole(a - b)}
	w.Moves = append(w.Moves, PutCounters{Number: a, Count: a, Now: a})
	if a > TenFrame && a-b < TenFrame {
		w.Moves = append(w.Moves,
			TakeCounters{From: a, Count: a - TenFrame, Left: TenFrame, All: b, Ten: true},
			TakeCounters{From: TenFrame, Count: TenFrame - (a - b), Left: a - b, All: b, Again: true})
	} else {
		w.Moves = append(w.Moves, TakeCounters{From: a, Count: b, Left: a - b, All: b})
	}
	w.Moves = append(w.Moves, readFrames(a-b))
	return w, nil
}

// FillInFrames works a Missing addend, 8 + ? = 11 or ? + 8 = 11, with a total to 20:
// the known number lies there, and counters are put in until the total lies there,
// stopping at ten on the way (CCSS 1.OA.D.8). Its error is [ErrNegative] where the
// total is less than what is known.
func FillInFrames(p Problem) (Working, error) {
	look, ok := lookFor(p)
	if !ok || p.Rel != Equal || look.Op != Add {
		return Working{}, ErrNotWhole
	}
	known, okK := wholeNumber(look.Known)
	total, okT := wholeNumber(look.Total)
	switch {
	case !okK || !okT:
		return Working{}, ErrNotWhole
	case known > total:
		return Working{}, ErrNegative
	case total > MostInFrames:
		return Working{}, ErrFrames
	}
	nth := 0
	if look.OnRight {
		nth = 1
	}
	w := Working{Problem: p, Answer: whole(total - known)}
	w.Moves = append(w.Moves, PutCounters{Nth: nth, Number: known, Count: known, Now: known})
	filled := PutCounters{Nth: Asked, Number: total - known}
	w.Moves, _ = putFilling(w.Moves, filled, known)
	read := ReadFilled{Sum: total - known, Total: total}
	for _, m := range w.Moves[1:] {
		read.Parts = append(read.Parts, m.(PutCounters).Count)
	}
	w.Moves = append(w.Moves, read)
	return w, nil
}
