// Fixed serves one file over and over and does nothing else: the most that a service
// in Go could reach. It is for measure.sh.
package main

import (
	"log"
	"net/http"
	"os"
	"strconv"
)

func main() {
	body, err := os.ReadFile(os.Args[2])
	if err != nil {
		log.Fatal(err)
	}
	length := strconv.Itoa(len(body))
	log.Fatal(http.ListenAndServe(os.Args[1], http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "image/svg+xml")
		w.Header().Set("Content-Length", length)
		_, _ = w.Write(body)
	})))
}
