"""Prints what ezdxf finds in a DXF file: version, audit, layers, entities."""

import sys

import ezdxf

document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
print("version", document.dxfversion)
print("errors", len(audit.errors))
print("fixes", len(audit.fixes))
for layer in document.layers:
    print("layer", layer.dxf.name)
for kind in document.linetypes:
    print("linetype", kind.dxf.name)


def place(point):
    return f"{point[0]:.5f} {point[1]:.5f}"


for entity in document.modelspace():
    dxf = entity.dxf
    head = f"{entity.dxftype()} {dxf.layer}"
    match entity.dxftype():
        case "LINE":
            print(head, dxf.linetype, place(dxf.start), place(dxf.end))
        case "CIRCLE":
            print(head, place(dxf.center), f"{dxf.radius:.5f}")
        case "ARC":
            print(head, place(dxf.center), f"{dxf.radius:.5f} {dxf.start_angle:.5f} {dxf.end_angle:.5f}")
        case "POLYLINE":
            corners = " ".join(f"{place(v.dxf.location)} {v.dxf.bulge:.8f}" for v in entity.vertices)
            print(head, "closed" if entity.is_closed else "open", corners)
        case "TEXT":
            print(head, f"{dxf.height:.5f} {dxf.rotation:.5f}", entity.plain_text())
