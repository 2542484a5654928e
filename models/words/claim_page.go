package words

import (
	"regexp"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// What the child's page says beside the numbers.
const (
	ClaimHeading = "Is it true?"
	ClaimThink   = "What do you think?"
	ClaimFirst   = "Say it first. Then look."
	ClaimLook    = "Now look"
	ClaimOn      = "Next"
	ClaimBack    = "Back"
	ClaimAgain   = "Think again"
	ClaimOther   = "Try another"
	ClaimListen  = "Read it to me"
	ClaimMake    = "Make your own"
	ClaimTrue    = "This is true:"
)

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

// ClaimApart says of two amounts that are not the same how far apart they are;
// of two that are, it is empty.
func ClaimApart(p arithmetic.Problem, a arithmetic.Answer) string {
	if a.Relation == arithmetic.Equal {
		return ""
	}
	return Stand(p, a)
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
