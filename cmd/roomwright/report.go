package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
)

// jsonVersion is raised when a reader of the JSON would have to change.
const jsonVersion = 1

// report is what --json prints.
type report struct {
	Version  int          `json:"version"`
	File     string       `json:"file"`
	Counts   counts       `json:"counts"`
	Findings []jsonResult `json:"findings"`
	Built    []string     `json:"built,omitempty"` // check: what is built, in words
	Written  []string     `json:"written,omitempty"`
	Left     []string     `json:"left,omitempty"` // sheets of an earlier run, not touched
}

// counts is how many findings of each kind there are.
type counts struct {
	Errors   int `json:"errors"`
	Warnings int `json:"warnings"`
	Cautions int `json:"cautions"`
	Notes    int `json:"notes"`
}

// jsonResult is one finding.
type jsonResult struct {
	Kind    string `json:"kind"`
	Rule    string `json:"rule"`
	Line    int    `json:"line,omitempty"`
	Column  int    `json:"column,omitempty"`
	What    string `json:"what"`
	Found   string `json:"found,omitempty"`
	Allowed string `json:"allowed,omitempty"`
	Hint    string `json:"hint,omitempty"`
	Source  string `json:"source,omitempty"`
	On      string `json:"on,omitempty"`
}

// newReport returns the report of a room file's findings.
func newReport(file string, list []finding.Finding) report {
	r := report{Version: jsonVersion, File: file, Counts: count(list), Findings: []jsonResult{}}
	for _, f := range list {
		r.Findings = append(r.Findings, jsonResult{
			Kind: f.Kind.String(), Rule: f.Rule, Line: f.Place.Line, Column: f.Place.Column,
			What: f.What, Found: f.Found, Allowed: f.Allowed, Hint: f.Hint, Source: f.Source, On: f.On,
		})
	}
	return r
}

// print writes the report as JSON, whatever could steer a terminal as \uXXXX.
func (r report) print(w io.Writer) error {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(r); err != nil {
		return err
	}
	var out strings.Builder
	for _, c := range b.String() {
		if c != '\n' && steers(c) {
			fmt.Fprintf(&out, `\u%04x`, c)
			continue
		}
		out.WriteRune(c)
	}
	_, err := io.WriteString(w, out.String())
	return err
}

// count counts findings by kind.
func count(list []finding.Finding) counts {
	var c counts
	for _, f := range list {
		switch f.Kind {
		case finding.Error:
			c.Errors++
		case finding.Warning:
			c.Warnings++
		case finding.Caution:
			c.Cautions++
		default:
			c.Notes++
		}
	}
	return c
}

// String returns the counts in words: "2 errors, 1 warning".
func (c counts) String() string {
	var parts []string
	for _, p := range []struct {
		n    int
		word string
	}{{c.Errors, "error"}, {c.Warnings, "warning"}, {c.Cautions, "caution"}, {c.Notes, "note"}} {
		switch {
		case p.n == 1:
			parts = append(parts, "1 "+p.word)
		case p.n > 1:
			parts = append(parts, fmt.Sprintf("%d %ss", p.n, p.word))
		}
	}
	if len(parts) == 0 {
		return "no findings"
	}
	return strings.Join(parts, ", ")
}

// printFindings prints findings as people read them, notes only when asked.
func printFindings(w io.Writer, list []finding.Finding, file string, notes bool) {
	for _, f := range list {
		if notes || f.Kind != finding.Note {
			io.WriteString(w, roomfile.Format(f, file))
		}
	}
}
