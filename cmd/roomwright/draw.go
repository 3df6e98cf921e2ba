package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"roomwright/geom/finding"
	"roomwright/layouts"
	"roomwright/render"
)

// drawCommand returns the verb that writes the drawing set.
func drawCommand(s streams) *cobra.Command {
	var dir string
	var plain, asJSON bool
	c := &cobra.Command{
		Use:                   "draw [room file|-] [flags]",
		DisableFlagsInUseLine: true,
		Short:                 "Write the drawing set: one SVG a sheet and one DXF",
		Long: "draw writes the drawing set of a room: one SVG a sheet at true size, and one DXF with all\n" +
			"views in model space. Without a room file it draws the built-in example, which is invented.",
		Args: atMostOne,
		RunE: func(_ *cobra.Command, args []string) error {
			in := input{name: exampleName, file: exampleName, text: example}
			if len(args) == 1 {
				var err error
				if in, err = read(args[0], s.in); err != nil {
					return err
				}
			}
			return draw(in, dir, plain, asJSON, s)
		},
	}
	c.Flags().StringVarP(&dir, "out", "o", "drawings", "`folder` for the files, made when it is not there")
	c.Flags().BoolVar(&plain, "plain", false, "black only: no accent colour on the sheets")
	c.Flags().BoolVar(&asJSON, "json", false, "print the findings to standard output as JSON")
	return c
}

// draw sets a room out, composes the sheets and writes the files.
func draw(in input, dir string, plain, asJSON bool, s streams) error {
	if dir == "" {
		return wrong("leave --out away to write to drawings/", "--out without a folder")
	}
	res := work(in)
	if finding.Errors(res.Findings) > 0 {
		return refuse(in, res.Findings, asJSON, s)
	}
	set, more := layouts.Compose(res, layouts.Options{File: in.file})
	found := finding.Sort(append(res.Findings, more...))
	files, err := render.Files(set, plain)
	if err != nil {
		return verdict{status: wrongUse, text: "the drawings could not be made: " + err.Error()}
	}
	left, err := save(dir, files, in.info, system{})
	if err != nil {
		return err
	}
	if asJSON {
		r := newReport(in.name, found)
		for _, f := range files {
			r.Written = append(r.Written, filepath.ToSlash(filepath.Join(dir, f.Name)))
		}
		r.Left = left
		return r.print(s.out)
	}
	printFindings(s.err, found, in.name, false)
	if !s.terminal {
		return nil
	}
	fmt.Fprintf(s.out, "%s: %d sheets and 1 DXF in %s\n", visible(set.Title), len(set.Sheets), visible(dir))
	for _, f := range files {
		fmt.Fprintf(s.out, "  %s\n", f.Name)
	}
	if len(left) > 0 {
		fmt.Fprintf(s.out, "older files left: %s\n", strings.Join(left, ", "))
	}
	if n := count(found).Notes; n > 0 {
		fmt.Fprintf(s.out, "%d values were assumed or remarked on; they are on the sheets, and check lists them\n", n)
	}
	return nil
}

// refuse reports a room file with errors; nothing has been written.
func refuse(in input, found []finding.Finding, asJSON bool, s streams) error {
	if asJSON {
		if err := newReport(in.name, found).print(s.out); err != nil {
			return err
		}
		return verdict{status: roomError}
	}
	printFindings(s.err, found, in.name, false)
	n := finding.Errors(found)
	word := "errors"
	if n == 1 {
		word = "error"
	}
	fmt.Fprintf(s.err, "%d %s in %s; nothing was written\n", n, word, visible(in.name))
	return verdict{status: roomError}
}
