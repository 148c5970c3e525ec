"""Triode law by quadrature in 45 digits: `tube_law.py law` writes tube_law.tsv, `tube_law.py grid` tube_grid.tsv.
Needs mpmath; shares no formula but the law itself.

The mean over the spread is integrated along ln E, where the drive is explicit and no equation is solved inside the
integral; the closed form in the core is never used. Derivatives are central differences of the integral.
"""
import sys

import mpmath as mp

mp.mp.dps = 45
TAU = mp.mpf("0.1")
C = mp.mpf("2.66") * mp.sqrt(TAU)


def drive(y):
    e = mp.e**y
    return e + TAU * (y + mp.log(mp.sqrt(e) + C))


def ln_volts(u):
    y = mp.log(u) if u > 1 else min(u / TAU - mp.log(C), mp.mpf(0))
    for _ in range(100):
        e = mp.e**y
        r = mp.sqrt(e)
        step = (drive(y) - u) / (e + TAU * (1 + r / 2 / (r + C)))
        y -= max(min(step, mp.mpf(1)), mp.mpf(-1))
        if abs(step) < mp.mpf(10) ** -43 * max(1, abs(y)):
            return y
    raise ArithmeticError(u)


def current(y):
    e = mp.e**y
    return e * (mp.sqrt(e) + C)


RULE_X, RULE_W = None, None


def gauss(n=24):
    global RULE_X, RULE_W
    if RULE_X is None:
        xs, ws = [], []
        for k in range(1, n + 1):
            x = mp.cos(mp.pi * (k - mp.mpf(1) / 4) / (n + mp.mpf(1) / 2))
            for _ in range(60):
                p0, p1 = mp.mpf(1), x
                for j in range(2, n + 1):
                    p0, p1 = p1, ((2 * j - 1) * x * p1 - (j - 1) * p0) / j
                dp = n * (x * p1 - p0) / (x * x - 1)
                dx = p1 / dp
                x -= dx
                if abs(dx) < mp.mpf(10) ** -43:
                    break
            xs.append(x)
            ws.append(2 / ((1 - x * x) * dp * dp))
        RULE_X, RULE_W = xs, ws
    return RULE_X, RULE_W


def mean(ua, d):
    if d == 0:
        return current(ln_volts(ua))
    ya, yb = ln_volts(ua), ln_volts(ua + d)
    # the far end counts most and the near one may be thousands of e-folds away:
    # the last 80 suffice, in pieces of at most 6
    start = max(ya, yb - 80)
    pieces = max(1, int(mp.ceil((yb - start) / 6)))
    xs, ws = gauss()
    total = mp.mpf(0)
    for k in range(pieces):
        a = start + (yb - start) * k / pieces
        b = start + (yb - start) * (k + 1) / pieces
        for x, w in zip(xs, ws):
            y = (a + b) / 2 + (b - a) / 2 * x
            e = mp.e**y
            r = mp.sqrt(e)
            du = e + TAU * (1 + r / 2 / (r + C))
            total += w * (b - a) / 2 * 2 * (1 - (drive(y) - ua) / d) / d * current(y) * du
    return total


def plate(mu, s, v, vg, vp):
    w = s * mp.sqrt(18)
    a, b = (1 - w / 3) / mu, (1 + 2 * w / 3) / mu
    f = mean(vg + v + vp * a, vp * (b - a))
    x = vp / (mp.mpf("1.3") * f ** (mp.mpf(2) / 3))
    return f * -mp.expm1(-3 * x * x)


def diff(g, x, scale):
    h = scale * mp.mpf(10) ** -8
    return (8 * (g(x + h) - g(x - h)) - (g(x + 2 * h) - g(x - 2 * h))) / (12 * h)


def main():
    v = mp.mpf("0.31")
    head = "mu\tspread\tcontact\tgrid\tplate\tamps\tgm\tgp\td_mu\tsource"
    print("# perveance 1 A/V^1.5. Computed by tube_law.py (mpmath, 45 digits)")
    print(head)
    for mu in (2, 20, 105):
        for s in ("1e-6", "0.02", "0.2", "0.35", "0.6"):
            for vp in ("0.01", "0.5", "5", "40", "250", "1e4"):
                for u in ("-12", "-1.5", "-0.2", "0.3", "2", "20"):
                    # what is printed is what is computed with: the doubles the core will read
                    vg = mp.mpf(float(mp.nstr(mp.mpf(u) - v - mp.mpf(vp) / mu, 12)))
                    m, sp, x, c = mp.mpf(mu), mp.mpf(float(s)), mp.mpf(float(vp)), mp.mpf(float(v))
                    out = [
                        plate(m, sp, c, vg, x),
                        diff(lambda g: plate(m, sp, c, g, x), vg, mp.mpf(1)),
                        diff(lambda p: plate(m, sp, c, vg, p), x, x),
                        diff(lambda q: plate(q, sp, c, vg, x), m, m),
                    ]
                    row = [str(mu), s, mp.nstr(v, 3), mp.nstr(vg, 17), vp] + [mp.nstr(o, 16) for o in out]
                    print("\t".join(row + ["mpmath"]), flush=True)


def grid_and_plate(mu, s, v, vg, vp):
    w = s * mp.sqrt(18)
    a, b = (1 - w / 3) / mu, (1 + 2 * w / 3) / mu
    f = mean(vg + v + vp * a, vp * (b - a))
    soft = mp.mpf("0.0434")
    y = soft * mp.log1p(mp.e ** (vg / soft))
    grid = f * mp.mpf("0.2") * mp.sqrt(y / (y + vp / mu))
    x = vp / (mp.mpf("1.3") * f ** (mp.mpf(2) / 3))
    return grid, (f - grid) * -mp.expm1(-3 * x * x)


def grid_rows():
    print("# perveance 1 A/V^1.5. Computed by tube_law.py (mpmath, 45 digits)")
    print("mu\tspread\tcontact\tgrid\tplate\tgrid_amps\tplate_amps\tsource")
    for mu, s in ((20, "0.4"), (100, "0.2")):
        for vp in ("1", "30", "250"):
            for vg in ("-3", "-0.5", "-0.1", "0", "0.1", "1", "20"):
                given = [mp.mpf(mu)] + [mp.mpf(float(x)) for x in (s, "0.31", vg, vp)]
                out = [mp.nstr(o, 16) for o in grid_and_plate(*given)]
                print("\t".join([str(mu), s, "0.31", vg, vp] + out + ["mpmath"]))


if __name__ == "__main__":
    grid_rows() if sys.argv[1:] == ["grid"] else main()
