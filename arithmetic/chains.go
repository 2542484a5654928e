package arithmetic

// AddChain works an Expression of sums and differences without brackets, as
// 2 + 6 + 4, from left to right by one hop for each number. Its errors are
// [ErrNegative] when it goes below 0 on the way and [ErrOverflow].
func AddChain(p Problem) (Working, Scale, error) {
	list, ok := terms(p.Left)
	if p.Kind != Expression || !ok {
		return Working{}, Scale{}, errNotOnLine
	}
	var numbers []Number
	for _, t := range list {
		numbers = append(numbers, t.number)
	}
	s, err := CommonScale(numbers...)
	if err != nil {
		return Working{}, s, err
	}
	t, err := train(s, list)
	if err != nil {
		return Working{}, s, err
	}
	w := Working{Problem: p, Moves: []Move{StartAt{At: t.First}}}
	end := s.Count(t.First)
	for _, j := range t.Hops {
		w.Moves = append(w.Moves, j)
		end = s.Count(j.To)
	}
	return w.ends(s.Write(end)), s, nil
}
