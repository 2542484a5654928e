package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// FramesWays is a lesson about the ways to make a number, with counters of two colors
// on their two sides: each way has a ten frame of its own.
type FramesWays struct {
	N     int64
	Pairs [][2]int64
}

func (f FramesWays) asked() string {
	return "The number is " + g(f.N) + ", in a ten frame with counters of two colors. Which two parts make it?"
}

// Lay lays out the number.
func (f FramesWays) Lay() Told {
	t := Told{
		Title: "Put in " + g(f.N),
		Hands: Say("Take counters with two colors. Put " + Count(f.N, Counters) + " in a ten frame, all with one color up."),
		Ask:   Say("How can two colors make " + g(f.N) + "?"),
		Desc:  scene.Same(f.asked()),
	}
	if f.N == 0 {
		t.Hands = Say("Leave the ten frame empty: there is nothing to put in.")
	}
	return t
}

// First has one color only.
func (f FramesWays) First(m arithmetic.FirstWay) Told {
	return Told{
		Title: "Say the first way",
		Hands: sentence("None of the first color and all of the second: ", waySaid(m.Pair), " = "+g(f.N)),
		Ask:   Say("How many are there of each color?"),
		Desc:  scene.Same("A frame of " + g(f.N) + " with one color: " + wayText(m.Pair) + "."),
	}
}

// Next turns one counter over.
func (f FramesWays) Next(m arithmetic.NextWay) Told {
	return Told{
		Title: "Turn one over",
		Hands: sentence("Turn one counter over: ", waySaid(m.Pair), " = "+g(f.N)),
		Ask:   Say("One color has one more. What happens to the other?"),
		Desc:  scene.Telling{Shown: "A second frame of " + g(f.N) + ", with one counter turned over: " + wayText(m.Pair) + ".", Hidden: "One counter is turned over. What are the two parts now?"},
	}
}

// Others turns one more at a time.
func (f FramesWays) Others(m arithmetic.OtherWays) Told {
	return Told{
		Title: "Go on, one at a time",
		Hands: Say("Turn over one more at a time and say each way, until the two colors would only change places: " + waysList(m.Pairs) + "."),
		Ask:   Say("How do you know that you have found them all?"),
		Desc:  scene.Telling{Shown: "A frame for every way: " + waysList(f.Pairs) + ".", Hidden: "Go on, one counter at a time. Which other pairs are there?"},
	}
}

// Turn sees the pairs from the other side.
func (f FramesWays) Turn(m arithmetic.TurnWays) Told {
	last := f.Pairs[len(f.Pairs)-1]
	return Told{
		Title: "Change the colors",
		Hands: Say("Think of each frame with the colors changed: the parts change places. There "+areIs(m.Pairs)+" ", In(scene.Result, Count(m.Pairs, "pair")), ", and "+Count(m.All, "way")+" when the order counts."),
		Ask:   Say("What do " + g(last[0]) + " and " + g(last[1]) + " become when the colors change?"),
		Desc:  f.Whole(),
	}
}

// Whole describes all ways.
func (f FramesWays) Whole() scene.Telling {
	frames := "ten frames, one for each way"
	if len(f.Pairs) == 1 {
		frames = "ten frame, for the only way"
	}
	return scene.Telling{
		Shown:  "The number is " + g(f.N) + ". " + capital(Name(int64(len(f.Pairs)))) + " " + frames + " to make it from two parts: " + waysList(f.Pairs) + ".",
		Hidden: f.asked(),
	}
}
