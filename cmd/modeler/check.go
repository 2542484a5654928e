package main

import (
	"errors"
	"fmt"
	"strings"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/words"
)

var checkCommand = command{
	name: "check",
	use:  "CLAIM",
	doc:  "say whether a claim is true, and why; the exit status says so too",
	run:  check,
}

func check(c call) int {
	read, err := models.Read(c.text)
	var unread *reading.Error
	switch {
	case errors.As(err, &unread) && unread.Code == reading.Empty:
		return complain(c.errors, notClaim(read))
	case err != nil:
		return complain(c.errors, err)
	}
	if read.Problem.Kind != arithmetic.Claim {
		return complain(c.errors, notClaim(read))
	}
	l, err := models.Teach(c.text, "")
	var e *reading.Error
	if errors.As(err, &e) && e.Code == reading.NoPicture {
		// It can be judged all the same.
		a, err := arithmetic.Judge(read.Problem)
		if err != nil {
			return complain(c.errors, e)
		}
		l.Answer = a
	} else if err != nil {
		return complain(c.errors, err)
	}
	verdict := "true"
	if !l.Answer.True {
		verdict = "false"
	}
	fmt.Fprintf(c.out, "%s: %s\n", verdict, read.Problem)
	var b strings.Builder
	why := l.Why.String()
	if why == "" {
		why = words.Stand(read.Problem, l.Answer)
	}
	wrap(&b, "", why)
	fmt.Fprint(c.out, b.String())
	if !l.Answer.True {
		return isFalse
	}
	return done
}

// notClaim says how a claim is written: for a comparison, the claim that is true.
func notClaim(r reading.Reading) *reading.Error {
	try := "3/4 = 6/8"
	if a, err := arithmetic.Judge(r.Problem); err == nil {
		claim := r.Problem
		claim.Kind, claim.Rel = arithmetic.Claim, a.Relation
		try = claim.String()
	}
	return &reading.Error{
		Code: "not-a-claim", Text: r.Text, End: len([]rune(r.Text)),
		Message: "there is no claim here that can be true or false",
		Hint:    "write two amounts with =, < or > between them",
		Try:     "modeler check '" + try + "'",
	}
}
