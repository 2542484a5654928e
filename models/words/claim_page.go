package words

import (
	"regexp"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// ClaimWords are what the child's page says beside the numbers.
type ClaimWords struct {
	Heading, Think, First, Look, On, Back, Again, Other, Listen, Make string
	True, AlsoTrue                                                    string // before the statements at the end
	Show, Whole, Skip                                                 string
	Doc, SayFirst                                                     string // what the page is, of search engines
}

// ClaimPage are the words of the child's page.
var ClaimPage = ClaimWords{
	Heading: "Is it true?", Think: "What do you think?", First: "Say it first. Then look.", Look: "Now look",
	On: "Next", Back: "Back", Again: "Think again", Other: "Try another", Listen: "Read it to me", Make: "Make your own",
	True: "This is true:", AlsoTrue: "This is true too:",
	Show: "Look", Whole: "The whole lesson, with pieces", Skip: "the claim",
	Doc: "Say what you think of two amounts, and see for yourself.", SayFirst: "Say what you think, and see for yourself.",
}

// ClaimChoices are the three things that a child may think of two amounts: that the
// first is more, that they are the same, that the second is more.
func ClaimChoices(p arithmetic.Problem) [3]Phrase {
	return [3]Phrase{
		Say(In(scene.First, p.Left.String()), " is more"),
		Say("They are the same"),
		Say(In(scene.Second, p.Right.String()), " is more"),
	}
}

// ClaimThought repeats what the child thinks.
func ClaimThought(p arithmetic.Problem, think arithmetic.Relation) Phrase {
	choices := ClaimChoices(p)
	said := choices[map[arithmetic.Relation]int{arithmetic.Greater: 0, arithmetic.Equal: 1, arithmetic.Less: 2}[think]]
	if think == arithmetic.Equal {
		return Say("You think they are the same.")
	}
	return append(append(Say("You think "), said...), Span{Text: "."})
}

// ClaimFound says how what the child thinks stands to what the picture shows.
func ClaimFound(think, truly arithmetic.Relation) string {
	if think == truly {
		return "The picture shows it too."
	}
	return "What does the picture show?"
}

// ClaimStands says whether the statement holds as it was written.
func ClaimStands(p arithmetic.Problem, a arithmetic.Answer) string {
	if p.Kind != arithmetic.Claim {
		return p.Left.String() + " " + a.Relation.String() + " " + p.Right.String()
	}
	if a.True {
		return p.String() + " is true."
	}
	return p.String() + " is not true."
}

// ClaimReason is why two amounts are the same, or how far apart they are: what a
// child reads at the end. A longer reason is the lesson's, and its sentences have
// stood beside the pictures before.
func ClaimReason(p arithmetic.Problem, a arithmetic.Answer, why Phrase) Phrase {
	if len(why) > 0 && (a.Relation == arithmetic.Equal || a.True) && strings.Count(why.String(), ". ") <= 1 {
		return why
	}
	first, second := In(scene.First, p.Left.String()), In(scene.Second, p.Right.String())
	apart, ok := strings.CutPrefix(Stand(p, a), first.Text+" is ")
	between, same := strings.CutSuffix(apart, second.Text+".")
	if a.Relation == arithmetic.Equal || !ok || !same {
		return Say(Stand(p, a))
	}
	return Say(first, " is "+between, second, ".")
}

var (
	spokenFraction = regexp.MustCompile(`(?:(\d+)[ \x{200a}])?(\d+)/(\d+)`)
	spokenSigns    = strings.NewReplacer(" + ", " plus ", " − ", " minus ", " × ", " times ", " ÷ ", " divided by ",
		" = ", " equals ", " < ", " is less than ", " > ", " is more than ")
)

// Aloud writes a text as it is said: 3/4 = 6/8 is three fourths equals six eighths.
func Aloud(text string) string {
	text = spokenFraction.ReplaceAllStringFunc(text, func(written string) string {
		m := spokenFraction.FindStringSubmatch(written)
		num, err1 := strconv.ParseInt(m[2], 10, 64)
		den, err2 := strconv.ParseInt(m[3], 10, 64)
		f, err3 := fraction.New(num, den)
		if err1 != nil || err2 != nil || err3 != nil {
			return written
		}
		name := NumberName(arithmetic.Frac(f))
		if m[1] != "" {
			return m[1] + " and " + name
		}
		return name
	})
	return spokenSigns.Replace(text)
}
