package measure

import "roomwright/geom"

// ParseSize reads two lengths with x, X or × between them: 57-1/2 x 32,
// 600x600, 4 x 8 ft. A unit after the second serves a bare first one; a unit
// of another kind than the file's after the first alone is refused, since the
// second would not take it. Its error is a *ParseError.
func ParseSize(s string, bare System) (w, h geom.Length, err error) {
	text := []rune(s)
	var cross []int
	for i, r := range text {
		if r == 'x' || r == 'X' || r == '×' {
			cross = append(cross, i)
		}
	}
	whole := &scanner{text: text, end: len(text)}
	try := sizeForms(bare)
	if whole.spaces(); whole.at == whole.end {
		return 0, 0, &ParseError{Text: s, Problem: "empty", Try: try}
	}
	switch {
	case len(cross) == 0:
		return 0, 0, &ParseError{Text: s, Problem: "one length where a size has two", Try: try}
	case len(cross) > 1:
		f := whole.fault(0, cross[1], "more than two lengths in a size")
		f.Try = try
		return 0, 0, f
	}
	first := &scanner{text: text, end: cross[0]}
	second := &scanner{text: text, at: cross[0] + 1, end: len(text)}
	a, fault := first.written()
	if fault != nil {
		return 0, 0, sizeFault(fault, try)
	}
	b, fault := second.written()
	if fault != nil {
		return 0, 0, sizeFault(fault, try)
	}
	unitOfFirst, own := bareUnit(bare), bareUnit(bare)
	switch {
	case a.unit == noUnit && b.then:
		return 0, 0, sizeFault(first.fault(a.from, a.upTo, "no unit on the first length, feet and inches on the second"), try)
	case a.unit == noUnit && b.unit != noUnit:
		unitOfFirst = b.unit
	case b.unit == noUnit && a.unit != noUnit && (a.unit != own || a.then):
		f := second.fault(a.from, a.upTo, "a unit on the first length only")
		f.Hint = "a unit after the second length serves both"
		return 0, 0, sizeFault(f, try)
	}
	if w, fault = a.length(first, unitOfFirst, bare); fault != nil {
		return 0, 0, sizeFault(fault, try)
	}
	if h, fault = b.length(second, own, bare); fault != nil {
		return 0, 0, sizeFault(fault, try)
	}
	return w, h, nil
}

// sizeFault gives f two sizes to try.
func sizeFault(f *ParseError, try [2]string) *ParseError {
	f.Try = try
	return f
}

// sizeForms shows two sizes in the units of a file.
func sizeForms(in System) [2]string {
	if in == Millimetres {
		return [2]string{"600 x 600", "1.2 x 2.4 m"}
	}
	return [2]string{"57-1/2 x 32", "4 x 8 ft"}
}
