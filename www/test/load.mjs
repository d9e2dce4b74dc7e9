// Loads a TypeScript module of the page into Node.

import { build } from "esbuild";

export async function load(path) {
  const { outputFiles } = await build({
    entryPoints: [new URL(`../${path}`, import.meta.url).pathname],
    bundle: true,
    format: "esm",
    write: false,
    logLevel: "error",
  });
  const [{ text }] = outputFiles;
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}
