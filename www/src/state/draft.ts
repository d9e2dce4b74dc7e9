// A walk kept on the device, only when the person says so. The device may refuse; then nothing is
// kept and the walk goes on.

import type { KeptWalk } from "./walk.js";

const NAME = "winterseam-walk";

/** The walk kept here, or `null`. */
export function keptDraft(): KeptWalk | null {
  try {
    const text = localStorage.getItem(NAME);
    return text === null ? null : checked(JSON.parse(text));
  } catch {
    return null;
  }
}

/** Keeps a walk; says whether the device took it. */
export function keepDraft(walk: KeptWalk): boolean {
  try {
    localStorage.setItem(NAME, JSON.stringify(walk));
    return true;
  } catch {
    return false;
  }
}

export function eraseDraft(): void {
  try {
    localStorage.removeItem(NAME);
  } catch {
    // A device that keeps nothing has nothing to erase.
  }
}

/** Whatever else may have been written under our name is not a walk. */
function checked(found: unknown): KeptWalk | null {
  const { answers, gaps } = (found ?? {}) as Partial<KeptWalk>;
  if (!isTexts(answers) || !Array.isArray(gaps) || !gaps.every(isTexts)) return null;
  return { answers, gaps };
}

function isTexts(found: unknown): found is Record<string, string> {
  if (typeof found !== "object" || found === null) return false;
  return Object.values(found).every((value) => typeof value === "string");
}
