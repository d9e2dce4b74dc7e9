"""Heat cables over the typical years that pvlib 0.11.0 carries, reckoned from the dates in its files.

Prints one line of JSON a station: the hours, and what a plain reading of the rules gives.
"""

import csv
import datetime
import importlib.metadata
import json

FILES = {"723170TYA": "723170TYA.CSV", "703165TY": "703165TY.csv"}
WATTS = 120.0


def hours(name):
    """Date and dry bulb of each hour; a file's 24:00 ends the day it is written under."""
    data = [f for f in importlib.metadata.files("pvlib") if f.match(f"data/{name}")]
    with open(data[0].locate(), newline="") as file:
        next(file)
        for row in csv.DictReader(file):
            date = datetime.datetime.strptime(row["Date (MM/DD/YYYY)"], "%m/%d/%Y")
            yield (date.month, date.day), float(row["Dry-bulb (C)"])


def thermostat_kwh(air):
    """Starts open; closes at 38 °F, opens at 45 °F; runs the year twice so that the start is lost."""
    on, used = False, 0.0
    for turn in range(2):
        for c in air:
            f = c * 9 / 5 + 32
            on = True if f <= 38 else False if f >= 45 else on
            used += WATTS / 1000 if on and turn else 0.0
    return used


def plugged(day):
    """15 October to 20 April, both included."""
    return day >= (10, 15) or day <= (4, 20)


for station, name in FILES.items():
    dated = list(hours(name))
    air = [c for _, c in dated]
    print(json.dumps({
        "station": station,
        "air_c": air,
        "thermostat_kwh": thermostat_kwh(air),
        "self_regulating_kwh": sum(0.1 * max(0.0, (65 - c) / 55) for c in air),
        "seasonal_hours": sum(plugged(d) for d, _ in dated),
        "seasonal_risk_hours": sum(c < 0 and not plugged(d) for d, c in dated),
    }))
