// Package raster draws the files of package svg as PNG, for the places that show
// no SVG. It reads the file and not the scene, so that there is one drawing only;
// and it reads what package svg writes, not SVG at large.
//
// Pixels are counted in floats; no number of a problem ever is.
package raster

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"image/color"
	"image/png"
	"io"
	"strconv"
	"strings"

	"github.com/fogleman/gg"
	"github.com/go-fonts/liberation/liberationsansbold"
	"github.com/go-fonts/liberation/liberationsansregular"
	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
)

// The bounds of a PNG.
const (
	MaxWidth  = 4000       // pixels
	MaxPixels = 24_000_000 // width times height
)

// ErrTooLarge says that a PNG would have more than MaxPixels pixels.
var ErrTooLarge = errors.New("raster: the picture would have too many pixels")

var regular, bold = mustFont(liberationsansregular.TTF), mustFont(liberationsansbold.TTF)

func mustFont(ttf []byte) *opentype.Font {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic("raster: " + err.Error()) // it is part of the program
	}
	return f
}

// PNG draws a file of package svg so many pixels wide; 0 is its own width. A file
// that package svg has not written, or more than [MaxPixels], is an error.
func PNG(svg []byte, width int) ([]byte, error) {
	p := painter{look: []look{{fill: "#000000", stroke: "none", width: 1, anchor: "start", size: 16}}, want: width}
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, fmt.Errorf("raster: %w", err)
		}
		switch t := token.(type) {
		case xml.StartElement:
			if err := p.start(t); err != nil {
				return nil, fmt.Errorf("raster: <%s>: %w", t.Name.Local, err)
			}
		case xml.EndElement:
			if err := p.end(t.Name.Local); err != nil {
				return nil, fmt.Errorf("raster: %w", err)
			}
		case xml.CharData:
			p.words.Write(t)
		}
	}
	if p.Context == nil {
		return nil, errors.New("raster: there is no picture in the file")
	}
	var out bytes.Buffer
	if err := png.Encode(&out, p.Image()); err != nil {
		return nil, fmt.Errorf("raster: %w", err)
	}
	return out.Bytes(), nil
}

var errOutside = errors.New("a number that no picture has")

// parse reads a number of the file, none of which is large.
func parse(text string) (float64, error) {
	const largest = 100_000
	v, err := strconv.ParseFloat(text, 64)
	if err == nil && !(v >= -largest && v <= largest) { // nor is it NaN
		err = errOutside
	}
	return v, err
}

// look is what an element hands down to the elements inside it.
type look struct {
	fill, stroke string
	width        float64
	dash         []float64
	round, bold  bool
	anchor       string
	size         float64
}

type painter struct {
	*gg.Context
	want  int     // pixels across; 0 is the file's own width
	scale float64 // pixels to a unit
	look  []look
	at    map[string]string // the attributes of the open element
	words strings.Builder
}

// start opens an element and draws it, if it is a shape.
func (p *painter) start(t xml.StartElement) error {
	p.at = map[string]string{}
	for _, a := range t.Attr {
		p.at[a.Name.Local] = a.Value
	}
	now := p.look[len(p.look)-1]
	if err := now.change(p.at); err != nil {
		return err
	}
	p.look = append(p.look, now)
	p.words.Reset()
	var err error
	n := func(name string) float64 {
		if p.at[name] == "" {
			return 0
		}
		v, e := parse(p.at[name])
		err = errors.Join(err, e)
		return v * p.scale
	}
	switch t.Name.Local {
	case "svg":
		return p.paper()
	case "g", "title", "desc", "text":
		return nil
	}
	if p.Context == nil {
		return errors.New("outside the picture")
	}
	switch t.Name.Local {
	case "rect":
		if r := n("rx"); r > 0 {
			p.DrawRoundedRectangle(n("x"), n("y"), n("width"), n("height"), r)
		} else {
			p.DrawRectangle(n("x"), n("y"), n("width"), n("height"))
		}
	case "circle":
		p.DrawCircle(n("cx"), n("cy"), n("r"))
	case "line":
		p.DrawLine(n("x1"), n("y1"), n("x2"), n("y2"))
	case "path":
		if err := p.trace(p.at["d"]); err != nil {
			return err
		}
	default:
		return errors.New("not an element that is drawn here")
	}
	if err == nil {
		p.paint(now)
	}
	return err
}

