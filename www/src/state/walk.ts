// What a person wrote down, exactly as they wrote it. Nothing is ever changed or dropped here.

/** A walk as it is kept on the device. */
export interface KeptWalk {
  answers: Record<string, string>;
  gaps: Record<string, string>[];
}

/** The answers of one walk, by path. Sends `change` with the path after every change. */
export class Walk extends EventTarget {
  #answers = new Map<string, string>();
  #gaps: Map<string, string>[] = [];
  #removed: { row: number; gap: Map<string, string> } | null = null;

  /** What stands at a path, as typed; empty when nothing does. */
  readonly given = (path: string): string => {
    const [row, field] = gapField(path);
    const answers = row === null ? this.#answers : this.#gaps[row];
    return answers?.get(field) ?? "";
  };

  set(path: string, text: string): void {
    const [row, field] = gapField(path);
    const answers = row === null ? this.#answers : this.#gaps[row];
    if (!answers) return;
    if (text === "") answers.delete(field);
    else answers.set(field, text);
    this.#changed(path);
  }

  get isEmpty(): boolean {
    return this.#answers.size + this.#gaps.length === 0;
  }

  get gapCount(): number {
    return this.#gaps.length;
  }

  addGap(place: string): void {
    this.#gaps.push(new Map([["place", place]]));
    this.#changed("gaps");
  }

  removeGap(row: number): void {
    const [gap] = this.#gaps.splice(row, 1);
    this.#removed = gap ? { row, gap } : null;
    this.#changed("gaps");
  }

  /** Whether a gap was removed that can still be put back. */
  get canPutBack(): boolean {
    return this.#removed !== null;
  }

  putGapBack(): void {
    if (!this.#removed) return;
    this.#gaps.splice(this.#removed.row, 0, this.#removed.gap);
    this.#removed = null;
    this.#changed("gaps");
  }

  clear(): void {
    this.restore({ answers: {}, gaps: [] });
  }

  keep(): KeptWalk {
    return {
      answers: Object.fromEntries(this.#answers),
      gaps: this.#gaps.map((gap) => Object.fromEntries(gap)),
    };
  }

  restore(kept: KeptWalk): void {
    this.#answers = new Map(Object.entries(kept.answers));
    this.#gaps = kept.gaps.map((gap) => new Map(Object.entries(gap)));
    this.#removed = null;
    this.#changed("");
  }

  #changed(path: string): void {
    this.dispatchEvent(new CustomEvent("change", { detail: path }));
  }
}

/** Splits `gaps.2.width_in` into row 2 and `width_in`; any other path has no row. */
function gapField(path: string): [number | null, string] {
  const found = /^gaps\.(\d+)\.(.+)$/.exec(path);
  return found ? [Number(found[1]), found[2] ?? ""] : [null, path];
}
