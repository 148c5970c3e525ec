"""An independent model of the circuits in circuit_*.tsv: modified nodal analysis with a current unknown for every source
and wire (numpy, or mpmath where digits matter), and the triode law summed by quadrature.

Method: C.-W. Ho, A. Ruehli, P. Brennan, "The modified nodal approach to network analysis", IEEE Trans. CAS-22 (1975).
The triode law is the one stated in the core's tube module, integrated here numerically over the spread of 1/mu.

A netlist is parts joined by "; ". A part is its reference, its nodes (0 is ground), its figures; the letter is its kind:
R a b ohms | C a b farads | L a b henries ohms | V plus minus volts signal | P top wiper bottom ohms setting |
S common throw throw ... closed (from 0, - for open) | T plate grid cathode perveance mu spread contact cgp cgk cpk
"""
import mpmath as mp
import numpy as np

TAU = 0.10
LINEAR = 2.66 * TAU ** 0.5


class Part:
    def __init__(self, text):
        words = text.split()
        self.name, self.kind = words[0], words[0][0]
        count = {"R": 2, "C": 2, "L": 2, "V": 2, "P": 3, "T": 3, "S": len(words) - 2}[self.kind]
        self.nodes = words[1 : 1 + count]
        self.values = [None if w == "-" else float(w) for w in words[1 + count :]]


def parse(text):
    return [Part(piece) for piece in text.split(";")]


def branches(parts):
    """Two-terminal pieces: (kind, a, b, figures); a wire is a source of nothing."""
    for part in parts:
        n, v = part.nodes, part.values
        if part.kind == "P":
            yield resistor(n[0], n[1], v[0] * (1 - v[1]))
            yield resistor(n[1], n[2], v[0] * v[1])
        elif part.kind == "S":
            if v[0] is not None:
                yield ("V", n[0], n[1 + int(v[0])], (0.0, 0.0))
        elif part.kind == "R":
            yield resistor(n[0], n[1], v[0])
        elif part.kind == "T":
            for a, b, farads in ((1, 0, v[4]), (1, 2, v[5]), (0, 2, v[6])):
                yield ("C", n[a], n[b], (farads,))
        else:
            yield (part.kind, n[0], n[1], tuple(v))


def resistor(a, b, ohms):
    return ("R", a, b, (ohms,)) if ohms > 0 else ("V", a, b, (0.0, 0.0))


def assemble(parts, omega, linear_tubes=None):
    """Matrix, right-hand side, index of each node; omega = 0 is dc. Plain lists, so that any arithmetic may follow.

    linear_tubes: name -> (gm, gp), stamped between plate and cathode."""
    names = []
    for part in parts:
        for node in part.nodes:
            if node != "0" and node not in names:
                names.append(node)
    pieces = list(branches(parts))
    size = len(names) + sum(1 for p in pieces if p[0] == "V" or (p[0] == "L" and omega == 0 and p[3][1] == 0))
    zero = 0.0
    matrix = [[zero] * size for _ in range(size)]
    right = [zero] * size
    index = {name: k for k, name in enumerate(names)}
    extra = len(names)

    def put(row, column, value):
        if row != "0" and column != "0":
            matrix[index[row]][index[column]] += value

    def admit(a, b, y):
        put(a, a, y), put(b, b, y), put(a, b, -y), put(b, a, -y)

    for kind, a, b, v in pieces:
        if kind == "R":
            admit(a, b, 1 / v[0])
        elif kind == "C" and omega:
            admit(a, b, 1j * omega * v[0])
        elif kind == "L" and (omega or v[1]):
            admit(a, b, 1 / (v[1] + 1j * omega * v[0]) if omega else 1 / v[1])
        elif kind in "VL":
            for node, sign in ((a, 1), (b, -1)):
                if node != "0":
                    matrix[index[node]][extra] += sign
                    matrix[extra][index[node]] += sign
            right[extra] = 0.0 if kind == "L" else (v[1] if omega else v[0])
            extra += 1
    for part in parts:
        if linear_tubes and part.kind == "T":
            gm, gp = linear_tubes[part.name]
            p, g, k = part.nodes
            for row, sign in ((p, 1), (k, -1)):
                put(row, g, sign * gm), put(row, p, sign * gp), put(row, k, -sign * (gm + gp))
    return matrix, right, index


def volts(parts, omega, linear_tubes=None):
    matrix, right, index = assemble(parts, omega, linear_tubes)
    x = np.linalg.solve(np.array(matrix, dtype=complex), np.array(right, dtype=complex))
    return {name: x[k] for name, k in index.items()}


def volts_mp(parts, digits=80):
    """Direct volts with many digits; figures are taken as the doubles they are."""
    with mp.workdps(digits):
        for part in parts:
            part.values = [mp.mpf(v) for v in part.values]
        matrix, right, index = assemble(parts, 0)
        x = mp.lu_solve(mp.matrix(matrix), mp.matrix(right))
        return {name: x[k] for name, k in index.items()}


# the triode

