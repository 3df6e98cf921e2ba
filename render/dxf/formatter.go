package dxf

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"github.com/yofu/dxf/format"
)

// formatter writes group codes and values with compact numbers. It remembers
// the first thing that no reader could read back.
type formatter struct {
	buf bytes.Buffer
	err error
}

var _ format.Formatter = (*formatter)(nil)

func (f *formatter) Reset()           { f.buf.Reset() }
func (f *formatter) SetPrecision(int) {}
func (f *formatter) Output() string {
	s := f.buf.String()
	f.buf.Reset()
	return s
}
func (f *formatter) WriteTo(w io.Writer) (int64, error) { return f.buf.WriteTo(w) }

func (f *formatter) String(code int, v string) string {
	if strings.ContainsAny(v, "\r\n\x00") {
		f.fail(fmt.Errorf("group %d: a line end inside a text", code))
		v = ""
	}
	return strconv.Itoa(code) + "\n" + v + "\n"
}

func (f *formatter) Hex(code, h int) string {
	return strconv.Itoa(code) + "\n" + strings.ToUpper(strconv.FormatInt(int64(h), 16)) + "\n"
}

func (f *formatter) Int(code, v int) string {
	return strconv.Itoa(code) + "\n" + strconv.Itoa(v) + "\n"
}

// Float writes eight decimals at the most: a hundred-millionth of the file's
// unit, finer than 1/16 µm in inches.
func (f *formatter) Float(code int, v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		f.fail(fmt.Errorf("group %d: %v is not a number", code, v))
		v = 0
	}
	s := strconv.FormatFloat(v, 'f', 8, 64)
	s = strings.TrimRight(s, "0")
	if strings.HasSuffix(s, ".") {
		s += "0"
	}
	if s == "-0.0" {
		s = "0.0"
	}
	return strconv.Itoa(code) + "\n" + s + "\n"
}

func (f *formatter) WriteString(code int, v string) { f.buf.WriteString(f.String(code, v)) }
func (f *formatter) WriteHex(code, h int)           { f.buf.WriteString(f.Hex(code, h)) }
func (f *formatter) WriteInt(code, v int)           { f.buf.WriteString(f.Int(code, v)) }
func (f *formatter) WriteFloat(code int, v float64) { f.buf.WriteString(f.Float(code, v)) }
func (f *formatter) point(code int, x, y float64) {
	f.WriteFloat(code, x)
	f.WriteFloat(code+10, y)
	f.WriteFloat(code+20, 0)
}

func (f *formatter) fail(err error) {
	if f.err == nil {
		f.err = err
	}
}

// asOurs returns the formatter behind the library's interface.
func asOurs(f format.Formatter) *formatter {
	switch f := f.(type) {
	case *formatter:
		return f
	case styling:
		return f.formatter
	}
	panic("dxf: a formatter that is not ours")
}

// styling writes the line type, pen and colour of an entity right behind its
// layer, where the library's entities have no place for them.
type styling struct {
	*formatter
	style style
}

func (s styling) WriteString(code int, v string) {
	s.formatter.WriteString(code, v)
	if code == 8 {
		s.style.write(s.formatter)
	}
}
