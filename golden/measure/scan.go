package measure

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Attr is an attribute of an element, its value with entities resolved.
type Attr struct{ Name, Value string }

// Sink is told what is in a file, in order. An error ends the scan.
type Sink struct {
	Start func(name string, attrs []Attr) error
	End   func(name string)
	Text  func(text string)
}

// Scan reads a file of plain XML 1.0: elements without prefixes, attributes in
// double quotes, text and entities. That is less than XML allows, and all that a
// picture needs: a comment, a document type, an instruction, a prefix or a single
// quote is an error, like everything that is not well formed. Names are of ASCII
// letters, digits and hyphens.
func Scan(file []byte, sink Sink) error {
	s := xmlScanner{rest: string(file), sink: sink}
	if !utf8.ValidString(s.rest) {
		return errors.New("not UTF-8")
	}
	for s.rest != "" {
		if err := s.next(); err != nil {
			return fmt.Errorf("at byte %d: %w", len(file)-len(s.rest), err)
		}
	}
	if len(s.open) > 0 || !s.rooted {
		return errors.New("an element that does not end, or none at all")
	}
	return nil
}

type xmlScanner struct {
	rest   string
	open   []string
	rooted bool // the outermost element has begun
	attrs  []Attr
	sink   Sink
}

func (s *xmlScanner) next() error {
	at := strings.IndexByte(s.rest, '<')
	if at < 0 {
		at = len(s.rest)
	}
	if at > 0 {
		text, err := resolved(s.rest[:at])
		if err == nil && len(s.open) == 0 && strings.TrimSpace(text) != "" {
			err = errors.New("text outside of all elements")
		}
		if err != nil || strings.Contains(s.rest[:at], "]]>") {
			return errors.Join(err, errors.New("a text that is not allowed"))
		}
		if len(s.open) > 0 {
			s.sink.Text(text)
		}
		s.rest = s.rest[at:]
		return nil
	}
	if strings.HasPrefix(s.rest, "</") {
		return s.endTag()
	}
	return s.startTag()
}

func (s *xmlScanner) endTag() error {
	s.rest = s.rest[2:]
	name, err := s.name()
	s.space()
	last := len(s.open) - 1
	if err != nil || last < 0 || s.open[last] != name || !s.skip(">") {
		return fmt.Errorf("</%s> ends nothing", name)
	}
	s.open = s.open[:last]
	s.sink.End(name)
	return nil
}

func (s *xmlScanner) startTag() error {
	if s.rooted && len(s.open) == 0 {
		return errors.New("more than one outermost element")
	}
	s.rooted = true
	s.rest = s.rest[1:]
	name, err := s.name()
	if err != nil {
		return err
	}
	s.attrs = s.attrs[:0]
	for {
		apart := s.space()
		closed := s.skip("/>")
		if closed || s.skip(">") {
			if err := s.sink.Start(name, s.attrs); err != nil {
				return err
			}
			if closed {
				s.sink.End(name)
			} else {
				s.open = append(s.open, name)
			}
			return nil
		}
		if !apart {
			return fmt.Errorf("<%s> is not well formed", name)
		}
		if err := s.attribute(); err != nil {
			return fmt.Errorf("<%s>: %w", name, err)
		}
	}
}

func (s *xmlScanner) attribute() error {
	key, err := s.name()
	if err != nil || !s.skip(`="`) {
		return errors.New("an attribute that is not well formed")
	}
	for _, a := range s.attrs {
		if a.Name == key {
			return fmt.Errorf("%s twice", key)
		}
	}
	end := strings.IndexByte(s.rest, '"')
	if end < 0 || strings.IndexByte(s.rest[:end], '<') >= 0 {
		return errors.New("a value that does not end")
	}
	value, err := resolved(s.rest[:end])
	s.rest = s.rest[end+1:]
	s.attrs = append(s.attrs, Attr{key, value})
	return err
}

func (s *xmlScanner) skip(text string) bool {
	rest, ok := strings.CutPrefix(s.rest, text)
	s.rest = rest
	return ok
}

func (s *xmlScanner) space() bool {
	rest := strings.TrimLeft(s.rest, " \n\t\r")
	some := len(rest) < len(s.rest)
	s.rest = rest
	return some
}

func (s *xmlScanner) name() (string, error) {
	n := 0
	for n < len(s.rest) {
		c := s.rest[n]
		letter := c|0x20 >= 'a' && c|0x20 <= 'z'
		if !letter && (n == 0 || c != '-' && (c < '0' || c > '9')) {
			break
		}
		n++
	}
	name := s.rest[:n]
	s.rest = s.rest[n:]
	if n == 0 {
		return "", errors.New("no name where one belongs")
	}
	return name, nil
}

// resolved is a text with its entities resolved: the five that XML has, and
// characters by number.
func resolved(text string) (string, error) {
	for _, r := range text {
		if r < ' ' && r != '\n' && r != '\t' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
			return "", errors.New("a character that XML does not have")
		}
	}
	if strings.IndexByte(text, '&') < 0 {
		return text, nil
	}
	var b strings.Builder
	for {
		before, after, found := strings.Cut(text, "&")
		b.WriteString(before)
		if !found {
			return b.String(), nil
		}
		name, rest, ended := strings.Cut(after, ";")
		text = rest
		named, known := map[string]string{"lt": "<", "gt": ">", "amp": "&", "quot": `"`, "apos": "'"}[name]
		if code, ok := strings.CutPrefix(name, "#"); ok {
			n, err := strconv.ParseUint(code, 10, 21)
			named, known = string(rune(n)), err == nil && n >= ' '
		}
		if !ended || !known {
			return "", fmt.Errorf("&%s; is not known", name)
		}
		b.WriteString(named)
	}
}
