"""Lengths of the straight lines in a PDF, in millimetres as a printer would set them: the bars, and the turns of the template."""
import json
import sys

from pypdf import PdfReader
from pypdf.generic import ContentStream

MM = 25.4 / 72


def times(one, two):
    a, b, c, d, e, f = one
    g, h, i, j, k, m = two
    return [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m]


def lines(page, reader):
    """Every straight piece of every path, in millimetres of the page."""
    found = []

    def walk(stream, resources, matrix):
        stack, at = [], (0.0, 0.0)
        for operands, operator in ContentStream(stream, reader).operations:
            if operator == b"q":
                stack.append(matrix)
            elif operator == b"Q":
                matrix = stack.pop()
            elif operator == b"cm":
                matrix = times([float(x) for x in operands], matrix)
            elif operator in (b"m", b"l"):
                x, y = (float(each) for each in operands)
                place = (MM * (matrix[0] * x + matrix[2] * y + matrix[4]), MM * (matrix[1] * x + matrix[3] * y + matrix[5]))
                if operator == b"l":
                    found.append((at, place))
                at = place
            elif operator == b"Do":
                form = resources["/XObject"][operands[0]].get_object()
                if form.get("/Subtype") == "/Form":
                    own = [float(x) for x in form.get("/Matrix", [1, 0, 0, 1, 0, 0])]
                    walk(form, form.get("/Resources", resources), times(own, matrix))

    walk(page.get_contents(), page["/Resources"], [1.0, 0.0, 0.0, 1.0, 0.0, 0.0])
    return found


reader = PdfReader(sys.argv[1])
pieces = [piece for page in reader.pages for piece in lines(page, reader)]
sides = [(abs(b[0] - a[0]), abs(b[1] - a[1])) for a, b in pieces]
tall = min((y for x, y in sides if x < 0.01 and y > 150), key=lambda y: abs(y - 200))
wide = min((x for x, y in sides if y < 0.01 and x > 60), key=lambda x: abs(x - 100))
# The turns of the default coil: 157.08 mm around, 1.11 mm down each.
starts = sorted({round(max(a[1], b[1]), 4) for (a, b), (x, y) in zip(pieces, sides) if 156 < x < 158.5 and 0.5 < y < 2})
print(json.dumps({"tall": tall, "wide": wide, "pitch": starts[-1] - starts[0], "pages": len(reader.pages)}))
