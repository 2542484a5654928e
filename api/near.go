package api

import "strings"

// Near returns the name that a mistyped word is most like, by the fewest letters
// to insert, drop, change or swap; "" when none is like it at all.
func Near(word string, names []string) string {
	const longest = 40 // no name is so long, so no longer word is like one
	if len(word) > longest {
		return ""
	}
	best, least := "", len(word)
	for _, n := range names {
		if d := distance(strings.ToLower(word), n); d < least && 2*d <= len(n) {
			best, least = n, d
		}
	}
	return best
}

// distance is the optimal string alignment distance (Damerau 1964, without
// editing a stretch twice), in bytes.
func distance(a, b string) int {
	rows := make([][]int, len(a)+1)
	for i := range rows {
		rows[i] = make([]int, len(b)+1)
		rows[i][0] = i
	}
	for j := range rows[0] {
		rows[0][j] = j
	}
	for i := 1; i <= len(a); i++ {
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			d := min(rows[i-1][j]+1, rows[i][j-1]+1, rows[i-1][j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d = min(d, rows[i-2][j-2]+1)
			}
			rows[i][j] = d
		}
	}
	return rows[len(a)][len(b)]
}
