"""Vapour through leaks in a ceiling by PsychroLib on seeded homes, one CSV line each: leakage area
m2, height m, indoor C, indoor humidity, outdoor C, resistance inside and outside m2K/W; vapour g/h,
condensable g/h, underside of the roof C."""

import math
import random

import psychrolib

HOMES = 600
SEA_LEVEL = 101_325.0

psychrolib.SetUnitSystem(psychrolib.SI)
chance = random.Random(20261126)


def answers(area, height, indoor, humidity, outdoor, inside, outside):
    columns = [SEA_LEVEL / 287.042 / (t + 273.15) for t in (outdoor, indoor)]
    across = max(0.0, 9.80665 * height * (columns[0] - columns[1]))
    flow = area * math.sqrt(2 * 4 / 1.2) * (across / 4) ** 0.65
    ratio = psychrolib.GetHumRatioFromRelHum(indoor, humidity, SEA_LEVEL)
    dry_air = 1 / psychrolib.GetMoistAirVolume(indoor, ratio, SEA_LEVEL)
    surface = (outdoor * inside + indoor * outside) / (inside + outside)
    most = psychrolib.GetHumRatioFromRelHum(surface, 1.0, SEA_LEVEL)
    grams = 3.6e6 * dry_air * flow
    return grams * ratio, grams * max(0.0, ratio - most), surface


for _ in range(HOMES):
    home = (
        chance.uniform(0, 0.05),
        chance.uniform(0, 3),
        chance.uniform(15, 28),
        chance.uniform(0, 1),
        chance.uniform(-45, 30),
        chance.uniform(0.1, 8),
        chance.uniform(0, 0.5),
    )
    print(*map(repr, home + answers(*home)), sep=",")
