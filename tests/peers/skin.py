"""Burn times by SciPy: Pennes' equation on a fine grid of finite volumes, walked through time by an
implicit solver of many orders, and the damage integral by quadrature. One line of JSON a case."""

import json

import numpy as np
from scipy.integrate import cumulative_simpson, solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq
from scipy.sparse import diags_array
from scipy.sparse.linalg import spsolve

# Thickness m, conductivity W/(m K), density kg/m3, heat capacity J/(kg K), blood 1/s: Jiang 2002.
DEEP = [(0.002, 0.45, 1200, 3300, 0.00125), (0.010, 0.19, 1000, 2500, 0.00125),
        (0.030, 0.50, 1000, 4000, 0.00125)]
BLOOD, SURFACE, CORE = 1060 * 3770, 34.0, 37.0
PEOPLE = {"adult": (80e-6, 1.0), "child": (30e-6, 0.53), "older_adult": (64e-6, 0.53)}
WATERS = [44.5, 46.0, 48.0, 50.0, 52.5, 55.0, 60.0, 66.0, 72.0]


def grid(depth):
    """Thickness, conductivity, capacity and blood of each cell, fine at the surface."""
    cells = []
    for index, (thick, k, rho, c, blood) in enumerate([(depth, 0.24, 1200, 3590, 0.0)] + DEEP):
        count = [120, 260, 120, 120][index]
        if index == 0:
            widths = np.full(count, thick / count)
        else:
            first = cells[-1][0]
            # From the last cell's width on, each a little wider, to fill the layer.
            grow = brentq(lambda g: first * (g**count - 1) / (g - 1) - thick, 1.0 + 1e-9, 1.2)
            widths = first * grow ** np.arange(count)
        cells += [(width, k, rho * c, blood) for width in widths]
    return np.array(cells).T


def system(depth):
    """dT/dt = A T + b·water + r of the excess over core temperature; the basal weights."""
    width, k, capacity, blood = grid(depth)
    half = width / (2 * k)
    face = 1 / (half[:-1] + half[1:])
    left = np.concatenate([[1 / half[0]], face])
    right = np.concatenate([face, [1 / half[-1]]])
    store = width * capacity
    diagonal = -(left + right) / store - blood * BLOOD / capacity
    matrix = diags_array([face / store[1:], diagonal, face / store[:-1]], offsets=[-1, 0, 1])
    source = np.zeros_like(width)
    source[0] = left[0] / store[0]
    at = int(np.argmin(np.abs(np.cumsum(width) - depth)))
    weights = (at, 1 / half[at], 1 / half[at + 1])
    return matrix.tocsc(), source, weights


def basal(state, weights):
    """Temperature of the face between epidermis and dermis: the flux on both sides is the same."""
    at, outer, inner = weights
    return CORE + (outer * state[at] + inner * state[at + 1]) / (outer + inner)


def onset(water, depth, threshold):
    matrix, source, weights = system(depth)
    rest = spsolve(matrix, -source * (SURFACE - CORE))
    times = np.geomspace(1e-4, 21_600, 4_001)
    walk = solve_ivp(lambda _, t: matrix @ t + source * (water - CORE), (0, times[-1]), rest,
                     method="BDF", jac=matrix, t_eval=times, rtol=1e-8, atol=1e-8)
    warm = basal(walk.y, weights) + 273.15
    # In the logarithm of time the damage is smooth from before the heat arrives to the end.
    done = 3.1e98 * np.exp(-75_000 / warm) * times
    total = cumulative_simpson(done, x=np.log(times), initial=0.0)
    if total[-1] < threshold:
        return None
    damage = CubicSpline(np.log(times), total)
    return float(np.exp(brentq(lambda x: damage(x) - threshold, np.log(1e-4), np.log(21_600))))


for person, (depth, threshold) in PEOPLE.items():
    for water in WATERS:
        print(json.dumps({"person": person, "water_c": water,
                          "seconds": onset(water, depth, threshold)}))
