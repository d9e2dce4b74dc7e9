"""The work of lib.rs with general Python libraries; prints one JSON line a time."""

import json
import time

import numpy
import numpy_financial
import psychrolib

HOURS = 8760
LEAKS_CM2 = 500
# The handbook's basic model: one storey, homes across the road; (L/s)²/cm⁴ for each K and (m/s)².
STACK, WIND = 0.000145, 0.000174


def median_ns(run, count):
    """The median of several runs of at least a tenth of a second each."""
    times = []
    for _ in range(7):
        start, runs = time.perf_counter(), 0
        while time.perf_counter() - start < 0.1:
            run()
            runs += 1
        times.append((time.perf_counter() - start) * 1e9 / runs / count)
    return sorted(times)[3]


def tell(work, peer, count, run):
    print(json.dumps({"work": work, "peer": peer, "each": median_ns(run, count), "sum": float(run())}))


def leakage_vectorised():
    apart, wind = YEAR
    return numpy.sum(LEAKS_CM2 / 1000 * numpy.sqrt(STACK * apart + WIND * wind * wind))


def leakage_loop():
    total = 0.0
    for hour in range(HOURS):
        apart, wind = hour * 37 % 400 / 10, hour * 53 % 120 / 10
        total += LEAKS_CM2 / 1000 * (STACK * apart + WIND * wind * wind) ** 0.5
    return total


def moist():
    total = 0.0
    for state in range(1000):
        dry_bulb, humidity = state % 40, (state % 9 + 1) / 10
        ratio = psychrolib.GetHumRatioFromRelHum(dry_bulb, humidity, 101325)
        psychrolib.GetMoistAirEnthalpy(dry_bulb, ratio)
        psychrolib.GetMoistAirDensity(dry_bulb, ratio, 101325)
        total += psychrolib.GetTDewPointFromRelHum(dry_bulb, humidity) + 273.15
    return total


def worths():
    total = 0.0
    for repair in range(1000):
        cost, saving, life = repair % 50 * 10 + 20, repair % 70 + 30, repair % 20 + 5
        value = numpy_financial.pv(0.03, life, -saving)
        numpy_financial.nper(0.03, saving, -cost)
        numpy_financial.mirr([-cost] + [saving] * life, 0.03, 0.03)
        total += value
    return total


psychrolib.SetUnitSystem(psychrolib.SI)
hours = numpy.arange(HOURS)
YEAR = hours * 37 % 400 / 10, hours * 53 % 120 / 10

with numpy.errstate(all="ignore"):
    tell("air leakage of a home, hours", "numpy", HOURS, leakage_vectorised)
    tell("air leakage of a home, hours", "python loop", HOURS, leakage_loop)
    tell("moist air, states", "psychrolib", 1000, moist)
    tell("worth of a repair, repairs", "numpy-financial", 1000, worths)
