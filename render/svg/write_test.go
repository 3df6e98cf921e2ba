package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"testing"
)

// wellFormed reads a file as XML to its end.
func wellFormed(t *testing.T, file []byte) {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(file))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
	}
}
