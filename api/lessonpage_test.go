package api_test

import (
	"html"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models"
	"modeler/models/words"
)

// A lesson as it is looked at is an address: every link to a move leads to that move
// alone, with all other choices kept.
func TestOneMoveAtATimeIsABookmark(t *testing.T) {
	l, err := models.Teach("402 - 178", "")
	if err != nil {
		t.Fatal(err)
	}
	all := get(t, "/lesson?problem=402-178&theme=ink")
	on := regexp.MustCompile(`<a href="([^"]*step=1[^"]*)"`).FindStringSubmatch(all)
	if on == nil {
		t.Fatal("no way to one move at a time")
	}
	url := html.UnescapeString(on[1])
	for i := range l.Steps {
		page := get(t, url)
		if strings.Count(page, `<li class="move"`) != len(l.Steps) || strings.Count(page, " hidden>\n<h3>") != len(l.Steps)-1 {
			t.Errorf("%s: not one move of %d is shown", url, len(l.Steps))
		}
		if !strings.Contains(page, words.MoveAt(i+1, len(l.Steps))+" · 402 − 178 · modeler</title>") {
			t.Errorf("%s: the title does not say which move it is", url)
		}
		if !strings.Contains(url, "theme=ink") || strings.Contains(page, "theme=dark") {
			t.Errorf("%s: the choice of ink is lost", url)
		}
		next := regexp.MustCompile(`<a class="on" rel="next" href="([^"]+)"`).FindStringSubmatch(page)
		if last := i == len(l.Steps)-1; last != (next == nil) || last != !strings.Contains(page, `aria-labelledby="whole" hidden`) {
			t.Errorf("%s: a way on, or the whole story, where it should not be", url)
		}
		if next != nil {
			url = html.UnescapeString(next[1])
		}
	}
	if resp := ask(t, "GET", "/lesson?problem=402-178&step=99"); resp.StatusCode != 400 || !strings.Contains(body(t, resp), `href="/lesson?problem=402-178&amp;step=7"`) {
		t.Errorf("a move too far: status %d, or no link to the last", resp.StatusCode)
	}
}

func TestWrongChoicesOfferOnesThatWork(t *testing.T) {
	for query, try := range map[string]string{
		"theme=inc": "theme=ink", "answer=hide": "answer=hidden", "writing=europa": "writing=europe", "model=base-ten-block": "model=base-ten-blocks", "step=x": "step=1",
	} {
		resp := ask(t, "GET", "/lesson?problem=402-178&"+query)
		page := body(t, resp)
		at := regexp.MustCompile(`class="sum try" href="([^"]+)"`).FindStringSubmatch(page)
		if resp.StatusCode < 400 || at == nil || !strings.HasSuffix(at[1], try) {
			t.Errorf("%s: status %d, offers %q", query, resp.StatusCode, at)
			continue
		}
		if resp := ask(t, "GET", html.UnescapeString(at[1])); resp.StatusCode != 200 {
			t.Errorf("%s: what is offered has status %d", query, resp.StatusCode)
		}
	}
}

var (
	tags    = regexp.MustCompile(`<[^>]*>`)
	numbers = regexp.MustCompile(`[0-9][0-9,.]*[0-9]|[0-9]`)
)

// The page for the child gives no answer away: neither in what is seen nor in the
// words of its pictures. Numbers below 20 are left out, since they also count moves
// and groups; claims are looked at for their verdict.
func TestTheChildsLessonHasNoAnswers(t *testing.T) {
	looked := 0
	for _, m := range models.All {
		for _, text := range m.Examples {
			l, err := models.Teach(text, m.Name)
			if err != nil {
				t.Fatal(err)
			}
			full := get(t, "/lesson?answer=hidden&theme=ink&model="+m.Name+"&problem="+url.QueryEscape(text))
			_, main, _ := strings.Cut(full, "<main")
			main, _, _ = strings.Cut(main, `<section class="after"`)
			alts := regexp.MustCompile(`alt="([^"]*)"`).FindAllStringSubmatch(main, -1)
			seen := tags.ReplaceAllString(main, " ")
			for _, a := range alts {
				seen += " " + a[1]
			}
			seen = html.UnescapeString(seen)
			if l.Problem.Kind == arithmetic.Claim && (strings.Contains(seen, "✓") || strings.Contains(seen, "✗")) {
				t.Errorf("%s: the verdict stands on the child's page", text)
			}
			if n := l.Answer.Number.String(); len(n) > 1 && n >= "20" && !strings.Contains(l.Problem.String(), n) && (l.Problem.Kind == arithmetic.Addition || l.Problem.Kind == arithmetic.Subtraction || l.Problem.Kind == arithmetic.Product || l.Problem.Kind == arithmetic.Division) {
				looked++
				for _, found := range numbers.FindAllString(seen, -1) {
					if found == n {
						t.Errorf("%s with %s: the answer %s stands on the child's page", text, m.Name, n)
						break
					}
				}
			}
		}
	}
	if looked < 20 {
		t.Errorf("only %d answers were looked for", looked)
	}
}

// The child is asked before the move: the picture beside a question is that of the
// move before.
func TestTheChildIsAskedBeforeTheMove(t *testing.T) {
	page := html.UnescapeString(get(t, "/lesson?problem=402-178&answer=hidden"))
	_, third, _ := strings.Cut(page, `id="move-3"`)
	third, _, _ = strings.Cut(third, "</li>")
	if !strings.Contains(third, "Can we make ones now?") || !strings.Contains(third, "step=2&answer=hidden") || strings.Contains(third, "step=3&answer=hidden\" alt") {
		t.Errorf("move 3 shows what comes of it: %s", third)
	}
}

func TestALessonOffersMoreToDo(t *testing.T) {
	page := get(t, "/lesson?problem=402-178&writing=europe")
	_, after, _ := strings.Cut(html.UnescapeString(page), `<section class="after"`)
	for _, want := range []string{words.Pages.Easier, words.Pages.Like, words.Pages.Harder, "224 + 178", "answer=hidden&theme=ink"} {
		if !strings.Contains(after, want) {
			t.Errorf("after the lesson there is no %q", want)
		}
	}
	if !regexp.MustCompile(`href="/lesson\?problem=502-179&writing=europe"`).MatchString(after) {
		t.Error("the way to write does not go along to the next problem")
	}
}
