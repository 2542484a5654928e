package reading

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// char is one character as the reader takes it, and where in the text it stood.
type char struct {
	r  rune
	at int // in runes
}

// thin stands for the narrow spaces that some books put between groups of three
// digits.
const thin = '\u2009'

// raised and lowered are the small digits of pasted fractions: ³⁄₄.
const (
	raised  = "⁰¹²³⁴⁵⁶⁷⁸⁹"
	lowered = "₀₁₂₃₄₅₆₇₈₉"
)

// alike maps characters to the sign that a person means by them. Full-width and
// other compatibility forms are not listed: Unicode normal form KC folds them.
var alike = func() map[rune]rune {
	table := map[rune]rune{}
	for sign, all := range map[rune]string{
		'-':  "−–—‐‑‒―﹘➖⁃˗",
		'+':  "➕",
		'×':  "*·∙⋅•✕✖⨯⨉∗❌✗х╳",
		'÷':  "➗",
		'/':  "⁄∕⧸",
		':':  "∶꞉",
		'=':  "⁼꞊＝",
		'<':  "‹〈⟨",
		'>':  "›〉⟩",
		'(':  "[{",
		')':  "]}",
		'_':  "□▢☐◻◽⬜▭▯○◯⭘⚪◌△☆⬚‗",
		' ':  "\t\n\r\v\f\u0085\u2028\u2029\u2063\u2064" + `"“”„‟«»` + "`",
		'\'': "’‘ʼ‛′",
		',':  "‚،、",
		thin: "\u202f",
	} {
		for _, r := range all {
			table[r] = sign
		}
	}
	return table
}()

// unseen are the characters without ink that come along with pasted text.
func unseen(r rune) bool {
	return strings.ContainsRune("\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff\u2066\u2067\u2068\u2069\ufe0e\ufe0f", r)
}

// clean folds the look-alikes of a text: afterwards there are digits 0 to 9,
// lower-case letters, spaces and one character for each sign.
func clean(text []rune) ([]char, *fault) {
	var out []char
	put := func(at int, s string) {
		for _, r := range s {
			out = append(out, char{r, at})
		}
	}
	for i := 0; i < len(text); i++ {
		r := text[i]
		if unseen(r) {
			continue
		}
		if sign, ok := alike[r]; ok || r == thin {
			if ok {
				r = sign
			}
			put(i, string(r))
			continue
		}
		if strings.ContainsRune(raised, r) {
			end := i
			put(i, " ")
			for ; end < len(text) && strings.ContainsRune(raised, text[end]); end++ {
				put(end, norm.NFKC.String(string(text[end])))
			}
			if end == len(text) || text[end] != '/' && alike[text[end]] != '/' {
				return nil, smallDigits(text, i, end)
			}
			i = end - 1
			continue
		}
		if strings.ContainsRune(lowered, r) {
			if i == 0 || text[i-1] != '/' && alike[text[i-1]] != '/' && !strings.ContainsRune(lowered, text[i-1]) {
				return nil, smallDigits(text, i, i+1)
			}
			put(i, norm.NFKC.String(string(r)))
			continue
		}
		folded := fold(r)
		if folded == "" {
			return nil, badCharacter(text, i)
		}
		put(i, folded)
	}
	return out, nil
}

// fold is a character in lower case and compatibility form, a vulgar fraction
// with spaces round it so that 1½ is 1 1/2; or nothing, when the reader has no
// use for the character.
func fold(r rune) string {
	if r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r == ' ' {
		return string(r)
	}
	k := strings.ToLower(norm.NFKC.String(string(r)))
	if top, bottom, ok := strings.Cut(k, "⁄"); ok {
		if bottom == "" {
			return " " + top + "/"
		}
		return " " + top + "/" + bottom + " "
	}
	if k == "..." {
		return "_"
	}
	size := 0
	for _, c := range k {
		size++
		switch {
		case unicode.IsLetter(c):
		case c >= '0' && c <= '9' && unicode.Is(unicode.Nd, r):
		case c < unicode.MaxASCII && strings.ContainsRune(" +-*/=<>(),;:.?_!$%'×÷", c), c == '×', c == '÷', c == '¢':
		default:
			return ""
		}
	}
	if size == 1 {
		if sign, ok := alike[[]rune(k)[0]]; ok {
			return string(sign)
		}
	}
	return k
}
