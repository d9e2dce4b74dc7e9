"""Worth of seeded spendings by numpy-financial; one line of JSON a spending."""

import json
import random

import numpy_financial as npf

chance = random.Random(20261125)


def payback(cost, saving, rate, years):
    """Walks the years; a straight line within the one that pays back."""
    paid = 0.0
    for year in range(1, years + 1):
        more = saving / (1 + rate) ** year
        if paid + more >= cost:
            return year - 1 + (cost - paid) / more
        paid += more
    return None


def case(number):
    rate = 0.0 if number % 10 == 0 else round(chance.uniform(0.001, 0.2), 4)
    years = chance.randint(1, 40)
    cost = round(chance.uniform(1, 5000), 2)
    saving = round(cost * chance.uniform(0.01, 2), 2)
    flows = [-cost] + [saving] * years
    part = round(chance.uniform(0.2, 40), 2)
    return {
        "cost": cost, "saving": saving, "years": years, "rate": rate, "part": part,
        "present_value": npf.npv(rate, [0.0] + [saving] * years),
        "present_value_of_part": -npf.pv(rate, part, saving),
        "savings_to_investment": -npf.pv(rate, years, saving) / cost,
        "discounted_payback": payback(cost, saving, rate, years),
        "adjusted_irr": npf.mirr(flows, rate, rate),
    }


for number in range(300):
    print(json.dumps({k: None if v is None else float(v) for k, v in case(number).items()}))
