"""Writes render_harmonics.tsv: whole voice stages under a 1 kHz tone, grid current included, by harmonic balance: 256
samples a period, plate and grid current at every sample by Newton with the linear network applied through the FFT, the
drive raised in steps. The netlist is that of circuit_model.py; the grid's current is the law of the core's tube module,
written again here. A direct current through the microphone meets no block: the core's is a million seconds long."""
import json

import numpy as np

from circuit_model import ALONG, SHARE, assemble, emission, operating_point, parse, plate

SAMPLES, HERTZ = 256, 1000.0
SOFT, MOST = 0.0434, 0.2


def currents(law, grid, high):
    """Plate and grid current."""
    perveance, mu, spread, contact = law
    width = spread * np.sqrt(18.0)
    a, b = (1 - width / 3) / mu, (1 + 2 * width / 3) / mu
    x = np.maximum(high, 0)
    mean = np.sum(SHARE * emission(grid[:, None] + contact + x[:, None] * (a + (b - a) * ALONG)), axis=-1)
    y = SOFT * np.logaddexp(0, grid / SOFT)
    to_grid = perveance * mean * MOST * np.sqrt(y / (y + x / mu))
    knee = -np.expm1(-3 * np.minimum(x / (1.3 * np.maximum(mean, 1e-250) ** (2 / 3)), 1e3) ** 2)
    return np.concatenate([(perveance * mean - to_grid) * knee, to_grid])


def balanced(text, peak):
    parts = parse(text)
    (tube,) = [part for part in parts if part.kind == "T"]
    law, (p, g, k) = tube.values[:4], tube.nodes
    rest, amps = operating_point(parts)
    at = lambda node: 0.0 if node == "0" else rest[node]
    rest_volts = np.concatenate([np.full(SAMPLES, at(g) - at(k)), np.full(SAMPLES, at(p) - at(k))])
    rest_amps = np.concatenate([np.full(SAMPLES, amps["T1"]), np.zeros(SAMPLES)])
    half = SAMPLES // 2
    z = np.zeros((3, 2, half + 1), dtype=complex)  # volts of grid, plate, output for plate and grid current
    drive = np.zeros((3, half + 1), dtype=complex)
    for h in range(half):
        matrix, right, index = assemble(parts, 2 * np.pi * HERTZ * h)
        columns = []
        for into in (p, g):
            inject = np.zeros(len(right), dtype=complex)
            inject[index[into]] -= 1
            if k != "0":
                inject[index[k]] += 1
            columns.append(inject)
        solved = np.linalg.solve(np.array(matrix, dtype=complex), np.stack([*columns, np.array(right, dtype=complex)], axis=1))
        node = lambda name: 0 if name == "0" else solved[index[name]]
        for row, volts in enumerate((node(g) - node(k), node(p) - node(k), node("o"))):
            z[row, :, h], drive[row, h] = volts[:2], volts[2] if h == 1 else 0

    def circulant(spectrum):
        kernel = np.fft.irfft(spectrum, SAMPLES)
        return np.stack([np.roll(kernel, n) for n in range(SAMPLES)], axis=1)

    transfer = np.block([[circulant(z[row, column]) for column in range(2)] for row in range(2)])
    unit = np.concatenate([np.fft.irfft(drive[row] * half, SAMPLES) for row in range(2)])
    more = np.zeros(2 * SAMPLES)
    wave = lambda share, more: rest_volts + share * peak * unit + transfer @ more
    for share in np.linspace(0.05, 1, 20):
        for _ in range(80):
            volts = wave(share, more)
            grid, high = volts[:SAMPLES], volts[SAMPLES:]
            off = currents(law, grid, high) - rest_amps - more
            if np.max(np.abs(off)) < 1e-13:
                break
            now, d = currents(law, grid, high), 1e-6
            by_grid = (currents(law, grid + d, high) - now) / d
            by_plate = (currents(law, grid, high + 10 * d) - now) / (10 * d)
            top, low = slice(0, SAMPLES), slice(SAMPLES, None)
            slope = np.block([[np.diag(by_grid[top]), np.diag(by_plate[top])], [np.diag(by_grid[low]), np.diag(by_plate[low])]])
            step = np.linalg.solve(np.eye(2 * SAMPLES) - slope @ transfer, off)
            more = more + step * min(1, 3e-3 / np.max(np.abs(step)))
        else:
            raise ArithmeticError("no balance")
    spectra = [np.fft.rfft(more[:SAMPLES]), np.fft.rfft(more[SAMPLES:])]
    out = sum(z[2, c] * spectra[c] for c in range(2)) * 2 / SAMPLES + share * peak * drive[2]
    return np.abs(out[1:4]), np.max(wave(1, more)[:SAMPLES])


