"""The supply of the speed measure integrated by scipy, for its time: ten cycles of the mains from near the steady state."""
import time

import numpy as np
from scipy.integrate import solve_ivp

PEAK, OMEGA, OHMS = 320 * np.sqrt(2), 2 * np.pi * 50, 120.0
LOADS = [0.01, 0.03, 0.015, 0.005]


def slope(t, x):
    v0, i1, v1, v2, v3 = x
    i = max(0.0, (abs(PEAK * np.sin(OMEGA * t)) - 1.6 - v0) / OHMS)
    i2, i3 = (v1 - v2) / 1e3, (v2 - v3) / 2.2e3
    return [
        (i - i1 - LOADS[0]) / 32e-6,
        (v0 - v1 - 200 * i1) / 10,
        (i1 - i2 - LOADS[1]) / 32e-6,
        (i2 - i3 - LOADS[2]) / 47e-6,
        (i3 - LOADS[3]) / 22e-6,
    ]


start = [410.0, 0.05, 400.0, 380.0, 369.0]
begun = time.perf_counter()
solve_ivp(slope, (0, 0.2), start, method="LSODA", rtol=1e-5, atol=1e-6, max_step=5e-4)
print(f"supply.speed.scipy_milliseconds {1e3 * (time.perf_counter() - begun):.2f}")
