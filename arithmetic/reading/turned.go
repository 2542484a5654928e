package reading

// turned puts in the usual order what some books write the other way round: 3)12 is
// 12 ÷ 3, round to the nearest ten: 65 is round 65 to the nearest ten; and it leaves out
// the word that names the picture in array 6 by 4 and 6 × 4 array. The last token is
// the end.
func turned(in []token) []token {
	last := len(in) - 1
	isWord := func(i int, text string) bool { return i < last && in[i].kind == word && in[i].text == text }
	isSign := func(i int) bool {
		_, is := infixes[in[i].text]
		return in[i].kind == sign || in[i].kind == word && is
	}
	switch {
	case last == 3 && in[0].kind == number && in[1].kind == closed && in[2].kind == number:
		divide := in[1]
		divide.kind, divide.text = sign, "÷"
		return []token{in[2], divide, in[0], in[3]}
	case last > 3 && isWord(0, "round") && in[1].kind == word && in[1].text != "off" && in[last-1].kind == number && (in[last-2].kind != word || in[last-2].text != "nearest"):
		end := last - 1
		for in[end-1].text == ":" || in[end-1].kind == separator || in[end-1].kind == stop {
			end--
		}
		return append(append([]token{in[0], in[last-1]}, in[1:end]...), in[last])
	case last == 4 && isWord(0, "array") && in[1].kind == number && isSign(2):
		return in[1:]
	case last > 3 && isWord(last-1, "array") && in[last-2].kind == number && isSign(last-3):
		return append(in[:last-1:last-1], in[last])
	}
	return in
}
