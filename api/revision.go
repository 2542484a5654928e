package api

import (
	"crypto/sha256"
	"encoding/hex"
	"io"
	"os"
	"sync"
	"time"
)

// revision names this build of the program: a hash of its own file. Two builds
// that could draw differently never share one. Where the file cannot be read it
// is the time of the start, which only costs caches a little.
var revision = sync.OnceValue(func() string {
	started := time.Now().UTC().Format(time.RFC3339Nano)
	path, err := os.Executable()
	if err != nil {
		return started
	}
	f, err := os.Open(path)
	if err != nil {
		return started
	}
	defer f.Close()
	sum := sha256.New()
	if _, err := io.Copy(sum, f); err != nil {
		return started
	}
	return hex.EncodeToString(sum.Sum(nil))
})
