package words

import (
	"strconv"

	"modeler/models/scene"
)

// Page is what the pages say beside the lesson itself. A field is named for where it
// stands.
type Page struct {
	Field, Show, Lesson                     string
	ReadAs, AlsoRead, Or                    string
	PicturedWith                            string
	Answer, Verdict, True, False            string
	ClaimFirst, ClaimAsk                    string
	Need                                    string
	Hands, Picture, Symbols, Moves, Ask     string
	AllMoves, OneMove, Cover, Uncover       string
	Move, Of, Back, Next, First, Walk       string
	Key                                     string
	Whole, WholeAddress, HiddenAddress, See string
	After, Others, Elsewhere                string
	Easier, Like, Harder                    string
	Print, PrintAll, PrintInk, PrintChild   string
	PrintNow, InColor                       string
	Europe, US, WriteIt                     string
	Think, Work, Write                      string
	Kept                                    string
	Home, ClaimPage, Gallery, Tools         string
	More, America, Britain                  string
	Try, CanAsk, In                         string
	Skip                                    string
	Keys, Fraction                          string
	Copy, Copied                            string
	LessonDoc, FaultDoc, FaultSkip          string // of search engines, and to skip to
}

// Pages are the words of the pages.
var Pages = Page{
	Field: "Problem", Show: "Show", Lesson: "the lesson",
	ReadAs: "Read as:", AlsoRead: "It can also be read as", Or: "or",
	PicturedWith: "Pictured with",
	Answer:       "The answer", Verdict: "Is it true? Ask first, then look", True: "True", False: "Not true",
	ClaimFirst: "Let the child say first:", ClaimAsk: "What do you think?",
	Need:  "You need",
	Hands: "With your hands", Picture: "In the picture", Symbols: "In symbols", Moves: "The moves", Ask: "Ask:",
	AllMoves: "All moves", OneMove: "One move at a time", Cover: "Cover the answers", Uncover: "Show the answers",
	Move: "Move", Of: "of", Back: "Back", Next: "Next", First: "Start again", Walk: "Move by move",
	Key:   "What the colors say:",
	Whole: "The whole story in one picture", WholeAddress: "Its address, to paste where an image goes",
	HiddenAddress: "Without the answer, for a worksheet", See: "see it",
	After: "What next", Others: "The same problem in other pictures", Elsewhere: "Use this picture elsewhere",
	Easier: "Easier:", Like: "Let the child tell the next one:", Harder: "Harder:",
	Print: "Print it", PrintAll: "the lesson", PrintInk: "the lesson in black ink", PrintChild: "a page for the child, without the answers",
	PrintNow: "Print", InColor: "In color",
	Europe: "as much of Europe does", US: "as in the US", WriteIt: "Write it",
	Think: "What do you think the answer is?", Work: "How many in this picture? Write or draw what you did.", Write: "Write what you did.",
	Kept: "Nothing you type is kept.", Home: "Ask", ClaimPage: "Is it true?", Gallery: "Pictures to take away", Tools: "For makers of other tools",
	America: "Say numbers as in the US", Britain: "Say numbers as in Britain",
	More: "All that can be asked",
	Try:  "Try:", CanAsk: "See what can be asked", In: "In:",
	Skip: "Skip to",
	Keys: "Signs", Fraction: "a fraction",
	Copy: "Copy", Copied: "Copied",
	LessonDoc: "told with the hands, in pictures and in symbols.",
	FaultDoc:  "A problem that could not be shown, and one near it that can.", FaultSkip: "the message",
}

// KeyOf names what a color says in a picture; "" for a role that needs no name.
func KeyOf(role scene.Role) string {
	return map[scene.Role]string{
		scene.First: "the first amount", scene.Second: "the second amount", scene.Result: "the answer",
		scene.Moved: "what just moved", scene.Gone: "what is gone",
	}[role]
}

// MoveAt says which move a page shows alone: move 2 of 7.
func MoveAt(n, last int) string {
	return "Move " + strconv.Itoa(n) + " of " + strconv.Itoa(last)
}
