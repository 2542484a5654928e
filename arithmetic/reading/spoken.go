package reading

import "modeler/arithmetic"

func isWhole(t token) bool { return t.kind == number && t.num.Form == arithmetic.Whole }

// spoken makes a fraction bar of "over" and "out of" between two numbers, and leaves
// out the words at the end that name a picture: 3/4 on a number line.
func spoken(in []token) []token {
	out := append([]token{}, in...)
	for i := 1; i+1 < len(out); i++ {
		if out[i].kind == word && out[i].text == "over" && out[i-1].kind == number && out[i+1].kind == number {
			out[i].kind, out[i].text, out[i].spaced, out[i+1].spaced = slash, "/", false, false
		}
	}
	for i := 1; i+2 < len(out); i++ {
		if out[i].kind == word && out[i].text == "out" && out[i+1].text == "of" && isWhole(out[i-1]) && isWhole(out[i+2]) {
			out[i].kind, out[i].text, out[i].end, out[i].spaced, out[i+2].spaced = slash, "/", out[i+1].end, false, false
			out = append(out[:i+1], out[i+2:]...)
		}
	}
	for _, phrase := range [][]string{{"on", "a", "number", "line"}, {"on", "the", "number", "line"}, {"on", "number", "line"}} {
		n := len(out) - 1 - len(phrase) // the end is a token too
		if n < 1 {
			continue
		}
		named := true
		for i, w := range phrase {
			named = named && out[n+i].kind == word && out[n+i].text == w
		}
		if named {
			return append(out[:n:n], out[len(out)-1])
		}
	}
	return out
}
