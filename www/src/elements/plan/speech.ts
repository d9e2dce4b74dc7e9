// What the parts of a plan need to speak: labels of the page, and words of the core.

import { list, make } from "../../dom.js";
import type { Labels } from "../../labels/index.js";
import type { Answer, Figure, Phrase } from "../../wire.js";

type Material = Answer["shopping"][number];
type Warning = Answer["warnings"][number];

export interface Speech {
  labels: Labels;
  words: (phrase: Phrase) => string;
}

/** A part of the plan under its own heading; nothing at all when it holds nothing. */
export function part(
  key: string,
  { labels }: Speech,
  ...content: (Node | null)[]
): HTMLElement | null {
  const shown = content.filter((node) => node !== null);
  if (shown.length === 0) return null;
  const id = `ws-plan-${key}`;
  return make(
    "section",
    { class: `ws-part ws-part-${key.replaceAll("_", "-")}`, "aria-labelledby": id },
    make("h3", { id }, labels.text(`plan.${key}`)),
    ...shown,
  );
}

/** A part that stays folded until it is wanted. Print opens it. */
export function folded(
  key: string,
  { labels }: Speech,
  ...content: (Node | null)[]
): HTMLElement | null {
  const shown = content.filter((node) => node !== null);
  if (shown.length === 0) return null;
  return make(
    "details",
    { class: "ws-part", "data-key": key },
    make("summary", {}, labels.text(`plan.${key}`)),
    ...shown,
  );
}

/** A figure in words, with how sure it is. */
export function figureText(figure: Figure, speech: Speech): HTMLElement {
  const { words } = speech;
  return make("span", { class: "ws-figure" }, words(figure.text), " ", sureness(figure, speech));
}

/** Where a figure comes from, in words. */
export function sureness({ confidence }: Figure, { labels }: Speech): HTMLElement {
  return make("span", { class: "ws-sure" }, `(${labels.text(`confidence.${confidence}`)})`);
}

export function phrases(all: readonly Phrase[], { words }: Speech): HTMLElement | null {
  return list(all.map(words), { class: "ws-list" });
}

export function warningList(all: readonly Warning[], { words }: Speech): HTMLElement | null {
  return list(
    all.map(({ text }) => words(text)),
    { class: "ws-care" },
  );
}

export function materialList(all: readonly Material[], { words }: Speech): HTMLElement | null {
  return list(
    all.map(({ item, quantity, unit }) => `${words(item)}: ${quantity} ${words(unit)}`),
    { class: "ws-boxes" },
  );
}
