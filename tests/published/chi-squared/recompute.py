"""Quantiles of chi-squared by mpmath at 40 digits: `python3 recompute.py > quantiles.json`."""

import json

from mpmath import gammainc, mp, mpf

mp.dps = 40
PROBABILITIES = ["0.005", "0.025", "0.05", "0.5", "0.95", "0.975", "0.999"]
ROWS = ["1", "2", "3", "4", "5", "7.5", "10", "30", "100", "1000"]


def below(x, nu):
    return gammainc(nu / 2, 0, x / 2, regularized=True)


def quantile(p, nu):
    low, high = mpf(0), mpf(1)
    while below(high, nu) < p:
        high *= 2
    for _ in range(220):
        middle = (low + high) / 2
        low, high = (middle, high) if below(middle, nu) < p else (low, middle)
    return low


print(json.dumps({f"{nu}|{p}": mp.nstr(quantile(mpf(p), mpf(nu)), 20) for nu in ROWS for p in PROBABILITIES}, indent=1))
