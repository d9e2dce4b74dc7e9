"""Weather files that packages carry, as pvlib's own readers give them: one JSON line a file with
its format, its text, its head and its hours in the order of the file."""

import json
import sys
import types
from importlib.util import find_spec
from pathlib import Path

# Imported by parts of pvlib that are not used here; nothing is fetched.
for unused in ("requests", "h5py"):
    sys.modules.setdefault(unused, types.ModuleType(unused))
from pvlib.iotools import read_epw, read_tmy3  # noqa: E402


def data(package):
    return Path(find_spec(package).origin).parent / "data"


FILES = [("epw", path) for path in sorted((data("diyepw") / "tmy_epw_files").glob("*.epw"))]
FILES += [("epw", path) for path in sorted(data("pvlib").glob("*.epw"))]
FILES += [("tmy3", data("pvlib") / name) for name in ("703165TY.csv", "723170TYA.CSV")]

for kind, path in FILES:
    if kind == "epw":
        hours, head = read_epw(path)
    else:
        hours, head = read_tmy3(path, map_variables=True)
    print(json.dumps({
        "id": path.name,
        "format": kind,
        "text": path.read_text(encoding="utf-8", errors="replace"),
        "latitude": float(head["latitude"]),
        "elevation_m": float(head["altitude"]),
        "air_c": [float(v) for v in hours["temp_air"]],
        "dew_point_c": [float(v) for v in hours["temp_dew"]],
        "wind_m_s": [float(v) for v in hours["wind_speed"]],
    }))
