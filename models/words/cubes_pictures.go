package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Match tells how two trains are held side by side.
func (c Cubes) Match(m arithmetic.MatchTrains) Told {
	longer := []int64{m.First, m.Second}[m.Longer]
	t := Told{Title: "Match cube with cube", Ask: Say("Which train is longer? By how many cubes?")}
	t.Hands = Say("Match the cubes one by one. The train of ", In(roleOf(m.Longer), g(longer)), " has ", In(scene.Result, g(m.Gap)+" more"), ".")
	shown := c.Given() + " The train of " + g(longer) + " has " + g(m.Gap) + " more."
	if m.Gap == 0 {
		t.Hands = Say("Match the cubes one by one. Both trains are ", In(scene.Result, "the same length"), ".")
		shown = c.Given() + " Every cube has a match, so they are equally long."
	}
	t.Desc = scene.Telling{Shown: shown, Hidden: c.Asked()}
	return t
}

// Say says how one number stands to the other.
func (c Cubes) Say(m arithmetic.SayTrains) Told {
	t := Told{Title: "Say which is more", Ask: Say("Which number is more?"), Hands: c.Why(m)}
	if c.Kind == arithmetic.Subtraction {
		t.Title, t.Ask = "Say how many more", Say("How many more is "+g(m.First)+" than "+g(m.Second)+"?")
	}
	t.Desc = scene.Telling{Shown: c.Given() + " " + t.Hands.String(), Hidden: c.Asked()}
	return t
}

// Why says how two numbers stand to each other.
func (c Cubes) Why(m arithmetic.SayTrains) Phrase {
	a, b := In(scene.First, g(m.First)), In(scene.Second, g(m.Second))
	gap := In(scene.Result, g(m.Gap))
	switch m.Relation {
	case arithmetic.Greater:
		return Say(a, " is ", gap, " more than ", b, ".")
	case arithmetic.Less:
		return Say(a, " is ", gap, " less than ", b, ".")
	}
	if c.Kind == arithmetic.Subtraction {
		return Say(a, " and ", b, " are the same: ", gap, " more.")
	}
	return Say(a, " and ", b, " are the same, so they are equal.")
}

// CubesMore names how much longer a train is.
func CubesMore(n string) string { return n + " more" }

// CubesSame stands beside two trains of one length.
const CubesSame = "the same length"

func (c Cubes) pair() (a, b int64) {
	first, second, _ := c.Operands()
	a, _ = first.Int64()
	b, _ = second.Int64()
	return a, b
}

// Given says what is known, as every picture of the problem shows it.
func (c Cubes) Given() string {
	a, b := c.pair()
	n, _ := c.Left.(arithmetic.Number)
	only, _ := n.Int64()
	switch {
	case c.Kind == arithmetic.Addition:
		return g(a) + " linking cubes and " + g(b) + " more."
	case c.Kind == arithmetic.Subtraction && c.Story == arithmetic.NoStory:
		return g(a) + " linking cubes, and " + g(b) + " are to be taken away."
	case c.Kind == arithmetic.Product:
		return capital(Count(a, "train")) + " with " + cubes(b) + " in each."
	case c.Kind == arithmetic.Parity:
		return Count(only, LinkingCube) + "."
	case c.Kind == arithmetic.Show:
		return "Linking cubes, in trains of ten and single ones."
	}
	return "A train of " + g(a) + " cubes and under it, from the same end, a train of " + g(b) + "."
}

// Asked describes a picture while its answer is hidden.
func (c Cubes) Asked() string {
	a, b := c.pair()
	switch {
	case c.Kind == arithmetic.Show:
		return "Linking cubes. " + CubesQuestion
	case c.Kind == arithmetic.Parity:
		return c.Given() + " Can they all be set in pairs?"
	case c.Kind == arithmetic.Subtraction && c.Story != arithmetic.NoStory:
		return c.Given() + " How many more is " + g(a) + " than " + g(b) + "?"
	case c.Kind == arithmetic.Subtraction:
		return c.Given() + " How many will be there then?"
	case c.Kind == arithmetic.Addition:
		return c.Given() + " How many are there together?"
	case c.Kind == arithmetic.Product:
		return c.Given() + " How many cubes is that?"
	}
	return c.Given() + " " + BlocksWhichMore()
}

// Ends describes the trains in the last step and in the whole story; how is what was
// done on the way.
func (c Cubes) Ends(m arithmetic.ReadTrains, how string) scene.Telling {
	ends := "What lies there is " + Count(m.Tens, "ten") + " and " + Count(m.Ones, "one") + ": " + g(m.Total) + "."
	return scene.Telling{Shown: Sentences(c.Given(), how, ends), Hidden: c.Asked()}
}

// HowSnapped says how the ones were put together.
func (c Cubes) HowSnapped(m arithmetic.SnapOnes) string {
	how := "Of the second, " + g(m.Over) + " are snapped to the first"
	if m.Ten {
		return how + " to make another train of ten."
	}
	return how + "."
}

// HowTaken says which parts are crossed out.
func (c Cubes) HowTaken(parts []int64) string {
	switch len(parts) {
	case 0:
		return ""
	case 1:
		if parts[0] == 1 {
			return "1 is crossed out."
		}
		return g(parts[0]) + " are crossed out."
	}
	return "Crossed out are " + List(numbers(parts)) + "."
}

// EndsPaired describes two rows.
func (c Cubes) EndsPaired(m arithmetic.ReadPairs) scene.Telling {
	told := scene.Telling{Hidden: c.Asked()}
	told.Shown = c.Given() + " In two rows they make " + Count(m.Pairs, "pair") + ", and none is left over. " + g(m.Total) + " is even."
	if !m.Even {
		told.Shown = c.Given() + " In two rows they make " + Count(m.Pairs, "pair") + ", and 1 is left over. " + g(m.Total) + " is odd."
	}
	return told
}

// Reasons why linking cubes cannot show a problem.
var (
	ErrCubesKind     = errors.New("linking cubes show a number, sums, differences and products to 100, two numbers compared, and even and odd numbers")
	ErrCubesNone     = errors.New("there is nothing to build with cubes")
	ErrCubesNegative = errors.New("there is less than is to be taken away")
	ErrCubesMany     = errors.New("linking cubes are used for numbers to 100")
	ErrCubesLong     = errors.New("two trains side by side have up to 20 cubes each")
	ErrCubesPairs    = errors.New("linking cubes are set in pairs for numbers to 40")
	ErrCubesTrains   = errors.New("linking cubes show up to 12 trains of up to 10, and 100 cubes in all")
)

// CubesMisfit says why a problem cannot be worked with linking cubes.
func CubesMisfit(p arithmetic.Problem, err error) error {
	many := errors.Is(err, arithmetic.ErrCubes)
	switch {
	case errors.Is(err, arithmetic.ErrNoCubes):
		return ErrCubesNone
	case errors.Is(err, arithmetic.ErrNegative):
		return ErrCubesNegative
	case many && p.Kind == arithmetic.Parity:
		return ErrCubesPairs
	case many && p.Kind == arithmetic.Product:
		return ErrCubesTrains
	case many && (p.Kind == arithmetic.Comparison || p.Kind == arithmetic.Claim || p.Story == arithmetic.HowManyMore):
		return ErrCubesLong
	case many:
		return ErrCubesMany
	}
	return ErrCubesKind
}
