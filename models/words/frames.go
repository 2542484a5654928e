package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// Frame is the sheet that counters lie on: two rows of five cells.
const Frame = "ten frame"

// TwoColored is a counter with a color on each side.
const TwoColored = "two-colored counter"

// FramesQuestion is what a picture asks in place of the number that it shows.
const FramesQuestion = "Which number is this?"

// TenFrames is a lesson with counters in ten frames.
type TenFrames struct {
	arithmetic.Problem
	Total int64 // what all the counters come to, or what they come to in the end
}

// Put heads and tells how the counters of a number are put in.
func (f TenFrames) Put(m arithmetic.PutCounters) Told {
	var t Told
	switch f.Kind {
	case arithmetic.Show:
		t = f.putShown(m)
	case arithmetic.Missing:
		t = f.putMissing(m)
	case arithmetic.Expression:
		t = f.putChain(m)
	case arithmetic.Addition:
		t = f.putAdded(m)
	default:
		t = f.putAll(m)
	}
	if t.Ask == nil {
		t.Ask = Say("Where do the next counters go?")
		if m.Before == 0 {
			t.Ask = Say("How many cells will be full?")
		}
	}
	return t
}

// counters is "8 counters" in the role of their number.
func counters(m arithmetic.PutCounters) Span { return In(roleOf(m.Nth), Count(m.Count, Counters)) }

// roleOf is the role of the nth number of a problem, as the pictures have it.
func roleOf(nth int) scene.Role {
	switch {
	case nth == arithmetic.Asked:
		return scene.Result
	case nth%2 == 0:
		return scene.First
	}
	return scene.Second
}

// lie describes how many lie in the frames.
func lie(n int64) string {
	switch {
	case n == 0:
		return "The frame is empty."
	case n == 1:
		return "1 counter lies in a ten frame."
	case n <= arithmetic.TenFrame:
		return g(n) + " counters lie in a ten frame."
	}
	return g(n) + " counters lie in ten frames."
}

func (f TenFrames) putShown(m arithmetic.PutCounters) Told {
	t := Told{Ask: Say("How many are there now?"), Desc: scene.Same(lie(m.Now))}
	switch {
	case m.Count == 0:
		t.Title, t.Hands = "Leave the frame empty", Say("Put ", In(scene.First, "no counters"), " in the frame. Every cell stays empty.")
		t.Ask = Say("How many counters are in an empty frame?")
	case m.Before == 0 && m.Count < arithmetic.FrameRow:
		t.Title, t.Hands = "Put in "+g(m.Count), Say("Put ", counters(m), " in the top row, one in each cell.")
	case m.Before == 0 && m.Count == arithmetic.FrameRow:
		t.Title, t.Hands = "Fill the top row", Say("Fill the top row: ", counters(m), ", one in each cell.")
	case m.Before == 0 && m.Count == arithmetic.TenFrame:
		t.Title, t.Hands = "Fill a frame", Say("Fill a ten frame: ", counters(m), ", one in each cell.")
	case m.Before == 0:
		t.Title, t.Hands = "Fill the frames", Say("Fill one ten frame after another, as long as there are ten: ", counters(m), ".")
	case m.Before == arithmetic.FrameRow:
		t.Title, t.Hands = "Go on in the bottom row", Say("Put ", In(scene.First, g(m.Count)+" more"), " in the bottom row, from the left.")
	default:
		t.Title, t.Hands = "Put the rest in another frame", Say("Put ", In(scene.First, g(m.Count)+" more"), " in another frame, the top row first.")
	}
	return t
}

func (f TenFrames) putAdded(m arithmetic.PutCounters) Told {
	t := Told{Title: "Put in " + g(m.Count), Desc: scene.Same(lie(m.Now))}
	switch {
	case m.Count == 0 && m.Before == 0 && m.Nth == 0:
		t.Title, t.Hands = "Begin with 0", Say("Put in ", In(scene.First, "no counters"), " for 0.")
	case m.Count == 0:
		t.Title, t.Hands = "Put in 0 more", Say("Put in ", In(roleOf(m.Nth), "no counters"), " for 0.")
		t.Desc = scene.Same(lie(m.Now) + " No more are put in.")
	case m.Larger:
		t.Title, t.Hands = "Begin with "+g(m.Count), Say(In(roleOf(m.Nth), g(m.Count)), " is the larger number, so begin with it. Put ", counters(m), " in the first frame.")
		t.Ask = Say("Which number is larger?")
		if m.Count > arithmetic.TenFrame {
			t.Hands = Say(In(roleOf(m.Nth), g(m.Count)), " is the larger number, so begin with it. Put ", counters(m), " in: fill one frame, then go on in the next.")
		}
	case m.Row && m.Before == 0:
		t.Hands = Say("Put ", counters(m), " in the top row.")
	case m.Row:
		t.Title, t.Hands = "Put in "+g(m.Count)+" more", Say("Put ", counters(m), " of another color in the bottom row, under the first ones.")
		t.Ask = Say("Where do the other counters go, so that we can see both numbers?")
		t.Desc = scene.Same(g(m.Before) + " counters lie in the top row of a ten frame and " + g(m.Count) + " in the bottom row.")
	case m.Apart:
		t.Title, t.Hands = "Put "+g(m.Count)+" in another frame", Say("Put ", counters(m), " of another color in the other frame.")
		t.Ask = Say("How many cells stay empty in each frame?")
		t.Desc = scene.Same(g(m.Before) + " counters lie in one ten frame and " + g(m.Count) + " in another.")
	case m.Before == 0 && m.Count > arithmetic.TenFrame:
		t.Hands = Say("Put in ", counters(m), ": fill one frame, then go on in the next.")
	case m.Before == 0:
		t.Hands = Say("Put ", counters(m), " in the frame, the top row first.")
	default:
		t.Title, t.Hands = "Put in "+g(m.Count)+" more", Say("Put in ", In(roleOf(m.Nth), g(m.Count)+" more"), " of another color, in the cells that come next.")
		t.Ask = Say("How many cells are still empty?")
		t.Desc = scene.Same(g(m.Before) + " counters lie in the frames, and " + g(m.Count) + " more come after them.")
	}
	return t
}

