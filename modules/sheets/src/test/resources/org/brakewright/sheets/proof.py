"""Measures sheets with programs from outside: poppler for PDF, ezdxf for DXF. Usage: proof.py FOLDER

Prints, a line each:
  page FILE NUMBER WIDTH HEIGHT            size of a page in pixels at 600 dpi
  bar FILE NUMBER across|up LENGTH COUNT   dark stretches of 97 to 105 mm in the strip of that direction's check bars
  dxf FILE ERRORS FIXES                    what the audit found and mended
  hole FILE X Y DIAMETER                   a circle on the layer of holes, in the drawing's units
"""

import collections
import pathlib
import re
import subprocess
import sys

import ezdxf
import ezdxf.recover

DPI = 600
PIXELS_PER_MM = DPI / 25.4
LEAST, MOST = int(97 * PIXELS_PER_MM), int(105 * PIXELS_PER_MM)
DARK = re.compile(rb"(?<![\x00-\x7f])[\x00-\x7f]{%d,%d}(?![\x00-\x7f])" % (LEAST, MOST))
SHORT, LONG = 210, 279.4
MARGIN, LEFT, BELOW = 10, 14, 42


def pages(pdf):
    told = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
    return int(re.search(r"Pages:\s+(\d+)", told).group(1))


def picture(pdf, page):
    command = ["pdftoppm", "-r", str(DPI), "-gray", "-aaVector", "no", "-f", str(page), "-l", str(page), pdf]
    pgm = subprocess.run(command, check=True, capture_output=True).stdout
    head = re.match(rb"P5\s(\d+)\s(\d+)\s255\s", pgm)
    return int(head.group(1)), int(head.group(2)), pgm[head.end():]


def stretches(lines):
    return collections.Counter(len(found.group()) for line in lines for found in DARK.finditer(line))


def edge(side, other):
    """White at both ends of a side, in pixels: what is printed fits on A4 and on letter."""
    fits = LONG if side > other else SHORT
    return (side - fits * PIXELS_PER_MM) / 2 + MARGIN * PIXELS_PER_MM


def across(width, height, dots):
    top = height - round(edge(height, width) + BELOW * PIXELS_PER_MM)
    return [dots[top * width:]]


def up(width, height, dots):
    return [dots[x::width] for x in range(round(edge(width, height) + LEFT * PIXELS_PER_MM) - 5)]


def measure(pdf, number):
    width, height, dots = picture(pdf, number)
    print("page", pdf.name, number, width, height)
    for way in (across, up):
        for length, count in sorted(stretches(way(width, height, dots)).items()):
            print("bar", pdf.name, number, way.__name__, length, count)


def main(folder):
    for pdf in sorted(folder.glob("*.pdf")):
        for number in range(1, pages(pdf) + 1):
            measure(pdf, number)
    for dxf in sorted(folder.glob("*.dxf")):
        document, auditor = ezdxf.recover.readfile(dxf)
        print("dxf", dxf.name, len(auditor.errors), len(auditor.fixes))
        for hole in document.modelspace().query('CIRCLE[layer=="HOLES"]'):
            x, y, _ = hole.dxf.center
            print("hole", dxf.name, f"{x:.4f} {y:.4f} {2 * hole.dxf.radius:.4f}")


main(pathlib.Path(sys.argv[1]))
