// Bundles the page (script and style) and the element for other pages into dist/.

import { fileURLToPath } from "node:url";
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

/** The page carries a module of its own, which answers no single questions. */
const pageModule = {
  name: "page-module",
  setup: ({ onResolve }) =>
    onResolve({ filter: /\/pkg\/winterseam\.js$/ }, () => ({
      path: fileURLToPath(new URL("pkg/page/winterseam.js", import.meta.url)),
    })),
};

await Promise.all([
  build({
    ...shared,
    entryPoints: ["src/main.ts"],
    format: "iife",
    plugins: [pageModule],
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
