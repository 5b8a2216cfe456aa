// How long a browser takes to open the register of 50 000 loops; prints, asserts nothing.
// usage: npm run bench:register [loops]
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import { bundleSettings } from "../../bundle-settings.mjs";

const loops = Number(process.argv[2] ?? 50_000);
const runs = 7;
const folder = mkdtempSync(join(tmpdir(), "spanwright-loops-"));
try {
  const outfile = join(folder, "many-loops.mjs");
  await build({
    ...bundleSettings,
    entryPoints: [fileURLToPath(import.meta.resolve("./many-loops.ts"))],
    outfile,
  });
  const { writeManyLoops } = await import(pathToFileURL(outfile).href);
  const { page, parts, bytes } = writeManyLoops(folder, loops);
  console.log(`${loops} loops: a page of ${megabytes(page)}, ${parts} parts of ${megabytes(bytes)} together`);
  const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
  const found = [];
  for (let run = 0; run < runs; run += 1) found.push(await opened(browser));
  await browser.close();
  for (const name of Object.keys(found[0])) {
    const times = found.map((one) => one[name]).sort((one, other) => one - other);
    console.log(
      `${name}: median ${times[runs >> 1].toFixed(0)} ms, ${times[0].toFixed(0)} to ${times.at(-1).toFixed(0)}`,
    );
  }
} finally {
  rmSync(folder, { recursive: true });
}

/** From the call for the page on, each time in a page of its own. */
async function opened(browser) {
  const view = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const start = performance.now();
  await view.goto(pathToFileURL(join(folder, "register.html")).href, { waitUntil: "commit" });
  await view.waitForSelector("#register tbody tr");
  const first = performance.now() - start;
  await view.locator("#find").waitFor({ state: "visible" });
  const ready = performance.now() - start;
  const [search, again, sort] = await view.evaluate(() => {
    const timed = (act) => {
      const begun = performance.now();
      act();
      document.body.getBoundingClientRect();
      return performance.now() - begun;
    };
    const field = document.querySelector("#search");
    const type = (text) => () => {
      field.value = text;
      field.dispatchEvent(new Event("input"));
    };
    return [
      timed(type("lt-43")),
      timed(type("lt-432")),
      timed(() => document.querySelectorAll("th button")[2].click()),
    ];
  });
  await view.close();
  return {
    "first rows drawn": first,
    "all rows searchable": ready,
    "first key of a search": search,
    "another key": again,
    "sorted anew": sort,
  };
}

function megabytes(bytes) {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}
