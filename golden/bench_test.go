package golden

import (
	"slices"
	"testing"
	"time"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/svg"
)

// spread runs work once for each example and round and reports the median and
// the slowest example beside the usual mean, and the bytes made for one.
//
//	go test ./golden -run '^$' -bench . -benchmem
func spread(b *testing.B, work func(lesson) int) {
	all := lessons(b)
	if len(all) == 0 {
		b.Skip("there are no examples")
	}
	took := make([]time.Duration, len(all)) // the best time of each example
	made := 0
	b.ReportAllocs()
	for b.Loop() {
		made = 0
		for i, l := range all {
			start := time.Now()
			made += work(l)
			if d := time.Since(start); took[i] == 0 || d < took[i] {
				took[i] = d
			}
		}
	}
	slowest, at := time.Duration(0), 0
	for i, d := range took {
		if d > slowest {
			slowest, at = d, i
		}
	}
	b.Logf("slowest: %s: %s", all[at].model.Name, all[at].example)
	slices.Sort(took)
	b.ReportMetric(float64(took[len(took)/2].Nanoseconds()), "median-ns")
	b.ReportMetric(float64(slowest.Nanoseconds()), "slowest-ns")
	b.ReportMetric(float64(made)/float64(len(all)), "bytes/example")
}

func BenchmarkRead(b *testing.B) {
	spread(b, func(l lesson) int {
		if _, err := reading.Read(l.example); err != nil {
			b.Fatal(err)
		}
		return len(l.example)
	})
}

// BenchmarkTell is a problem that was read, worked and told.
func BenchmarkTell(b *testing.B) {
	spread(b, func(l lesson) int { return len(l.model.Tell(l.reading.Problem).Steps) })
}

// BenchmarkDraw is the whole story of a told lesson as SVG.
func BenchmarkDraw(b *testing.B) {
	spread(b, func(l lesson) int { return len(svg.Render(l.telling.Whole, svg.Options{})) })
}

// BenchmarkPicture is the whole way from the text to the picture.
func BenchmarkPicture(b *testing.B) {
	spread(b, func(l lesson) int {
		lesson, err := models.Teach(l.example, l.model.Name)
		if err != nil {
			b.Fatal(err)
		}
		return len(svg.Render(lesson.Whole, svg.Options{}))
	})
}
