package api

import (
	"log/slog"
	"net/http"
	"strconv"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"
)

// meter counts what the service does. It knows routes and statuses, nothing of who
// asked or what.
type meter struct {
	*prometheus.Registry
	took    *prometheus.HistogramVec
	running prometheus.Gauge
}

func newMeter(s *store) *meter {
	m := &meter{
		Registry: prometheus.NewRegistry(),
		took: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "modeler_request_duration_seconds", Help: "How long requests took, by route and status.",
			Buckets: []float64{.0001, .00025, .0005, .001, .0025, .005, .01, .025, .1, .5, 2},
		}, []string{"route", "status"}),
		running: prometheus.NewGauge(prometheus.GaugeOpts{Name: "modeler_requests_in_progress", Help: "Requests being answered."}),
	}
	m.MustRegister(m.took, m.running, collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}),
		prometheus.NewGaugeFunc(prometheus.GaugeOpts{Name: "modeler_store_bytes", Help: "Bytes of answers kept."}, func() float64 {
			_, bytes := s.size()
			return float64(bytes)
		}),
		prometheus.NewGaugeFunc(prometheus.GaugeOpts{Name: "modeler_store_entries", Help: "Answers kept, and spellings that lead to them."}, func() float64 {
			entries, _ := s.size()
			return float64(entries)
		}))
	return m
}

// Metrics serves the numbers in the Prometheus text format, for a listener that is
// not open to the world.
func (s *Service) Metrics() http.Handler {
	return promhttp.HandlerFor(s.meter.Registry, promhttp.HandlerOpts{})
}

// noted remembers what was answered.
type noted struct {
	http.ResponseWriter
	status, bytes int
}

func (n *noted) WriteHeader(status int) {
	n.status = status
	n.ResponseWriter.WriteHeader(status)
}

func (n *noted) Write(b []byte) (int, error) {
	n.bytes += len(b)
	return n.ResponseWriter.Write(b)
}

// metered counts the requests of a handler, and writes a line for each if told: the
// beginning of the problem, and nothing about who asked. Addresses that are no
// route share one name, so that the numbers do not grow with what people make up.
func (s *Service) metered(log bool, h http.Handler) http.Handler {
	known := map[string]bool{}
	for _, rt := range s.routes(nil) {
		known[rt.path] = true
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		s.meter.running.Inc()
		defer s.meter.running.Dec()
		start, n := time.Now(), &noted{ResponseWriter: w, status: http.StatusOK}
		h.ServeHTTP(n, r)
		path := r.URL.Path
		if !known[path] {
			path = "other"
		}
		took := time.Since(start)
		s.meter.took.WithLabelValues(path, strconv.Itoa(n.status)).Observe(took.Seconds())
		if log {
			slog.Info("request", "method", Clip(r.Method), "route", path, "problem", Clip(readQuery(r.URL.RawQuery)["problem"]),
				"status", n.status, "bytes", n.bytes, "microseconds", took.Microseconds())
		}
	})
}
