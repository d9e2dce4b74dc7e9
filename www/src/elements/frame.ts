// The frame of the check: language on top, the walk, the plan in reach, the bar below.

import { button, make } from "../dom.js";
import { LANGUAGES, Labels, type Language } from "../labels/index.js";
import type { Trouble } from "../state/reading.js";
import type { Walk } from "../state/walk.js";
import { labelPath } from "../walk/questions.js";
import type { Phrase } from "../wire.js";
import type { WinterseamBar } from "./bar.js";
import type { WinterseamKeep } from "./keep.js";
import type { WinterseamPlan } from "./plan/plan.js";
import type { WinterseamTroubles } from "./troubles.js";
import type { WinterseamWalk } from "./walk.js";

/** What the frame needs to know, and whom it calls. */
export interface Framing {
  language: Language;
  walk: Walk;
  keeping: boolean;
  station: WinterseamWalk["station"];
  words: (phrase: Phrase) => string;
  calendar: () => string;
  speak: (language: Language) => void;
  reveal: (path: string) => void;
  toTroubles: () => void;
  toPlan: () => void;
  toggleView: () => void;
}

/** The living parts of the frame. */
export interface Parts {
  root: HTMLElement;
  walk: WinterseamWalk;
  keep: WinterseamKeep;
  troubles: WinterseamTroubles;
  plan: WinterseamPlan;
  bar: WinterseamBar;
}

export function drawFrame(framing: Framing): Parts {
  const labels = new Labels(framing.language);
  const { walk: answers, keeping, station, words, calendar, toTroubles } = framing;
  const keep = made("winterseam-keep", { labels, walk: answers, keeping });
  const keeper = keepGroup(labels, keep);
  const closing = toPlanButton(labels, framing);
  const walk = made("winterseam-walk", {
    labels,
    walk: answers,
    words,
    keeper,
    closing,
    station,
  });
  const nameOf = (trouble: Trouble) => fieldName(trouble, labels);
  const troubles = made("winterseam-troubles", { labels, reveal: framing.reveal, nameOf });
  const plan = made("winterseam-plan", { speech: { labels, words }, calendar, toTroubles });
  const bar = made("winterseam-bar", { labels, words, press: framing.toggleView });
  const root = make(
    "div",
    { class: "ws-check", lang: labels.language },
    button(labels.text("bar.to_plan"), framing.toPlan, { class: "ws-button ws-skip" }),
    make("div", { class: "ws-top" }, tagline(labels), languages(labels, framing)),
    make(
      "div",
      { class: "ws-columns" },
      make("div", { class: "ws-walk-column" }, troubles, walk),
      planColumn(plan),
    ),
    bar,
  );
  return { root, walk, keep, troubles, plan, bar };
}

function tagline(labels: Labels): HTMLElement {
  return make("p", { class: "ws-tagline" }, labels.text("tagline"));
}

function languages(labels: Labels, { speak }: Framing): HTMLElement {
  const choices = LANGUAGES.map((language) =>
    button(new Labels(language).text("language.name"), () => speak(language), {
      class: "ws-language",
      lang: language,
      "aria-pressed": String(language === labels.language),
    }),
  );
  const name = labels.text("language");
  return make("div", { class: "ws-languages", role: "group", "aria-label": name }, ...choices);
}

/** The plan scrolls by itself beside the walk, so the keyboard must be able to reach it. */
function planColumn(plan: WinterseamPlan): HTMLElement {
  return make(
    "div",
    { class: "ws-plan-column", role: "region", "aria-labelledby": "ws-plan-head", tabindex: 0 },
    plan,
  );
}

function keepGroup(labels: Labels, keep: WinterseamKeep): HTMLElement {
  return make(
    "section",
    { class: "ws-group", "aria-labelledby": "ws-group-keep" },
    make("h3", { id: "ws-group-keep" }, labels.text("group.keep")),
    keep,
  );
}

function toPlanButton(labels: Labels, { toPlan }: Framing): HTMLElement {
  return button(labels.text("bar.to_plan"), toPlan, { class: "ws-button ws-heavy ws-next" });
}

/** A message of the core names its field, but not the row of a gap. */
function fieldName({ path, message }: Trouble, labels: Labels): string {
  const [, number, field] = /^gaps\.(\d+)\.(.+)$/.exec(path) ?? [];
  const row = number ? labels.text("gaps.row", { number: Number(number) + 1 }) : "";
  if (message) return row;
  if (row) return `${row}, ${labels.text(`q.gaps.${field}`)}`;
  return labels.text(`q.${labelPath(path)}`);
}

function made<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]>,
): HTMLElementTagNameMap[Tag] {
  return Object.assign(document.createElement(tag), properties);
}
