package words

// CoverWords are what the page that asks says.
type CoverWords struct {
	Title, Doc, Skip, Field string
	Heading, Lead           string
	Such, ForChild, Claim   string
	Railway, RailwayLead    string
}

// Cover are the words of the page that asks.
var Cover = CoverWords{
	Title: "a lesson for any problem, told three times",
	Doc:   "Type a problem as it stands in the book and get the whole lesson: what to do with the pieces, what to draw, what to write.",
	Skip:  "the examples", Field: "Your problem",
	Heading: "One idea, told three times",
	Lead:    "Type a problem as it stands in the book. You get the whole lesson: what to do with the pieces, what to draw, what to write.",
	Such:    "Such as", ForChild: "For the child:", Claim: "Is it true? Say it first, then look",
	Railway:     "From the Copper Hill Railway",
	RailwayLead: "A small mountain railway: crates in tens and hundreds, carriages with rows of seats, rails and cables in equal parts.",
}