# Gauss-Legendre in panels over the spread, for a density that falls linearly to zero.
PANELS = 12
POINTS, WEIGHTS = np.polynomial.legendre.leggauss(32)
ALONG = np.concatenate([(panel + (POINTS + 1) / 2) / PANELS for panel in range(PANELS)])
SHARE = np.concatenate([WEIGHTS / (2 * PANELS)] * PANELS) * 2 * (1 - ALONG)


def emission(drive):
    """F(U), elementwise: E + tau ln(E (sqrt E + c)) = U by Newton in ln E with bisection's patience."""
    y = np.where(drive > 1, np.log(np.maximum(drive, 1)), np.minimum(drive / TAU - np.log(LINEAR), 0))
    for _ in range(60):
        e = np.exp(y)
        r = np.sqrt(e)
        off = e + TAU * (y + np.log(r + LINEAR)) - drive
        step = np.clip(off / (e + TAU * (1 + 0.5 * r / (r + LINEAR))), -1.5, 1.5)
        y = y - step
        if np.max(np.abs(step)) < 1e-12:
            break
    e = np.exp(y)
    return e * (np.sqrt(e) + LINEAR)


def plate(law, grid, plate_volts):
    """Plate current in A; law = (perveance, mu, spread, contact)."""
    grid, plate_volts = np.broadcast_arrays(np.asarray(grid, float), np.asarray(plate_volts, float))
    perveance, mu, spread, contact = law
    width = spread * np.sqrt(18.0)
    a, b = (1 - width / 3) / mu, (1 + 2 * width / 3) / mu
    x = np.maximum(plate_volts, 0)
    drives = grid[..., None] + contact + x[..., None] * (a + (b - a) * ALONG)
    mean = np.maximum(np.sum(SHARE * emission(drives), axis=-1), 1e-250)
    ratio = x / (1.3 * mean ** (2 / 3))
    return np.where(plate_volts > 0, perveance * mean * -np.expm1(-3 * np.minimum(ratio, 1e3) ** 2), 0.0)


def slopes(law, grid, plate_volts, h=1e-3):
    """gm and gp by central differences of the fourth order (independent of the exact derivatives of the core)."""

    def slope(at):
        return (8 * (at(h) - at(-h)) - (at(2 * h) - at(-2 * h))) / (12 * h)

    gm = slope(lambda d: plate(law, grid + d, plate_volts))
    gp = slope(lambda d: plate(law, grid, plate_volts + d))
    return gm, gp


def operating_point(parts):
    """Node volts and tube currents: one tube is held between brackets by scipy's brentq; several by damped Newton on all
    nodes, gm and gp by differences, until the steps are rounding."""
    from scipy.optimize import brentq

    tubes = [part for part in parts if part.kind == "T"]
    _, right, index = assemble(parts, 0)
    at = lambda x, node: 0.0 if node == "0" else x[index[node]]
    across = lambda x, tube: (
        at(x, tube.nodes[1]) - at(x, tube.nodes[2]),
        at(x, tube.nodes[0]) - at(x, tube.nodes[2]),
    )

    def solved(slopes_of, currents):
        matrix, right, _ = assemble(parts, 0, slopes_of)
        right = np.array(right, dtype=float)
        for tube in tubes:
            for node, sign in ((tube.nodes[0], -1), (tube.nodes[2], 1)):
                if node != "0":
                    right[index[node]] += sign * currents[tube.name]
        return np.linalg.solve(np.array(matrix, dtype=float), right)

    if len(tubes) == 1:
        (tube,) = tubes
        volts_for = lambda amps: solved({tube.name: (0.0, 0.0)}, {tube.name: amps})
        off = lambda amps: float(plate(tube.values[:4], *across(volts_for(amps), tube))) - amps
        high = 1e-6
        while off(high) > 0:
            high *= 2
        amps = brentq(off, 0.0, high, xtol=1e-18, rtol=1e-15)
        x, currents = volts_for(amps), {tube.name: amps}
    else:
        x = solved({tube.name: (0.0, 3e-5) for tube in tubes}, {tube.name: 0.0 for tube in tubes})
        for count in range(200):
            slope, rest = {}, {}
            for tube in tubes:
                grid, plate_volts = across(x, tube)
                gm, gp = (float(g) for g in slopes(tube.values[:4], grid, plate_volts))
                slope[tube.name] = gm, gp
                rest[tube.name] = float(plate(tube.values[:4], grid, plate_volts)) - gm * grid - gp * plate_volts
            step = solved(slope, rest) - x
            x = x + (0.5 if count < 12 else 1.0) * step
            if count > 12 and np.max(np.abs(step)) < 2e-13 * np.max(np.abs(x)):
                break
        else:
            raise ArithmeticError("no point found")
        currents = {tube.name: float(plate(tube.values[:4], *across(x, tube))) for tube in tubes}
    return {name: x[k] for name, k in index.items()}, currents


def linear_tubes(parts, v):
    """Each tube's gm and gp at those node volts."""
    at = lambda node: 0.0 if node == "0" else v[node]
    found = {}
    for tube in (part for part in parts if part.kind == "T"):
        p, g, k = (at(node) for node in tube.nodes)
        gm, gp = slopes(tube.values[:4], g - k, p - k)
        found[tube.name] = (float(gm), float(gp))
    return found
