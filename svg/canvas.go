package svg

import (
	"bytes"
	"encoding/xml"
	"strconv"
	"strings"

	svgo "github.com/ajstarks/svgo"
)

// canvas is svgo writing into a buffer, with the two habits that svgo lacks:
// every text and attribute is escaped in one place, and neighbours that look the
// same share one group.
type canvas struct {
	*svgo.SVG
	buf  bytes.Buffer
	look string // the attributes of the open group; "" when none is open
}

func newCanvas() *canvas {
	c := &canvas{}
	c.buf.Grow(8 << 10)
	c.SVG = svgo.New(&c.buf)
	return c
}

// with opens a group of the attributes unless it is open already.
func (c *canvas) with(look string) {
	if look == c.look {
		return
	}
	c.plain()
	if look != "" {
		c.buf.WriteString("<g " + look + ">\n")
	}
	c.look = look
}

// plain closes the open group.
func (c *canvas) plain() {
	if c.look != "" {
		c.Gend()
	}
	c.look = ""
}

// escaped is a text as it may stand in the file. Characters that XML does not
// allow, such as NUL, become the replacement character.
func escaped(text string) string {
	if !strings.ContainsFunc(text, func(r rune) bool { return r < ' ' || r > '~' || strings.ContainsRune(`&<>"'`, r) }) {
		return text // most are names and numbers
	}
	var b bytes.Buffer
	_ = xml.EscapeText(&b, []byte(text)) // a buffer takes every write
	return b.String()
}

// attribute writes one attribute, escaped.
func attribute(name, value string) string { return name + `="` + escaped(value) + `"` }

func number(name string, value int) string { return name + `="` + strconv.Itoa(value) + `"` }
