package survey

import "math"

// matrix is a square of coefficients, of which the first rows and columns count.
type matrix [5][5]float64

// solve returns x with m·x = right for the first n unknowns, by elimination
// with the greatest pivot; ok is false where m does not fix x.
func (m matrix) solve(right unknowns, n int) (x unknowns, ok bool) {
	most := 0.0
	for i := range n {
		most = max(most, math.Abs(m[i][i]))
	}
	for k := range n {
		p := k
		for i := k + 1; i < n; i++ {
			if math.Abs(m[i][k]) > math.Abs(m[p][k]) {
				p = i
			}
		}
		if math.Abs(m[p][k]) <= most*1e-13 {
			return unknowns{}, false
		}
		m[p], m[k] = m[k], m[p]
		right[p], right[k] = right[k], right[p]
		for i := k + 1; i < n; i++ {
			f := m[i][k] / m[k][k]
			for j := k; j < n; j++ {
				m[i][j] -= float64(f * m[k][j])
			}
			right[i] -= float64(f * right[k])
		}
	}
	for k := n - 1; k >= 0; k-- {
		sum := right[k]
		for j := k + 1; j < n; j++ {
			sum -= float64(m[k][j] * x[j])
		}
		x[k] = sum / m[k][k]
	}
	return x, true
}

// dot returns the sum of the products of a and b.
func dot(a, b unknowns) float64 {
	sum := 0.0
	for i := range a {
		sum += float64(a[i] * b[i])
	}
	return sum
}
