"""Writes circuit_dc.tsv and circuit_derivatives.tsv: circuits with tubes, their dc points by scipy (brentq for one tube,
fsolve for several) on the law summed by quadrature, and derivatives by differences of that model."""
import re

import numpy as np

from circuit_model import linear_tubes, operating_point, parse, volts

HIGH_MU = "0.00065 77.4 0.265 0.288 2.43e-12 1.19e-12 9.28e-13"
LOW_MU = "0.000763 21.2 0.41 0.31 1.6e-12 1.5e-12 0.4e-12"
CIRCUITS = {
    "resistance-coupled stage": (
        "V1 b 0 263 0; V2 e 0 0 1; R1 g 0 1e6; R2 k 0 2200; R3 d p 220e3; R4 b d 33e3; R5 o 0 470e3; R6 e s 50e3; "
        f"C1 d 0 8e-6; C2 k 0 25e-6; C3 p o 20e-9; C4 o 0 100e-12; C5 s g 1e-6; T1 p g k {HIGH_MU}",
        "p",
        "o",
    ),
    "cathode follower, floating bias cell": (
        "V1 b 0 250 0; V2 e 0 0 1; V3 g h 1.5 0; R1 h 0 470e3; C1 e h 10e-9; R2 k 0 22e3; R3 b p 1e3; "
        f"C2 k o 0.1e-6; P1 o w 0 100e3 0.3; L1 w z 2.5 120; R4 z 0 600; T1 p g k {LOW_MU}",
        "k",
        "z",
    ),
    "cascode": (
        "V1 b 0 300 0; V2 e 0 0 1; R1 e g 10e3; R2 k 0 820; C1 k 0 50e-6; V3 u 0 90 0; R3 u h 1e3; R4 b p 33e3; "
        f"C2 p o 47e-9; R5 o 0 1e6; T1 m g k {LOW_MU}; T2 p h m {HIGH_MU}",
        "m",
        "o",
    ),
    "two stages, the second coupled direct": (
        "V1 b 0 310 0; V2 e 0 0 1; R1 e g 1e3; R2 k 0 2700; R3 b p 220e3; R4 b q 15e3; R5 j 0 47e3; C1 j 0 1e-6; "
        f"R6 k q 2.2e6; C2 q o 1e-6; R7 o 0 100e3; T1 p g k {HIGH_MU}; T2 q p j {LOW_MU}",
        "q",
        "o",
    ),
    "low supply, deep in the curve's foot": (
        f"V1 b 0 24 0; V2 e 0 0 1; R1 g 0 1e6; C1 e g 10e-9; R2 k 0 470e3; R3 b p 1e6; C2 k 0 1e-6; T1 p g k {HIGH_MU}",
        "k",
        "p",
    ),
}
FIGURES = {"R": ["Ohms"], "C": ["Farads"], "L": ["Henries", "Ohms"], "V": ["Volts", "Signal"], "P": ["Ohms", "Setting"],
           "T": ["Perveance", "Mu", None, None, "GridPlateFarads", "GridCathodeFarads", "PlateCathodeFarads"]}
HERTZ = [30.0, 1000.0, 30e3]


def changed(text, part, place, ratio):
    """The same netlist with one figure times `ratio`."""
    def times(match):
        words = match.group(0).split()
        at = len(words) - len([f for f in FIGURES[part[0]]]) + place
        words[at] = repr(float(words[at]) * ratio)
        return " ".join(words)
    return re.sub(rf"\b{part} [^;]*", times, text)


def answers(text, node, out):
    parts = parse(text)
    v, amps = operating_point(parts)
    found = [v[node], amps["T1"]]
    tubes = linear_tubes(parts, v)
    for hertz in HERTZ:
        phasor = volts(parts, 2 * np.pi * hertz, tubes)[out]
        found += [np.log(abs(phasor)), np.angle(phasor)]
    return np.array(found)


def main():
    with open("circuit_dc.tsv", "w") as file:
        print("name\tnetlist\twhat\texpected\tsource", file=file)
        for name, (text, node, out) in CIRCUITS.items():
            parts = parse(text)
            v, amps = operating_point(parts)
            rows = [(f"volts {n}", v[n]) for n in v] + [(f"amps {t}", i) for t, i in amps.items()]
            for tube, (gm, gp) in linear_tubes(parts, v).items():
                rows += [(f"gm {tube}", gm), (f"gp {tube}", gp)]
            for what, value in rows:
                print(f"{name}\t{text}\t{what}\t{value:.15g}\tcomputed: scipy, circuit_tubes.py", file=file)
    step = 4e-3
    with open("circuit_derivatives.tsv", "w") as file:
        print("name\tnetlist\tnode\tout\tpart\tparameter\tvolts\tamps\t" + "\t".join(
            f"ln_gain_{hertz:g}\tradians_{hertz:g}" for hertz in HERTZ) + "\tsource", file=file)
        for name, (text, node, out) in CIRCUITS.items():
            for part in parse(text):
                for place, parameter in enumerate(FIGURES[part.kind]):
                    if parameter is None or part.values[place] == 0:
                        continue
                    at = lambda k: answers(changed(text, part.name, place, float(np.exp(k * step))), node, out)
                    slope = (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / (12 * step)
                    figures = "\t".join(f"{value:.9g}" for value in slope)
                    print(f"{name}\t{text}\t{node}\t{out}\t{part.name}\t{parameter}\t{figures}"
                          "\tcomputed: differences of scipy and numpy, circuit_tubes.py", file=file)


main()
