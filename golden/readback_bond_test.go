package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readBond reads the whole story of a number bond.
func readBond(s sight, t problems.Truth) error {
	switch s.problem.Kind {
	case arithmetic.WaysToMake:
		return s.readWays(t, true)
	case arithmetic.FactFamily:
		if err := s.readFamilyFacts(t); err != nil {
			return err
		}
	}
	list, err := s.readPlates()
	if err != nil {
		return err
	}
	if len(list) == 4 {
		return s.readTen(list, t)
	}
	return s.readPlatesOf(list, t)
}

// bondTruth are the whole and the parts of a problem, from left to right, with the
// roles that their counters may have.
func bondTruth(p arithmetic.Problem, t problems.Truth) (all *big.Rat, parts [2]*big.Rat, roles [2]scene.Role) {
	n := t.Numbers
	roles = [2]scene.Role{scene.First, scene.Second}
	switch p.Kind {
	case arithmetic.ExpandedForm:
		return n[0], [2]*big.Rat{whole(t.List[0]), whole(t.List[1])}, [2]scene.Role{scene.Result, scene.Result}
	case arithmetic.Subtraction:
		return n[0], [2]*big.Rat{t.Value, n[1]}, [2]scene.Role{scene.Result, scene.Second}
	case arithmetic.Missing:
		return missingBond(p, t)
	}
	return t.Value, [2]*big.Rat{n[0], n[1]}, roles
}

func missingBond(p arithmetic.Problem, t problems.Truth) (all *big.Rat, parts [2]*big.Rat, roles [2]scene.Role) {
	o, is := p.Left.(arithmetic.Operation)
	known, total := 0, 1 // their places in the problem
	if !is {
		o = p.Right.(arithmetic.Operation)
		known, total = 1, 0
	}
	role := []scene.Role{scene.First, scene.Second}
	_, start := o.Left.(arithmetic.Unknown)
	k, tot := t.Numbers[known], t.Numbers[total]
	switch {
	case o.Op == arithmetic.Add && start:
		return tot, [2]*big.Rat{t.Value, k}, [2]scene.Role{scene.Result, role[known]}
	case o.Op == arithmetic.Add:
		return tot, [2]*big.Rat{k, t.Value}, [2]scene.Role{role[known], scene.Result}
	case start:
		return t.Value, [2]*big.Rat{tot, k}, [2]scene.Role{role[total], role[known]}
	}
	return k, [2]*big.Rat{tot, t.Value}, [2]scene.Role{role[total], scene.Result}
}

// readPlatesOf reads a whole over two parts, joined by lines.
func (s sight) readPlatesOf(list []onPlate, t problems.Truth) error {
	if len(list) != 3 || list[1].Y != list[2].Y {
		return fmt.Errorf("%d plates", len(list))
	}
	all, parts, roles := bondTruth(s.problem, t)
	product := s.problem.Kind == arithmetic.FactFamily && s.problem.Left.(arithmetic.Operation).Op == arithmetic.Multiply
	counted := all.Cmp(whole(20)) <= 0
	if product {
		counted = false
		if list[0].all() > 0 {
			if err := s.numbersAre(list[0], all, true, scene.Result); err != nil {
				return err
			}
			list[0].counters = nil
		}
	}
	if err := s.numbersAre(list[0], all, counted, roles[0], roles[1], scene.First, scene.Second); err != nil {
		return err
	}
	for i, p := range list[1:] {
		if err := s.numbersAre(p, parts[i], counted, roles[i]); err != nil {
			return err
		}
		if !s.joined(list[0].Box, p.Box) {
			return errors.New("no line joins the whole and a part")
		}
	}
	if counted && list[0].counters[roles[0]] > 0 && list[0].counters[roles[1]] > 0 && roles[0] != roles[1] {
		return agree("the counters of the first part in the whole", whole(list[0].counters[roles[0]]), parts[0])
	}
	return nil
}

// joined reports whether a straight line leads from the lower edge of one plate to the
// upper edge of another.
func (s sight) joined(a, b measure.Box) bool {
	return slices.ContainsFunc(s.Paths, func(p measure.Path) bool {
		if len(p.Points) != 2 {
			return false
		}
		from, to := p.Points[0], p.Points[1]
		return from.Y == a.Bottom() && from.X > a.X && from.X < a.Right() && to.Y == b.Y && to.X == b.X+b.W/2
	})
}

// readFamilyFacts: every fact of the family is written once.
func (s sight) readFamilyFacts(t problems.Truth) error {
	var facts []string
	for _, f := range s.Statements() {
		facts = append(facts, f.String())
	}
	want := slices.Clone(t.Facts)
	slices.Sort(want)
	slices.Sort(facts)
	if !slices.Equal(facts, want) {
		return fmt.Errorf("the facts are %q, not %q", facts, want)
	}
	return nil
}

// stepsOfBond: on every plate that has a number there are as many counters, those that
// are gone among them, or none; the last step has the numbers of the whole story.
func stepsOfBond(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		if s.problem.Kind == arithmetic.WaysToMake {
			if err := s.readWays(t, i >= len(steps)-2); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
			continue
		}
		list, err := s.readPlates()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		for _, p := range list {
			on := p.all() + p.gone
			if p.all() == 0 && p.gone < p.n {
				continue // what went before is not shown any more
			}
			if ten := on == 10 && len(list) == 4; on != 0 && p.n >= 0 && on != p.n && !ten {
				return fmt.Errorf("step %d: %d counters on the plate of %d", i+1, on, p.n)
			}
		}
	}
	last := steps[len(steps)-1]
	switch last.problem.Kind {
	case arithmetic.WaysToMake:
		return nil
	case arithmetic.FactFamily:
		return last.readFamilyFacts(t)
	}
	return last.readLastBond(t)
}

// readLastBond reads the numbers of the plates of a last step; counters may be where
// they have just been moved.
func (s sight) readLastBond(t problems.Truth) error {
	list, err := s.readPlates()
	switch {
	case err != nil:
		return err
	case len(list) == 4:
		return s.readTen(list, t)
	case len(list) != 3:
		return fmt.Errorf("%d plates", len(list))
	}
	all, parts, _ := bondTruth(s.problem, t)
	for i, want := range []*big.Rat{all, parts[0], parts[1]} {
		if err := agree("the number on a plate", whole(list[i].n), want); err != nil {
			return err
		}
		on := list[i].all() + list[i].gone
		if i == 0 && list[0].all() == 0 {
			continue // all have been moved to the parts
		}
		if all.Cmp(whole(20)) <= 0 && want.Cmp(whole(on)) != 0 {
			return fmt.Errorf("%d counters on the plate of %d", on, list[i].n)
		}
	}
	return nil
}
