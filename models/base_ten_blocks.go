package models

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// BaseTenBlocks lays numbers out in thousands, hundreds, tens and ones, and
// makes every trade a move of its own (CCSS 2.NBT.A.1, 2.NBT.A.4, 2.NBT.B.7).
var BaseTenBlocks = &Model{
	Name:  "base-ten-blocks",
	Title: "Base-ten blocks",
	Doc:   "Shows whole numbers in thousands, hundreds, tens and ones, with every trade when they are added or subtracted.",
	First: []arithmetic.Kind{arithmetic.Show, arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim},
	Examples: []string{
		"402 - 178",
		"345 + 278",
		"706",
		"347 > 374",
		"compare 98 and 102",
		"3,000 - 1,456",
		"1,275 + 1,850",
		"14 - 6",
	},
	Fits: fitsBlocks,
	Tell: tellBlocks,
}

// largestBlocks is the largest number: above it there is no block to trade for.
const largestBlocks = 9_999

func fitsBlocks(p arithmetic.Problem) error {
	var numbers []arithmetic.Number
	switch p.Kind {
	case arithmetic.Show:
		n, ok := p.Left.(arithmetic.Number)
		if !ok {
			return words.BlocksKind
		}
		numbers = append(numbers, n)
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Comparison, arithmetic.Claim:
		a, b, ok := p.Operands()
		if !ok {
			return words.BlocksKind
		}
		numbers = append(numbers, a, b)
	default:
		return words.BlocksKind
	}
	var values []int64
	for _, n := range numbers {
		v, whole := n.Int64()
		if !whole || n.Form != arithmetic.Whole || v < 0 {
			return words.BlocksWhole
		}
		if v > largestBlocks {
			return words.BlocksLarge
		}
		values = append(values, v)
	}
	switch {
	case p.Kind == arithmetic.Addition && values[0]+values[1] > largestBlocks:
		return words.BlocksSum
	case p.Kind == arithmetic.Subtraction && values[0] < values[1]:
		return words.BlocksNegative
	}
	return nil
}

func tellBlocks(p arithmetic.Problem) Telling {
	switch p.Kind {
	case arithmetic.Addition:
		return blocksAdded(p)
	case arithmetic.Subtraction:
		return blocksSubtracted(p)
	case arithmetic.Show:
		return blocksShown(p)
	}
	return blocksCompared(p)
}

// mustWork is the working of a problem that fits, of which nothing can go wrong.
func mustWork(w arithmetic.Working, err error) arithmetic.Working {
	if err != nil {
		panic("models: base-ten blocks: " + err.Error())
	}
	return w
}

// blockPieces lists what to have on the table, the largest first.
func blockPieces(c arithmetic.Counts) []Piece {
	var list []Piece
	for power := c.Top(); power >= 0; power-- {
		if c[power] > 0 {
			list = append(list, Piece{words.Place(power, c[power]), c[power]})
		}
	}
	return list
}

// floors are the least widths of trays: room for their names, and for the given
// lines under them.
func floors(lines ...[]notation.Line) (floor [blockPlaces]int) {
	for power := range floor {
		floor[power] = scene.Advance(words.Place(power, 2), scene.Small, false) + 12
		if power < len(lines) {
			for _, line := range lines[power] {
				floor[power] = max(floor[power], blockLineWidth(line, scene.Small)+8)
			}
		}
	}
	return floor
}

func blockLineWidth(line notation.Line, size int) int {
	return scene.Text{Size: size, Runs: line.Runs()}.Width()
}

func ofRole(n int64, role scene.Role) notation.Line {
	return notation.Line{notation.N(arithmetic.Grouped(n), role)}
}

