"""Writes hum_hiss.tsv: hum and hiss of a dozen stages and microphone stages by modified nodal analysis in numpy.

Each resistor's noise is a current source of its own and is solved for forward, one by one; the tube's is a real resistor
of 2.5/gm in the lead of its grid (W. A. Harris, RCA Review 5, 1941). Squares are summed over 300 to 3000 Hz by Simpson's
rule at 541 frequencies. Hum is the supply's source alone, at its own frequency.
"""
import json
import sys

import numpy as np

from circuit_model import assemble, branches, linear_tubes, operating_point, parse

KT4 = 4 * 1.380649e-23 * 293.0
LAWS = {  # the constants of the engine's own table, fitted to data sheets; farads from the sheets
    "6SL7GT": (0.656202e-3, 74.0564, 0.25028, 0.31057, 2.8e-12, 3.0e-12, 3.8e-12),
    "own": (0.977e-3, 105.0, 0.204, 0.315, 1.7e-12, 1.6e-12, 0.46e-12),
    "low": (0.775e-3, 21.2, 0.406, 0.314, 1.5e-12, 1.6e-12, 0.5e-12),
}
STAGE = dict(law="6SL7GT", supply_volts=250, plate_ohms=220e3, cathode_ohms=2200, cathode_farads=25e-6, grid_ohms=1e6,
             decoupling_ohms=0, decoupling_farads=0, ripple_volts=0.1, ripple_hertz=120, load_ohms=470e3, load_farads=100e-12)
AS_STAGE = dict(STAGE, source_ohms=10e3, coupling_farads=20e-9)
AS_VOICE = dict(STAGE, microphone_ohms=50e3, microphone_farads=None, level_ohms=500e3, level=0.6, load_ohms=1e6, tone="two-knob",
                position=20e-9, bass=0.2, treble=0.45)
TONE = dict(bass_ohms=1e6, treble_ohms=1e6, r_in=100e3, r_low=10e3, r_mix=100e3, c_bass_top=2.2e-9, c_bass_bottom=22e-9,
            c_treble_top=220e-12, c_treble_bottom=2.2e-9)
CASES = [
    ("stage", {}),
    ("stage", dict(cathode_farads=0, source_ohms=100e3)),
    ("stage", dict(law="own", plate_ohms=100e3, cathode_ohms=1500, ripple_hertz=100, load_ohms=1e6, supply_volts=300)),
    ("stage", dict(law="low", plate_ohms=47e3, cathode_ohms=1200, decoupling_ohms=10e3, decoupling_farads=8e-6, load_ohms=100e3)),
    ("stage", dict(source_ohms=0, coupling_farads=470e-12, decoupling_ohms=22e3, decoupling_farads=16e-6, ripple_volts=2.0)),
    ("stage", dict(law="low", source_ohms=500e3, grid_ohms=5e6, plate_ohms=10e3, cathode_ohms=470, load_ohms=10e3)),
    ("voice", {}),
    ("voice", dict(position=470e-12, ripple_hertz=100)),
    ("voice", dict(tone="none", level=1.0, law="own", plate_ohms=100e3, cathode_ohms=1500)),
    ("voice", dict(microphone_farads=1.2e-9, microphone_ohms=1e3, grid_ohms=4.7e6)),
    ("voice", dict(decoupling_ohms=47e3, decoupling_farads=10e-6, bass=0.9, treble=0.1, level=0.15, ripple_volts=0.5)),
    ("voice", dict(microphone_ohms=0, cathode_farads=0, tone="none", level=0.3)),
]


