"""Finds the minimum of the sum of squares of a line with errors in both, by Newton's method at 40 digits (mpmath 1.3.0).

Run as: python3 recompute.py. Prints intercept, slope, chi-squared; u(intercept), u(slope), covariance: first for the
data of ISO/TS 28037:2010, 7.4, then for Pearson's data with York's weights.
"""
from mpmath import diff, findroot, mp, mpf, nstr, sqrt

mp.dps = 40


def numbers(text):
    return [mpf(word) for word in text.split()]


def fit(x, y, x_variances, y_variances, start):
    def chi_squared(a, b):
        terms = zip(x, y, x_variances, y_variances)
        return sum((q - a - b * p) ** 2 / (v + b * b * u) for p, q, u, v in terms)

    def gradient(a, b):
        return diff(chi_squared, (a, b), (1, 0)), diff(chi_squared, (a, b), (0, 1))

    a, b = findroot(lambda a, b: gradient(a, b), start)
    weights = [1 / (v + b * b * u) for u, v in zip(x_variances, y_variances)]
    terms = zip(x, y, x_variances, y_variances, weights)
    adjusted = [w * (p * v + u * b * (q - a)) for p, q, u, v, w in terms]
    total = sum(weights)
    centre = sum(w * p for w, p in zip(weights, adjusted)) / total
    squares = sum(w * (p - centre) ** 2 for w, p in zip(weights, adjusted))
    print(*(nstr(value, 17) for value in (a, b, chi_squared(a, b))))
    print(*(nstr(value, 17) for value in (sqrt(1 / total + centre**2 / squares), sqrt(1 / squares), -centre / squares)))


fit(
    numbers("1.2 1.9 2.9 4.0 4.7 5.9"),
    numbers("3.4 4.4 7.2 8.5 10.8 13.5"),
    numbers("0.04 0.04 0.04 0.04 0.04 0.04"),
    numbers("0.04 0.04 0.04 0.16 0.16 0.16"),
    (mpf("0.5788"), mpf("2.1597")),
)
fit(
    numbers("0 0.9 1.8 2.6 3.3 4.4 5.2 6.1 6.5 7.4"),
    numbers("5.9 5.4 4.4 4.6 3.5 3.7 2.8 2.8 2.4 1.5"),
    [1 / weight for weight in numbers("1000 1000 500 800 200 80 60 20 1.8 1")],
    [1 / weight for weight in numbers("1 1.8 4 8 20 20 70 70 100 500")],
    (mpf("5.48"), mpf("-0.48")),
)
