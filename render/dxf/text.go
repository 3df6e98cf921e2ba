package dxf

import (
	"fmt"
	"strings"
	"unicode"
)

// encode turns a text into what AC1015 carries: ASCII, with signs of the same
// meaning where there are any and \U+XXXX for the rest. Control characters
// become spaces; a %% or \U+ that somebody wrote stays what it is.
func encode(s string) string {
	var b strings.Builder
	for i, r := range s {
		switch {
		case r == '×':
			b.WriteByte('x')
		case r == '−' || r == '–' || r == '—' || r == '‐' || r == '‑':
			b.WriteByte('-')
		case r == '′' || r == '‘' || r == '’':
			b.WriteByte('\'')
		case r == '″' || r == '“' || r == '”':
			b.WriteByte('"')
		case r == '⌀':
			b.WriteString("%%c")
		case r == '°':
			b.WriteString("%%d")
		case r == '±':
			b.WriteString("%%p")
		case r == ' ':
			b.WriteByte(' ')
		case r == '%' && strings.HasPrefix(s[i:], "%%"):
			b.WriteString(`\U+0025`)
		case r == '\\' && strings.HasPrefix(s[i:], `\U+`):
			b.WriteString(`\U+005C`)
		case unicode.IsControl(r) || r == '\u2028' || r == '\u2029':
			b.WriteByte(' ')
		case r < 0x80:
			b.WriteRune(r)
		case r > 0xFFFF:
			b.WriteByte('?')
		default:
			fmt.Fprintf(&b, `\U+%04X`, r)
		}
	}
	return b.String()
}