TUBES = [
    [0.000962, 114.0, 0.185, 0.279, 3.69e-12, 2.56e-12, 0.43e-12],
    [0.000763, 23.4, 0.444, 0.285, 2.94e-12, 1.0e-12, 0.58e-12],
    [0.00065, 77.4, 0.265, 0.288, 2.43e-12, 1.19e-12, 9.28e-13],
]
KEYS = ["perveance", "mu", "mu_spread", "contact_volts", "grid_plate_farads", "grid_cathode_farads", "plate_cathode_farads"]
# name, tube, supply, plate, cathode, bypass, microphone ohms, level, load, coupling, bass and treble, microphone volts
CASES = [
    ("high mu, speech level", 0, 262, 220e3, 1500, 22e-6, 50e3, 0.6, 470e3, 22e-9, (0.2, 0.45), 0.1),
    ("low mu, bare cathode", 1, 319, 100e3, 3300, 0, 600, 0.9, 220e3, 22e-9, None, 1.0),
    ("small coupling capacitor", 2, 300, 220e3, 2200, 25e-6, 50e3, 0.5, 1e6, 470e-12, (0.5, 0.5), 0.2),
    ("knobs at their stops", 2, 250, 220e3, 2200, 10e-6, 10e3, 1.0, 470e3, 10e-9, (1.0, 0.0), 0.3),
    ("near clipping, high mu", 0, 250, 100e3, 1500, 22e-6, 600, 0.7, 470e3, 22e-9, None, 0.7),
    ("near clipping, grid current", 2, 263, 220e3, 2200, 22e-6, 50e3, 0.6, 1e6, 20e-9, None, 0.95),
]


def main():
    print("name\tinputs\tnetlist\tgrid_peak\th1\th2\th3\tsource")
    for name, tube, supply, rp, rk, ck, rm, level, load, cc, knobs, volts in CASES:
        top = "a" if knobs is None else "b"
        text = (
            f"V1 s 0 {supply} 0; V2 e 0 0 1; R1 g 0 1e6; R2 k 0 {rk}; R3 s p {rp}; R6 e g {rm}; C3 p a {cc}; "
            f"P1 {top} o 0 500e3 {level}; R5 o 0 {load}; C4 o 0 100e-12; T1 p g k {' '.join(map(repr, TUBES[tube]))}"
        )
        if ck:
            text += f"; C2 k 0 {ck}"
        if knobs is not None:
            text += (f"; R7 a t 100e3; P2 t w u 1e6 {knobs[0]}; C5 t w 2.2e-9; C6 w u 22e-9; R8 u 0 10e3; R9 w b 100e3; "
                     f"C7 a x 220e-12; P3 x b y 1e6 {knobs[1]}; C8 y 0 2.2e-9")
        inputs = {
            "tube": dict(zip(KEYS, TUBES[tube])), "supply_volts": supply, "plate_ohms": rp, "cathode_ohms": rk,
            "cathode_farads": ck, "grid_ohms": 1e6, "microphone_ohms": rm, "microphone_volts": volts,
            "positions": [{"farads": cc}], "level_ohms": 500e3, "level": level, "load_ohms": load, "load_farads": 100e-12,
            "tone": "none" if knobs is None else "two-knob",
        }
        if knobs is not None:
            inputs |= {"bass": knobs[0], "treble": knobs[1]}
        harmonics, grid_peak = balanced(text, volts * np.sqrt(2))
        figures = "\t".join(f"{h:.8g}" for h in harmonics)
        print(f"{name}\t{json.dumps(inputs)}\t{text}\t{grid_peak:.4f}\t{figures}\tcomputed: numpy, render_harmonics.py")


main()
