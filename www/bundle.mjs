// Bundles the page (script and style) and the element for other pages into dist/.

import { build } from "esbuild";

const shared = {
  bundle: true,
  minify: true,
  target: "es2022",
  charset: "utf8",
  logLevel: "warning",
  // The module's own guess at where its file lies is never used: the page hands the bytes over.
  logOverride: { "empty-import-meta": "silent" },
};

await Promise.all([
  build({
    ...shared,
    entryPoints: ["src/main.ts"],
    format: "iife",
    outfile: "dist/bundle.js",
  }),
  build({
    ...shared,
    entryPoints: ["src/elements/index.ts"],
    format: "esm",
    outfile: "dist/winterseam-check.js",
  }),
  build({ ...shared, entryPoints: ["src/style/index.css"], outfile: "dist/bundle.css" }),
]);
