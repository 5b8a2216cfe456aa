import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Script } from "node:vm";
import { expect, test } from "vitest";
import { partLoader } from "../../src/cli/load-part.ts";
import { temporaryFolder, written } from "./built-command.ts";

const parts = {
  "start.js": 'const { two } = require("./two.js"); exports.four = two() + two(); exports.where = partUrl;',
  "two.js": "globalThis.ranTwo = (globalThis.ranTwo ?? 0) + 1;\nexports.two = function two() { return 2; };",
  "faulty.js": "\n\nexports.fail = () => { throw new Error('as it should'); };",
};

/** Keeps V8's code of each part that is loaded, as the build does. */
function withCode(folder: string): void {
  const scripts = new Map<string, Script>();
  partLoader(folder, (path, script) => scripts.set(path, script))("./start.js");
  for (const [path, script] of scripts) writeFileSync(`${path}.code`, script.createCachedData());
}

/** Of each script that is made, whether V8 took the code beside it. */
function takenBy(folder: string): readonly (boolean | undefined)[] {
  const taken: (boolean | undefined)[] = [];
  const onScript = (_: string, { cachedDataRejected }: Script) =>
    taken.push(cachedDataRejected === undefined ? undefined : !cachedDataRejected);
  expect(partLoader(folder, onScript)("./start.js")).toMatchObject({ four: 4 });
  return taken;
}

test("a part is run once, asks for others and for what Node brings, and takes itself to lie beside what starts the command", () => {
  const folder = written(temporaryFolder(), parts);
  const before = Reflect.get(globalThis, "ranTwo") ?? 0;
  const load = partLoader(folder);
  expect(load("./start.js")).toEqual({ four: 4, where: pathToFileURL(join(folder, "../start.js")).href });
  load("./two.js");
  expect(Reflect.get(globalThis, "ranTwo")).toBe(before + 1);
  expect(load("node:path")).toHaveProperty("join");
});

test("V8 takes the code beside a part, and passes over code of another text or of another V8", () => {
  const folder = written(temporaryFolder(), parts);
  expect(takenBy(folder)).toEqual([undefined, undefined]);
  withCode(folder);
  expect(takenBy(folder)).toEqual([true, true]);
  const code = readFileSync(`${folder}/two.js.code`);
  // A text that this process has not compiled, for those V8 remembers by itself; as long as before.
  writeFileSync(`${folder}/two.js`, parts["two.js"].replace("2; }", "2;}\n"));
  // The first words of the code are V8's: a sign of its kind, its version, the length of the text.
  code[4]! ^= 255;
  writeFileSync(`${folder}/two.js.code`, code);
  writeFileSync(`${folder}/start.js`, `${parts["start.js"]} `);
  expect(takenBy(folder)).toEqual([false, false]);
});

test("a trace names file and line of the part", () => {
  const folder = written(temporaryFolder(), parts);
  const { fail } = partLoader(folder)("./faulty.js") as { fail: () => void };
  const trace = (() => {
    try {
      return fail();
    } catch (fault) {
      return (fault as Error).stack;
    }
  })();
  expect(trace).toContain(`${folder}/faulty.js:3:`);
});

test("V8 takes all the code that the build keeps, on the Node that built it", () => {
  const folder = fileURLToPath(new URL("../../dist/parts/", import.meta.url));
  const kept = readdirSync(folder).filter((name) => name.endsWith(".code"));
  expect(kept.length).toBeGreaterThan(50);
  for (const name of kept) {
    const part = join(folder, name.slice(0, -".code".length));
    const text = `(function (exports, require, module, partUrl) {${readFileSync(part, "utf8")}\n})`;
    const { cachedDataRejected } = new Script(text, { filename: part, cachedData: readFileSync(join(folder, name)) });
    expect(cachedDataRejected, name).toBe(false);
  }
});
