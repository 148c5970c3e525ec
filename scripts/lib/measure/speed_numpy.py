"""The work of `voice` in numpy and scipy, as one would write it there: the operating point by scipy's root finder on the
triode law, then 400 frequencies for each of two positions by numpy's batched solver. Prints the best tenth in milliseconds.

The parts are the defaults of the calculator and the law is summed over the spread as in tests/vectors/circuit_model.py,
with fewer points, enough for eight digits. Responses are nodal: twelve nodes, conductances and capacitances stamped once,
so that a frequency costs numpy one matrix of twelve.
"""
import pathlib
import sys
import time

import numpy as np
from scipy.optimize import brentq

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[3] / "tests" / "vectors"))
import circuit_model as model  # noqa: E402

model.PANELS = 1
points, weights = np.polynomial.legendre.leggauss(24)
model.ALONG, share = (points + 1) / 2, weights / 2
model.SHARE = share * 2 * (1 - model.ALONG)

LAW = (0.656202e-3, 74.0564, 0.25028, 0.31057)  # the table's 6SL7GT
HERTZ = np.geomspace(50.0, 15e3, 400)
PLATE, CATHODE = 220e3, 2200.0
NAMES = ["source", "grid", "cathode", "plate", "a", "bass_top", "bass_wiper", "bass_bottom", "treble_top", "treble_bottom",
         "b", "output"]
BASS, TREBLE, LEVEL = 0.2, 0.45, 0.6


def branches(position, gm, gp):
    """Conductances and capacitances of the network, by node; ground is None."""
    r = [("source", "grid", 50e3), ("grid", None, 1e6), ("cathode", None, CATHODE), ("plate", None, PLATE),
         ("a", "bass_top", 100e3), ("bass_top", "bass_wiper", 1e6 * (1 - BASS)), ("bass_wiper", "bass_bottom", 1e6 * BASS),
         ("bass_bottom", None, 10e3), ("bass_wiper", "b", 100e3), ("treble_top", "b", 1e6 * (1 - TREBLE)),
         ("b", "treble_bottom", 1e6 * TREBLE), ("b", "output", 500e3 * (1 - LEVEL)), ("output", None, 500e3 * LEVEL),
         ("output", None, 1e6), ("plate", "cathode", 1 / gp)]
    c = [("cathode", None, 25e-6), ("plate", "a", position), ("bass_top", "bass_wiper", 2.2e-9),
         ("bass_wiper", "bass_bottom", 22e-9), ("a", "treble_top", 220e-12), ("treble_bottom", None, 2.2e-9),
         ("output", None, 100e-12), ("grid", "plate", 2.8e-12), ("grid", "cathode", 3.0e-12), ("plate", "cathode", 3.8e-12)]
    g, cap = np.zeros((12, 12)), np.zeros((12, 12))
    for matrix, parts in ((g, [(a, b, 1 / v) for a, b, v in r]), (cap, c)):
        for a, b, value in parts:
            for one in (a, b):
                if one:
                    matrix[NAMES.index(one), NAMES.index(one)] += value
            if a and b:
                matrix[NAMES.index(a), NAMES.index(b)] -= value
                matrix[NAMES.index(b), NAMES.index(a)] -= value
    plate, cathode, grid = (NAMES.index(name) for name in ("plate", "cathode", "grid"))
    for row, sign in ((plate, 1), (cathode, -1)):
        g[row, grid] += sign * gm
        g[row, cathode] -= sign * gm
    g[0, :], cap[0, :] = 0.0, 0.0
    g[0, 0] = 1.0
    return g, cap


def voice(supply):
    """Gains in dB over HERTZ for both positions."""
    across = lambda amps: (-amps * CATHODE, supply - amps * (PLATE + CATHODE))
    off = lambda amps: float(model.plate(LAW, *across(amps))) - amps
    amps = brentq(off, 0.0, supply / (PLATE + CATHODE), xtol=1e-15)
    gm, gp = (float(slope) for slope in model.slopes(LAW, *across(amps)))
    right = np.zeros((12, 1), complex)
    right[0] = 1.0
    gains = []
    for position in (20e-9, 470e-12):
        g, cap = branches(position, gm, gp)
        matrices = g + 1j * (2 * np.pi * HERTZ)[:, None, None] * cap
        out = np.linalg.solve(matrices, np.broadcast_to(right, (len(HERTZ), 12, 1)))[:, NAMES.index("output"), 0]
        gains.append(20 * np.log10(np.abs(out)))
    return amps, gains


def main():
    times = []
    for round in range(120):
        start = time.perf_counter()
        amps, gains = voice(250 + round / 40)
        times.append(1e3 * (time.perf_counter() - start))
    assert 1e-4 < amps < 1e-3 and all(np.all(np.isfinite(gain)) for gain in gains)
    print(f"speed.numpy_milliseconds {sorted(times)[len(times) // 10]:.3f}")


main()
