package render_test

import "testing"

// BenchmarkDraw takes the built-in room from its text to the bytes of all files.
func BenchmarkDraw(b *testing.B) {
	text, err := example(bow)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if s := draw(bow, text); s.err != nil || s.fault != "" {
			b.Fatal(s.err, s.fault)
		}
	}
}
