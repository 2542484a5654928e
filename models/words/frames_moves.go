package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// FillFrame tells how a ten is made.
func (f TenFrames) FillFrame(m arithmetic.FillFrame) Told {
	role, taken := roleOf(m.Nth), Count(m.Need, Counters)
	t := Told{
		Title: "Make a ten",
		Hands: Say("Take ", In(role, taken), " over to the frame with "+g(m.Large)+": now it is full. ", In(role, g(m.Rest)), " stay in the other frame."),
		Ask:   Say("How many does " + g(m.Large) + " need to make ten?"),
		Desc:  scene.Same(taken + " moved over. One frame is full, with 10, and " + g(m.Rest) + " lie in the other."),
	}
	if m.Rest == 1 {
		t.Hands = Say("Take ", In(role, taken), " over to the frame with "+g(m.Large)+": now it is full. ", In(role, "1"), " stays in the other frame.")
		t.Desc = scene.Same(taken + " moved over. One frame is full, with 10, and 1 lies in the other.")
	}
	return t
}

// SeeDouble tells how a double is seen, and one more beside it.
func (f TenFrames) SeeDouble(m arithmetic.SeeDouble) Told {
	each := g(m.Each) + " and " + g(m.Each)
	t := Told{Title: "See the double", Ask: Say("Do you see the same number twice?"),
		Hands: Say("See ", In(scene.Moved, each), ": the same number twice, a double."),
		Desc:  scene.Same("The counters show a double, " + each + "."),
	}
	if m.Extra > 0 {
		t.Title, t.Ask = "See the double and one more", Say("Which double do you see, and what is more than that?")
		t.Hands = Say("See ", In(scene.Moved, each), ", a double, and ", In(roleOf(m.Nth), "1 more"), ".")
		t.Desc = scene.Same("The counters show a double, " + each + ", and 1 more.")
	}
	return t
}

// AddToDouble tells what a double comes to, and one more.
func (f TenFrames) AddToDouble(m arithmetic.AddToDouble) Told {
	t := Told{Title: "Read the double", Ask: Say("What is double " + g(m.Each) + "?")}
	all := In(scene.Result, g(m.Total))
	var double Phrase
	if m.Over > 0 {
		double = Say("The two top rows are 5 and 5: ten. Under them lie " + g(m.Over) + " and " + g(m.Over) + " more. ")
	}
	if m.Extra > 0 {
		t.Title, t.Ask = "Add one to the double", Say("What is double "+g(m.Each)+", and one more?")
		t.Hands = Say(double, "Double "+g(m.Each)+" is "+g(m.Double)+", and 1 more is ", all, ".")
		return t
	}
	t.Hands = Say(double, "Double "+g(m.Each)+" is ", all, ".")
	return t
}

// Take tells how counters are taken away.
func (f TenFrames) Take(m arithmetic.TakeCounters) Told {
	n := In(scene.Second, g(m.Count))
	t := Told{Title: "Take away " + g(m.Count), Ask: Say("How many are to be taken away?")}
	t.Desc.Shown = "From " + g(m.From) + " counters, " + g(m.Count) + " are taken away. " + stillThere(m.Left)
	t.Desc.Hidden = t.Desc.Shown
	switch {
	case m.Count == 0:
		t.Title, t.Hands = "Take nothing away", Say("Take ", In(scene.Second, "0"), " away: all the counters stay.")
		t.Desc = scene.Same("From " + g(m.From) + " counters, none are taken away.")
	case m.Ten:
		t.Title, t.Hands = "Take away down to ten", Say("Take ", n, " away, until only the full frame is left: ten.")
		t.Ask = Say("How many can you take before only ten are left?")
	case m.Again:
		t.Title, t.Hands = "Take the rest from the ten", Say("That was not all: "+g(m.All)+" are to go. Take ", n, " more from the ten.")
		t.Ask = Say("How many of the " + g(m.All) + " still have to go?")
	default:
		t.Hands = Say("Take ", n, " away, the last ones first.")
	}
	if m.Count == 1 {
		t.Desc = scene.Same("From " + Count(m.From, Counters) + ", 1 is taken away. " + stillThere(m.Left))
	}
	return t
}

