package words

// Gallery is what the page of pictures says.
type Gallery struct{ Title, Doc, Lead, Models, Skip string }

// Galleries are the words of the page of pictures.
var Galleries = Gallery{
	Title:  "Pictures to take away",
	Doc:    "What every kind of picture looks like, with its address to put in any page.",
	Lead:   "Every picture is an address. Put it where an image goes: in a page, a document, a slide, a worksheet. Change the problem in the address and the picture follows.",
	Models: "Kinds of picture", Skip: "the pictures",
}
