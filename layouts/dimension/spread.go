package dimension

import "roomwright/geom"

// Spread moves places apart until each lies at least so far from the one
// before it, keeping their order and moving them as little as can be in the
// sense of least squares. Places must be ascending; apart[i] is the least
// distance between place i and place i+1.
func Spread(places, apart []geom.Length) []geom.Length {
	// Less its distance from the first, each place may not fall below the one
	// before: a monotone fit, found by pooling neighbours that fall.
	type block struct {
		sum geom.Length
		n   int
	}
	mean := func(b block) geom.Length { return (b.sum).RoundDown(geom.Length(b.n)) / geom.Length(b.n) }
	var blocks []block
	shift := make([]geom.Length, len(places))
	for i, p := range places {
		if i > 0 {
			shift[i] = shift[i-1] + apart[i-1]
		}
		b := block{p - shift[i], 1}
		for len(blocks) > 0 && mean(blocks[len(blocks)-1]) > mean(b) {
			last := blocks[len(blocks)-1]
			blocks = blocks[:len(blocks)-1]
			b = block{b.sum + last.sum, b.n + last.n}
		}
		blocks = append(blocks, b)
	}
	out := make([]geom.Length, 0, len(places))
	for _, b := range blocks {
		m := mean(b)
		for range b.n {
			out = append(out, m+shift[len(out)])
		}
	}
	return out
}

// even returns n-1 equal distances.
func even(n int, pitch geom.Length) []geom.Length {
	out := make([]geom.Length, max(0, n-1))
	for i := range out {
		out[i] = pitch
	}
	return out
}
