package scene

import "strings"

// How far apart the runs of a line stand. The characters of common faces differ
// in width: 1,000 is a third wider in DejaVu Sans than in Liberation Sans. Were
// every run given the room of the widest face, the gaps beside a long number
// would be larger than those beside a short one. So the gaps are even in the
// narrow face, and where the wide face would touch they grow.
//
//	  narrow face     wide face
//	1,000 − 1 = 999   1,000− 1 = 999

// Gaps between runs, in hundredths of the size.
const (
	spaceNarrow = 50 // for a space, between the characters of the narrow face
	spaceWide   = 12 // and what is left of it in the wide face, at least
	tightNarrow = 10 // without a space: between the wholes and the fraction of a mixed number
)

// middles are the places of the middles of the runs, from the left edge of the
// line on, and the room of each in the wide face. Spaces at the ends of a run are
// gaps, not part of its room.
func (t Text) middles() (middles, widths []int) {
	at, before, last := 0, 0, 0 // the last middle, and the two widths there
	spaced, started := false, false
	for _, r := range t.Runs {
		text := strings.Trim(r.Text, " ")
		if text == "" && r.Den == "" {
			spaced = spaced || r.Text != ""
			middles, widths = append(middles, at), append(widths, 0)
			continue
		}
		wide, slim := t.runWidths(r, text)
		spaced = spaced || strings.HasPrefix(r.Text, " ")
		if !started {
			at, started = (wide+1)/2, true
		} else {
			even, least := tightNarrow, 0
			if spaced {
				even, least = spaceNarrow, spaceWide
			}
			at += max((before+slim+1)/2+even*t.Size/100, (last+wide+1)/2+least*t.Size/100+1)
		}
		middles, widths = append(middles, at), append(widths, wide)
		before, last, spaced = slim, wide, strings.HasSuffix(r.Text, " ")
	}
	return middles, widths
}

// runWidths are the room of a run in the widest face and in the narrow one. The
// bar of a fraction is as wide in every face.
func (t Text) runWidths(r Run, text string) (wide, slim int) {
	if r.Den == "" {
		return Advance(text, t.Size, t.Bold), narrow(text, t.Size)
	}
	wide = max(Advance(r.Num, t.Size, t.Bold), Advance(r.Den, t.Size, t.Bold)) + 2*barReach*t.Size/100
	return wide, wide
}

// narrow is how wide a text is in Liberation Sans, as good as: numerals and signs
// exactly (read from the font file), other characters a little less than in the
// widest face.
func narrow(text string, size int) int {
	sum := 0
	for _, r := range text {
		switch {
		case '0' <= r && r <= '9' || strings.ContainsRune("?$¢£", r):
			sum += 556
		case strings.ContainsRune("+−×÷=<>≠≈≤≥", r):
			sum += 584
		case strings.ContainsRune(",. ", r):
			sum += 278
		default:
			sum += int(advances[r][0]) * 9 / 10
		}
	}
	return sum * size / 1000
}
