"""Whether each request fits the JSON Schema, by the jsonschema library.

Reads one JSON map with `schema` and `requests`, writes 1 or 0 a line.
"""

import json
import sys

from jsonschema import Draft202012Validator

asked = json.load(sys.stdin)
Draft202012Validator.check_schema(asked["schema"])
validator = Draft202012Validator(asked["schema"])
for request in asked["requests"]:
    print(int(validator.is_valid(request)))
