package api_test

import (
	"html"
	"regexp"
	"strings"
	"testing"
)

// The wording is chosen once: the page, its pictures' words, the data and the links to
// other lessons all have it.
func TestBritishWordsStandEverywhere(t *testing.T) {
	page := html.UnescapeString(get(t, "/lesson?problem=402-178&words=british"))
	if !strings.Contains(page, "four hundred and two, take away one hundred and seventy-eight") || !strings.Contains(page, `<html lang="en-GB"`) {
		t.Error("402 is not said as in Britain")
	}
	fractions := get(t, "/lesson?problem=3/4=6/8&words=british")
	main, _, _ := strings.Cut(fractions, "<footer")
	if strings.Contains(main, "fourth") || !strings.Contains(main, "quarters") {
		t.Error("fourths stand on the page")
	}
	for _, address := range regexp.MustCompile(`src="(/v1/picture[^"]+)"`).FindAllStringSubmatch(page, -1) {
		if !strings.Contains(address[1], "&words=british") {
			t.Errorf("%s is in other words", address[1])
		}
	}
	_, after, _ := strings.Cut(page, `<section class="after"`)
	after, _, _ = strings.Cut(after, "<footer")
	for _, link := range regexp.MustCompile(`href="(/lesson[^"]+)"`).FindAllStringSubmatch(after, -1) {
		if !strings.Contains(link[1], "&words=british") {
			t.Errorf("%s loses the wording", link[1])
		}
	}
	if !strings.Contains(page, `<input type="hidden" name="words" value="british">`) {
		t.Error("the field loses the wording")
	}
	if cover := get(t, "/?words=british"); !strings.Contains(cover, "three quarters of a cable") || !strings.Contains(cover, `name="words"`) {
		t.Error("the cover has other words")
	}
	if text := get(t, "/v1/picture.txt?problem=1/2=%3F/4&words=british&step=2"); strings.Contains(text, "fourths") || !strings.Contains(text, "quarters") {
		t.Errorf("the picture says %s", text)
	}
	data := get(t, "/v1/lesson.json?problem=3/4=6/8&words=british")
	if strings.Contains(data, "fourth") || !strings.Contains(data, "&words=british") {
		t.Error("the data has fourths, or pictures in other words")
	}
	claim := html.UnescapeString(get(t, "/claim?problem=3/4=5/8&think=same&look=2&words=british"))
	if at := nextLink.FindStringSubmatch(claim); at == nil || !strings.HasSuffix(at[1], "&look=3&words=british") || !strings.Contains(claim, "step=2&words=british") {
		t.Error("the child's page loses the wording")
	}
	if resp := ask(t, "GET", "/v1/picture.svg?problem=3/4&words=english&errors=status"); resp.StatusCode != 400 {
		t.Errorf("words=english: status %d", resp.StatusCode)
	}
	if us := get(t, "/v1/lesson.json?problem=3/4=6/8&words=us"); !strings.Contains(us, "fourths") || strings.Contains(us, "words=") {
		t.Error("the usual words are not those of the United States, or stand in addresses")
	}
}

// The pages beside the lesson have the wording too, and lead on in it.
func TestBritishWordsOfThePagesBeside(t *testing.T) {
	for _, c := range []struct {
		url    string
		status int
		has    string
	}{
		{"/pictures?words=british", 200, "quarters are shaded"},
		{"/tools?words=british", 200, `href="/claim?words=british"`},
		{"/claim?words=british", 200, `href="/pictures?words=british"`},
		{"/lesson?problem=23+ducks&words=british", 400, "&words=british"},
		{"/claim?problem=3/4=6/8&think=maybe&words=british", 400, "&think=first&words=british"},
		{"/pictures?words=irish", 400, "us"},
	} {
		resp := ask(t, "GET", c.url)
		page := html.UnescapeString(body(t, resp))
		if resp.StatusCode != c.status || !strings.Contains(page, c.has) {
			t.Errorf("%s: status %d; want %d and %q", c.url, resp.StatusCode, c.status, c.has)
		}
		if british := strings.Contains(c.url, "british"); british != strings.Contains(page, `lang="en-GB"`) {
			t.Errorf("%s: the page's language", c.url)
		}
	}
}
