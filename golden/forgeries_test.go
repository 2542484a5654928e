package golden

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"modeler/models/scene"
)

// forgery changes the bytes of a file in one place; ok is false where there is
// nothing of the sort.
type forgery struct {
	name  string
	forge func(file string, paint palette) (forged string, ok bool)
}

// change rewrites the last match of a pattern: repl makes the new text of the
// match and its groups.
func change(pattern string, repl func(groups []string) string) func(string, palette) (string, bool) {
	re := regexp.MustCompile(pattern)
	return func(file string, _ palette) (string, bool) {
		all := re.FindAllStringSubmatchIndex(file, -1)
		if len(all) == 0 {
			return "", false
		}
		at := all[len(all)-1]
		var groups []string
		for i := 0; i < len(at); i += 2 {
			groups = append(groups, file[at[i]:at[i+1]])
		}
		return file[:at[0]] + repl(groups) + file[at[1]:], true
	}
}

func plus(text string, n int) string {
	v, _ := strconv.Atoi(text)
	return strconv.Itoa(v + n)
}

// piece is the last shape of a kind, or the first, inside a group that is filled in the tint or
// the strong color of a number.
func piece(shape string, first bool, repl func(string) string) func(string, palette) (string, bool) {
	re := regexp.MustCompile("<" + shape + " [^>]*/>\n")
	return func(file string, paint palette) (string, bool) {
		at, fill, found := -1, "", ""
		offset := 0
		for _, line := range strings.SplitAfter(file, "\n") {
			if strings.HasPrefix(line, "<g ") {
				fill = line
			}
			for _, role := range []scene.Role{scene.First, scene.Second, scene.Result} {
				if re.MatchString(line) && (strings.Contains(fill, `fill="`+paint[role][0]+`"`) || strings.Contains(fill, `fill="`+paint[role][1]+`"`)) {
					if at < 0 || !first {
						at, found = offset, line
					}
				}
			}
			offset += len(line)
		}
		if at < 0 {
			return "", false
		}
		return file[:at] + repl(found) + file[at+len(found):], true
	}
}

func attribute(name string, n int) func(string) string {
	re := regexp.MustCompile(` ` + name + `="(\d+)"`)
	return func(element string) string {
		return re.ReplaceAllStringFunc(element, func(a string) string {
			return fmt.Sprintf(" %s=%q", name, plus(re.FindStringSubmatch(a)[1], n))
		})
	}
}

func gone(string) string { return "" }

// arrowHead is the end of a number line, whose strips may be as high as they look
// best.
const arrowHead = "M768 "

// unless leaves files alone that have a text in them.
func unless(text string, forge func(string, palette) (string, bool)) func(string, palette) (string, bool) {
	return func(file string, paint palette) (string, bool) {
		if strings.Contains(file, text) {
			return "", false
		}
		return forge(file, paint)
	}
}

var forgeries = []forgery{
	{"a rectangle is left out", piece("rect", false, gone)},
	{"a circle is left out", piece("circle", false, gone)},
	{"a rectangle is wider", unless("not to scale", piece("rect", false, attribute("width", 8)))},
	{"a rectangle is higher", unless(arrowHead, piece("rect", false, attribute("height", 8)))},
	{"a rectangle lies further along", piece("rect", true, attribute("x", 16))},
	{"a circle lies further along", piece("circle", true, attribute("cx", 30))},
	{"a rectangle is there twice", piece("rect", false, func(e string) string { return e + e })},
	{"a rectangle has no surface", piece("rect", false, func(e string) string {
		return strings.Replace(e, "<rect ", `<rect fill="none" `, 1)
	})},
	{"a shape is made larger by a transform", piece("rect", false, func(e string) string {
		return strings.Replace(e, "<rect ", `<rect transform="scale(2)" `, 1)
	})},
	{"a shape is shifted by a transform", piece("rect", false, func(e string) string {
		return strings.Replace(e, "<rect ", `<rect transform="translate(400 0)" `, 1)
	})},
	{"the equation ends in another number", change(`>(\d+)</text>\n</g>(?s:[^\d]*)</svg>`, func(g []string) string {
		return strings.Replace(g[0], ">"+g[1]+"<", ">"+plus(g[1], 1)+"<", 1)
	})},
	{"the last relation is turned around", change(`>(=|≠|&lt;|&gt;)</text>`, func(g []string) string {
		wrong := map[string]string{"=": "≠", "≠": "=", "&lt;": "&gt;", "&gt;": "&lt;"}
		return ">" + wrong[g[1]] + "</text>"
	})},
	{"a sum inside the picture is wrong", change(`= (\d+)</text>`, func(g []string) string { return "= " + plus(g[1], 1) + "</text>" })},
	{"a jump lands elsewhere", change(`C(\d+) (\d+) (\d+) (\d+) (\d+) (\d+)`, func(g []string) string {
		return "C" + strings.Join(g[1:5], " ") + " " + plus(g[5], 25) + " " + g[6]
	})},
	{"a jump has another name", change(`>([+−])(\d+)</text>`, func(g []string) string { return ">" + g[1] + plus(g[2], 1) + "</text>" })},
	{"a jump has the other sign", change(`>([+−])(\d+)</text>`, func(g []string) string {
		return ">" + map[string]string{"+": "−", "−": "+"}[g[1]] + g[2] + "</text>"
	})},
	{"the cuts of a face are left out", unless(">+<", unless(">−<", change(`<path d="M\d+ \d+[vh]\d+M[^"]*" />`, func(g []string) string { return "" })))},
	{"a file is cut short", func(file string, _ palette) (string, bool) { return file[:len(file)-8], true }},
}
