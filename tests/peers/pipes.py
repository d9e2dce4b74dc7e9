"""Random pipes by ht (correlations), fluids (numbers) and CoolProp (real air): one JSON line a pipe,
the question of the probe and what the peers answer.

Each line has `pipe_loss` and `freeze_time` with their answers under `ours_should_be`.
"""

import json
import math
import random

from CoolProp.CoolProp import PropsSI
from fluids.core import Grashof, Reynolds
from ht.conv_external import Nu_cylinder_Churchill_Bernstein
from ht.conv_free_immersed import Nu_horizontal_cylinder_Churchill_Chu

PIPES = 300
SIGMA = 5.670374419e-8
SEA_LEVEL = 101325.0
# Outside and inside diameters in inches, conductivity of the wall.
WALLS = [
    (0.625, 0.545, 390.0), (0.875, 0.785, 390.0), (1.125, 1.025, 390.0),
    (0.625, 0.485, 0.41), (0.875, 0.681, 0.41), (1.125, 0.875, 0.41),
    (0.625, 0.489, 0.137), (0.875, 0.695, 0.137),
    (0.840, 0.622, 50.0), (1.050, 0.824, 50.0), (1.315, 1.049, 50.0),
]
INCH = 0.0254

chance = random.Random(20261125)


def convection(diameter, surface, air, wind):
    """W/(m2 K) at the mean of surface and air; natural and forced joined with power 4."""
    film = (surface + air) / 2
    conductivity, viscosity, density, prandtl = (
        PropsSI(what, "T", film, "P", SEA_LEVEL, "Air")
        for what in ("CONDUCTIVITY", "VISCOSITY", "DMASS", "PRANDTL")
    )
    grashof = Grashof(L=diameter, beta=1 / film, T1=surface, T2=air, rho=density, mu=viscosity)
    natural = Nu_horizontal_cylinder_Churchill_Chu(Pr=prandtl, Gr=abs(grashof))
    forced = 0.0
    if wind > 0:
        reynolds = Reynolds(V=wind, D=diameter, rho=density, mu=viscosity)
        forced = Nu_cylinder_Churchill_Bernstein(Re=reynolds, Pr=prandtl)
    return (natural**4 + forced**4) ** 0.25 * conductivity / diameter


def layer(inner, outer, conductivity):
    return math.log(outer / inner) / (2 * math.pi * conductivity)


def resistance(question):
    bare = question["outer_diameter_m"]
    outer = bare + 2 * question["insulation_m"]
    return (
        layer(question["inner_diameter_m"], bare, question["wall_w_m_k"])
        + layer(bare, outer, question["insulation_w_m_k"])
    )


def loss(question):
    """Heat and surface temperature by bisection of the balance at the surface."""
    outer = question["outer_diameter_m"] + 2 * question["insulation_m"]
    held, air = question["pipe_c"] + 273.15, question["air_c"] + 273.15
    inside = resistance(question)

    def leaves(surface):
        radiated = question["emissivity"] * SIGMA * (surface**4 - air**4)
        convected = convection(outer, surface, air, question["wind_m_s"]) * (surface - air)
        return math.pi * outer * (radiated + convected)

    low, high = sorted((held, air))
    for _ in range(40):
        surface = (low + high) / 2
        arrives = (held - surface) / inside
        low, high = (low, surface) if leaves(surface) > arrives else (surface, high)
    return {"loss_w_m": leaves(surface), "surface_c": surface - 273.15}


def freezing(question):
    """The handbook's lump of water."""
    below, above = -question["air_c"], question["water_c"]
    film = question["film_w_m2_k"]
    outer = question["outer_diameter_m"] + 2 * question["insulation_m"]
    behind = resistance(question) + (1 / (math.pi * outer * film) if film else 0.0)
    section = math.pi / 4 * question["inner_diameter_m"] ** 2
    return {
        "to_zero_h": 4.2e6 * section * behind * math.log((above + below) / below) / 3600,
        "to_solid_h": 333.55e6 * section * behind / below / 3600,
    }


for number in range(PIPES):
    outside, inside, wall = chance.choice(WALLS)
    pipe = {
        "outer_diameter_m": outside * INCH,
        "inner_diameter_m": inside * INCH,
        "wall_w_m_k": wall,
        "insulation_m": chance.choice([0.0, 0.375, 0.5, 0.75, 1.0]) * INCH,
        "insulation_w_m_k": chance.uniform(0.028, 0.1),
    }
    held = {
        "emissivity": chance.uniform(0.03, 0.95),
        "pipe_c": chance.uniform(0, 60),
        "air_c": chance.uniform(-45, -1),
        "wind_m_s": chance.choice([0.0, chance.uniform(0.2, 12)]),
    }
    standing = {
        "film_w_m2_k": chance.choice([None, chance.uniform(3, 100)]),
        "water_c": chance.uniform(0, 30),
        "air_c": held["air_c"],
    }
    losing, standing = {**pipe, **held}, {**pipe, **standing}
    print(json.dumps([
        {"ask": "pipe_loss", "fields": losing, "ours_should_be": loss(losing)},
        {"ask": "freeze_time", "fields": standing, "ours_should_be": freezing(standing)},
    ]))
