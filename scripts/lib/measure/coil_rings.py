"""Coils as sums of rings: Maxwell's circles with scipy's elliptic integrals, own inductance with the skin by its Bessel functions."""
import json
import sys

import numpy as np
from scipy.special import ellipe, ellipkm1, jve

MU = 4e-7 * np.pi


def inner(ratio):
    """Inner inductance over that at dc, of a radius of so many skin depths."""
    z = (1 - 1j) * ratio
    # The scaled functions' common factor drops out.
    whole = z / 2 * jve(0, z) / jve(1, z)
    return 4 * whole.imag / ratio**2


def rings(coil):
    wire, overall = coil["wire"]["diameter"], coil["wire"]["overall_diameter"]
    mean, turns = coil["form_diameter"] + overall, int(coil["turns"])
    pitch = coil.get("pitch", overall)
    depth = np.sqrt(1e-6 / 58 / (np.pi * coil["hertz"] * MU))
    radius = mean / 2
    own = MU * radius * (np.log(16 * radius / wire) - 2 + inner(wire / 2 / depth) / 4)
    apart = pitch * np.arange(1, turns)
    far = 4 * radius**2 + apart**2
    m = 4 * radius**2 / far
    mutual = MU * radius / np.sqrt(m) * ((2 - m) * ellipkm1(apart**2 / far) - 2 * ellipe(m))
    return turns * own + 2 * float(((turns - np.arange(1, turns)) * mutual).sum())


print(json.dumps([rings(coil) for coil in json.load(sys.stdin)]))