func stillThere(n int64) string {
	switch n {
	case 0:
		return "None are left."
	case 1:
		return "1 is left."
	}
	return g(n) + " are left."
}

// Read reads the answer off the frames.
func (f TenFrames) Read(m arithmetic.ReadFrames) Told {
	role := scene.Result
	if f.Kind == arithmetic.Show {
		role = scene.First
	}
	n := In(role, g(m.Total))
	t := Told{Title: "Read the frames", Ask: Say("How many counters are there now?")}
	switch {
	case m.Total == 0:
		t.Hands = Say("The frame is empty: ", n, ".")
	case m.Total == arithmetic.TenFrame:
		t.Hands = Say("The frame is full: ", n, ".")
	case m.Full == 0 && m.Ones > arithmetic.FrameRow:
		t.Hands = Say("A full row is 5, and there are "+g(m.Over)+" more: ", n, ". "+empty(m.Free))
	case m.Full == 0 && m.Ones == 1:
		t.Hands = Say("There is ", n, " counter. "+empty(m.Free))
	case m.Full == 0:
		t.Hands = Say("There are ", n, " counters. "+empty(m.Free))
	case m.Ones == 0:
		t.Hands = Say(capital(Count(m.Full, "full frame"))+" of ten: ", n, ".")
	default:
		t.Hands = Say(capital(Count(m.Full, "full frame"))+" of ten and "+g(m.Ones)+" more: ", n, ".")
	}
	return t
}

// empty says how many cells are free up to ten.
func empty(n int64) string {
	if n == 1 {
		return "1 cell is empty, so it is one less than ten."
	}
	return g(n) + " cells are empty."
}

// Filled says the number that was missing.
func (f TenFrames) Filled(m arithmetic.ReadFilled) Told {
	t := Told{Title: "Read the missing number", Ask: Say("How many were put in?")}
	sum := In(scene.Result, g(m.Sum))
	switch len(m.Parts) {
	case 2:
		t.Hands = Say(g(m.Parts[0])+" and "+g(m.Parts[1])+" were put in. The missing number is ", sum, ".")
	default:
		t.Hands = Say("The missing number is ", sum, ".")
	}
	return t
}

// PairUp tells how counters are set in pairs.
func (f TenFrames) PairUp(m arithmetic.PairUp) Told {
	t := Told{Title: "Set them in pairs", Ask: Say("Does every counter have a partner?")}
	t.Hands = Say("Set the counters two by two, one above the other. There are ", In(scene.Moved, Count(m.Pairs, "pair")), ".")
	if m.Pairs == 1 {
		t.Hands = Say("Set the counters two by two, one above the other. There is ", In(scene.Moved, "1 pair"), ".")
	}
	if m.Pairs == 0 {
		t.Hands = Say("Set the counters two by two. There are too few for a pair.")
	}
	t.Desc = scene.Same(f.Given() + " They stand in pairs now: " + Count(m.Pairs, "pair") + ".")
	return t
}

// ReadPairs says whether the number is even.
func (f TenFrames) ReadPairs(m arithmetic.ReadPairs) Told {
	t := Told{Title: "Even or odd", Ask: Say("Is one left without a partner?")}
	n := g(m.Total)
	switch {
	case m.Total == 0:
		t.Hands = Say("There are none, so none is without a partner: 0 is ", In(scene.Result, "even"), ".")
	case m.Even:
		t.Hands = Say("Every counter has a partner, so "+n+" is ", In(scene.Result, "even"), ".")
	default:
		t.Hands = Say("One counter has no partner, so "+n+" is ", In(scene.Result, "odd"), ".")
	}
	return t
}
