package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ChartKey says what a mark on the chart is for.
func ChartKey(n int64) string { return "multiples of " + g(n) }

// ChartPair is a lesson about the common multiples of two numbers on a hundred chart.
type ChartPair struct {
	arithmetic.Problem
	Meet arithmetic.Meet
	List []int64
}

func (c ChartPair) given() string {
	a, b := g(c.Meet.Rows[0].By), g(c.Meet.Rows[1].By)
	return chartIs + " The cells of the multiples of " + a + " are colored, and the multiples of " + b + " have rings."
}

// Start says what the two marks are.
func (c ChartPair) Start() Told {
	a, b := In(scene.First, g(c.Meet.Rows[0].By)), In(scene.Second, g(c.Meet.Rows[1].By))
	return Told{
		Title: "Choose two marks",
		Hands: Say("Take a hundred chart and two pencils. You will color the cells of the multiples of ", a, " and put rings around the multiples of ", b, "."),
		Ask:   Say("Which numbers will get both marks?"),
		Desc:  scene.Same(chartIs + " Under it stand the marks for multiples of " + a.Text + " and of " + b.Text + "."),
	}
}

// Mark marks the multiples of one number.
func (c ChartPair) Mark(row arithmetic.HopRow) Told {
	by := In(panRole(row.Line), g(row.By))
	list := In(scene.Moved, landsOn(arithmetic.HopOn{HopRow: row, First: 1, Last: row.Count}))
	how := [...]string{"Color ", "Put a ring around "}[row.Line]
	done := [...]string{"colored", "ringed"}[row.Line]
	return Told{
		Title: "Mark the multiples of " + by.Text,
		Hands: Say("Count on by ", by, ". "+how, list, "."),
		Ask:   Say("Which are the multiples of ", by, "?"),
		Desc:  scene.Same("The multiples of " + by.Text + " are " + done + ", as far as " + g(row.Land(row.Count)) + "."),
	}
}

// Both finds what has both marks.
func (c ChartPair) Both() Told {
	least, on := In(scene.Result, g(c.List[0])), numbers(c.Meet.At)
	hands := Say(List(on)+" have both marks. They are common multiples, and ", least, " is the least.")
	if len(on) == 1 {
		hands = Say("Only ", least, " has both marks: it is the least common multiple.")
	}
	if len(on) < len(c.List) {
		hands = Say(hands, " Beyond the chart it goes on: "+list(c.List, ", ")+", and so on.")
	}
	return Told{
		Title: "Find both marks",
		Hands: hands,
		Ask:   Say("Which numbers have both marks, and which is the least of them?"),
		Desc: scene.Telling{Shown: c.found(),
			Hidden: "Which numbers have both marks, and which of them is the least?"},
	}
}

func (c ChartPair) found() string {
	return "The common multiples are " + list(c.List, ", ") + ", and so on; the least is " + g(c.List[0]) + "."
}

// Title is the problem and its numbers.
func (c ChartPair) Title() scene.Telling {
	return answered(c.Problem, arithmetic.Answer{List: c.List})
}

// Whole describes the finished chart.
func (c ChartPair) Whole() scene.Telling {
	return scene.Telling{Shown: c.given() + " " + c.found(), Hidden: c.given() + " Which numbers have both marks, and which of them is the least?"}
}

// ChartSieve is a lesson about a prime, by crossing out on a hundred chart.
type ChartSieve struct {
	arithmetic.Problem
	Answer arithmetic.Answer
	By     arithmetic.JudgeSieve
}

// Start crosses out 1.
func (c ChartSieve) Start(m arithmetic.StartSieve) Told {
	n := In(scene.First, g(m.Number))
	t := Told{
		Title: "Cross out 1",
		Hands: Say("Frame ", n, " on a hundred chart. Cross out 1: it is not prime, as it has only one factor."),
		Ask:   Say("How many factors does 1 have?"),
		Desc:  scene.Same(chartIs + " " + n.Text + " is framed, and 1 is crossed out."),
	}
	if m.Number == 1 {
		t.Desc = scene.Telling{Shown: chartIs + " The number 1 is framed and crossed out.", Hidden: chartIs + " The number 1 is framed."}
	}
	return t
}

// CrossOut keeps a prime and crosses out its other multiples.
func (c ChartSieve) CrossOut(m arithmetic.CrossOut) Told {
	p, n := In(scene.Second, g(m.Prime)), g(m.Number)
	done := "the other multiples of " + p.Text + " up to " + n
	t := Told{
		Title: "Cross out by " + p.Text,
		Hands: Say("Keep ", p, " and cross out "+done+", where they still stand: ", In(scene.Gone, fewOf(m.List)), "."),
		Ask:   Say("Which multiples of ", p, " are still there, besides ", p, "?"),
	}
	if len(m.List) == 0 {
		t.Hands = Say("Keep ", p, ". All "+done+" are crossed out already.")
	}
	t.Desc = scene.Telling{Shown: p.Text + " is kept, and " + done + " are crossed out.", Hidden: p.Text + " is kept. Is " + n + " one of its other multiples?"}
	if m.Hit {
		t.Hands = Say(t.Hands, " ", In(scene.First, n), " is one of them.")
		t.Desc.Shown += " " + n + " is one of them."
	}
	return t
}