def netlist(kind, case):
    """The circuit as text, with the tube's grid behind its own node, and the inputs of the calculator."""
    c = {**(AS_STAGE if kind == "stage" else AS_VOICE), **case}
    law = LAWS[c["law"]]
    parts = [f"V1 b 0 {c['supply_volts']} 0", "V2 emf 0 0 0"]
    feed = "b"
    if c["decoupling_ohms"]:
        feed = "d"
        parts += [f"R1 b d {c['decoupling_ohms']}", f"C1 d 0 {c['decoupling_farads']}"]
    own = c["source_ohms"] if kind == "stage" else c["microphone_ohms"]
    block = c.get("microphone_farads") or 1.0
    parts += [f"C2 emf s {block}", f"R2 s g {own}", f"R3 g 0 {c['grid_ohms']}", f"R4 {feed} p {c['plate_ohms']}"]
    parts += [f"R5 k 0 {c['cathode_ohms']}"] + ([f"C3 k 0 {c['cathode_farads']}"] if c["cathode_farads"] else [])
    parts += ["T1 p gi k " + " ".join(str(figure) for figure in law), "R6 g gi GRID"]
    inputs = {key: c[key] for key in STAGE if key != "law"}
    names = ["perveance", "mu", "mu_spread", "contact_volts", "grid_plate_farads", "grid_cathode_farads", "plate_cathode_farads"]
    inputs["tube"] = dict(zip(names, law))
    if kind == "stage":
        parts += [f"C4 p o {c['coupling_farads']}"]
        inputs.update(source_ohms=c["source_ohms"], coupling_farads=c["coupling_farads"])
    else:
        parts += [f"C4 p a {c['position']}"]
        top = "a"
        if c["tone"] == "two-knob":
            top = "bb"
            t = TONE
            parts += [f"R7 a bt {t['r_in']}", f"P1 bt bw bo {t['bass_ohms']} {c['bass']}", f"C5 bt bw {t['c_bass_top']}",
                      f"C6 bw bo {t['c_bass_bottom']}", f"R8 bo 0 {t['r_low']}", f"R9 bw bb {t['r_mix']}",
                      f"C7 a tt {t['c_treble_top']}", f"P2 tt bb to {t['treble_ohms']} {c['treble']}", f"C8 to 0 {t['c_treble_bottom']}"]
            inputs.update(bass=c["bass"], treble=c["treble"])
        parts += [f"P3 {top} o 0 {c['level_ohms']} {c['level']}"]
        inputs.update({key: c[key] for key in ("microphone_ohms", "level_ohms", "level", "tone")},
                      positions=[{"farads": c["position"]}])
        if c["microphone_farads"]:
            inputs["microphone_farads"] = c["microphone_farads"]
    parts += [f"R10 o 0 {c['load_ohms']}", f"C9 o 0 {c['load_farads']}"]
    return "; ".join(parts), c, inputs


def solve(parts, omega, tubes, source=None, current=None):
    """Volts at the output for 1 V of one source, or for 1 A from one node to another."""
    matrix, right, index = assemble(parts, omega, tubes)
    matrix, right = np.array(matrix, dtype=complex), np.zeros(len(right), dtype=complex)
    if source is not None:
        pieces = [piece for piece in branches(parts) if piece[0] == "V"]
        right[len(index) + [piece[1] for piece in pieces].index(source)] = 1.0
    else:
        for node, sign in zip(current, (1, -1)):
            if node != "0":
                right[index[node]] += sign
    return np.linalg.solve(matrix, right)[index["o"]]


def hum_and_hiss(text, c):
    at_rest = parse(text.replace("R6 g gi GRID", "R6 g gi 0"))
    volts, _ = operating_point(at_rest)
    tubes = linear_tubes(at_rest, volts)
    parts = parse(text.replace("GRID", repr(2.5 / tubes["T1"][0])))
    hum = c["ripple_volts"] * abs(solve(parts, 2 * np.pi * c["ripple_hertz"], tubes, source="b"))
    hertz = np.linspace(300.0, 3000.0, 541)
    noisy = [(a, b, figures[0]) for sort, a, b, figures in branches(parts) if sort == "R"]
    density = [sum(KT4 / ohms * abs(solve(parts, 2 * np.pi * f, tubes, current=(a, b))) ** 2 for a, b, ohms in noisy) for f in hertz]
    weights = np.array([1] + [4, 2] * 269 + [4, 1]) * (hertz[1] - hertz[0]) / 3
    return hum, np.sqrt(np.dot(weights, density))


def main():
    print("calculator\tinputs\thum_volts\thiss_volts\tsource")
    for kind, case in CASES:
        text, c, inputs = netlist(kind, case)
        hum, hiss = hum_and_hiss(text, c)
        print(f"{kind}\t{json.dumps(inputs)}\t{hum:.9g}\t{hiss:.9g}\tcomputed: numpy modified nodal analysis, hum_hiss.py")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
