"""Mutual inductance of a coil and a link as two current sheets: Maxwell's circles integrated over both by Gauss."""
import numpy as np
from scipy.special import ellipe, ellipkm1

MU = 4e-7 * np.pi


def loops(a, b, apart):
    far, near = (a + b) ** 2 + apart**2, (a - b) ** 2 + apart**2
    m = 4 * a * b / far
    return MU * np.sqrt(a * b / m) * ((2 - m) * ellipkm1(near / far) - 2 * ellipe(m))


def sheets(a, turns, first, b, links, second, points=600):
    x, w = np.polynomial.legendre.leggauss(points)
    z1 = first[0] + (first[1] - first[0]) * (x + 1) / 2
    z2 = second[0] + (second[1] - second[0]) * (x * 0.999999 + 1) / 2
    grid = loops(a, b, z1[:, None] - z2[None, :])
    return turns * links * (w[:, None] * w[None, :] * grid).sum() / 4


print("mean_mm\tpitch_mm\tturns\tlink_mm\tlink_turns\tbeside\tmicrohenries\tsource")
for mean, pitch, turns, link, links, beside in [
    (50, 2.0, 20, 54, 3, 0), (50, 2.0, 20, 50, 3, 1), (25, 1.0, 40, 27, 4, 0), (25, 1.0, 40, 25, 2, 1),
    (65, 4.0, 16, 73, 2, 0), (65, 4.0, 16, 65, 5, 1), (20, 0.5, 60, 21, 6, 0),
]:
    coil = np.array([-0.5, turns - 0.5]) * pitch
    place = np.array([-links - 0.5, -0.5]) * pitch if beside else np.array([-0.5, links - 0.5]) * pitch
    henries = sheets(mean / 2e3, turns, coil / 1e3, link / 2e3, links, place / 1e3)
    cells = [mean, pitch, turns, link, links, beside, f"{1e6 * henries:.6g}", "two current sheets, scipy (coil_links.py)"]
    print("\t".join(map(str, cells)))
