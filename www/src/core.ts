// The only file that touches the wasm module.

import init, * as wasm from "../pkg/winterseam.js";
import type { Language } from "./labels/index.js";
import type { Written } from "./state/reading.js";
import type { Answer, Phrase, Problem } from "./wire.js";

/** The two files the core runs on: the module, and the climate of every ZIP code. */
export interface CoreFiles {
  wasm: BufferSource | WebAssembly.Module | Response;
  climate: Uint8Array;
}

/** A number read from what a person typed, in the unit of the field. */
export interface Measured {
  value: number;
  unit: string;
}

/** An answer, or everything that is wrong with the request. */
export type Assessed = { answer: Answer } | { problems: Problem[] };

/** What the page asks of the core. */
export interface Core {
  assess(request: Written, language: Language): Assessed;
  words(phrase: Phrase, language: Language): string;
  measure(text: string, unit: string): Measured;
  calendar(request: Written, language: Language): string;
}

/** Starts the core. Rejects when the browser cannot run it. */
export async function startCore(files: CoreFiles): Promise<Core> {
  await init({ module_or_path: files.wasm as never });
  wasm.load_climate(files.climate);
  return {
    assess,
    words: (phrase, language) => wasm.words(phrase as never, language),
    measure: (text, unit) => wasm.measure(text, unit) as unknown as Measured,
    calendar: (request, language) => wasm.calendar(request as never, language),
  };
}

function assess(request: Written, language: Language): Assessed {
  try {
    return { answer: wasm.assess(request as never, language) as unknown as Answer };
  } catch (thrown) {
    const { problems } = thrown as { problems?: Problem[] };
    if (!Array.isArray(problems)) throw thrown;
    return { problems };
  }
}

/** Unpacks the files that the single-file page carries inside itself. */
export async function filesInPage(page: Document): Promise<CoreFiles> {
  const [module, climate] = await Promise.all([
    unpack(page, "wasm-data"),
    unpack(page, "climate-data"),
  ]);
  return { wasm: module, climate };
}

async function unpack(page: Document, id: string): Promise<Uint8Array<ArrayBuffer>> {
  const packed = atob(page.getElementById(id)?.textContent?.trim() ?? "");
  const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
