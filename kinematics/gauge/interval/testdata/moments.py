#!/usr/bin/env python3
"""Moments of a standard normal deviate between two limits, to 150 digits.

Writes moments.csv, against which moments_test.go holds the package. Needs
mpmath. The limits are doubles and are taken as exact. The chance is a
difference of complementary error functions; the moments follow from it by
parts, as in the text books, with enough digits that no cancellation matters.

    python3 moments.py > moments.csv
"""

import math

from mpmath import mp, mpf, erfc, exp, log, log1p, pi, sqrt

mp.dps = 150

WIDTHS = [1e-9, 1e-6, 1e-3, 0.01, 0.05, 0.1, 0.3, 0.5, 0.9, 0.999, 1.001, 1.2, 1.999, 2.001, 3, 6, 12, 20, 100, 1e3]
CENTRES = [0, 1e-9, 1e-4, 0.1, 0.4, 0.8, 0.999, 1.001, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 15, 20, 24, 25, 26, 30, 35, 38, 40, 45, 60]
PRODUCTS = [0.999, 1.001, 1.999, 2.001, 4]  # width times centre: where a method may change
ENDS = [0, 1e-9, 0.1, 0.5, 1, 1.999, 2.001, 2.999, 3.001, 3.999, 4.001, 4.999, 5.001, 7, 10, 15, 20, 24.999, 25.001, 30, 37, 38.5, 40, 50, 60, 1e3, 1e5]


def limits():
    for c in CENTRES:
        for sign in (1, -1):
            for w in WIDTHS + ([p / c for p in PRODUCTS] if c >= 1 else []):
                yield sign * c - w / 2, sign * c + w / 2
            if c == 0:
                break
    for e in ENDS:
        for sign in (1, -1):
            yield sign * e, math.inf
            yield -math.inf, sign * e
            if e == 0:
                break
    yield -math.inf, math.inf


def upper(z):
    """The chance of more than z."""
    return mpf(0) if z == math.inf else mpf(1) if z == -math.inf else erfc(mpf(z) / sqrt(2)) / 2


def density(z):
    return mpf(0) if math.isinf(z) else exp(-mpf(z) ** 2 / 2) / sqrt(2 * pi)


def moments(a, b):
    if a + b < 0:  # differences in the left-hand tail need no extra digits mirrored
        lg, m1, m2, m3, m4, curve = moments(-b, -a)
        return lg, -m1, m2, -m3, m4, curve
    chance = upper(a) - upper(b)
    beyond = upper(-a) + upper(b)
    lg = log1p(-beyond) if beyond < 0.5 else log(chance)
    pa, pb = density(a) / chance, density(b) / chance

    def p(n):
        return (0 if pa == 0 else mpf(a) ** n * pa) - (0 if pb == 0 else mpf(b) ** n * pb)

    m1 = p(0)
    m2 = p(1) + 1
    m3 = p(2) + 2 * m1
    m4 = p(3) + 3 * m2
    curve = m1**2 - p(1)  # 1 - variance, not written so: it may be 1e-200
    return lg, m1, m2, m3, m4, curve


def main():
    print("a,b,log,m1,m2,m3,m4,variance,curve,third,fourth")
    seen = set()
    for a, b in limits():
        if (a, b) in seen:
            continue
        seen.add((a, b))
        lg, m1, m2, m3, m4, curve = moments(a, b)
        v = m2 - m1**2
        c3 = m3 - 3 * m1 * m2 + 2 * m1**3
        c4 = m4 - 4 * m1 * m3 + 6 * m1**2 * m2 - 3 * m1**4
        print(",".join(repr(float(x) + 0.0) for x in (a, b, lg, m1, m2, m3, m4, v, curve, c3, c4)))


if __name__ == "__main__":
    main()
