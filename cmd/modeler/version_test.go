package main

import (
	"strings"
	"testing"
)

func TestVersionIsSaid(t *testing.T) {
	var out, errors strings.Builder
	if status := run([]string{"--version"}, &out, &errors); status != done || !strings.HasPrefix(out.String(), "modeler ") || errors.Len() > 0 {
		t.Errorf("status %d, %q, %q", status, out.String(), errors.String())
	}
}
