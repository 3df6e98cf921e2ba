"""Reads DXF files with an independent reader, audits them, and prints what it
found as one JSON list.

For every dimension it measures three times: as the reader does, as the file
says (group 42), and from the two definition points.
"""
import collections
import json
import sys

import ezdxf


def extents(doc):
    """Returns the least and greatest coordinates of everything but text."""
    xs, ys = [], []

    def take(x, y):
        xs.append(x)
        ys.append(y)

    def walk(entities):
        for e in entities:
            kind = e.dxftype()
            if kind == "LINE":
                take(e.dxf.start.x, e.dxf.start.y)
                take(e.dxf.end.x, e.dxf.end.y)
            elif kind == "LWPOLYLINE":
                for x, y in e.get_points("xy"):
                    take(x, y)
            elif kind == "CIRCLE":
                take(e.dxf.center.x - e.dxf.radius, e.dxf.center.y - e.dxf.radius)
                take(e.dxf.center.x + e.dxf.radius, e.dxf.center.y + e.dxf.radius)
            elif kind == "TEXT":
                at = e.dxf.align_point if e.dxf.halign else e.dxf.insert
                take(at.x, at.y)
            elif kind == "DIMENSION":
                walk(doc.blocks.get(e.dxf.geometry))

    walk(doc.modelspace())
    return [min(xs), min(ys), max(xs), max(ys)]


def apart(d):
    """Returns how far the definition points of a dimension are apart along it."""
    a, b = d.dxf.defpoint2, d.dxf.defpoint3
    return abs(b.y - a.y) if d.dxf.angle == 90 else abs(b.x - a.x)


def boxes(model):
    """Returns the layer, width and height of every closed upright box."""
    out = []
    for e in model.query("LWPOLYLINE"):
        points = [(x, y) for x, y in e.get_points("xy")]
        if e.closed and len(points) == 4:
            xs, ys = sorted({x for x, _ in points}), sorted({y for _, y in points})
            if len(xs) == 2 and len(ys) == 2:
                out.append([e.dxf.layer, xs[1] - xs[0], ys[1] - ys[0]])
    return out


def read(path):
    doc = ezdxf.readfile(path)
    auditor = doc.audit()
    model = doc.modelspace()
    return {
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "version": doc.dxfversion,
        "units": doc.header.get("$INSUNITS", 0),
        "header": [*doc.header["$EXTMIN"][:2], *doc.header["$EXTMAX"][:2]],
        "extents": extents(doc),
        "layers": sorted(layer.dxf.name for layer in doc.layers),
        "counts": collections.Counter(e.dxf.layer + " " + e.dxftype() for e in model),
        "dimensions": [
            {
                "measured": d.get_measurement(),
                "written": d.dxf.get("actual_measurement"),
                "apart": apart(d),
                "layer": d.dxf.layer,
                "figure": d.dxf.text,
                "vertical": d.dxf.angle == 90,
                "pictured": [e.plain_text() for e in doc.blocks.get(d.dxf.geometry) if e.dxftype() == "TEXT"],
            }
            for d in model.query("DIMENSION")
        ],
        "boxes": boxes(model),
        "texts": [e.plain_text() for e in model.query("TEXT")],
    }


print(json.dumps([read(path) for path in sys.argv[1:]]))
