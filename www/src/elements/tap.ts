// The tap: a picture of how soon its water burns, the same as a table, and the next turn of the dial.
// Every point and every word comes from the core.

import { drawn, list, make } from "../dom.js";
import type { Answer } from "../wire.js";
import { folded, phrases, type Speech } from "./plan/speech.js";

type Tap = NonNullable<Answer["tap"]>;

const WIDTH = 420;
const HEIGHT = 230;
/** Room for the words at the sides of the picture. */
const LEFT = 95;
const BOTTOM = 34;
const TOP = 8;
const RIGHT = 24;
/** One dash for each of the people, so that no line is told from another by its colour. */
const DASHES = ["none", "7 4", "2 4", "10 3 2 3"];

/** What belongs to a reading of the tap; nothing without one. On paper no table is folded. */
export function tapParts(tap: Tap | null, speech: Speech, onPaper = false): Node[] {
  if (!tap) return [];
  const { labels } = speech;
  const coach = phrases(tap.coach, speech);
  const parts = [
    make("h4", {}, labels.text("tap.head")),
    make("p", { class: "ws-hint" }, labels.text("tap.how_to_read")),
    make("figure", { class: "ws-tap" }, picture(tap, speech), legend(tap, speech)),
    onPaper ? table(tap, speech) : folded("tap_table", speech, table(tap, speech)),
    coach && make("h4", {}, labels.text("tap.coach")),
    coach,
  ];
  return parts.filter((node) => node !== null);
}

const x = (across: number) => LEFT + across * (WIDTH - LEFT - RIGHT);
const y = (height: number) => HEIGHT - BOTTOM - height * (HEIGHT - BOTTOM - TOP);

function picture({ rows, people, ticks }: Tap, { labels, words }: Speech): SVGElement {
  const lines = people.map((_, who) => {
    const points = rows.map(({ across, times }) => `${x(across)},${y(times[who]?.height ?? 0)}`);
    const dash = DASHES[who % DASHES.length];
    return drawn("polyline", { points: points.join(" "), "stroke-dasharray": dash });
  });
  return drawn(
    "svg",
    {
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      role: "img",
      "aria-label": labels.text("tap.picture"),
    },
    ...ticks.flatMap(({ height, text }) => [
      drawn("path", { class: "ws-tick", d: `M${x(0)} ${y(height)}H${x(1)}` }),
      drawn("text", { x: LEFT - 8, y: y(height) + 4, "text-anchor": "end" }, words(text)),
    ]),
    ...rows.filter(({ water_f }) => water_f % 10 === 0).map(waterTick),
    ...lines,
    ...rows.filter(({ is_reading }) => is_reading).flatMap((row) => reading(row, labels)),
  );
}

function waterTick({ across, water_f }: Tap["rows"][number]): SVGElement {
  const place = { x: x(across), y: HEIGHT - BOTTOM + 16, "text-anchor": "middle" };
  return drawn("text", place, across === 0 ? `${water_f} °F` : `${water_f}°`);
}

/** The reading: a line down to its temperature, and a square on each person's line. */
function reading({ across, times }: Tap["rows"][number], labels: Speech["labels"]): SVGElement[] {
  const [high] = times.map(({ height }) => height).sort((a, b) => b - a);
  const end = across > 0.6 ? "end" : "start";
  return [
    drawn("path", { class: "ws-at", d: `M${x(across)} ${y(0)}V${TOP}` }),
    drawn(
      "text",
      { class: "ws-you", x: x(across) + (end === "end" ? -6 : 6), y: TOP + 8, "text-anchor": end },
      labels.text("tap.you"),
    ),
    ...(high === undefined ? [] : times).map(({ height }) =>
      drawn("rect", { x: x(across) - 5, y: y(height) - 5, width: 10, height: 10 }),
    ),
  ];
}

function legend({ people }: Tap, { words }: Speech): HTMLElement | null {
  const items = people.map((person, who) =>
    make(
      "span",
      {},
      drawn(
        "svg",
        { viewBox: "0 0 36 8", width: 36, height: 8, "aria-hidden": "true" },
        drawn("path", { d: "M0 4H36", "stroke-dasharray": DASHES[who % DASHES.length] }),
      ),
      ` ${words(person)}`,
    ),
  );
  return make("figcaption", {}, list(items, { class: "ws-legend" }));
}

function table({ rows, people }: Tap, { labels, words }: Speech): HTMLElement {
  const head = people.map((person) => make("th", { scope: "col" }, words(person)));
  const body = rows.map(({ water_f, is_reading, times }) => {
    const you = is_reading ? ` (${labels.text("tap.you")})` : "";
    return make(
      "tr",
      { class: is_reading ? "ws-here" : null },
      make("th", { scope: "row" }, `${water_f} °F${you}`),
      ...times.map(({ text }) => make("td", {}, words(text))),
    );
  });
  return make(
    "div",
    { class: "ws-table", tabindex: 0, role: "group", "aria-label": labels.text("plan.tap_table") },
    make(
      "table",
      {},
      make(
        "thead",
        {},
        make("tr", {}, make("th", { scope: "col" }, labels.text("tap.water")), ...head),
      ),
      make("tbody", {}, ...body),
    ),
  );
}

/** The tap beside its question, drawn anew only when something about it has changed. */
export class WinterseamTap extends HTMLElement {
  speech!: Speech;
  #shown = "";

  show(tap: Tap | null): void {
    const shown = JSON.stringify(tap);
    if (shown === this.#shown) return;
    this.#shown = shown;
    const open = this.querySelector("details")?.open ?? false;
    this.replaceChildren(...tapParts(tap, this.speech));
    this.querySelector("details")?.toggleAttribute("open", open);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-tap": WinterseamTap;
  }
}
