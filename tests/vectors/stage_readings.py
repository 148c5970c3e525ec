"""What a loading meter reads on a triode stage, and how far parts in tolerance move it: stage_readings.tsv.

Independent of the engine: plate current by quadrature of the triode law (circuit_model.py), the dc point by
scipy.optimize.brentq on the cathode current with the meter as one more resistor, derivatives by central differences.
Bands: each part evenly spread within its tolerance (deviation = tolerance/sqrt(3)), least and most 2.81 deviations out,
usual 1.645, neither beyond all parts at their limits at once. Run: python3 stage_readings.py > stage_readings.tsv
"""
import math

from circuit_model import plate as triode
from scipy.optimize import brentq

SOURCE = "scipy brentq on the triode law by quadrature, central differences; stage_readings.py"
CASES = [
    # perveance, mu, spread, contact, supply, plate, cathode, grid, meter
    (0.000653, 73.8, 0.25, 0.31, 263.0, 220e3, 2200.0, 1e6, 10e6),
    (0.000653, 73.8, 0.25, 0.31, 263.0, 220e3, 2200.0, 1e6, 5e6),
    (0.000977, 105.1, 0.204, 0.315, 250.0, 100e3, 1500.0, 1e6, 1e6),
    (0.000769, 21.25, 0.22, 0.309, 300.0, 47e3, 1500.0, 470e3, 20e3 * 250),
]


def volts(point, g, mu, spread, contact, supply, plate, cathode, meter):
    def balance(amps):
        vk = amps * (1 / (1 / cathode + (1 / meter if point == "cathode" else 0)))
        if point == "plate":
            thevenin = plate * meter / (plate + meter)
            vp = supply * meter / (plate + meter) - amps * thevenin
        else:
            vp = supply - amps * plate
        return triode((g, mu, spread, contact), -vk, vp - vk) - amps, vp, vk

    amps = brentq(lambda i: balance(i)[0], 1e-12, supply / plate * 0.999, xtol=1e-16, rtol=1e-13)
    return balance(amps)[1 if point == "plate" else 2]


def main():
    print("\t".join("perveance mu mu_spread contact_volts supply_volts plate_ohms cathode_ohms grid_ohms meter_ohms point "
                    "nominal least most usual_least usual_most source".split()))
    spread_of = {0: 0.20, 1: 0.15, 4: 0.05, 5: 0.05, 6: 0.05}
    for case in CASES:
        for point in ("plate", "cathode"):
            at = lambda c: volts(point, *c[:7], c[8])
            nominal = at(case)
            squares = limit = 0.0
            for index, tolerance in spread_of.items():
                up, down = list(case), list(case)
                up[index] *= math.exp(1e-4)
                down[index] *= math.exp(-1e-4)
                reach = abs(at(up) - at(down)) / 2e-4 * tolerance
                squares += reach**2 / 3
                limit += reach
            out, usual = min(2.81 * squares**0.5, limit), min(1.645 * squares**0.5, limit)
            figures = [nominal, nominal - out, nominal + out, nominal - usual, nominal + usual]
            print("\t".join([*(repr(v) for v in case), point, *(f"{v:.7g}" for v in figures), SOURCE]))


main()
