package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Given says what is known, as every picture of the problem shows it.
func (f TenFrames) Given() string {
	switch f.Kind {
	case arithmetic.Subtraction:
		a, b := f.pair()
		if b == 0 {
			return g(a) + " counters in frames, and 0 are to be taken away."
		}
		return g(a) + " counters in frames, and " + g(b) + " are to be taken away."
	case arithmetic.Addition:
		a, b := f.pair()
		return g(a) + " counters and " + g(b) + " more in frames."
	case arithmetic.Parity:
		return g(f.Total) + " counters in frames."
	case arithmetic.Missing:
		return "The counters in frames are to be " + g(f.Total) + ": " + f.String() + "."
	case arithmetic.Expression:
		return "Counters in frames for " + f.Left.String() + "."
	}
	return lie(f.Total)
}

func (f TenFrames) pair() (a, b int64) {
	first, second, _ := f.Operands()
	a, _ = first.Int64()
	b, _ = second.Int64()
	return a, b
}

// Asked describes a picture while its answer is hidden.
func (f TenFrames) Asked() string {
	switch f.Kind {
	case arithmetic.Show:
		return f.shown() + " " + FramesQuestion
	case arithmetic.Parity:
		return f.Given() + " Can they all be set in pairs?"
	case arithmetic.Subtraction:
		return f.Given() + " How many will be there then?"
	case arithmetic.Missing:
		return f.Given() + " Which number is missing?"
	}
	return f.Given() + " How many are there together?"
}

// shown says how full the frames are, without the number.
func (f TenFrames) shown() string { return "Counters in frames." }

// Frames describes what the frames hold in the end.
func (f TenFrames) holds(m arithmetic.ReadFrames) string {
	switch {
	case m.Total == 0:
		return "No cell is full: 0."
	case m.Full == 0:
		return "One frame, with " + Count(m.Ones, "full cell") + " and " + g(m.Free) + " empty: " + g(m.Total) + "."
	case m.Ones == 0:
		return capital(Count(m.Full, "full frame")) + ", " + Count(m.Full, "ten") + ": " + g(m.Total) + "."
	}
	return capital(Count(m.Full, "full frame")) + " and " + g(m.Ones) + " more, " + Count(m.Full, "ten") + " and " + Count(m.Ones, "one") + ": " + g(m.Total) + "."
}

// Ends describes the frames in the last step and in the whole story; how is what was
// done on the way.
func (f TenFrames) Ends(m arithmetic.ReadFrames, how string) scene.Telling {
	shown := f.holds(m)
	switch f.Kind {
	case arithmetic.Show:
		shown = "Counters in frames. " + shown
	default:
		shown = Sentences(f.Given(), how, shown)
	}
	return scene.Telling{Shown: shown, Hidden: f.Asked()}
}

// EndsFilled describes a problem with its missing number.
func (f TenFrames) EndsFilled(m arithmetic.ReadFilled, how string) scene.Telling {
	return scene.Telling{Shown: Sentences(f.Given(), how, "The missing number is "+g(m.Sum)+"."), Hidden: f.Asked()}
}

// EndsPaired describes pairs.
func (f TenFrames) EndsPaired(m arithmetic.ReadPairs) scene.Telling {
	told := scene.Telling{Hidden: f.Asked()}
	told.Shown = f.Given() + " " + capital(Count(m.Pairs, "pair")) + ", and none left over. " + g(m.Total) + " is even."
	if !m.Even {
		told.Shown = f.Given() + " " + capital(Count(m.Pairs, "pair")) + ", and 1 left over. " + g(m.Total) + " is odd."
	}
	return told
}

// HowFilled says how a ten was made.
func (f TenFrames) HowFilled(m arithmetic.FillFrame) string {
	return "To make ten, " + g(m.Need) + " move over to the " + g(m.Large) + ", and " + g(m.Rest) + " stay."
}

// EndsDoubled describes a double, and one more.
func (f TenFrames) EndsDoubled(m arithmetic.AddToDouble) scene.Telling {
	told := scene.Telling{Shown: f.Given() + " Double " + g(m.Each) + " is " + g(m.Double), Hidden: f.Asked()}
	if m.Extra > 0 {
		told.Shown += ", and 1 more is " + g(m.Total)
	}
	told.Shown += "."
	return told
}

// HowTaken says how many are taken away in each part.
func (f TenFrames) HowTaken(parts []int64) string {
	if len(parts) < 2 {
		return "They are crossed out."
	}
	return "To get to ten, " + g(parts[0]) + " are crossed out, and then " + g(parts[1]) + " more."
}

// HowFilledUp says how many are put in, in each part.
func (f TenFrames) HowFilledUp(parts []int64) string {
	if len(parts) < 2 {
		return ""
	}
	return "To get to ten, " + g(parts[0]) + " are put in, and then " + g(parts[1]) + " more."
}

// FramesPairs names the pairs in a frame, and one that is alone.
func FramesPairs(pairs, alone int64) string {
	text := g(pairs) + " " + plural("pair", pairs)
	if alone > 0 {
		text += ", 1 left over"
	}
	return text
}

// Reasons why ten frames cannot show a problem.
var (
	ErrFramesKind     = errors.New("ten frames show a number, sums and differences to 20, and even and odd numbers")
	ErrFramesWhole    = errors.New("ten frames show whole numbers")
	ErrFramesMany     = errors.New("ten frames are used for sums and differences to 20")
	ErrFramesLarge    = errors.New("ten frames show numbers to 40")
	ErrFramesWays     = errors.New("ten frames show the ways to make numbers to 10")
	ErrFramesNegative = errors.New("there is less than is to be taken away")
	ErrFramesMissing  = errors.New("the missing number would be less than 0")
)

// FramesMisfit says why a problem cannot be worked in ten frames.
func FramesMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrFrames) && p.Kind == arithmetic.WaysToMake:
		return ErrFramesWays
	case errors.Is(err, arithmetic.ErrFrames) && (p.Kind == arithmetic.Show || p.Kind == arithmetic.Parity):
		return ErrFramesLarge
	case errors.Is(err, arithmetic.ErrFrames):
		return ErrFramesMany
	case errors.Is(err, arithmetic.ErrNegative) && p.Kind == arithmetic.Missing:
		return ErrFramesMissing
	case errors.Is(err, arithmetic.ErrNegative):
		return ErrFramesNegative
	case p.Kind == arithmetic.Expression || p.Kind == arithmetic.Missing:
		return ErrFramesKind
	}
	return ErrFramesWhole
}
