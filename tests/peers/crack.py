"""Air through seeded gaps by a bracketing root finder on the quadratic law, one CSV line each:
length, width and depth m, bends, air C and Pa, pressure Pa; flow m3/s, flow at a thousandth more
and a thousandth less pressure."""

import math
import random

from scipy.optimize import brentq

GAPS = 600

chance = random.Random(20261128)


def logarithmic(low, high):
    return math.exp(chance.uniform(math.log(low), math.log(high)))


def flow(length, width, depth, bends, celsius, pressure, across):
    kelvin = celsius + 273.15
    density = pressure / 287.05 / kelvin
    viscosity = 1.458e-6 * kelvin**1.5 / (kelvin + 110.4)
    loss = 1.5 + bends + 1.28 * max(0.0, 1 - depth / (5 * width))
    friction = 12 * viscosity * depth / (length * width**3)
    inertia = density * loss / (2 * width**2 * length**2)
    # Twice as much as without friction: more than can flow.
    most = 2 * math.sqrt(across / inertia)
    return brentq(
        lambda q: friction * q + inertia * q * q - across, 0.0, most, xtol=1e-300, rtol=1e-14
    )


for number in range(GAPS):
    depth = 0.0 if number % 20 == 0 else logarithmic(1e-4, 0.5)
    gap = (logarithmic(1e-3, 100), logarithmic(1e-4, 0.5), depth, chance.randint(0, 5))
    air = (chance.uniform(-45, 50), chance.uniform(60_000, 105_000))
    across = logarithmic(0.01, 75)
    flows = [flow(*gap, *air, across * times) for times in (1.0, 1.001, 0.999)]
    print(*map(repr, (*gap, *air, across, *flows)), sep=",")
