package words

// Tools is what the page for makers of other programs says. Code is in the page
// itself, since it is the same in every language.
type Tools struct {
	Title, Doc, Lead, Skip                       string
	Image, ImageSays                             string
	Parameters, ParametersSay                    string
	Name, Means, Values, Must                    string
	Words, WordsSay                              string
	Files, FilesSay                              string
	Element, ElementSays                         string
	Data, DataSays                               string
	Errors, ErrorsSay, ErrorsHead, ErrorsRefused string
	Embed, EmbedSays                             string
	Keep, KeepSays                               string
	Whole, WholeSays, Catalogue                  string
}

// ToolsPage are the words of that page.
var ToolsPage = Tools{
	Title: "For makers of other tools", Skip: "the examples",
	Doc:  "How to put exact pictures of arithmetic into pages, documents and programs, by examples that work.",
	Lead: "A picture is a pure function of its address: there is no key to get, no script to load and nothing to install. What is under /v1/ keeps its meaning, so an address that is pasted today shows the same problem's picture in ten years.",

	Image: "A picture", ImageSays: "Put the address in an img element. Write the problem as a person would; a space, a plus sign and a fraction bar may stand as they are or be escaped.",
	Parameters: "What can be asked of it", ParametersSay: "Only the problem is needed. What a picture does not know changes nothing.",
	Name: "Parameter", Means: "What it says", Values: "Values", Must: "needed",
	Words: "Its words", WordsSay: "Who cannot see the picture needs its words, exact enough to do the problem. They are in the picture as title and description, and by themselves at /v1/picture.txt, for the alt of your img. With answer=hidden the words hide it too.",
	Files: "As a file", FilesSay: "For a slide or a printed page ask for a PNG three times as large, or turn the SVG into a PDF.",
	Element: "As an element", ElementSays: "In a page of your own this script fetches the picture and its words, and follows the reader's light or dark screen. It sends nothing but the problem.",
	Data: "The lesson as data", DataSays: "Every move with what to do, what to ask, the address of its picture, and what to write, as text and as MathML.",
	Errors: "When something is wrong", ErrorsSay: "Most places show nothing at all for an image with an error status. So a problem that cannot be read is answered with a small picture that says what to mend, status 200, and a header for programs:",
	ErrorsHead:    "A picture of an error is kept for a minute only. To be refused in the usual way, with the true status and problem details after RFC 9457, ask with errors=status:",
	ErrorsRefused: "position and length point into text, in characters; try is a problem near it that works.",
	Embed:         "For what unfolds links", EmbedSays: "A lesson's page has a card that does not give the answer away, and says where its oEmbed photo is:",
	Keep: "Keeping it", KeepSays: "Pictures may be kept for a day and be shown stale for a week while a new one is asked for. Each has a strong ETag and answers a conditional request with 304. Content-Location is the one address of all spellings of the same request. Any page may read everything under /v1/ (CORS); nothing is asked of the reader's browser, no cookie is set.",
	Whole: "All of it", WholeSays: "The whole description, for programs:", Catalogue: "every model with its examples:",
}

// FromTo is a range of whole numbers; to may be open.
func FromTo(from, to string) string {
	if to == "" {
		return from + " or more"
	}
	return from + " to " + to
}

// AtMost bounds a text.
func AtMost(n string) string { return "at most " + n + " characters" }
