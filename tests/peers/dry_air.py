"""Dry air by CoolProp on seeded points, one CSV line each: temperature C, pressure Pa; density
kg/m3, viscosity Pa s, second virial term of the density."""

import random

from CoolProp.CoolProp import PropsSI

POINTS = 600

chance = random.Random(20261127)

for _ in range(POINTS):
    celsius, pressure = chance.uniform(-45, 50), chance.uniform(60_000, 105_000)
    at = ("T", celsius + 273.15, "P", pressure, "Air")
    density = PropsSI("D", *at)
    virial = PropsSI("Bvirial", *at) * PropsSI("Dmolar", *at)
    print(*map(repr, (celsius, pressure, density, PropsSI("V", *at), virial)), sep=",")