// blocksShown lays one number out, place by place.
func blocksShown(p arithmetic.Problem) Telling {
	w := mustWork(arithmetic.ShowByPlace(p))
	read := w.Moves[len(w.Moves)-1].(arithmetic.ReadOff)
	top := read.Counts.Top()
	worths := make([][]notation.Line, top+1)
	for _, move := range w.Moves {
		if place, ok := move.(arithmetic.LayPlace); ok {
			worths[place.Power] = []notation.Line{ofRole(place.Worth, scene.First)}
		}
	}
	m := layMat(demand{numbers: []arithmetic.Counts{read.Counts}, slots: []arithmetic.Counts{read.Counts}, top: top, floor: floors(worths...)})
	t := Telling{Answer: w.Answer, Pieces: blockPieces(read.Counts)}
	var on arithmetic.Counts
	var said notation.Line
	for _, move := range w.Moves {
		s, labels := m.base(""), &scene.Scene{}
		step := Step{Scene: s}
		switch move := move.(type) {
		case arithmetic.LayPlace:
			m.layAll(s, 0, on, ofFirst)
			m.lay(s, move.Power, 0, 0, move.Count, ofFirst.moved())
			on[move.Power] = move.Count
			step.Title, step.Hands, step.Ask = words.BlocksLayPlace(move)
			step.Symbols = notation.Lines(withPlace(said, move, scene.Moved))
			said = withPlace(said, move, scene.First)
		case arithmetic.ReadOff:
			m.layAll(s, 0, on, ofFirst)
			step.Title, step.Hands, step.Ask = words.BlocksShown(move)
			step.Symbols = notation.Lines(said, expanded(move))
		}
		for power := top; power >= 0; power-- {
			if on[power] > 0 || len(said) > 0 && power >= lowestSaid(move) {
				m.tally(labels, power, ofRole(on[power], scene.First))
			}
		}
		addPart(s, scene.ShownOnly, labels)
		s.Title = scene.Telling{Shown: words.BlocksStepTitle(p, step.Title), Hidden: words.BlocksQuestion()}
		s.Desc = words.BlocksDescShow(on, top)
		t.Steps = append(t.Steps, step)
	}
	t.Whole = m.base("")
	m.layAll(t.Whole, 0, read.Counts, ofFirst)
	labels := &scene.Scene{}
	for power := range worths {
		m.tally(labels, power, worths[power][0])
	}
	addPart(t.Whole, scene.ShownOnly, labels)
	equation(t.Whole, m.tallied(1), notation.Line{notation.W(words.BlocksQuestion())}, expanded(read))
	t.Whole.Title = scene.Telling{Shown: expanded(read).Text(), Hidden: words.BlocksQuestion()}
	t.Whole.Desc = words.BlocksDescShow(read.Counts, top)
	return t
}

// lowestSaid is the place down to which the number has been laid out.
func lowestSaid(m arithmetic.Move) int {
	if place, ok := m.(arithmetic.LayPlace); ok {
		return place.Power
	}
	return 0
}

// withPlace adds a place to a line like 4 hundreds + 0 tens + 2 ones.
func withPlace(line notation.Line, m arithmetic.LayPlace, role scene.Role) notation.Line {
	line = append(notation.Line{}, line...)
	if len(line) > 0 {
		line = append(line, notation.S("+"))
	}
	return append(line, notation.N(digits(m.Count), role), notation.W(words.Place(m.Power, m.Count)))
}

// expanded is a number as the sum of what its digits are worth: 402 = 400 + 2.
// A number with one digit that is not 0 is told in pieces: 400 = 4 hundreds.
func expanded(m arithmetic.ReadOff) notation.Line {
	parts, err := arithmetic.Expanded(m.Number)
	line := notation.Line{notation.N(arithmetic.Grouped(m.Number), scene.First)}
	if err != nil || len(parts) == 1 {
		top := m.Counts.Top()
		return append(line, notation.S("="), notation.N(digits(m.Counts[top]), scene.Ink), notation.W(words.Place(top, m.Counts[top])))
	}
	for i, part := range parts {
		sign := "+"
		if i == 0 {
			sign = "="
		}
		line = append(line, notation.S(sign), notation.N(arithmetic.Grouped(part), scene.Ink))
	}
	return line
}
