// From a walk to an answer. A field that the core refuses is named and left out, so that one slip
// of the pen never hides a danger found elsewhere.

import type { Core } from "../core.js";
import type { Language } from "../labels/index.js";
import type { Answer, Problem } from "../wire.js";
import { type Reading, readWalk, type Trouble, type Written } from "./reading.js";
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

/** A problem at the path that the page knows it by: its gap may stand in another row. */
function onPage(problem: Problem, { rows }: Reading): Trouble {
  const path = plain(problem.path).replace(
    /^gaps\.(\d+)/,
    (_, index: string) => `gaps.${rows[Number(index)] ?? index}`,
  );
  return { path, message: problem.message };
}

/** Takes the refused fields out of the request; says whether there was anything to take. */
function leaveOut(reading: Reading, problems: readonly Problem[], today: string): boolean {
  const paths = new Set(problems.map((problem) => plain(problem.path)));
  const gaps = new Set<number>();
  let taken = false;
  for (const path of paths) {
    const gap = /^gaps\.(\d+)/.exec(path);
    if (gap) gaps.add(Number(gap[1]));
    else taken = takeOut(reading.request, path, today) || taken;
  }
  return takeOutGaps(reading, gaps) || taken;
}

function takeOut(request: Written, path: string, today: string): boolean {
  if (path === "today") {
    const changed = request.today !== today;
    request.today = today;
    return changed;
  }
  const steps = path === "heat_cable.present" ? ["heat_cable"] : path.split(".");
  const last = steps.pop() as string;
  let at: unknown = request;
  for (const step of steps) at = (at as Record<string, unknown> | undefined)?.[step];
  if (typeof at !== "object" || at === null || !(last in at)) return false;
  delete (at as Record<string, unknown>)[last];
  return true;
}

function takeOutGaps(reading: Reading, gaps: ReadonlySet<number>): boolean {
  if (gaps.size === 0) return false;
  const all = reading.request.gaps ?? [];
  const stays = (_: unknown, index: number) => !gaps.has(index);
  const left = all.filter(stays);
  reading.request.gaps = left;
  reading.rows = reading.rows.filter(stays);
  return left.length < all.length;
}

/** `gaps[0].width_in` and `gaps.0.width_in` are one path. */
function plain(path: string): string {
  return path.replace(/\[(\d+)\]/g, ".$1");
}
