package golden

import (
	"strings"
	"testing"
	"time"

	"modeler/arithmetic"
	"modeler/models"
	"modeler/svg"
)

// A picture's bytes, and the time to tell and draw it, grow with the number of
// digits that it shows, not with the size of the number. The table is printed by
//
//	go test ./golden -run Growth -v
//
// and the time in it is this machine's; only bytes are held to a bound.
func TestGrowth(t *testing.T) {
	for _, row := range [][]string{
		{"9", "99", "999", "9,999", "99,999", "999,999", "9,999,999"},
		{"5 + 9", "55 + 99", "555 + 999", "5,555 + 9,999", "55,555 + 99,999", "555,555 + 999,999"},
		{"9 − 5", "91 − 55", "911 − 555", "9,111 − 5,555", "91,111 − 55,555", "911,111 − 555,555"},
		{"3 × 4", "30 × 40", "300 × 400", "3,000 × 40"},
		{"9 × 9", "99 × 9", "999 × 9", "9,999 × 9"},
		{"8 ÷ 2", "84 ÷ 2", "846 ÷ 2", "8,468 ÷ 2"},
		{"count by 10 from 0 to 100", "count by 100 from 0 to 1,000", "count by 1,000 from 0 to 10,000"},
		{"round 7 to the nearest 10", "round 470 to the nearest 100", "round 34,700 to the nearest 1,000", "round 3,470,000 to the nearest 1,000,000"},
	} {
		for _, m := range models.All {
			var bytes []int
			for _, problem := range row {
				start := time.Now()
				lesson, err := models.Teach(problem, m.Name)
				if err != nil {
					bytes = append(bytes, 0)
					continue
				}
				picture := svg.Render(lesson.Whole, svg.Options{})
				t.Logf("%-22s %-44s %6d bytes  %4d µs", m.Name, problem, len(picture), time.Since(start).Microseconds())
				bytes = append(bytes, len(picture))
				// One digit more is at most nine pieces more in each of two numbers, with
				// their names; a product shows up to nine equal numbers.
				const still, forDigit = 6_000, 2_500
				bound := still + forDigit*digits(problem)
				if lesson.Problem.Kind == arithmetic.Product {
					bound *= 2
				}
				if len(picture) > bound {
					t.Errorf("%s with %s has %d bytes, more than %d", problem, m.Name, len(picture), bound)
				}
			}
			// The number grows tenfold from column to column, and the picture must not.
			for i := 1; i < len(bytes); i++ {
				if bytes[i-1] > 0 && bytes[i] > 3*bytes[i-1]+2_000 {
					t.Errorf("%s: %s has %d bytes, and %s %d", m.Name, row[i-1], bytes[i-1], row[i], bytes[i])
				}
			}
		}
	}
}

// digits counts the digits of a text.
func digits(text string) (n int) {
	for d := '0'; d <= '9'; d++ {
		n += strings.Count(text, string(d))
	}
	return n
}
