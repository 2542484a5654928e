package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LinkingCube is a cube that snaps to others.
const LinkingCube = "linking cube"

// CubesQuestion is what a picture asks in place of the number that it shows.
const CubesQuestion = "Which number is this?"

// Cubes is a lesson with trains of linking cubes.
type Cubes struct{ arithmetic.Problem }

// cubes is "8 cubes".
func cubes(n int64) string { return Count(n, "cube") }

// trains is "3 trains of ten and 4 cubes".
func trains(tens, ones int64) string {
	switch {
	case tens == 0:
		return cubes(ones)
	case ones == 0:
		return Count(tens, "train") + " of ten"
	}
	return Count(tens, "train") + " of ten and " + cubes(ones)
}

// Build tells how the trains of a number are built.
func (c Cubes) Build(m arithmetic.BuildTrains) Told {
	n := In(scene.First, cubes(m.Count))
	t := Told{Title: "Build trains of ten", Ask: Say("How many trains of ten can you build?"), Desc: scene.Same(thereAre(m.Trains, "train") + " of ten: " + cubes(m.Now) + ".")}
	switch {
	case m.Ones:
		t.Title, t.Ask = "Build the ones", Say("How many cubes are there besides the trains of ten?")
		t.Hands = Say("Snap ", n, " together for the ones.")
		if m.Count == 1 {
			t.Hands = Say("Put ", n, " beside them for the ones.")
		}
		t.Desc = scene.Same("With a shorter train of " + g(m.Count) + " there are " + cubes(m.Now) + ".")
	case m.Trains == 1:
		t.Title, t.Hands = "Build a train of ten", Say("Snap ", n, " together to make a train of ten.")
	default:
		t.Hands = Say("Build "+g(m.Trains)+" trains of ten: ", n, ".")
	}
	t.Desc.Hidden = c.Asked()
	return t
}

// Lay tells how the cubes of a number are laid out. One long train is laid where two
// are compared.
func (c Cubes) Lay(m arithmetic.LayTrains, long bool) Told {
	n := In(roleOf(m.Nth), g(m.Number))
	t := Told{Title: "Build " + g(m.Number), Ask: Say("How many trains of ten are in " + g(m.Number) + "?")}
	t.Desc = scene.Same("For " + g(m.Number) + ": " + trains(m.Tens, m.Ones) + ".")
	where := ""
	if m.Nth == 1 {
		where = " beside them"
		t.Desc = scene.Same("Beside them, for " + g(m.Number) + ": " + trains(m.Tens, m.Ones) + ".")
	}
	switch {
	case m.Number == 0:
		t.Hands, t.Ask = Say("Build nothing for ", n, "."), Say("How many cubes do you need for 0?")
		t.Desc = scene.Same("For 0 there are no cubes.")
		if m.Nth == 1 {
			t.Desc = scene.Same("Beside them there are no cubes, for 0.")
		}
	case long && m.Nth == 1:
		t.Hands = Say("Build a train of ", n, " in another color and lay it under the first, from the same end.")
		t.Ask = Say("Where must the second train begin, so that we can compare?")
		t.Desc = scene.Same("Under the first is a train of " + g(m.Number) + ".")
	case long:
		t.Hands, t.Ask = Say("Build a train of ", n, "."), Say("How many cubes do you need?")
		t.Desc = scene.Same("A train of " + cubes(m.Number) + ".")
	case m.Tens == 0 && m.Number == 1:
		t.Hands = Say("Lay out 1 cube"+where+" for ", n, ".")
	case m.Tens == 0:
		t.Hands = Say("Build a train of ", n, where+".")
	default:
		t.Hands = Say("Build ", n, where+": "+trains(m.Tens, m.Ones)+".")
	}
	return t
}

