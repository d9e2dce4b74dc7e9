"""Reads an iCalendar file from stdin with two independent parsers.

Prints one JSON line for each event and parser. Repetitions are expanded by python-dateutil.
The script is not called `calendar`: every script beside it would import it in place of Python's.
"""

import datetime
import json
import sys

import icalendar
import vobject
from dateutil.rrule import rrulestr

FIRST = 6


def days(start, rule):
    if rule is None:
        return [start.isoformat()]
    midnight = datetime.datetime.combine(start, datetime.time())
    dates = rrulestr(rule, dtstart=midnight)
    return [date.date().isoformat() for date, _ in zip(dates, range(FIRST))]


def hours(trigger):
    whole, rest = divmod(trigger.total_seconds(), 3600)
    assert rest == 0, trigger
    return int(whole)


def line(parser, uid, title, detail, start, rule, alarms, stamp, transparent):
    assert not isinstance(start, datetime.datetime), "an all-day event starts on a date"
    return {
        "parser": parser,
        "uid": uid,
        "title": title,
        "detail": detail,
        "days": days(start, rule),
        "alarm_hours": [hours(trigger) for trigger in alarms],
        "stamp": stamp.isoformat(),
        "transparent": transparent == "TRANSPARENT",
    }


def by_icalendar(text):
    calendar = icalendar.Calendar.from_ical(text)
    assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
    for event in calendar.walk("VEVENT"):
        assert not event.errors, event.errors
        rule = event.get("RRULE")
        yield line(
            "icalendar",
            str(event["UID"]),
            str(event["SUMMARY"]),
            str(event["DESCRIPTION"]),
            event["DTSTART"].dt,
            rule and rule.to_ical().decode(),
            [alarm["TRIGGER"].dt for alarm in event.walk("VALARM")],
            event["DTSTAMP"].dt,
            event["TRANSP"],
        )


def by_vobject(text):
    calendar = vobject.readOne(text)
    calendar.validate(raiseException=True)
    for event in calendar.vevent_list:
        event.validate(raiseException=True)
        rule = getattr(event, "rrule", None)
        yield line(
            "vobject",
            event.uid.value,
            event.summary.value,
            event.description.value,
            event.dtstart.value,
            rule and rule.value,
            [alarm.trigger.value for alarm in event.valarm_list],
            event.dtstamp.value,
            event.transp.value,
        )


text = sys.stdin.buffer.read().decode()
for parser in (by_icalendar, by_vobject):
    for answer in parser(text):
        print(json.dumps(answer))
