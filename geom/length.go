package geom

// Length is a real or paper length, in sixteenths of a micrometre.
type Length int64

// The units that are exact in a Length.
const (
	Millimetre Length = 16000
	Centimetre Length = 10 * Millimetre
	Metre      Length = 1000 * Millimetre
	Inch       Length = 406400
	Foot       Length = 12 * Inch
)

// MM returns n whole millimetres.
func MM(n int64) Length { return Length(n) * Millimetre }

// In returns n whole inches.
func In(n int64) Length { return Length(n) * Inch }

// InFrac returns whole inches and num/den of an inch; it is exact for
// denominators up to 128 that are powers of two.
func InFrac(whole, num, den int64) Length {
	return Length(whole)*Inch + Length(num)*Inch/Length(den)
}

// Millimetres returns l in millimetres, for arithmetic that cannot be exact.
func (l Length) Millimetres() float64 { return float64(l) / float64(Millimetre) }

// Inches returns l in inches, for arithmetic that cannot be exact.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

// Abs returns l without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// Round returns the multiple of step nearest to l, halves away from zero.
// A step of zero or less leaves l as it is.
func (l Length) Round(step Length) Length {
	if step <= 0 {
		return l
	}
	if l < 0 {
		return -(-l).Round(step)
	}
	return (l + step/2) / step * step
}

// RoundUp returns the least multiple of step that is not less than l.
func (l Length) RoundUp(step Length) Length {
	if step <= 0 {
		return l
	}
	down := l.RoundDown(step)
	if down < l {
		return down + step
	}
	return down
}

// RoundDown returns the greatest multiple of step that is not more than l.
func (l Length) RoundDown(step Length) Length {
	if step <= 0 {
		return l
	}
	q := l / step
	if l%step < 0 {
		q--
	}
	return q * step
}
