package measure_test

import (
	"errors"
	"fmt"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// drawShow draws one of the ways to print lengths.
func drawShow(t *rapid.T) (measure.Show, measure.System) {
	if rapid.Bool().Draw(t, "millimetres") {
		to := rapid.SampledFrom([]geom.Length{geom.Centimetre, 5 * geom.Millimetre, geom.Millimetre, geom.Millimetre / 2, geom.Millimetre / 10}).Draw(t, "to")
		return measure.Show{Form: measure.MillimetresOnly, To: to}, measure.Millimetres
	}
	form := rapid.SampledFrom([]measure.Form{measure.FeetAndInches, measure.InchesOnly}).Draw(t, "form")
	den := rapid.SampledFrom([]geom.Length{1, 2, 4, 8, 16, 32, 64}).Draw(t, "den")
	return measure.Show{Form: form, To: geom.Inch / den}, measure.Inches
}

// What is said can be typed back and means what it said; it is within half a
// step of the length.
func TestRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		show, system := drawShow(t)
		l := geom.Length(rapid.Int64Range(-int64(measure.Limit)/2, int64(measure.Limit)/2).Draw(t, "l"))
		round := show.Round(l)
		if off := (round - l).Abs(); 2*off > show.To {
			t.Fatalf("%d is rounded to %d, off by %d with a step of %d", l, round, off, show.To)
		}
		texts := []string{show.Say(l)}
		if show.Form != measure.InchesOnly || system == measure.Inches {
			texts = append(texts, show.Figure(l), show.FeetInches(l))
		}
		for _, text := range texts {
			back, err := measure.Parse(text, system)
			if err != nil || back != round {
				t.Fatalf("%d printed as %s is read as %d, %v; want %d", l, text, back, err, round)
			}
		}
		named := show
		named.Named = true
		other := measure.Millimetres - system
		if back, err := measure.Parse(named.Say(l), other); err != nil || back != round {
			t.Fatalf("%d printed as %s is read as %d, %v in %v; want %d", l, named.Say(l), back, err, other, round)
		}
	})
}

// Printing never goes back: a longer length never prints as a shorter one.
func TestRoundKeepsOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		show, _ := drawShow(t)
		a := geom.Length(rapid.Int64Range(-1e9, 1e9).Draw(t, "a"))
		b := a + geom.Length(rapid.Int64Range(0, 1e6).Draw(t, "more"))
		if show.Round(a) > show.Round(b) {
			t.Fatalf("%d < %d but rounded %d > %d", a, b, show.Round(a), show.Round(b))
		}
		if show.Round(-a) != -show.Round(a) {
			t.Fatalf("%d and its negative are rounded differently", a)
		}
	})
}

// Every way of writing feet, inches and a fraction gives the same length.
func TestSpellings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ft := rapid.Int64Range(0, 200).Draw(t, "feet")
		in := rapid.Int64Range(0, 11).Draw(t, "inches")
		den := rapid.SampledFrom([]int64{2, 4, 8, 16, 32, 64}).Draw(t, "den")
		num := rapid.Int64Range(1, den-1).Draw(t, "num")
		foot := rapid.SampledFrom([]string{"'", "′", "’", " ft", "ft", " feet", " foot ", " ft."}).Draw(t, "foot mark")
		inch := rapid.SampledFrom([]string{`"`, "″", "”", "''", " in", "in", " inches", " inch", " in.", ""}).Draw(t, "inch mark")
		gap := rapid.SampledFrom([]string{" ", "-", " - ", "  "}).Draw(t, "gap")
		joint := rapid.SampledFrom([]string{" ", "-"}).Draw(t, "joint")
		slash := rapid.SampledFrom([]string{"/", "⁄", "∕"}).Draw(t, "slash")
		text := fmt.Sprintf("%d%s%s%d%s%d%s%d%s", ft, foot, gap, in, joint, num, slash, den, inch)
		want := geom.InFrac(ft*12+in, num, den)
		for _, system := range []measure.System{measure.Inches, measure.Millimetres} {
			if got, err := measure.Parse(text, system); err != nil || got != want {
				t.Fatalf("Parse(%q, %v) = %d, %v; want %d", text, system, got, err, want)
			}
		}
	})
}

// Millimetres with decimals are the same in mm, cm and m.
func TestMetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tenths := rapid.Int64Range(0, 9_999_999).Draw(t, "tenths of a millimetre")
		want := geom.Length(tenths) * geom.Millimetre / 10
		for _, text := range []string{
			fmt.Sprintf("%d.%d", tenths/10, tenths%10),
			fmt.Sprintf("%d.%dmm", tenths/10, tenths%10),
			fmt.Sprintf("%d.%02d cm", tenths/100, tenths%100),
			fmt.Sprintf("%d.%04d m", tenths/10000, tenths%10000),
		} {
			if got, err := measure.Parse(text, measure.Millimetres); err != nil || got != want {
				t.Fatalf("Parse(%q) = %d, %v; want %d", text, got, err, want)
			}
		}
	})
}

func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"", "0", "135", `12' 6-1/2"`, "12ft 6-1/2in", "6 ½ in", "12′ 6½″", "3.81 m", "1,200", "71/2", "135#x",
		"¹⁵⁄₁₆ in", "57-1/2 x 32", "4 x 8 ft", "−3", "\xff", "1/0", "9999999999999999999", "12' - 6", "feet and inches to 1/8",
	} {
		f.Add(seed, true)
		f.Add(seed, false)
	}
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		system := measure.Inches
		if metric {
			system = measure.Millimetres
		}
		l, err := measure.Parse(text, system)
		checkFault(t, text, err)
		if l.Abs() > measure.Limit {
			t.Fatalf("%q is %d, past the limit", text, l)
		}
		if err == nil {
			show := measure.DefaultShow(system)
			if back, err := measure.Parse(show.Say(l), system); err != nil || back != show.Round(l) {
				t.Fatalf("%q is said as %s and read back as %d, %v", text, show.Say(l), back, err)
			}
		}
		_, _, err = measure.ParseSize(text, system)
		checkFault(t, text, err)
		show, err := measure.ParseShow(text)
		checkFault(t, text, err)
		if err == nil {
			if back, err := measure.ParseShow(show.String()); err != nil || back != show {
				t.Fatalf("%q is %v, read back as %v, %v", text, show, back, err)
			}
		}
	})
}

// checkFault fails unless err is nil or a whole ParseError about text.
func checkFault(t *testing.T, text string, err error) {
	t.Helper()
	if err == nil {
		return
	}
	var fault *measure.ParseError
	if !errors.As(err, &fault) {
		t.Fatalf("%q: %T is no ParseError", text, err)
	}
	if fault.Offset < 0 || fault.Offset > utf8.RuneCountInString(text) {
		t.Fatalf("%q: offset %d is outside the text", text, fault.Offset)
	}
	if fault.Problem == "" || fault.Try[0] == "" || fault.Try[1] == "" {
		t.Fatalf("%q: an incomplete fault: %+v", text, *fault)
	}
}
