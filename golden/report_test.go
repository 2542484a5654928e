package golden

import (
	"html"
	"os"
	"strings"
	"testing"
)

// report writes a page that shows every changed file old and new, side by side;
// with nothing changed there is no page.
func report(t *testing.T, changed []string) {
	const page = "report.html"
	t.Helper()
	if len(changed) == 0 {
		os.Remove(page)
		return
	}
	var b strings.Builder
	b.WriteString(`<!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>Changed lessons</title>
<style>body{font:16px/1.4 sans-serif;margin:24px}section{border-top:1px solid #ccc;padding:16px 0}
div{display:flex;gap:24px;align-items:flex-start}figure{margin:0;flex:1;min-width:0}img{width:100%;border:1px solid #eee}
pre{white-space:pre-wrap;background:#f6f6f6;padding:8px}</style>
<h1>Changed lessons</h1><p>Left as it was, right as it is now.</p>
`)
	for _, name := range changed {
		b.WriteString("<section><h2>" + html.EscapeString(name) + "</h2><div>" + show(name) + show(gotName(name)) + "</div></section>\n")
	}
	b.WriteString("</html>\n")
	if err := os.WriteFile(page, []byte(b.String()), 0o644); err != nil {
		t.Error(err)
	}
}

// show is one file in the report.
func show(name string) string {
	body, err := os.ReadFile(name)
	switch {
	case err != nil:
		return "<figure><p>(there was none)</p></figure>"
	case strings.HasSuffix(name, ".svg"):
		return `<figure><img src="` + html.EscapeString(name) + `" alt=""></figure>`
	}
	return "<figure><pre>" + html.EscapeString(string(body)) + "</pre></figure>"
}
