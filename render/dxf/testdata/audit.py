"""Reads a DXF file with an independent reader, audits it, and prints what it found as JSON."""
import collections
import json
import sys

import ezdxf

doc = ezdxf.readfile(sys.argv[1])
auditor = doc.audit()
model = doc.modelspace()
print(json.dumps({
    "errors": [e.message for e in auditor.errors],
    "fixes": [e.message for e in auditor.fixes],
    "units": doc.header.get("$INSUNITS", 0),
    "counts": collections.Counter(e.dxftype() for e in model),
    "layers": sorted(layer.dxf.name for layer in doc.layers),
    "layouts": [layout.name for layout in doc.layouts],
    "dimensions": [
        {
            "measurement": d.get_measurement(),
            "written": d.dxf.get("actual_measurement"),
            "figure": d.dxf.text,
            "pictured": [e.dxf.text for e in doc.blocks.get(d.dxf.geometry) if e.dxftype() == "TEXT"],
        }
        for d in model.query("DIMENSION")
    ],
    "lines": [[list(e.dxf.start)[:2], list(e.dxf.end)[:2]] for e in model.query("LINE")],
    "texts": [e.dxf.text for e in model.query("TEXT")],
}))
