package arithmetic

// AddByJoining works an [Addition] as [AddByCutting] does, with the parts cut first
// and put together when they are alike: parts fill a disc only when all of them are
// of one size. (CCSS 5.NF.A.1)
func AddByJoining(p Problem) (Working, error) {
	w, err := AddByCutting(p)
	if err != nil {
		return w, err
	}
	var before, after []Move
	var join PutTogether
	for i, move := range w.Moves {
		switch m := move.(type) {
		case LayStrips:
			before = append(before, m)
			if m.Nth == 0 {
				join.First = m.Strips
			} else {
				join.Second = m.Strips
			}
		case CutParts:
			before = append(before, m)
			if m.Nth == 0 {
				join.First = m.To
			} else {
				join.Second = m.To
			}
		case PutTogether:
		default:
			after = append(after, w.Moves[i])
		}
	}
	w.Moves = append(append(before, join), after...)
	return w, nil
}
