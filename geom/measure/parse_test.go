package measure_test

import (
	"errors"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// The ways in which people write twelve feet six and a half inches, and the
// other lengths below, follow common practice, no source; the values are
// arithmetic from 1 in = 25.4 mm (international inch).
func TestParse(t *testing.T) {
	const in, mm = measure.Inches, measure.Millimetres
	a := 150*geom.Inch + geom.Inch/2 // 12' 6-1/2"
	tests := []struct {
		text string
		bare measure.System
		want geom.Length
	}{
		{`12' 6-1/2"`, in, a},
		{`12' 6 1/2"`, mm, a},
		{`12'-6 1/2"`, in, a},
		{`12'-6-1/2"`, in, a},
		{`12' - 6 1/2"`, in, a},
		{`12'6½"`, in, a},
		{`12′ 6½″`, in, a},
		{`12’ 6½”`, in, a},
		{`12‘ 6 ½“`, in, a},
		{`12' 6 1/2''`, in, a},
		{`12´ 6.5 in`, in, a},
		{`12′ 6 1/2′′`, in, a},
		{`12'–6 ½"`, in, a},
		{`12 ft 6 1/2 in`, in, a},
		{`12ft 6-1/2in`, mm, a},
		{`12ft6-1/2in`, in, a},
		{`12 ft. 6 1/2 in.`, in, a},
		{`12 feet 6 1/2 inches`, in, a},
		{`12 Foot 6 1⁄2 Inch`, in, a},
		{`12' 6 ¹⁄₂"`, in, a},
		{`12' 6¹⁄₂"`, in, a},
		{`12' 6.5"`, in, a},
		{`12' 6 1/2`, in, a},
		{`12' 6 1/2`, mm, a},
		{"12'\u00a06\u20091/2\"", in, a},
		{`  150-1/2  `, in, a},
		{`150 1/2`, in, a},
		{`150½`, in, a},
		{`150.5`, in, a},
		{`150 1/2 in`, mm, a},
		{`150-1/2"`, mm, a},
		{`3822.7`, mm, a},
		{`3822.7 mm`, in, a},
		{`382.27 cm`, in, a},
		{`3.8227 m`, in, a},
		{`3.8227 metres`, in, a},
		{`3822.7 millimetres`, in, a},
		{`12'`, in, geom.In(144)},
		{`12 ft`, mm, geom.In(144)},
		{`12' 0"`, in, geom.In(144)},
		{`12' 0-1/2"`, in, geom.InFrac(144, 1, 2)},
		{`12' 1/2"`, in, geom.InFrac(144, 1, 2)},
		{`12'-1/2"`, in, geom.InFrac(144, 1, 2)},
		{`12.6'`, in, geom.Length(12.6 * 12 * 406400)},
		{`6 1/2 ft`, in, geom.In(78)},
		{`1/2`, in, geom.Inch / 2},
		{`1/2"`, mm, geom.Inch / 2},
		{`½"`, in, geom.Inch / 2},
		{`.5"`, in, geom.Inch / 2},
		{`12' .5"`, in, geom.InFrac(144, 1, 2)},
		{`¹⁵⁄₁₆ in`, in, geom.Inch / 16 * 15},
		{`6 ½ in`, in, geom.InFrac(6, 1, 2)},
		{`15-1/128`, in, geom.InFrac(15, 1, 128)},
		{`12 1/2 mm`, in, 12*geom.Millimetre + geom.Millimetre/2},
		{`0`, in, 0},
		{`-3/4`, in, -geom.Inch / 4 * 3},
		{`−2' 3"`, in, -geom.In(27)},
		{`010`, mm, geom.MM(10)}, // not octal
		{`09`, mm, geom.MM(9)},
		{`010.5`, mm, geom.MM(21) / 2},
		{`08/010 in`, mm, geom.Inch / 10 * 8},
		{`3.810 m`, in, geom.MM(3810)},
		{`1/3 in`, in, 135467},   // 406400/3 = 135466 2/3, to the nearest
		{`2/3 in`, in, 270933},   // 270933 1/3
		{`0.00003125 mm`, in, 1}, // half of 1/16 µm: away from zero
		{`-0.00003125 mm`, in, -1},
		{`0.000031249999 mm`, in, 0},
		{`1000 m`, in, measure.Limit},
	}
	for _, tt := range tests {
		got, err := measure.Parse(tt.text, tt.bare)
		if err != nil {
			t.Errorf("Parse(%q, %v): %v", tt.text, tt.bare, err)
			continue
		}
		if got != tt.want {
			t.Errorf("Parse(%q, %v) = %d, want %d", tt.text, tt.bare, got, tt.want)
		}
	}
}

func TestParseUnitsOfSystem(t *testing.T) {
	if l, _ := measure.Parse("135", measure.Inches); l != geom.In(135) {
		t.Errorf("135 in an inch file is %d", l)
	}
	if l, _ := measure.Parse("135", measure.Millimetres); l != geom.MM(135) {
		t.Errorf("135 in a millimetre file is %d", l)
	}
}

func TestParseFaults(t *testing.T) {
	const in, mm = measure.Inches, measure.Millimetres
	tests := []struct {
		text string
		bare measure.System
		want measure.ParseError
	}{
		{"", in, measure.ParseError{Problem: "empty"}},
		{"  ", mm, measure.ParseError{Problem: "empty", Offset: 2}},
		{"135#to the pipe", in, measure.ParseError{Understood: "135", Offset: 3, Problem: "not a length after 135",
			Try: [2]string{"135", `11' 3"`}, Hint: "a comment needs a space before #"}},
		{"135 to the pipe", mm, measure.ParseError{Understood: "135", Offset: 4, Problem: "not a length after 135",
			Try: [2]string{"135", "135 mm"}}},
		{"12' 6 1/2\" or so", in, measure.ParseError{Understood: "12' 6 1/2\"", Offset: 11, Problem: "not a length after 12' 6 1/2\"",
			Try: [2]string{"150-1/2", `12' 6-1/2"`}}},
		{"6 1/2", mm, measure.ParseError{Problem: "a fraction without a unit in a millimetre file",
			Try: [2]string{"6 1/2 in", "165.1"}, Hint: "quotes round a whole value swallow the inch mark; write 6 1/2 in"}},
		{"½", mm, measure.ParseError{Problem: "a fraction without a unit in a millimetre file",
			Try: [2]string{"½ in", "12.7"}, Hint: "quotes round a whole value swallow the inch mark; write ½ in"}},
		{"1,200", in, measure.ParseError{Problem: "a comma in a number", Hint: "write 1200"}},
		{"1,200.5 mm", in, measure.ParseError{Problem: "a comma in a number", Hint: "write 1200.5"}},
		{"1,200,000", in, measure.ParseError{Problem: "a comma in a number", Hint: "write 1200000"}},
		{"3,81 m", mm, measure.ParseError{Problem: "a comma in a number", Hint: "write 3.81"}},
		{"71/2", in, measure.ParseError{Problem: "a fraction of one or more", Hint: "did you mean 7-1/2?"}},
		{"151/4", in, measure.ParseError{Problem: "a fraction of one or more", Hint: "did you mean 15-1/4?"}},
		{"14' 71/2\"", in, measure.ParseError{Understood: "14'", Offset: 4, Problem: "a fraction of one or more",
			Try: [2]string{"168", `14' 0"`}, Hint: "did you mean 7-1/2?"}},
		{"15-9/8", in, measure.ParseError{Problem: "a fraction of one or more"}},
		{"1/0", in, measure.ParseError{Problem: "a fraction over nothing"}},
		{"14' 14\"", in, measure.ParseError{Understood: "14'", Offset: 4, Problem: "12 inches or more after feet",
			Try: [2]string{"168", `14' 0"`}}},
		{"1'200", mm, measure.ParseError{Understood: "1'", Offset: 2, Problem: "12 inches or more after feet",
			Try: [2]string{"304.8", "304.8 mm"}}},
		{"12.5' 3\"", in, measure.ParseError{Understood: "12.5'", Offset: 6, Problem: "inches after decimal feet",
			Try: [2]string{"150", `12' 6"`}}},
		{"1/2 ft 3 in", in, measure.ParseError{Understood: "1/2 ft", Offset: 7, Problem: "inches after a fraction of a foot",
			Try: [2]string{"6", `6"`}}},
		{"12' 6'", in, measure.ParseError{Understood: "12'", Offset: 4, Problem: "not inches after feet",
			Try: [2]string{"144", `12' 0"`}}},
		{"12' 6 mm", in, measure.ParseError{Understood: "12'", Offset: 4, Problem: "not inches after feet",
			Try: [2]string{"144", `12' 0"`}}},
		{"12 - 6", in, measure.ParseError{Understood: "12", Offset: 3, Problem: "not a length after 12", Try: [2]string{"12", `1' 0"`}}},
		{"6 - 1/2", in, measure.ParseError{Understood: "6", Offset: 2, Problem: "not a length after 6", Try: [2]string{"6", `6"`}}},
		{"6.5 1/2", in, measure.ParseError{Understood: "6.5", Offset: 4, Problem: "not a length after 6.5", Try: [2]string{"6-1/2", `6-1/2"`}}},
		{"12 yd", in, measure.ParseError{Understood: "12", Offset: 3, Problem: "not a length after 12", Try: [2]string{"12", `1' 0"`}}},
		{"1_000", mm, measure.ParseError{Understood: "1", Offset: 1, Problem: "not a length after 1", Try: [2]string{"1", "1 mm"}}},
		{"1e3", mm, measure.ParseError{Understood: "1", Offset: 1, Problem: "not a length after 1", Try: [2]string{"1", "1 mm"}}},
		{"6.", in, measure.ParseError{Understood: "6", Offset: 1, Problem: "not a length after 6", Try: [2]string{"6", `6"`}}},
		{"12ft.5in", in, measure.ParseError{Understood: "12ft", Offset: 4, Problem: "not a length after 12ft", Try: [2]string{"144", `12' 0"`}}},
		{"3 m 81 cm", mm, measure.ParseError{Understood: "3 m", Offset: 4, Problem: "not a length after 3 m", Try: [2]string{"3000", "3000 mm"}}},
		{"+5", in, measure.ParseError{Problem: "not a length"}},
		{"- 5", in, measure.ParseError{Problem: "not a length"}},
		{"long", mm, measure.ParseError{Problem: "not a length"}},
		{"1000001 mm", mm, measure.ParseError{Understood: "1000001 mm", Problem: "longer than 1 km, the most that is read"}},
		{"99999999999 m", mm, measure.ParseError{Understood: "99999999999 m", Problem: "longer than 1 km, the most that is read"}},
		{"99999999999 m#", mm, measure.ParseError{Understood: "99999999999 m", Offset: 13, Problem: "not a length after 99999999999 m",
			Hint: "a comment needs a space before #"}},
		{"1234567890123", mm, measure.ParseError{Problem: "a number with too many digits"}},
		{"1.1234567890123", mm, measure.ParseError{Problem: "a number with too many digits"}},
		{"1/12345", in, measure.ParseError{Problem: "a number with too many digits"}},
	}
	for _, tt := range tests {
		l, err := measure.Parse(tt.text, tt.bare)
		var got *measure.ParseError
		if !errors.As(err, &got) {
			t.Errorf("Parse(%q, %v) = %d, %v; want a fault", tt.text, tt.bare, l, err)
			continue
		}
		want := tt.want
		want.Text = tt.text
		if want.Try == ([2]string{}) {
			want.Try = [2]string{"150-1/2", `12' 6-1/2"`}
			if tt.bare == mm {
				want.Try = [2]string{"3810", "3.81 m"}
			}
		}
		if *got != want {
			t.Errorf("Parse(%q, %v):\n got %+v\nwant %+v", tt.text, tt.bare, *got, want)
		}
		for _, try := range got.Try {
			if _, err := measure.Parse(try, tt.bare); err != nil {
				t.Errorf("Parse(%q, %v) offers %q, which does not work: %v", tt.text, tt.bare, try, err)
			}
		}
	}
}

func TestParseErrorText(t *testing.T) {
	_, err := measure.Parse("135#to the pipe", measure.Inches)
	want := "not a length after 135: `135#to the pipe`; write 135 or 11' 3\" (a comment needs a space before #)"
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func TestParseNoted(t *testing.T) {
	for text, want := range map[string]bool{`12.6'`: true, `12.0 ft`: true, `12' 6.5"`: false, `12 1/2 ft`: false, `12.6`: false, `12'`: false} {
		if _, got, err := measure.ParseNoted(text, measure.Inches); got != want || err != nil {
			t.Errorf("ParseNoted(%q) notes decimal feet: %v, %v; want %v", text, got, err, want)
		}
	}
}

func TestParseSize(t *testing.T) {
	const in, mm = measure.Inches, measure.Millimetres
	tests := []struct {
		text string
		bare measure.System
		w, h geom.Length
	}{
		{"57-1/2 x 32", in, geom.InFrac(57, 1, 2), geom.In(32)},
		{"600x600", mm, geom.MM(600), geom.MM(600)},
		{"24X48", in, geom.In(24), geom.In(48)},
		{"24 × 48", in, geom.In(24), geom.In(48)},
		{"4 x 8 ft", in, geom.In(48), geom.In(96)},
		{"4 x 8'", mm, geom.In(48), geom.In(96)},
		{"1200 x 2400 mm", in, geom.MM(1200), geom.MM(2400)},
		{"1.2 x 2.4 m", in, geom.MM(1200), geom.MM(2400)},
		{"1-1/2 x 3-1/2 in", mm, geom.InFrac(1, 1, 2), geom.InFrac(3, 1, 2)},
		{`48" x 96`, in, geom.In(48), geom.In(96)},
		{`600 mm x 600`, mm, geom.MM(600), geom.MM(600)},
		{`4' 7-1/2" x 600 mm`, in, geom.InFrac(55, 1, 2), geom.MM(600)},
		{`4' x 8' 6"`, in, geom.In(48), geom.In(102)},
		{"2x4", in, geom.In(2), geom.In(4)},
	}
	for _, tt := range tests {
		w, h, err := measure.ParseSize(tt.text, tt.bare)
		if err != nil || w != tt.w || h != tt.h {
			t.Errorf("ParseSize(%q, %v) = %d, %d, %v; want %d, %d", tt.text, tt.bare, w, h, err, tt.w, tt.h)
		}
	}
}

func TestParseSizeFaults(t *testing.T) {
	const in, mm = measure.Inches, measure.Millimetres
	tests := []struct {
		text    string
		bare    measure.System
		problem string
		offset  int
	}{
		{"", in, "empty", 0},
		{"57-1/2", in, "one length where a size has two", 0},
		{"2 x 4 x 96", in, "more than two lengths in a size", 6},
		{"57-1/2 x", in, "empty", 8},
		{"x 32", in, "empty", 0},
		{"57a x 32", in, "not a length after 57", 2},
		{"57 x 32 wide", in, "not a length after 32", 8},
		{"57-1/2 x 32", mm, "a fraction without a unit in a millimetre file", 0},
		{"4' x 8", in, "a unit on the first length only", 2},
		{"600 mm x 600", in, "a unit on the first length only", 6},
		{`4 x 8' 6"`, in, "no unit on the first length, feet and inches on the second", 1},
	}
	for _, tt := range tests {
		_, _, err := measure.ParseSize(tt.text, tt.bare)
		var got *measure.ParseError
		if !errors.As(err, &got) {
			t.Errorf("ParseSize(%q, %v): %v; want a fault", tt.text, tt.bare, err)
			continue
		}
		if got.Problem != tt.problem || got.Offset != tt.offset || got.Text != tt.text {
			t.Errorf("ParseSize(%q, %v): %q at %d of %q; want %q at %d", tt.text, tt.bare, got.Problem, got.Offset, got.Text, tt.problem, tt.offset)
		}
		for _, try := range got.Try {
			if _, _, err := measure.ParseSize(try, tt.bare); err != nil {
				t.Errorf("ParseSize(%q) offers %q, which does not work: %v", tt.text, try, err)
			}
		}
	}
}
