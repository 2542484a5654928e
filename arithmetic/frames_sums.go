package arithmetic

// AddInFrames works a sum of two whole numbers that is at most 20 with counters in
// ten frames, as CCSS 1.OA.C.6 lists the ways: making ten (8 + 6 = 8 + 2 + 4), and
// equal addends or nearly so (6 + 7 = 6 + 6 + 1). An 8 or 9 makes ten, for then only
// one or two counters move; a double is always seen. A sum to 10 has room in one
// frame, and a number of 10 or more has a full one already.
func AddInFrames(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	switch {
	case err != nil || p.Kind != Addition:
		return Working{}, ErrNotWhole
	case a > MostInFrames || b > MostInFrames || a+b > MostInFrames:
		return Working{}, ErrFrames
	}
	w := Working{Problem: p, Answer: whole(a + b)}
	large, small, swapped := a, b, a < b && a+b > TenFrame
	first, second := 0, 1
	if swapped {
		large, small, first, second = b, a, 1, 0
	}
	switch {
	case doubles(a, b):
		w.Moves = seeDouble(a, b)
		return w, nil
	case a+b <= TenFrame || large >= TenFrame:
		w.Moves = append(w.Moves,
			PutCounters{Nth: first, Number: large, Count: large, Now: large, Larger: swapped},
			PutCounters{Nth: second, Number: small, Count: small, Cell: large, Before: large, Now: a + b})
	default:
		need := TenFrame - large
		rest := small - need
		w.Moves = append(w.Moves,
			PutCounters{Nth: first, Number: large, Count: large, Now: large, Larger: swapped},
			PutCounters{Nth: second, Number: small, Count: small, Cell: TenFrame, Before: large, Now: a + b, Apart: true},
			FillFrame{Nth: second, Large: large, Need: need, Rest: rest, From: TenFrame + rest, To: large, Total: a + b})
	}
	w.Moves = append(w.Moves, readFrames(a+b))
	return w, nil
}

// doubles reports whether two addends are told as a double: equal, or one apart and
// neither of them 8 or 9.
func doubles(a, b int64) bool {
	least, most := min(a, b), max(a, b)
	switch {
	case most >= TenFrame || least == 0:
		return false
	case least == most:
		return true
	}
	return most-least == 1 && least > 1 && most < 8
}

// seeDouble lays both addends where they are seen beside each other: in the two rows
// of a frame, or where one is more than a row in a frame each.
func seeDouble(a, b int64) []Move {
	each := min(a, b)
	second := PutCounters{Nth: 1, Number: b, Count: b, Cell: FrameRow, Before: a, Now: a + b, Row: true}
	if max(a, b) > FrameRow {
		second.Cell, second.Row, second.Apart = TenFrame, false, true
	}
	see := SeeDouble{Each: each, Double: 2 * each, Extra: a + b - 2*each}
	if second.Apart {
		see.Over = each - FrameRow
	}
	switch {
	case b > a:
		see.Nth, see.Cell = 1, second.Cell+each
	case a > b:
		see.Cell = each
	}
	return []Move{PutCounters{Number: a, Count: a, Now: a, Row: second.Row}, second, see,
		AddToDouble{each, see.Double, see.Over, see.Extra, a + b}}
}

// ChainInFrames works an Expression that adds three whole numbers, at most 20 in
// all: first two that make ten, where there are two (2 + 6 + 4 = 2 + 10, CCSS
// 1.OA.B.3), or else from left to right, stopping where a frame is full.
func ChainInFrames(p Problem) (Working, error) {
	list, ok := terms(p.Left)
	if p.Kind != Expression || !ok || len(list) != 3 {
		return Working{}, ErrNotWhole
	}
	var n [3]int64
	sum := int64(0)
	for i, t := range list {
		v, ok := wholeNumber(t.number)
		switch {
		case !ok || t.back:
			return Working{}, ErrNotWhole
		case v > MostInFrames || sum+v > MostInFrames:
			return Working{}, ErrFrames
		}
		n[i], sum = v, sum+v
	}
	w := Working{Problem: p, Answer: whole(sum)}
	order, ten := tenFirst(n)
	at := int64(0)
	for i, nth := range order {
		m := PutCounters{Nth: nth, Number: n[nth]}
		if i == 0 && ten {
			m.Ten = n[order[1]]
		}
		w.Moves, at = putFilling(w.Moves, m, at)
	}
	w.Moves = append(w.Moves, readFrames(at))
	return w, nil
}

// tenFirst is the order in which three numbers are added: two that make ten, if there
// are two, in front.
func tenFirst(n [3]int64) (order [3]int, ten bool) {
	for _, o := range [][3]int{{0, 1, 2}, {1, 2, 0}, {0, 2, 1}} {
		if n[o[0]]+n[o[1]] == TenFrame && n[o[0]] > 0 && n[o[1]] > 0 {
			return o, true
		}
	}
	return [3]int{0, 1, 2}, false
}

// putFilling puts all counters of a move in, from the cell at on, in two moves where
// they fill a frame on the way. It returns the next free cell.
func putFilling(moves []Move, m PutCounters, at int64) ([]Move, int64) {
	all := m.Number
	if at < TenFrame && at > 0 && at+all > TenFrame {
		part := m
		part.Count, part.Cell, part.Before, part.Now, part.Fills = TenFrame-at, at, at, TenFrame, true
		moves, all, at = append(moves, part), all-part.Count, TenFrame
	}
	m.Count, m.Cell, m.Before, m.Now = all, at, at, at+all
	return append(moves, m), at + all
}
