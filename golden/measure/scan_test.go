package measure

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// scanned is a file as a list of its parts, as this package reads it.
func scanned(file []byte) (string, error) {
	var b strings.Builder
	err := Scan(file, Sink{
		Start: func(name string, attrs []Attr) error {
			b.WriteString("<" + name)
			for _, a := range attrs {
				b.WriteString(" " + a.Name + "=" + a.Value)
			}
			b.WriteString(">")
			return nil
		},
		End:  func(name string) { b.WriteString("</" + name + ">") },
		Text: func(text string) { b.WriteString(text) },
	})
	return b.String(), err
}

// decoded is the same list as encoding/xml reads it.
func decoded(file []byte) (string, error) {
	var b strings.Builder
	d := xml.NewDecoder(bytes.NewReader(file))
	for depth := 0; ; {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return b.String(), nil
		}
		if err != nil {
			return "", err
		}
		switch v := token.(type) {
		case xml.StartElement:
			depth++
			b.WriteString("<" + v.Name.Local)
			for _, a := range v.Attr {
				b.WriteString(" " + a.Name.Local + "=" + a.Value)
			}
			b.WriteString(">")
		case xml.EndElement:
			depth--
			b.WriteString("</" + v.Name.Local + ">")
		case xml.CharData:
			if depth > 0 {
				b.Write(v)
			}
		}
	}
}

// Every expected picture is read as by encoding/xml of the standard library.
func TestScanAgreesWithTheStandardLibrary(t *testing.T) {
	files, _ := filepath.Glob("../*/*.svg")
	for _, name := range files {
		body, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		got, err := scanned(body)
		want, errXML := decoded(body)
		if err != nil || errXML != nil || got != want {
			t.Errorf("%s: %v, %v, alike: %v", name, err, errXML, got == want)
		}
	}
	t.Logf("%d files", len(files))
}

// What is not well formed by XML 1.0 (fifth edition) is refused, and so is what
// a picture has no need of.
func TestScanRefuses(t *testing.T) {
	for _, file := range []string{
		"", "text", "<a>", "<a></b>", "<a/><b/>", "<a/>text", "</a>", "<a", "<a b>", `<a b="1" b="2"/>`, `<a b="1"c="2"/>`,
		`<a b="<"/>`, `<a b="1/>`, "<a>&nbsp;</a>", "<a>&</a>", "<a>&#1;</a>", "<a>\x01</a>", "<a>\xff</a>", "<a>]]></a>",
		"<a><!-- b --></a>", "<!DOCTYPE a><a/>", `<?xml version="1.0"?><a/>`, "<a><![CDATA[b]]></a>", "<a b='1'/>", "<x:a/>", `<a x:b="1"/>`, "< a/>",
	} {
		if _, err := scanned([]byte(file)); err == nil {
			t.Errorf("%q is read", file)
		}
	}
	if got, err := scanned([]byte(`<a b="&lt;&#215;"> c &amp; d <e/></a>` + "\n")); err != nil || got != `<a b=<×> c & d <e></e></a>` {
		t.Errorf("%q, %v", got, err)
	}
}
