package measure

import (
	"math/big"
	"strings"
	"unicode"
)

// scanner walks over one text, character by character.
type scanner struct {
	text []rune
	at   int
	end  int // one past the last character that belongs to this length
}

// number is a number as written, not negative.
type number struct {
	value    *big.Rat
	decimal  bool // written with a point
	fraction bool // a fraction, alone or after a whole number
}

// The most digits a number may have on either side of its point, and in a
// fraction: a kilometre has ten digits of a micrometre.
const (
	mostDigits         = 12
	mostFractionDigits = 4
)

// peek returns the character n places on, or zero past the end.
func (s *scanner) peek(n int) rune {
	if s.at+n < s.end {
		return s.text[s.at+n]
	}
	return 0
}

// spaces steps over blanks and reports whether there were any.
func (s *scanner) spaces() bool {
	from := s.at
	for s.at < s.end && unicode.IsSpace(s.text[s.at]) {
		s.at++
	}
	return s.at > from
}

// hyphen steps over one hyphen, plain or typographic, and reports whether it did.
func (s *scanner) hyphen() bool {
	switch s.peek(0) {
	case '-', '\u2010', '\u2011', '\u2013':
		s.at++
		return true
	}
	return false
}

// run reads the digits that stand here, as set by value.
func (s *scanner) run(value func(rune) int) string {
	var b strings.Builder
	for ; s.at < s.end; s.at++ {
		v := value(s.text[s.at])
		if v < 0 {
			break
		}
		b.WriteByte(byte('0' + v))
	}
	return b.String()
}

// number reads one number; ok is false, and nothing is read, where none
// stands. A leading point is read only when pointFirst is set. The problem is
// a number that may not be read as it stands, with a hint.
func (s *scanner) number(pointFirst bool) (n number, ok bool, problem, hint string) {
	start := s.at
	digits := s.run(plainDigit)
	if digits == "" {
		if pointFirst && s.peek(0) == '.' && plainDigit(s.peek(1)) >= 0 {
			return s.decimals("0")
		}
		f, ok, problem, hint := s.fraction("")
		if !ok {
			s.at = start
		}
		return f, ok, problem, hint
	}
	if len(digits) > mostDigits {
		return number{}, true, tooLong, ""
	}
	switch {
	case s.peek(0) == ',' && plainDigit(s.peek(1)) >= 0:
		return number{}, true, "a comma in a number", s.withoutComma(digits)
	case s.peek(0) == '.' && plainDigit(s.peek(1)) >= 0:
		return s.decimals(digits)
	case isSlash(s.peek(0)):
		s.at = start
		if f, ok, problem, hint := s.fraction(""); ok {
			return f, ok, problem, hint
		}
		s.at = start + len(digits)
	}
	n = number{value: ratio(digits, "1")}
	// A fraction may follow: directly (6½), after a space or after a hyphen.
	stop := s.at
	if !s.spaces() {
		s.hyphen()
	}
	f, ok, problem, hint := s.fraction(digits)
	if problem != "" {
		return f, true, problem, hint
	}
	if !ok {
		s.at = stop
		return n, true, "", ""
	}
	n.value.Add(n.value, f.value)
	n.fraction = true
	return n, true, "", ""
}

// tooLong is the problem of a number that no length within Limit needs.
const tooLong = "a number with too many digits"

// decimals reads the point and the digits after it; before are those before it.
func (s *scanner) decimals(before string) (number, bool, string, string) {
	s.at++
	part := s.run(plainDigit)
	if len(part) > mostDigits {
		return number{}, true, tooLong, ""
	}
	if s.peek(0) == ',' && plainDigit(s.peek(1)) >= 0 {
		return number{}, true, "a comma in a number", ""
	}
	v := ratio(before+part, "1"+strings.Repeat("0", len(part)))
	return number{value: v, decimal: true}, true, "", ""
}

// withoutComma says how to write a number that was begun with first and has a
// comma here: 1,200 is 1200, 3,81 is 3.81.
func (s *scanner) withoutComma(first string) string {
	groups := first
	thousands := len(first) <= 3
	parts := 0
	t := *s
	for ; t.peek(0) == ',' && plainDigit(t.peek(1)) >= 0; parts++ {
		t.at++
		g := t.run(plainDigit)
		thousands = thousands && len(g) == 3
		groups += g
		if parts == 0 && len(g) <= mostDigits {
			first += "." + g
		}
	}
	if thousands {
		if t.peek(0) == '.' {
			t.at++
			groups += "." + t.run(plainDigit)
		}
		return "write " + strings.TrimSuffix(groups, ".")
	}
	if parts > 1 {
		return "digits without a comma"
	}
	return "write " + first
}

