package scene

import "testing"

// lines are equations in several roles, with short and long numbers.
var lines = [][]Run{
	{{Text: "1,000", Role: First}, {Text: " − "}, {Text: "1", Role: Second}, {Text: " = "}, {Text: "999", Role: Result}},
	{{Text: "9,999", Role: First}, {Text: " + "}, {Text: "1", Role: Second}, {Text: " = "}, {Text: "10,000", Role: Result}},
	{{Text: "1", Role: First}, {Num: "1", Den: "2", Role: First}, {Text: " + "}, {Num: "13", Den: "100", Role: Second}, {Text: " more"}},
	{{Text: "8", Role: First}, {Text: ", "}, {Text: "16", Role: Moved}, {Text: " "}, {Text: "24"}},
}

func TestRunsDoNotTouchInTheWidestFace(t *testing.T) {
	for _, runs := range lines {
		text := Text{X: 400, Y: 100, Size: Large, Bold: true, Runs: runs}
		middles, widths := text.middles()
		right := 0
		for i, w := range widths {
			if w > 0 && middles[i]-w/2 < right {
				t.Errorf("run %d of %v begins at %d, before %d", i, runs, middles[i]-w/2, right)
			}
			right = max(right, middles[i]+w/2)
		}
		if right > text.Width() {
			t.Errorf("%v reaches to %d and is said to be %d wide", runs, right, text.Width())
		}
	}
}

// In Liberation Sans a digit and a comma are 0.556 and 0.278 of the size wide, a
// sign 0.584 (read from the font file). The gaps of an equation of numbers of up
// to four digits are alike to a tenth of the size.
func TestTheGapsOfAnEquationAreEven(t *testing.T) {
	const digit, comma, sign = 556, 278, 584
	text := Text{X: 400, Y: 100, Size: 1000, Bold: true, Runs: lines[0]}
	middles, _ := text.middles()
	slim := []int{4*digit + comma, sign, digit, sign, 3 * digit}
	for i := 1; i < len(slim); i++ {
		gap := middles[i] - slim[i]/2 - (middles[i-1] + slim[i-1]/2)
		if gap < 480 || gap > 620 {
			t.Errorf("the gap before run %d is %d thousandths", i, gap)
		}
	}
}
