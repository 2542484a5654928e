package arithmetic

// OnePlace is the place that a sum or difference changes by one piece: 10 more, 100
// less. ok is false when no number of the problem is 10, 100, 1,000 or a larger
// power of ten; of a difference only the second counts.
func OnePlace(p Problem) (nth, power int, ok bool) {
	a, b, two := p.Operands()
	if !two || p.Kind != Addition && p.Kind != Subtraction {
		return 0, 0, false
	}
	if power, ok = onePiece(b); ok {
		return 1, power, true
	}
	if p.Kind == Addition {
		if power, ok = onePiece(a); ok {
			return 0, power, true
		}
	}
	return 0, 0, false
}

func onePiece(n Number) (power int, ok bool) {
	v, whole := n.Int64()
	for power = 1; power < PlaceNames; power++ {
		if whole && n.Form == Whole && v == Power10(power) {
			return power, true
		}
	}
	return 0, false
}

// ChangeOnePlace works a sum or difference with a power of ten (10 more, 100 less:
// CCSS 2.NBT.B.8): it is the written procedure without the places that stay as they
// are. Its errors are those of [AddByPlace] and [SubtractByPlace].
func ChangeOnePlace(p Problem) (Working, error) {
	nth, power, ok := OnePlace(p)
	if !ok {
		return Working{}, ErrPlaces
	}
	work := AddByPlace
	if p.Kind == Subtraction {
		work = SubtractByPlace
	}
	w, err := work(p)
	if err != nil {
		return Working{}, err
	}
	var moves []Move
	for _, move := range w.Moves {
		switch move := move.(type) {
		case JoinPlace:
			other := [2]int64{move.First, move.Second}[nth]
			if move.Power != power && move.Carried == 0 && other == 0 {
				continue
			}
		case TakePlace:
			if move.Count == 0 {
				continue
			}
		}
		moves = append(moves, move)
	}
	w.Moves = moves
	return w, nil
}
