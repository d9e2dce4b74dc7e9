"""Heat of homes hour by hour: air and mass as two nodes, each hour solved with the one before, on the
weather files that packages carry. One line of CSV a home: time constant, h, then what each month
loses, gains and takes of heat, kWh."""

import sys
import types
from importlib.util import find_spec
from pathlib import Path

import numpy as np

# Imported by parts of pvlib that are not used here; nothing is fetched.
for unused in ("requests", "h5py"):
    sys.modules.setdefault(unused, types.ModuleType(unused))
from pvlib.iotools import read_epw, read_tmy3  # noqa: E402

HOMES_A_FILE = 6
MONTHS = np.repeat(np.arange(12), np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]) * 24)
SET_C, OPEN_WINDOWS_C, HOUR = 20.0, 26.0, 3600.0
# Very light: 80 kJ/(K m2) of floor. Between air and mass, W/K for each m2 of floor (ISO 13790).
STORES, TO_MASS = 80e3, 1 / (1 / (3.45 * 4.5) + 1 / (9.1 * 2.5))


def data(package):
    return Path(find_spec(package).origin).parent / "data"


def weather():
    for path in sorted((data("diyepw") / "tmy_epw_files").glob("*.epw")):
        yield read_epw(path)[0]
    for path in sorted(data("pvlib").glob("*.epw")):
        yield read_epw(path)[0]
    for name in ("703165TY.csv", "723170TYA.CSV"):
        yield read_tmy3(data("pvlib") / name, map_variables=True)[0]


def hourly_heat(outdoors, gains, opaque, light, floor):
    """Watts of each hour; half the gains go to the air, half to the mass."""
    joins = TO_MASS * floor
    # What leaves by the opaque parts passes the mass: both together conduct what was given.
    outer = 1 / (1 / opaque - 1 / joins)
    keeps = STORES * floor / HOUR
    mass, heat = SET_C, []
    all_air, all_mass = light + joins, keeps + outer + joins
    for outside, gain in zip(outdoors, gains):
        into_mass = keeps * mass + outer * outside + gain / 2
        into_air = light * outside + gain / 2
        free = (into_air + joins * into_mass / all_mass) / (all_air - joins**2 / all_mass)
        air = min(max(free, SET_C), OPEN_WINDOWS_C)
        mass = (into_mass + joins * air) / all_mass
        heat.append(all_air * SET_C - into_air - joins * mass if free < SET_C else 0.0)
    return np.array(heat)


rng = np.random.default_rng(2026)
for hours in weather():
    outdoors = np.array(hours["temp_air"], float)
    sun = np.array(hours["ghi"], float)
    for _ in range(HOMES_A_FILE):
        floor = rng.uniform(60, 150)
        opaque, light = floor * rng.uniform(0.6, 2.0), floor * rng.uniform(0.4, 1.5)
        gains = rng.uniform(400, 1000) + floor * rng.uniform(0.02, 0.06) * sun
        heat = np.bincount(MONTHS, hourly_heat(outdoors, gains, opaque, light, floor)) / 1e3
        both = opaque + light
        lost = np.bincount(MONTHS, both * (SET_C - outdoors)) / 1e3
        gained = np.bincount(MONTHS, gains) / 1e3
        row = [STORES * floor / both / HOUR, *lost, *gained, *heat]
        print(",".join(repr(float(value)) for value in row))
