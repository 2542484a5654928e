package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayPrimeAsked asks whether a number is prime.
func ArrayPrimeAsked(n int64) string { return "is " + g(n) + " prime?" }

// ArrayPrimeIs says in a line whether a number is prime.
func ArrayPrimeIs(m arithmetic.JudgePrime) string {
	switch {
	case m.Prime:
		return g(m.Number) + " is prime"
	case m.Number == 1:
		return "1 is not prime"
	}
	return g(m.Number) + " is not prime: " + rowsOf(m.Other[0], m.Other[1])
}

// primeWhy is the reason.
func primeWhy(m arithmetic.JudgePrime) Phrase {
	yes := In(scene.Result, "prime")
	switch {
	case m.Prime:
		return Say(g(m.Number)+" makes only one row, or one in each row: its factors are 1 and itself. It is ", yes, ".")
	case m.Number == 1:
		return Say("1 has only one factor, itself. A prime has two, so 1 is not ", yes, ".")
	}
	return Say(g(m.Number)+" also makes "+rowsOf(m.Other[0], m.Other[1])+". It has more factors than 1 and itself, so it is not ", yes, ".")
}

// ArrayPrimeSaid says whether the number is prime, and why.
func ArrayPrimeSaid(m arithmetic.JudgePrime, found []arithmetic.FindPair) (title string, hands, ask Phrase, desc scene.Telling) {
	return "Prime or not", primeWhy(m), Say("Is there any array besides the one row and its turn?"), ArrayPrime(m, found)
}

// ArrayPrime describes the whole story.
func ArrayPrime(m arithmetic.JudgePrime, found []arithmetic.FindPair) scene.Telling {
	return scene.Telling{Shown: arraysOf(m.Number, found) + " " + primeWhy(m).String(), Hidden: arraysAsked(m.Number) + " Is " + g(m.Number) + " prime?"}
}