// end closes an element; a text is drawn when all its words are there.
func (p *painter) end(name string) error {
	now := p.look[len(p.look)-1]
	p.look = p.look[:len(p.look)-1]
	if name != "text" {
		return nil
	}
	if p.Context == nil {
		return errors.New("a text outside the picture")
	}
	x, errX := parse(p.at["x"])
	y, errY := parse(p.at["y"])
	if err := errors.Join(errX, errY); err != nil {
		return err
	}
	face, err := now.face(p.scale)
	if err != nil {
		return err
	}
	defer face.Close()
	p.SetFontFace(face)
	p.SetColor(paint(now.fill))
	wide, _ := p.MeasureString(p.words.String())
	shift := map[string]float64{"middle": wide / 2, "end": wide}[now.anchor]
	p.DrawString(p.words.String(), x*p.scale-shift, y*p.scale)
	return nil
}

// paper makes the picture of the size that is wanted.
func (p *painter) paper() error {
	box := strings.Fields(p.at["viewBox"])
	if len(box) != 4 {
		return errors.New("no view box")
	}
	w, errW := strconv.Atoi(box[2])
	h, errH := strconv.Atoi(box[3])
	own, errOwn := strconv.Atoi(p.at["width"])
	if err := errors.Join(errW, errH, errOwn); err != nil {
		return err
	}
	width := own
	if p.want > 0 {
		width = p.want
	}
	if w < 1 || h < 1 || width < 1 || width > MaxWidth {
		return fmt.Errorf("%d pixels for %d by %d units", width, w, h)
	}
	height := (h*width + w/2) / w
	if width*height > MaxPixels {
		return ErrTooLarge
	}
	p.scale = float64(width) / float64(w)
	p.Context = gg.NewContext(width, max(1, height))
	return nil
}

// change applies the attributes of an element.
func (l *look) change(at map[string]string) error {
	var err error
	number := func(text string) float64 {
		v, e := parse(text)
		if v <= 0 {
			e = errOutside
		}
		err = errors.Join(err, e)
		return v
	}
	for name, value := range at {
		switch name {
		case "fill":
			l.fill = value
		case "stroke":
			l.stroke = value
		case "stroke-width":
			l.width = number(value)
		case "stroke-linecap":
			l.round = value == "round"
		case "stroke-dasharray":
			l.dash = nil
			for _, one := range strings.Fields(value) {
				l.dash = append(l.dash, number(one))
			}
		case "font-size":
			l.size = number(value)
		case "font-weight":
			l.bold = value == "700"
		case "text-anchor":
			l.anchor = value
		}
	}
	return err
}

func (l look) face(scale float64) (font.Face, error) {
	f := regular
	if l.bold {
		f = bold
	}
	return opentype.NewFace(f, &opentype.FaceOptions{Size: l.size * scale, DPI: 72, Hinting: font.HintingNone})
}

// paint fills and edges the shape that is traced.
func (p *painter) paint(l look) {
	if l.fill != "none" {
		p.SetColor(paint(l.fill))
		p.FillPreserve()
	}
	if l.stroke != "none" {
		p.SetColor(paint(l.stroke))
		p.SetLineWidth(l.width * p.scale)
		p.SetLineCapButt()
		if l.round {
			p.SetLineCapRound()
		}
		p.SetLineJoinRound()
		dash := make([]float64, len(l.dash))
		for i, d := range l.dash {
			dash[i] = d * p.scale
		}
		p.SetDash(dash...)
		p.StrokePreserve()
	}
	p.ClearPath()
}

// paint reads #rrggbb, the one way in which package svg writes a colour.
func paint(text string) color.Color {
	v, err := strconv.ParseUint(strings.TrimPrefix(text, "#"), 16, 32)
	if err != nil {
		return color.Black
	}
	return color.RGBA{uint8(v >> 16), uint8(v >> 8), uint8(v), 255}
}
