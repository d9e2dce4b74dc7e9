"""Random ducts: heat by an ordinary differential equation along them, cold by enthalpies of moist air.
One line of CSV a case: 'heat' or 'cold', what was given in SI units, then what arrives."""

import numpy as np
import psychrolib
from scipy.integrate import solve_ivp

psychrolib.SetUnitSystem(psychrolib.SI)
C, PRESSURE = 1006.0, 101325.0
rng = np.random.default_rng(2026)


def along(start, zone, conducts, carries):
    """Temperature at the end of a duct whose wall conducts so much in all."""
    if conducts == 0.0:
        return start
    walk = solve_ivp(lambda _, t: -conducts / carries * (t - zone), (0.0, 1.0), [start],
                     rtol=1e-11, atol=1e-11)
    return walk.y[0, -1]


def heat():
    fan, density = rng.uniform(0.15, 0.7), rng.uniform(0.85, 1.3)
    power = rng.uniform(4e3, 25e3)
    supply_ua, return_ua = rng.uniform(0, 60), rng.uniform(0, 20) * (rng.random() < 0.5)
    supply_lost, return_lost = rng.uniform(0, 0.5), rng.uniform(0, 0.4)
    room, supply_zone, return_zone = rng.uniform(15, 25), rng.uniform(-35, 20), rng.uniform(-35, 20)
    carries = fan * density * C
    back = along(room, return_zone, return_ua, carries)
    entering = (1 - return_lost) * back + return_lost * return_zone
    plenum = entering + power / carries
    register = along(plenum, supply_zone, supply_ua, carries)
    brings = (1 - supply_lost) * carries * (register - room) / power
    return [fan, power, density, supply_ua, supply_lost, return_ua, return_lost, room, supply_zone,
            return_zone, brings, plenum, register]


def cold():
    fan, power, sensible = rng.uniform(0.25, 0.7), rng.uniform(5e3, 14e3), rng.uniform(0.65, 0.95)
    supply_ua, return_ua = rng.uniform(0, 50), rng.uniform(0, 15)
    supply_lost, return_lost = rng.uniform(0, 0.3), rng.uniform(0, 0.2)
    room, room_rh, zone, zone_rh = (rng.uniform(22, 28), rng.uniform(0.35, 0.6),
                                    rng.uniform(25, 40), rng.uniform(0.3, 0.7))
    mass = fan * 1.2
    states = [(t, psychrolib.GetHumRatioFromRelHum(t, rh, PRESSURE))
              for t, rh in ((room, room_rh), (zone, zone_rh))]
    indoor, around = (psychrolib.GetMoistAirEnthalpy(t, w) for t, w in states)
    # Conduction warms air without moisture; a leak mixes enthalpies.
    back = indoor + C * (along(room, zone, return_ua, mass * C) - room)
    entering = (1 - return_lost) * back + return_lost * around
    dry = (1 - return_lost) * along(room, zone, return_ua, mass * C) + return_lost * zone
    plenum = dry - sensible * power / (mass * C)
    leaves = entering - power / mass + C * (along(plenum, zone, supply_ua, mass * C) - plenum)
    brings = (1 - supply_lost) * mass * (indoor - leaves) / power
    return [fan, power, sensible, supply_ua, supply_lost, return_ua, return_lost, room, room_rh,
            zone, zone_rh, brings]


for _ in range(200):
    print(",".join(["0"] + [repr(float(v)) for v in heat()]))
for _ in range(100):
    print(",".join(["1"] + [repr(float(v)) for v in cold()]))
