// From a walk to an answer. A field that the core refuses is named and left out, so that one slip
// of the pen never hides a danger found elsewhere.

import type { Core } from "../core.js";
import type { Language } from "../labels/index.js";
import type { Answer, Problem } from "../wire.js";
import { at, pair, put, type Reading, readWalk, type Trouble, type Written } from "./reading.js";
import type { Walk } from "./walk.js";

export interface Outcome {
  /** What the core said about the request that it accepted; `null` if it accepted none. */
  answer: Answer | null;
  request: Written;
  troubles: Trouble[];
  numbers: Map<string, number>;
}

/** Each round drops at least one field, so rounds are bounded only to bound the work. */
const ROUNDS = 12;

/** Assesses a walk, field by field if need be. */
export function assessWalk(walk: Walk, core: Core, language: Language, today: string): Outcome {
  const reading = readWalk(walk, core, today);
  const { request, troubles, numbers } = reading;
  for (let round = 0; round < ROUNDS; round += 1) {
    const result = core.assess(request, language);
    if ("answer" in result) return { answer: result.answer, request, troubles, numbers };
    const found = result.problems.map((problem) => onPage(problem, reading));
    troubles.push(...found.filter(({ path }) => troubles.every((known) => known.path !== path)));
    if (!leaveOut(reading, result.problems, today)) break;
  }
  return { answer: null, request, troubles, numbers };
}

/** A list, and the place of an entry in it, at the start of a plain path. */
const IN_LIST = /^(.+?)\.(\d+)\b/;

/** A problem at the path that the page knows it by: its entry may stand in another row. */
function onPage(problem: Problem, { rows }: Reading): Trouble {
  const path = plain(problem.path).replace(
    IN_LIST,
    (_, list: string, entry: string) => `${list}.${rows.get(list)?.[Number(entry)] ?? entry}`,
  );
  return { path, message: problem.message };
}

/**
 * Takes the refused fields out of the request, an entry of a list as a whole, and what means nothing
 * without them; says whether there was anything to take.
 */
function leaveOut(reading: Reading, problems: readonly Problem[], today: string): boolean {
  const paths = new Set(problems.map((problem) => plain(problem.path)));
  const entries = new Map<string, Set<number>>();
  let taken = false;
  for (const path of paths) {
    const [, list, entry] = IN_LIST.exec(path) ?? [];
    if (list) entries.set(list, (entries.get(list) ?? new Set()).add(Number(entry)));
    else taken = takeOut(reading.request, path, today) || taken;
  }
  for (const [list, refused] of entries) taken = takeOutOf(list, refused, reading) || taken;
  pair(reading.request);
  return taken;
}

function takeOut(request: Written, path: string, today: string): boolean {
  if (path === "today") {
    const changed = request.today !== today;
    request.today = today;
    return changed;
  }
  const steps = path === "heat_cable.present" ? ["heat_cable"] : path.split(".");
  const last = steps.pop() as string;
  const part = steps.length > 0 ? at(request, steps.join(".")) : request;
  if (typeof part !== "object" || part === null || !(last in part)) return false;
  delete (part as Record<string, unknown>)[last];
  return true;
}

function takeOutOf(
  list: string,
  refused: ReadonlySet<number>,
  { request, rows }: Reading,
): boolean {
  const all = at(request, list) as unknown[];
  const stays = (_: unknown, entry: number) => !refused.has(entry);
  const left = all.filter(stays);
  put(request, list, left);
  rows.set(list, (rows.get(list) ?? []).filter(stays));
  return left.length < all.length;
}

/** `gaps[0].width_in` and `gaps.0.width_in` are one path. */
function plain(path: string): string {
  return path.replace(/\[(\d+)\]/g, ".$1");
}
