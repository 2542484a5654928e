package arithmetic

import "modeler/fraction"

// mostInSum is how many fractions are added end to end.
const mostInSum = 5

// AddEndToEnd works an [Expression] that is a sum of three to five fractions: the
// lengths are laid end to end, all are cut in parts of one size, and the parts are
// counted: 1/2 + 1/3 + 1/6 is 3/6 + 2/6 + 1/6, one whole. (CCSS 5.NF.A.1) ok is false
// for every other problem; [ErrNothing] says that a length is nothing.
func AddEndToEnd(p Problem) (w Working, ok bool, err error) {
	if p.Kind != Expression {
		return w, false, nil
	}
	list, ok := terms(p.Left)
	if !ok || len(list) < 3 || len(list) > mostInSum {
		return w, false, nil
	}
	var from []Strips
	den := int64(1)
	for i, t := range list {
		if t.back || t.number.Form != Common {
			return w, false, nil
		}
		if t.number.Value.Sign() == 0 {
			return w, true, ErrNothing
		}
		s := StripsOf(t.number)
		w.Moves = append(w.Moves, LayStrips{i, t.number, s})
		from = append(from, s)
		if den, err = fraction.LCM(den, s.Part.Den()); err != nil {
			return w, true, ErrOverflow
		}
	}
	cut := CutAll{From: from, Den: den}
	total := fraction.Must(0, den)
	same := true
	for _, s := range from {
		part, err := s.Part.In(den)
		if err == nil {
			total, err = total.Add(part)
		}
		if err != nil {
			return w, true, ErrOverflow
		}
		cut.To = append(cut.To, Strips{Part: part})
		same = same && s.Part.Den() == den
	}
	if total, err = total.In(den); err != nil {
		return w, true, ErrOverflow
	}
	if !same {
		w.Moves = append(w.Moves, cut)
	}
	sum := Strips{Part: total}
	more, last := finish(sum)
	w.Moves = append(append(w.Moves, CountParts{sum}), more...)
	w.Problem, w.Answer = p, Answer{Number: Frac(total), Simplest: last.Number()}
	return w, true, nil
}
