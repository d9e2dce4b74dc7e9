"""Moist air by PsychroLib on a seeded cloud of points and its corners, one CSV line each:
dry bulb C, relative humidity, pressure Pa; saturation Pa, humidity ratio, dew point C,
enthalpy J/kg, density kg/m3."""

import random

import psychrolib

POINTS = 1000

psychrolib.SetUnitSystem(psychrolib.SI)
chance = random.Random(20261125)


def answers(dry_bulb, humidity, pressure):
    ratio = psychrolib.GetHumRatioFromRelHum(dry_bulb, humidity, pressure)
    return (
        psychrolib.GetSatVapPres(dry_bulb),
        ratio,
        psychrolib.GetTDewPointFromRelHum(dry_bulb, humidity),
        psychrolib.GetMoistAirEnthalpy(dry_bulb, ratio),
        psychrolib.GetMoistAirDensity(dry_bulb, ratio, pressure),
    )


cloud = [
    (chance.uniform(-30, 50), chance.uniform(0.05, 1), chance.uniform(70_000, 105_000))
    for _ in range(POINTS)
]
corners = [
    (dry_bulb, humidity, pressure)
    for dry_bulb in (-30.0, 0.0, 0.005, 0.02, 50.0)
    for humidity in (0.05, 1.0)
    for pressure in (70_000.0, 105_000.0)
]
for point in cloud + corners:
    print(*map(repr, point + answers(*point)), sep=",")
