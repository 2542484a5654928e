package api

import (
	"reflect"

	"modeler/models/words"
)

// ReadWording reads the name of a wording; "" is the first. Its error is a
// *[Trouble].
func ReadWording(v string) (words.Wording, error) {
	name := word(v)
	for i, one := range words.Wordings {
		if name == one || name == "" {
			return words.Wording(i), nil
		}
	}
	return words.American, oneOf("words", name, words.Wordings)
}

// inWords is what an address has for a wording.
func inWords(w words.Wording) string {
	if w == words.American {
		return ""
	}
	return "&words=" + words.Wordings[w]
}

// inWording are the words of a page in a wording. A set of words has only texts.
func inWording[set any](w words.Wording, said set) set {
	for v, i := reflect.ValueOf(&said).Elem(), 0; i < v.NumField(); i++ {
		v.Field(i).SetString(w.Text(v.Field(i).String()))
	}
	return said
}
