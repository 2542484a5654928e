package reading

// unpictured leaves out the word that names the picture in array 6 by 4 and 6 × 4 array.
// The last token is the end.
func unpictured(in []token) []token {
	last := len(in) - 1
	isWord := func(i int, text string) bool { return in[i].kind == word && in[i].text == text }
	isSign := func(i int) bool {
		_, is := infixes[in[i].text]
		return in[i].kind == sign || in[i].kind == word && is
	}
	switch {
	case last == 4 && isWord(0, "array") && in[1].kind == number && isSign(2):
		return in[1:]
	case last > 3 && isWord(last-1, "array") && in[last-2].kind == number && isSign(last-3):
		return append(in[:last-1:last-1], in[last])
	}
	return in
}
