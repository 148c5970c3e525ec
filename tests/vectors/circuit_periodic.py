"""Writes circuit_periodic.tsv: stages under a sinusoidal drive, 512 samples a period, by Newton-Krylov on the samples with
the linear network applied through the FFT; the drive that meets a bound by scipy's brentq around that."""
import numpy as np
from scipy.optimize import brentq, minimize_scalar
from scipy.sparse.linalg import LinearOperator, gmres

from circuit_model import assemble, operating_point, parse, plate

SAMPLES = 512
HERTZ = 1000.0


class Stage:
    def __init__(self, text):
        self.parts = parse(text)
        (self.tube,) = [part for part in self.parts if part.kind == "T"]
        self.law = self.tube.values[:4]
        rest, amps = operating_point(self.parts)
        self.rest_amps = amps["T1"]
        at = lambda node: 0.0 if node == "0" else rest[node]
        p, g, k = self.tube.nodes
        self.rest = at(g) - at(k), at(p) - at(k)
        # volts of every node for one ampere from plate to cathode, and for the signal, at every harmonic
        self.of_amps, self.of_signal = {}, {}
        for harmonic in range(SAMPLES // 2 + 1):
            matrix, right, self.index = assemble(self.parts, 2 * np.pi * HERTZ * harmonic)
            matrix, inject = np.array(matrix, dtype=complex), np.zeros(len(right), dtype=complex)
            for node, sign in ((p, -1), (k, 1)):
                if node != "0":
                    inject[self.index[node]] += sign
            drive = np.array(right, dtype=complex) if harmonic == 1 else np.zeros(len(right))
            solved = np.linalg.solve(matrix, np.stack([inject, drive], axis=1))
            self.of_amps[harmonic], self.of_signal[harmonic] = solved[:, 0], solved[:, 1]

    def spectrum(self, node, of):
        if node == "0":
            return np.zeros(SAMPLES // 2 + 1, dtype=complex)
        return np.array([of[h][self.index[node]] for h in range(SAMPLES // 2 + 1)])

    def between(self, a, b, amps, drive):
        """Volts beyond rest in the samples, for a plate current and a drive."""
        z = self.spectrum(a, self.of_amps) - self.spectrum(b, self.of_amps)
        t = self.spectrum(a, self.of_signal) - self.spectrum(b, self.of_signal)
        z[-1] = 0
        return np.fft.irfft(z * np.fft.rfft(amps) + t * drive * SAMPLES / 2, SAMPLES)

    def balance(self, drive, amps):
        """Plate current beyond rest at every sample."""
        p, g, k = self.tube.nodes
        for _ in range(60):
            grid = self.rest[0] + self.between(g, k, amps, drive)
            high = self.rest[1] + self.between(p, k, amps, drive)
            off = plate(self.law, grid, high) - self.rest_amps - amps
            if np.max(np.abs(off)) < 1e-15:
                break
            now = plate(self.law, grid, high)
            gm = (plate(self.law, grid + 1e-6, high) - now) / 1e-6
            gp = (plate(self.law, grid, high + 1e-5) - now) / 1e-5
            apply = lambda d: d - gm * self.between(g, k, d, 0.0) - gp * self.between(p, k, d, 0.0)
            step, _ = gmres(LinearOperator((SAMPLES, SAMPLES), matvec=apply, dtype=float), off, rtol=1e-10, atol=0)
            amps = amps + step
        return amps

    def peak(self, wave):
        amplitudes = np.fft.rfft(wave) * 2 / SAMPLES
        amplitudes[0] /= 2
        orders = np.arange(len(amplitudes))
        best = 2 * np.pi * np.argmax(wave) / SAMPLES
        value = lambda angle: -float(np.sum((amplitudes * np.exp(1j * orders * angle)).real))
        found = minimize_scalar(value, bracket=(best - 0.02, best, best + 0.02), options={"xtol": 1e-10})
        return -found.fun

    def over(self, amps, drive):
        """How far the first bound is passed: grid peak over the bias, least current under 1 % of rest."""
        _, g, k = self.tube.nodes
        grid = self.rest[0] + self.peak(self.between(g, k, amps, drive))
        least = self.rest_amps - self.peak(-amps)
        return max((grid / -self.rest[0], "grid"), (0.01 - least / self.rest_amps, "plate"))

    def search(self, goal, low, high):
        state = {"amps": np.zeros(SAMPLES)}

        def off(drive):
            state["amps"] = self.balance(drive, state["amps"])
            return goal(state["amps"], drive)

        drive = low
        while off(drive) < 0:
            drive *= 1.15
            assert drive < high, "not reached"
        return brentq(off, drive / 1.15, drive, xtol=1e-13, rtol=1e-13), state

    def phasors(self, node, amps, drive):
        wave = self.between(node, "0", amps, drive)
        spectrum = np.fft.rfft(wave) * 2 / SAMPLES
        return spectrum[:8] * np.array([0.5] + [1] * 7)


TUBES = [
    "0.000962 114.0 0.185 0.279 3.69e-12 2.56e-12 0.43e-12",
    "0.000763 23.4 0.444 0.285 2.94e-12 1.0e-12 0.58e-12",
    "0.00065 77.4 0.265 0.288 2.43e-12 1.19e-12 9.28e-13",
]
STAGES = [
    ("high mu, bypassed cathode", 0, 262, 220e3, 1500, 22e-6, 68e3, 470e3, 22e-9),
    ("low mu, bare cathode", 1, 319, 220e3, 1500, 0, 600, 220e3, 22e-9),
    ("high mu, heavy bias", 0, 250, 220e3, 4700, 25e-6, 50e3, 100e3, 20e-9),
    ("low mu, near cut-off", 1, 250, 100e3, 15e3, 25e-6, 600, 1e6, 100e-9),
    ("small coupling capacitor", 2, 300, 100e3, 2200, 10e-6, 50e3, 470e3, 470e-12),
]


def main():
    print("name\tnetlist\tbound\tdrive\tnode\twanted_rms\t" + "\t".join(f"re{h}\tim{h}" for h in range(8)) + "\tsource")
    for name, tube, supply, rp, rk, ck, rs, load, cc in STAGES:
        text = (
            f"V1 b 0 {supply} 0; V2 e 0 0 1; C1 e s 1e-3; R1 g 0 1e6; R2 k 0 {rk}; R3 b p {rp}; R5 o 0 {load}; R6 s g {rs}; "
            f"C3 p o {cc}; C4 o 0 100e-12; T1 p g k {TUBES[tube]}" + (f"; C2 k 0 {ck}" if ck else "")
        )
        stage = Stage(text)
        _, g, k = stage.tube.nodes
        swing = abs(stage.spectrum(g, stage.of_signal)[1] - stage.spectrum(k, stage.of_signal)[1])
        start = 0.5 * -stage.rest[0] / swing
        drive, state = stage.search(lambda amps, drive: stage.over(amps, drive)[0], start, 20 * start)
        amps = stage.balance(drive, state["amps"])
        bound = stage.over(amps, drive)[1]
        most = stage.phasors("o", amps, drive)
        wanted = float(f"{abs(most[1]) / 2 / np.sqrt(2):.4g}")
        half, state = stage.search(
            lambda amps, drive: abs(stage.phasors("o", amps, drive)[1]) / np.sqrt(2) / wanted - 1, drive / 3, drive * 2
        )
        rows = [(bound, drive, "o", ""), (bound, drive, "k", ""), ("fundamental", half, "o", wanted)]
        for kind, at, node, asked in rows:
            amps = stage.balance(at, state["amps"])
            figures = "\t".join(f"{v.real:.10g}\t{v.imag:.10g}" for v in stage.phasors(node, amps, at))
            print(f"{name}\t{text}\t{kind}\t{at:.13g}\t{node}\t{asked}\t{figures}"
                  "\tcomputed: numpy FFT and scipy, 512 samples, circuit_periodic.py")


main()
