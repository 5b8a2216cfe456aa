"""Two-sided quantiles of Student's t at the rows and columns of GUM table G.2: `python3 recompute.py > quantiles.json`."""

import json

from mpmath import betainc, erfinv, mp, mpf, sqrt

mp.dps = 40
PROBABILITIES = ["0.6827", "0.90", "0.95", "0.9545", "0.99", "0.9973"]
ROWS = [*range(1, 21), 25, 30, 35, 40, 45, 50, 100]


def two_sided(t, nu):
    return 1 - betainc(mpf(nu) / 2, mpf(1) / 2, 0, nu / (nu + t * t), regularized=True)


def quantile(p, nu):
    p = mpf(p)
    low, high = mpf(0), mpf(1)
    while two_sided(high, nu) < p:
        high *= 2
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if two_sided(middle, nu) < p else (low, middle)
    return low


table = {f"{nu}|{p}": mp.nstr(quantile(p, nu), 20) for nu in ROWS for p in PROBABILITIES}
table |= {f"Infinity|{p}": mp.nstr(sqrt(2) * erfinv(mpf(p)), 20) for p in PROBABILITIES}
print(json.dumps(table, indent=1))
