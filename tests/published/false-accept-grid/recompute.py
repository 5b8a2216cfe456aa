"""Checks data.csv by mpmath at 20 digits, over the measured error instead of the true one: `python3 recompute.py`."""

import csv
from pathlib import Path

from mpmath import erfc, erfinv, exp, log, mp, mpf, pi, quad, sqrt

mp.dps = 20


def phi(z):
    return erfc(-z / sqrt(2)) / 2


def risks(ratio, inside, acceptance):
    """Given the measured error y, the true error is normal about r*y with deviation d, r = s0^2 / (s0^2 + u^2)."""
    s0, u = 1 / (sqrt(2) * erfinv(inside)), 1 / (2 * ratio)
    sy = sqrt(s0**2 + u**2)
    r, d = (s0 / sy) ** 2, s0 * u / sy
    density = lambda y: exp(-((y / sy) ** 2) / 2) / (sy * sqrt(2 * pi))
    outside = lambda y: phi((r * y - 1) / d) + phi((-1 - r * y) / d)
    within = lambda y: phi((1 - r * y) / d) - phi((-1 - r * y) / d)
    points = lambda a, b: [a + (b - a) * k / 12 for k in range(13)]
    end = acceptance + 14 * sy
    return (
        2 * quad(lambda y: density(y) * outside(y), points(mpf(0), acceptance)),
        2 * quad(lambda y: density(y) * within(y), points(acceptance, end)),
    )


def unrounded(printed, ratio):
    """The multiplier that six decimals stand for."""
    managed = mpf("1.04") - exp(mpf("0.38") * log(ratio) - mpf("0.54"))
    return next(m for m in (mpf(1), 1 - 1 / ratio, 1 - managed / ratio) if abs(m - printed) < 0.51e-6)


worst = 0
for row in csv.DictReader((Path(__file__).parent / "data.csv").open()):
    ratio, inside, printed = (mpf(row[k]) for k in ("TUR", "prior_in_tolerance", "guard_multiplier_A_over_T"))
    accept, reject = risks(ratio, inside, unrounded(printed, ratio))
    worst = max(worst, abs(accept - mpf(row["PFA"])), abs(reject - mpf(row["PFR"])))
print("greatest difference", mp.nstr(worst, 3))
for ratio, inside in ((4, "0.95"), (2, "0.95"), (1, "0.95"), (4, "0.85")):
    accept, reject = risks(mpf(ratio), mpf(inside), mpf(1))
    print(ratio, inside, mp.nstr(accept, 12), mp.nstr(reject, 12))
