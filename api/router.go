package api

import (
	"errors"
	"net/http"

	"github.com/labstack/echo/v4"
)

// router is the one place that knows the router's package: everything else is
// plain net/http.
func router(routes []route, missing func(w http.ResponseWriter, r *http.Request, status int)) http.Handler {
	e := echo.New()
	// The address of a client is that of the connection; no header may claim another.
	e.IPExtractor = echo.ExtractIPDirect()
	e.HTTPErrorHandler = func(err error, c echo.Context) {
		status := http.StatusInternalServerError
		var he *echo.HTTPError
		if errors.As(err, &he) {
			status = he.Code
		}
		if !c.Response().Committed {
			missing(c.Response(), c.Request(), status)
		}
	}
	for _, rt := range routes {
		methods := []string{http.MethodGet, http.MethodHead}
		if rt.body {
			methods = append(methods, http.MethodPost)
		}
		e.Match(methods, rt.path, echo.WrapHandler(rt.serve))
	}
	return e
}