// fraction reads 1/2, ½, ¹⁄₂ or ¹⁵⁄₁₆; before is the number before it, if any.
func (s *scanner) fraction(before string) (number, bool, string, string) {
	if v, ok := vulgar(s.peek(0)); ok {
		s.at++
		return number{value: v, fraction: true}, true, "", ""
	}
	start := s.at
	num := s.run(plainDigit)
	if num == "" {
		num = s.run(raisedDigit)
	}
	if num == "" || !isSlash(s.peek(0)) {
		s.at = start
		return number{}, false, "", ""
	}
	s.at++
	den := s.run(plainDigit)
	if den == "" {
		den = s.run(loweredDigit)
	}
	switch {
	case den == "":
		s.at = start
		return number{}, false, "", ""
	case len(num) > mostFractionDigits || len(den) > mostFractionDigits:
		return number{}, true, tooLong, ""
	case strings.Trim(den, "0") == "":
		return number{}, true, "a fraction over nothing", ""
	}
	v := ratio(num, den)
	if v.Cmp(ratio("1", "1")) >= 0 {
		return number{}, true, "a fraction of one or more", splitHint(before, num, den)
	}
	return number{value: v, fraction: true}, true, "", ""
}

// splitHint says how 71/2 was probably meant: 7-1/2, where its leading digits
// are a whole number and the rest is a fraction.
func splitHint(before, num, den string) string {
	if before != "" {
		return ""
	}
	for i := 1; i < len(num); i++ {
		if num[i] != '0' && ratio(num[i:], den).Cmp(ratio("1", "1")) < 0 {
			return "did you mean " + num[:i] + "-" + num[i:] + "/" + den + "?"
		}
	}
	return ""
}

// ratio returns num/den, both runs of digits, den not zero.
func ratio(num, den string) *big.Rat {
	return new(big.Rat).SetFrac(whole(num), whole(den))
}

// whole returns the value of a run of digits, in tens whatever they begin with.
func whole(digits string) *big.Int {
	v, _ := new(big.Int).SetString(digits, 10)
	return v
}

// isSlash reports whether r can stand between the parts of a fraction.
func isSlash(r rune) bool { return r == '/' || r == '\u2044' || r == '\u2215' }

// plainDigit returns the value of an ordinary digit, or -1.
func plainDigit(r rune) int {
	if '0' <= r && r <= '9' {
		return int(r - '0')
	}
	return -1
}

// raisedDigit returns the value of a superscript digit, or -1.
func raisedDigit(r rune) int {
	switch {
	case r == '\u00b9':
		return 1
	case r == '\u00b2' || r == '\u00b3':
		return int(r-'\u00b2') + 2
	case r == '\u2070' || '\u2074' <= r && r <= '\u2079':
		return int(r - '\u2070')
	}
	return -1
}

// loweredDigit returns the value of a subscript digit, or -1.
func loweredDigit(r rune) int {
	if '\u2080' <= r && r <= '\u2089' {
		return int(r - '\u2080')
	}
	return -1
}

// vulgar returns the value of a fraction that is one character.
func vulgar(r rune) (*big.Rat, bool) {
	var num, den int64
	switch r {
	case '¼':
		num, den = 1, 4
	case '½':
		num, den = 1, 2
	case '¾':
		num, den = 3, 4
	case '⅛':
		num, den = 1, 8
	case '⅜':
		num, den = 3, 8
	case '⅝':
		num, den = 5, 8
	case '⅞':
		num, den = 7, 8
	case '⅓':
		num, den = 1, 3
	case '⅔':
		num, den = 2, 3
	case '⅕':
		num, den = 1, 5
	case '⅖':
		num, den = 2, 5
	case '⅗':
		num, den = 3, 5
	case '⅘':
		num, den = 4, 5
	case '⅙':
		num, den = 1, 6
	case '⅚':
		num, den = 5, 6
	case '⅐':
		num, den = 1, 7
	case '⅑':
		num, den = 1, 9
	case '⅒':
		num, den = 1, 10
	default:
		return nil, false
	}
	return big.NewRat(num, den), true
}
