// The shorter parts of a plan: findings, what to look at, shopping, reminders, sources.

import { list, make } from "../../dom.js";
import type { Answer, Finding, Reminder } from "../../wire.js";
import { folded, materialList, part, phrases, type Speech, sureness } from "./speech.js";

/** A finding's own words hold its figure; what is added is only how sure it is. */
export function findingsPart(findings: readonly Finding[], speech: Speech): HTMLElement | null {
  const items = findings.map(({ text, figure }) =>
    make("span", {}, speech.words(text), figure && " ", figure && sureness(figure, speech)),
  );
  return part("findings", speech, list(items, { class: "ws-list" }));
}

export function untouchedPart(answer: Answer, speech: Speech): HTMLElement | null {
  return part("do_not_touch", speech, phrases(answer.do_not_touch, speech));
}

export function lookNextPart(answer: Answer, speech: Speech): HTMLElement | null {
  return part("look_next", speech, phrases(answer.look_next, speech));
}

export function shoppingPart(answer: Answer, speech: Speech): HTMLElement | null {
  return part("shopping", speech, materialList(answer.shopping, speech));
}

export function remindersPart(answer: Answer, speech: Speech): HTMLElement | null {
  const items = answer.reminders.map((reminder) => reminderItem(reminder, speech));
  return part("reminders", speech, list(items, { class: "ws-dates" }));
}

export function notesPart(answer: Answer, speech: Speech): HTMLElement | null {
  return folded("notes", speech, phrases(answer.notes, speech));
}

export function sourcesPart(answer: Answer, speech: Speech): HTMLElement | null {
  const items = answer.sources.map((source) => sourceItem(source, speech));
  return folded("sources", speech, list(items, { class: "ws-list" }));
}

/** Day, version, weather station and credit: what a sheet on a fridge must say about itself. */
export function smallPrint(answer: Answer, { labels, words }: Speech): HTMLElement {
  const { place, today, version } = answer;
  const weather =
    place && labels.text("plan.weather", { name: place.name, state: place.state, zip: place.zip });
  return make(
    "footer",
    { class: "ws-small-print" },
    make("p", {}, make("strong", {}, labels.text("plan.education"))),
    make("p", {}, labels.text("plan.made", { day: labels.day(today), version })),
    weather ? make("p", {}, weather) : null,
    make("p", {}, words(answer.credit)),
  );
}

function reminderItem(reminder: Reminder, { labels, words }: Speech): HTMLElement {
  return make(
    "span",
    {},
    make("time", { datetime: reminder.date }, labels.day(reminder.date)),
    make("strong", {}, words(reminder.title)),
    make("span", {}, words(reminder.detail)),
    reminder.repeat ? make("span", { class: "ws-sure" }, labels.text("reminder.repeats")) : null,
  );
}

/** Documents keep the language they are written in; how a figure was obtained is told in ours. */
function sourceItem(source: Answer["sources"][number], { labels }: Speech): HTMLElement {
  const { cite, place, obtained } = source;
  const key = `obtained.${obtained.replaceAll(" ", "_")}`;
  const how = labels.has(key) ? labels.text(key) : obtained;
  return make(
    "span",
    {},
    make("span", { lang: "en" }, place ? `${cite}, ${place}` : cite),
    " ",
    make("span", { class: "ws-sure" }, `(${how})`),
  );
}
