// Where the energy goes in a year: sorted bars that show their range, and the same as a table.

import { make } from "../../dom.js";
import type { Use } from "../../wire.js";
import { folded, part, type Speech } from "./speech.js";

export function usesPart(uses: readonly Use[], speech: Speech): HTMLElement | null {
  if (uses.length === 0) return null;
  return part(
    "uses",
    speech,
    make("p", { class: "ws-hint" }, speech.labels.text("uses.how_to_read")),
    bars(uses, speech),
    folded("uses_table", speech, table(uses, speech)),
  );
}

/**
 * Solid up to the low end of the range, hatched up to its high end. One fuel is sold by the gallon
 * and another by the kilowatt-hour, so the lengths are those of the energy in joules.
 */
function bars(uses: readonly Use[], { words }: Speech): HTMLElement {
  const most = Math.max(...uses.map(({ energy }) => energy.si_high));
  const share = (part: number) => (most > 0 ? `${(100 * Math.max(part, 0)) / most}%` : "0%");
  return make(
    "ul",
    { class: "ws-bars" },
    ...uses.map(({ name, energy, cost }) => {
      const bar = make(
        "span",
        { class: "ws-bar", "aria-hidden": "true" },
        make("span"),
        make("span"),
      );
      bar.style.setProperty("--ws-low", share(energy.si_low));
      bar.style.setProperty("--ws-range", share(energy.si_high - energy.si_low));
      return make(
        "li",
        {},
        make("span", { class: "ws-bar-name" }, words(name)),
        make("span", { class: "ws-bar-text" }, words(energy.text)),
        bar,
        cost && make("span", { class: "ws-bar-cost" }, words(cost.text)),
      );
    }),
  );
}

function table(uses: readonly Use[], { labels, words }: Speech): HTMLElement {
  const head = ["name", "energy", "cost", "sure"].map((key) =>
    make("th", { scope: "col" }, labels.text(`uses.${key}`)),
  );
  const rows = uses.map(({ name, energy, cost }) =>
    make(
      "tr",
      {},
      make("th", { scope: "row" }, words(name)),
      make("td", {}, words(energy.text)),
      make("td", {}, cost ? words(cost.text) : labels.text("uses.no_price")),
      make("td", {}, labels.text(`confidence.${energy.confidence}`)),
    ),
  );
  return make(
    "div",
    { class: "ws-table", tabindex: 0, role: "group", "aria-label": labels.text("plan.uses_table") },
    make("table", {}, make("thead", {}, make("tr", {}, ...head)), make("tbody", {}, ...rows)),
  );
}
