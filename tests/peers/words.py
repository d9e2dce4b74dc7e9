"""Numbers and plural categories by Babel, one JSON line each.

Babel carries the tables of the Unicode CLDR. No number lies half way between two roundings:
there Babel takes the even neighbour, and ECMA-402 the one away from zero. No negative number
rounds to zero either: Babel writes "-0", and no resident should read that.
"""

import json

from babel import Locale
from babel.numbers import format_decimal

NUMBERS = [0, 1, 2, 3, 10, 21, 100, 999, 1000, 1001, 1234, 9999, 12345, 100000, 1234567]
PARTS = [0.0, 0.1, 0.25, 0.3336, 0.4996, 0.6, 0.9994, 0.9996]
PLURAL = {tag: Locale(tag).plural_form for tag in ("en", "es")}

for whole in NUMBERS:
    for part in PARTS:
        for sign in (1, -1):
            number = sign * (whole + part)
            rounded = int(abs(number) + 0.5)
            if rounded == 0 and sign < 0:
                continue
            categories = {tag: PLURAL[tag](rounded) for tag in PLURAL}
            # Spanish "many" (whole millions) has no words of its own here: it reads as "other".
            line = {
                "number": number,
                "three": format_decimal(number, "#,##0.###", locale="en_US"),
                "whole": format_decimal(number, "#,##0", locale="en_US"),
                **categories,
            }
            print(json.dumps(line))