// fewOf is a list, with the middle left out where it is long.
func fewOf(all []int64) string {
	const most = 8
	if len(all) <= most {
		return List(numbers(all))
	}
	return list(all[:4], ", ") + " and so on, to " + g(all[len(all)-1])
}

// Judge says whether the number is still there.
func (c ChartSieve) Judge(m arithmetic.JudgeSieve) Told {
	t := Told{
		Title: "Look at " + g(m.Number),
		Hands: c.why(m),
		Ask:   Say("Is ", In(scene.First, g(m.Number)), " still there, or is it crossed out?"),
	}
	t.Desc = scene.Telling{Shown: t.Hands.String(), Hidden: "Is " + g(m.Number) + " crossed out, or is it still there?"}
	return t
}

func (c ChartSieve) why(m arithmetic.JudgeSieve) Phrase {
	n := In(scene.First, g(m.Number))
	switch {
	case m.Number == 1:
		return Say(n, " is ", In(scene.Result, "neither prime nor composite"), ": its only factor is 1.")
	case m.Prime:
		return Say(n, " is still there, so it ", In(scene.Result, "is prime"), ": its only factors are 1 and "+n.Text+".")
	}
	return Say(n, " is crossed out: "+n.Text+" = "+g(m.By)+" × "+g(m.Times)+". So it ", In(scene.Result, "is composite"), ", not prime.")
}

// Title is the problem and its answer.
func (c ChartSieve) Title() scene.Telling {
	return scene.Telling{Shown: g(c.By.Number) + " is " + Answer(c.Problem, c.Answer), Hidden: Asked(c.Problem)}
}

// Whole describes the finished sieve.
func (c ChartSieve) Whole() scene.Telling {
	n := g(c.By.Number)
	given, crossed := chartIs+" "+n+" is framed.", "1 is crossed out."
	if len(c.By.Primes) > 0 {
		crossed = "1 is crossed out, and the other multiples of " + List(numbers(c.By.Primes)) + " up to " + n + "."
	}
	return scene.Telling{
		Shown:  given + " " + crossed + " " + c.why(c.By).String(),
		Hidden: given + " Will it be crossed out with the multiples of 2, 3, 5 or 7, or will it stay?",
	}
}

// ChartEven is a lesson about even and odd on a hundred chart.
type ChartEven struct {
	arithmetic.Problem
	Found arithmetic.FindEven
}

// Light counts by twos.
func (c ChartEven) Light() Told {
	return Told{
		Title: "Count by twos",
		Hands: Say("Count by twos on a hundred chart, and color every number you say: ", In(scene.Second, "2, 4, 6, 8, 10"), ", and so on. Whole columns get color."),
		Ask:   Say("Which numbers come when you count by twos?"),
		Desc:  scene.Same(chartIs + " All even numbers are colored: the columns that end in 2, 4, 6, 8 and 0."),
	}
}

// Find looks for the number.
func (c ChartEven) Find(m arithmetic.FindEven) Told {
	t := Told{
		Title: "Find " + g(m.Number),
		Hands: c.why(m),
		Ask:   Say("Is ", In(scene.First, g(m.Number)), " one of the colored numbers?"),
	}
	t.Desc = scene.Telling{Shown: t.Hands.String(), Hidden: "The number " + g(m.Number) + " is framed. Does it come when you count by twos?"}
	return t
}

func (c ChartEven) why(m arithmetic.FindEven) Phrase {
	n := In(scene.First, g(m.Number))
	if m.Even {
		return Say(n, " ends in "+g(m.End)+". It is colored, so it is ", In(scene.Result, "even"), ".")
	}
	return Say(n, " ends in "+g(m.End)+". It is not colored, so it is ", In(scene.Result, "odd"), ".")
}

// Title is the problem and its answer.
func (c ChartEven) Title() scene.Telling {
	return answered(c.Problem, arithmetic.Answer{Even: c.Found.Even})
}

// Whole describes the finished chart.
func (c ChartEven) Whole() scene.Telling {
	return scene.Telling{
		Shown:  c.Light().Desc.Shown + " " + g(c.Found.Number) + " is framed. " + c.why(c.Found).String(),
		Hidden: chartIs + " The number " + g(c.Found.Number) + " is framed. Does it come when you count by twos?",
	}
}