// Snap tells how single cubes are put together.
func (c Cubes) Snap(m arithmetic.SnapOnes) Told {
	over := In(scene.Second, g(m.Over))
	t := Told{Title: "Snap the ones together", Ask: Say("Do the ones make a train of ten?")}
	end := ""
	switch {
	case m.Ten && m.Rest == 0:
		end = "That makes a train of ten."
	case m.Ten:
		end = "That makes a train of ten. " + g(m.Rest) + " stay where they are."
		if m.Rest == 1 {
			end = "That makes a train of ten. 1 stays where it is."
		}
	default:
		end = "That makes " + g(m.Sum) + ", not yet a train of ten."
	}
	t.Hands = Say("Snap ", over, " of the second number's single cubes to the "+g(m.First)+" of the first. "+end)
	if m.Over == m.Second {
		t.Hands = Say("Snap the ", over, " single cubes of the second number to the "+g(m.First)+" of the first. "+end)
	}
	if m.Over == m.Second && m.Over == 1 {
		t.Hands = Say("Snap the ", over, " single cube of the second number to the "+g(m.First)+" of the first. "+end)
	}
	t.Desc.Hidden = c.Asked()
	t.Desc.Shown = "The ones are snapped together: " + g(m.First) + " and " + g(m.Over) + " are " + g(m.Sum) + ". The first number has become " + g(m.More) + " and the second " + g(m.Less) + "."
	return t
}

// TakeTrains tells how whole trains are taken away.
func (c Cubes) TakeTrains(m arithmetic.TakeTrains) Told {
	t := Told{Title: "Take away the tens", Ask: Say("How many trains of ten are to be taken away?")}
	t.Hands = Say("Take ", In(scene.Second, Count(m.Count, "train")), " of ten away: "+g(m.Worth)+" cubes.")
	t.Desc = scene.Same("From " + cubes(m.From) + ", " + g(m.Worth) + " are taken away in trains of ten. " + stillThere(m.Left))
	return t
}

// TakeCubes tells how single cubes are taken away.
func (c Cubes) TakeCubes(m arithmetic.TakeCubes) Told {
	n := In(scene.Second, g(m.Count))
	t := Told{Title: "Take away the ones", Ask: Say("How many single cubes are to be taken away?")}
	are := " are"
	if m.Count == 1 {
		are = " is"
	}
	taken := "From " + cubes(m.From) + ", " + g(m.Count) + are + " taken away."
	t.Desc = scene.Telling{Shown: taken + " " + stillThere(m.Left), Hidden: taken} // the ones come last: what is left is the answer
	switch {
	case m.Count == 0:
		t.Title, t.Hands = "Take nothing away", Say("Take ", n, " away: all the cubes stay.")
		t.Desc = scene.Same("None are taken away.")
	case m.Breaks:
		t.Title, t.Ask = "Break a train", Say("There are no single cubes left to take. What can you do?")
		t.Hands = Say("Break ", n, " off a train of ten and take them away. It has "+g(m.Stay)+" left.")
		if m.Count == 1 {
			t.Hands = Say("Break ", n, " off a train of ten and take it away. The train has "+g(m.Stay)+" left.")
		}
	case m.Stay == 0:
		t.Hands = Say("Take the ", n, " single cubes away.")
		if m.Count == 1 {
			t.Hands = Say("Take the ", n, " single cube away.")
		}
	default:
		t.Hands = Say("Take ", n, " of the "+g(m.Train)+" single cubes away.")
	}
	return t
}

// Read reads the number that lies there.
func (c Cubes) Read(m arithmetic.ReadTrains) Told {
	role := scene.Result
	if c.Kind == arithmetic.Show {
		role = scene.First
	}
	n := In(role, g(m.Total))
	t := Told{Title: "Read the number", Ask: Say("How many tens are there, and how many ones?")}
	switch {
	case m.Total == 0:
		t.Hands, t.Ask = Say("No cubes are left: ", n, "."), Say("How many cubes are left?")
	case m.Tens == 0:
		t.Hands, t.Ask = Say("There are ", Count(m.Ones, "one"), ": ", n, "."), Say("How many cubes are there?")
		if m.Ones == 1 {
			t.Hands = Say("There is 1 one: ", n, ".")
		}
	case m.Tens == 1 && m.Ones == 0:
		t.Hands = Say("There is 1 ten and no ones: ", n, ".")
	case m.Tens == 1:
		t.Hands = Say("There is 1 ten and "+Count(m.Ones, "one")+": ", n, ".")
	default:
		t.Hands = Say("There are "+Count(m.Tens, "ten")+" and "+Count(m.Ones, "one")+": ", n, ".")
	}
	return t
}

