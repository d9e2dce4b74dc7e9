// Builds dist/dev.html around the stand-in core, to look at the page without the real one.
// With `--watch` it builds again after every change.

import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { context } from "esbuild";

const fakeCore = {
  name: "fake-core",
  setup(build) {
    const path = new URL("fake-core.ts", import.meta.url).pathname;
    build.onResolve({ filter: /pkg\/winterseam\.js$/ }, () => ({ path }));
    build.onEnd((result) => page(result.outputFiles ?? []));
  },
};

async function page(files) {
  const text = (end) => files.find(({ path }) => path.endsWith(end))?.text ?? "";
  const template = await readFile("index.html", "utf8");
  const style = text(".css");
  const script = text(".js").replaceAll("</script", "<\\/script");
  const filled = {
    CSP: `default-src 'none'; script-src ${hash(script)}; style-src ${hash(style)}; img-src data:`,
    STYLE: style,
    SCRIPT: script,
    // An empty file, deflated.
    WASM: "AwA=",
    CLIMATE: "AwA=",
  };
  const html = template.replace(/\{\{(\w+)\}\}/g, (_, name) => filled[name]);
  await writeFile("dist/dev.html", html);
}

const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

const builder = await context({
  entryPoints: { page: "src/main.ts", style: "src/style/index.css" },
  bundle: true,
  format: "iife",
  charset: "utf8",
  outdir: "dist",
  write: false,
  logLevel: "warning",
  plugins: [fakeCore],
});
if (process.argv.includes("--watch")) await builder.watch();
else {
  await builder.rebuild();
  await builder.dispose();
}
