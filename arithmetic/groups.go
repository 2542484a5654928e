package arithmetic

// GroupStory says how equal groups come about. Sharing and measuring are two
// stories with the same numbers (CCSS 3.OA.A.2).
type GroupStory uint8

const (
	Making    GroupStory = iota // so many groups are made, each of a known size
	Sharing                     // a total is dealt out among a known number of groups
	Measuring                   // a total is measured off in groups of a known size
)

// SetGroups is what is known before anything is moved. What its story does not
// know is 0: the total when making, the size of each when sharing, the number of
// groups when measuring.
type SetGroups struct {
	Story               GroupStory
	Total, Groups, Each int64
}

// MakeGroups makes More full groups beside the Before that there are: Groups now.
// Totals has how many are in all groups after each of them. When measuring, they
// take Took off the table and Left are still there; when making, both are 0.
type MakeGroups struct {
	Before, More, Groups, Each int64
	Totals                     []int64
	Took, Left                 int64
}

// DealRounds goes round all the groups More times and puts one in each, which
// had Before: Each now. That takes Took; Left are still to be dealt.
type DealRounds struct {
	Groups, Before, More, Each int64
	Took, Left                 int64
}

// SplitRest cuts each of what is left over in Parts equal parts, Pieces in all.
type SplitRest struct{ Left, Parts, Pieces int64 }

// DealParts gives every group one part of each thing that was cut: Share of a
// whole one. All is what every group has then.
type DealParts struct {
	Groups, Pieces int64
	Share, All     Number
}

// PartGroup sees what is left over as part of one more group: Left of the Each
// that a group needs, so that Empty places stay free. All is how many groups there
// are with it.
type PartGroup struct {
	Left, Each, Empty int64
	Share, All        Number
}

// RoundUp finds a place for what is left over. When measuring it goes in one more
// group, in which Empty places stay free. When sharing, Left of the groups get one
// more, and Empty groups do not. Found is the answer rounded up.
type RoundUp struct {
	Story              GroupStory
	Left, Empty, Found int64
}

// ReadGroups reads what was asked: Found. There are Groups full groups with Each in
// them, and Left are left over. Totals has how many are in all groups after each of
// them, when making more than one.
type ReadGroups struct {
	Story                     GroupStory
	Groups, Each, Total, Left int64
	Totals                    []int64
	Found                     Answer
}

// TakeGroups takes Groups of the Of groups, each with Each in it: Sum in all.
type TakeGroups struct{ Groups, Of, Each, Sum int64 }

// ReadPairs sees whether all have a partner. Left is 1 or 0.
type ReadPairs struct {
	Total, Pairs, Left int64
	Even               bool
}

func (SetGroups) move()  {}
func (MakeGroups) move() {}
func (DealRounds) move() {}
func (SplitRest) move()  {}
func (DealParts) move()  {}
func (PartGroup) move()  {}
func (RoundUp) move()    {}
func (ReadGroups) move() {}
func (TakeGroups) move() {}
func (ReadPairs) move()  {}

// ProductByGroups works a product of whole numbers group by group, as repeated
// addition (CCSS 3.OA.A.1).
func ProductByGroups(p Problem) (Working, error) {
	groups, each, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	return makeGroups(p, groups, each)
}

func makeGroups(p Problem, groups, each int64) (Working, error) {
	total, err := times(groups, each)
	if err != nil {
		return Working{}, err
	}
	if groups > mostGroupMoves {
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Answer: whole(total), Moves: []Move{SetGroups{Story: Making, Groups: groups, Each: each}}}
	read := ReadGroups{Story: Making, Groups: groups, Each: each, Total: total, Found: w.Answer}
	for _, m := range fullGroups(groups, each) {
		m.Took = 0
		w.Moves, read.Totals = append(w.Moves, m), append(read.Totals, m.Totals...)
	}
	w.Moves = append(w.Moves, read)
	return w, nil
}

// mostGroupMoves bounds the work and the length of a trace.
const mostGroupMoves = 1_000

// fullGroups makes groups, a few at a time where there are many. Empty groups need
// no making.
func fullGroups(groups, each int64) []MakeGroups {
	var list []MakeGroups
	for before := int64(0); before < groups && each > 0; {
		m := MakeGroups{Before: before, More: min(atATime(groups), groups-before), Each: each}
		m.Groups = before + m.More
		for i := range m.More {
			m.Totals = append(m.Totals, (before+i+1)*each)
		}
		m.Took = m.More * each
		list = append(list, m)
		before += m.More
	}
	return list
}

// atATime is how many groups or rounds are done in one move, so that there are at
// most eight moves up to eighty of them: one, or as many as are easy to count by.
func atATime(n int64) int64 {
	const moves = 8
	for _, few := range []int64{1, 2, 5} {
		if n <= few*moves {
			return few
		}
	}
	return max(10, (n+moves-1)/moves)
}
