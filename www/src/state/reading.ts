// From what was typed to a request: every text is read, or named as a problem; none is guessed at.

import type { Core } from "../core.js";
import { askedIn, GAP_QUESTIONS, type Question, SOLD_BY, STATIONS } from "../walk/questions.js";
import type { Walk } from "./walk.js";

/** A field that is not counted, and why: a label of the page, or a message of the core. */
export interface Trouble {
  path: string;
  label?: string;
  args?: Record<string, string>;
  message?: string;
}

type Part = Record<string, unknown>;

/** A request in the making: whatever could be read, for the core to check. */
export interface Written {
  today: string;
  gaps?: Part[];
  heating?: Part;
  furnace_filter?: Part;
  heat_cable?: Part;
  [part: string]: unknown;
}

/** What was made of a walk. */
export interface Reading {
  request: Written;
  troubles: Trouble[];
  /** By the path of each list: row on the page of each of its entries. Half a row is not in it. */
  rows: Map<string, number[]>;
  /** Numbers read from typed text, by path. */
  numbers: Map<string, number>;
}

type Value = string | number | boolean;
type Read = { value: Value | null; trouble?: Omit<Trouble, "path"> };

/** Reads a whole walk. `today` stands in while the day of the walk is empty. */
export function readWalk(walk: Walk, core: Pick<Core, "measure">, today: string): Reading {
  const reading: Reading = {
    request: { today },
    troubles: [],
    rows: new Map(),
    numbers: new Map(),
  };
  const read = (path: string, question: Question) => note(reading, path, question, walk, core);
  for (const question of STATIONS.flatMap((station) => askedIn(station, walk.given))) {
    const value = read(question.path, question);
    if (value !== null) put(reading.request, question.path, value);
  }
  readGaps(walk, reading, read);
  for (const path of Object.keys(COUNTS)) gather(reading, path);
  price(reading, walk);
  pair(reading.request);
  return reading;
}

/** Reads one text the way its question asks. */
export function readText(text: string, question: Question, core: Pick<Core, "measure">): Read {
  const { input } = question;
  if (text.trim() === "") return { value: null };
  switch (input.kind) {
    case "yes_no":
      return { value: text === "true" };
    case "measure":
      return readMeasure(text, input.unit, core);
    case "number":
      return readNumber(text, input.whole);
    case "season":
      return { value: Number(text) };
    default:
      return { value: text.trim() };
  }
}

/** What stands at a dotted path. */
export function at(target: object, path: string): unknown {
  const into = (found: unknown, step: string) => (found as Part | undefined)?.[step];
  return path.split(".").reduce(into, target);
}

/** Writes a value at a dotted path, making the objects on the way. */
export function put(target: object, path: string, value: unknown): void {
  const steps = path.split(".");
  const last = steps.pop() as string;
  let at = target as Record<string, unknown>;
  for (const step of steps) {
    at[step] ??= {};
    at = at[step] as Record<string, unknown>;
  }
  at[last] = value;
}

function note(
  reading: Reading,
  path: string,
  question: Question,
  walk: Walk,
  core: Pick<Core, "measure">,
): Value | null {
  const { value, trouble } = readText(walk.given(path), question, core);
  if (trouble) reading.troubles.push({ path, ...trouble });
  if (typeof value === "number") reading.numbers.set(path, value);
  return value;
}

function readGaps(
  walk: Walk,
  reading: Reading,
  read: (path: string, question: Question) => Value | null,
): void {
  const gaps: Part[] = [];
  const rows: number[] = [];
  for (let row = 0; row < walk.gapCount; row += 1) {
    const gap: Part = { place: walk.given(`gaps.${row}.place`) };
    for (const question of GAP_QUESTIONS) {
      const value = read(`gaps.${row}.${question.path}`, question);
      if (value !== null) gap[question.path] = value;
    }
    if (!isWhole(gap)) continue;
    gaps.push(gap);
    rows.push(row);
  }
  if (gaps.length > 0) reading.request.gaps = gaps;
  reading.rows.set("gaps", rows);
}

/** A gap counts once it has its length and a width, or is said to be unmeasured. */
function isWhole({ length_in, width_in, width_class }: Part): boolean {
  if (width_class === "not_measured") return true;
  return length_in !== undefined && (width_in !== undefined || width_class !== undefined);
}

/** Lists that are asked row by row, and when a row counts. */
const COUNTS: Record<string, (row: Part) => boolean> = {
  "water_heater.turns": ({ marks_down, tap_f }) => marks_down !== undefined && tap_f !== undefined,
  windows: ({ glazing, width_in, height_in }) =>
    glazing !== undefined && (width_in === undefined) === (height_in === undefined),
  "ducts.gaps": ({ place, length_in, width_in }) =>
    place !== undefined && length_in !== undefined && width_in !== undefined,
};

/** Makes a list of the rows that count, in order. */
function gather({ request, rows }: Reading, path: string): void {
  const asked = at(request, path) as Record<string, Part> | undefined;
  if (!asked) return;
  const whole = Object.entries(asked).filter(([, row]) => COUNTS[path]?.(row));
  put(
    request,
    path,
    whole.map(([, row]) => row),
  );
  rows.set(
    path,
    whole.map(([row]) => Number(row)),
  );
}

/** A price gets the unit that its fuel is sold by, or waits for it. */
function price({ request: { heating }, troubles }: Reading, walk: Walk): void {
  if (heating?.price_usd === undefined) return;
  heating.price_per ??= SOLD_BY[walk.given("heating.fuel")];
  if (!heating.price_per) troubles.push({ path: "heating.price_per", label: "trouble.price_per" });
}

/** Halves that mean nothing alone wait for their other half. */
export function pair({ heating, furnace_filter: filter, heat_cable: cable }: Written): void {
  if (heating) keepBoth(heating, "price_usd", "price_per");
  if (heating) keepBoth(heating, "label_rise_min_f", "label_rise_max_f");
  if (filter) keepBoth(filter, "width_in", "height_in");
  if (cable) keepBoth(cable, "on_day", "off_day");
}

function keepBoth(part: Part, one: string, other: string): void {
  if (part[one] !== undefined && part[other] !== undefined) return;
  delete part[one];
  delete part[other];
}

function readMeasure(text: string, unit: string, core: Pick<Core, "measure">): Read {
  try {
    return { value: core.measure(text, unit).value };
  } catch {
    return { value: null, trouble: { label: `trouble.${unit}`, args: { text } } };
  }
}

function readNumber(text: string, whole: boolean): Read {
  const shape = whole ? /^\d{1,6}$/ : /^\d{1,6}(\.\d{1,6})?$/;
  if (shape.test(text.trim())) return { value: Number(text) };
  return {
    value: null,
    trouble: { label: whole ? "trouble.whole" : "trouble.number", args: { text } },
  };
}
