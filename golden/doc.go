// Package golden holds the expected lessons and pictures, and the tests that own
// them: the laws that every picture keeps, the numbers read back from the SVG,
// the worked examples of outside sources, and the look in a real browser.
//
//	go test ./golden/...            checks everything
//	go test ./golden -update        accepts the lessons and pictures as they are now
package golden