// Pair tells how cubes are set in two rows.
func (c Cubes) Pair(m arithmetic.PairUp) Told {
	t := Told{Title: "Make two rows", Ask: Say("Does every cube get a partner?")}
	t.Hands = Say("Lay the cubes in two rows, so that every cube has a partner under it. There are ", In(scene.Moved, Count(m.Pairs, "pair")), ".")
	switch m.Pairs {
	case 0:
		t.Hands = Say("Lay the cube down. There is no partner for it.")
	case 1:
		t.Hands = Say("Lay the cubes in two rows, so that every cube has a partner under it. There is ", In(scene.Moved, "1 pair"), ".")
	}
	t.Desc = scene.Same(c.Given() + " In two rows they make " + Count(m.Pairs, "pair") + ".")
	return t
}

// ReadPairs says whether the number is even.
func (c Cubes) ReadPairs(m arithmetic.ReadPairs) Told {
	t := Told{Title: "Even or odd", Ask: Say("Is one cube left without a partner?")}
	t.Hands = Say("One cube has no partner, so "+g(m.Total)+" is ", In(scene.Result, "odd"), ".")
	if m.Even {
		t.Hands = Say("Every cube has a partner, so "+g(m.Total)+" is ", In(scene.Result, "even"), ".")
	}
	return t
}

// Ready has the cubes of a product on the table.
func (c Cubes) Ready(m arithmetic.SetGroups) Told {
	return Told{
		Title: "See what is asked",
		Hands: Say("There are to be "+Count(m.Groups, "train")+". ", "Each is to have ", In(scene.First, cubes(m.Each)), "."),
		Ask:   Say("How many trains are there to be? How many cubes in each?"),
		Desc:  scene.Same(c.Given() + " None is built yet."),
	}
}

// Make builds trains of one size.
func (c Cubes) Make(m arithmetic.MakeGroups) Told {
	last := m.Totals[len(m.Totals)-1]
	t := Told{Title: "Build another train", Ask: Say("How many cubes are there now?")}
	t.Hands = Say("Build another train of "+g(m.Each)+". That makes ", In(scene.Moved, g(last)), ".")
	switch {
	case m.More > 1 && m.Before == 0:
		t.Title, t.Hands = "Build "+g(m.More)+" trains", Say("Build "+g(m.More)+" trains of "+g(m.Each)+": ", In(scene.Moved, List(numbers(m.Totals))), ".")
	case m.More > 1:
		t.Title, t.Hands = "Build "+g(m.More)+" more trains", Say("Build "+g(m.More)+" more trains of "+g(m.Each)+": ", In(scene.Moved, List(numbers(m.Totals))), ".")
	case m.Before == 0:
		t.Title, t.Hands = "Build a train", Say("Build a train of ", In(scene.Moved, cubes(m.Each)), ".")
	}
	t.Desc.Hidden = c.Asked()
	t.Desc.Shown = thereAre(m.Groups, "train") + " of " + g(m.Each) + ": " + cubes(last) + " so far."
	return t
}

// ReadMade counts what was built.
func (c Cubes) ReadMade(m arithmetic.ReadGroups) Told {
	all := In(scene.Result, g(m.Total))
	t := Told{Title: "Count them all", Ask: Say("How many cubes are there in all?")}
	t.Hands = Say(capital(Count(m.Groups, "train"))+" of "+g(m.Each)+" are ", all, " cubes.")
	if m.Groups == 1 {
		t.Hands = Say("One train of "+g(m.Each)+" has ", all, ".")
	}
	t.Desc = scene.Telling{Shown: c.Given() + " In all there are " + cubes(m.Total) + ".", Hidden: c.Asked()}
	return t
}
