"""Exact 95 % intervals of JCGM 101:2008, 9.2, by mpmath at 30 digits: `python3 recompute.py`.

A sum of rectangular quantities of half-widths a_i has the distribution function
F(y) = sum over all signs s of (prod s_i) * max(0, y + sum s_i a_i)^n / (n! * prod 2 a_i).
"""

from itertools import product

from mpmath import diff, erfinv, factorial, findroot, mp, mpf, sqrt

mp.dps = 30


def distribution(half_widths):
    n = len(half_widths)
    scale = factorial(n)
    for a in half_widths:
        scale *= 2 * a

    def cumulative(y):
        total = mpf(0)
        for signs in product((1, -1), repeat=n):
            sign = mpf(1)
            shift = y
            for s, a in zip(signs, half_widths):
                sign *= s
                shift += s * a
            if shift > 0:
                total += sign * shift**n
        return total / scale

    return cumulative


for name, half_widths, start in (
    ("9.2.3", [sqrt(3)] * 4, 3.9),
    ("9.2.4", [sqrt(3)] * 3 + [10 * sqrt(3)], 17),
):
    cumulative = distribution(half_widths)
    end = findroot(lambda y: cumulative(y) - mpf("0.975"), start)
    print(name, mp.nstr(end, 16), "density there", mp.nstr(diff(cumulative, end), 10))
end = 2 * sqrt(2) * erfinv(mpf("0.95"))
print("9.2.2", mp.nstr(end, 16), "density there", mp.nstr(mp.exp(-((end / 2) ** 2) / 2) / (2 * sqrt(2 * mp.pi)), 10))