func (f TenFrames) putChain(m arithmetic.PutCounters) Told {
	t := Told{Title: "Put in " + g(m.Count), Desc: scene.Same(lie(m.Now))}
	rest := m.Count < m.Number
	switch {
	case m.Count == 0:
		t.Title, t.Hands = "Put in 0", Say("Put in ", In(roleOf(m.Nth), "no counters"), " for 0.")
		t.Desc = scene.Same(Sentences(lie(m.Now), "None are put in for number "+g(int64(m.Nth+1))+", which is 0."))
	case m.Ten > 0:
		t.Title = "Look for a ten"
		t.Hands = Say(In(roleOf(m.Nth), g(m.Count)), " and "+g(m.Ten)+" make ten, so begin with them. Put ", counters(m), " in a frame.")
		t.Ask = Say("Which two of the numbers make ten?")
	case m.Fills:
		t.Title = "Fill the frame"
		t.Hands = Say("Next come "+g(m.Number)+". Put in ", In(roleOf(m.Nth), g(m.Count)), " of them: the frame is full.")
		t.Ask = Say("How many cells are still empty?")
	case rest:
		t.Title = "Put the rest in another frame"
		t.Hands = Say("Put the other ", In(roleOf(m.Nth), g(m.Count)), " in another frame.")
		t.Ask = Say("How many of the " + g(m.Number) + " are left?")
	case m.Before == 0 && m.Count > arithmetic.TenFrame:
		t.Hands = Say("Put in ", counters(m), ": fill one frame, then go on in the next.")
	case m.Before == 0:
		t.Hands = Say("Put ", counters(m), " in a frame.")
	case m.Now == arithmetic.TenFrame:
		t.Title, t.Hands = "Put in "+g(m.Count)+" more", Say("Put in ", In(roleOf(m.Nth), g(m.Count)+" more"), ". The frame is full: ten.")
	case m.Before == arithmetic.TenFrame:
		t.Title, t.Hands = "Put in "+g(m.Count)+" more", Say("Put ", In(roleOf(m.Nth), g(m.Count)+" more"), " in another frame.")
	default:
		t.Title, t.Hands = "Put in "+g(m.Count)+" more", Say("Put in ", In(roleOf(m.Nth), g(m.Count)+" more"), ", in the cells that come next.")
	}
	return t
}

func (f TenFrames) putMissing(m arithmetic.PutCounters) Told {
	t := Told{Desc: scene.Same(lie(m.Now) + " There are to be " + g(f.Total) + ".")}
	t.Ask = Say("How many more are needed to get to " + g(f.Total) + "?")
	more := In(scene.Result, g(m.Count)+" more")
	switch {
	case m.Nth != arithmetic.Asked && m.Count == 0:
		t.Title, t.Hands = "Begin with 0", Say("The frame is empty: ", In(roleOf(m.Nth), "0"), ". There are to be "+g(f.Total)+".")
	case m.Nth != arithmetic.Asked && m.Count > arithmetic.TenFrame:
		t.Title, t.Hands = "Begin with "+g(m.Count), Say("Put in ", counters(m), ": fill one frame, then go on in the next. There are to be "+g(f.Total)+".")
	case m.Nth != arithmetic.Asked:
		t.Title, t.Hands = "Begin with "+g(m.Count), Say("Put ", counters(m), " in a frame. There are to be "+g(f.Total)+".")
	case m.Count == 0:
		t.Title, t.Hands = "Put in none", Say("There are "+g(f.Total)+" already. Put in ", In(scene.Result, "none"), ".")
		t.Desc = scene.Same(lie(m.Now) + " That is as many as there are to be.")
	case m.Fills:
		t.Title, t.Hands = "Fill the frame", Say("Fill the frame with another color. That takes ", more, ": now there are ten.")
		t.Ask = Say("How many cells are still empty?")
	default:
		t.Title, t.Hands = "Go on to "+g(m.Now), Say("Put in more until there are "+g(m.Now)+". That takes ", more, ".")
	}
	return t
}

// putAll lays out a number from which something is taken, or that is set in pairs.
func (f TenFrames) putAll(m arithmetic.PutCounters) Told {
	t := Told{Title: "Put in " + g(m.Count), Desc: scene.Same(f.Given())}
	switch {
	case m.Count == 0:
		t.Title, t.Hands = "Leave the frame empty", Say("Put ", In(scene.First, "no counters"), " in the frame for 0.")
	case m.Count > arithmetic.TenFrame:
		t.Hands = Say("Put in ", counters(m), ": fill one frame, then go on in the next.")
	default:
		t.Hands = Say("Put ", counters(m), " in the frame, the top row first.")
	}
	return t
}
