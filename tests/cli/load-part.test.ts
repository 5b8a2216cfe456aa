import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Script } from "node:vm";
import { expect, test } from "vitest";
import { writeCode, writeParts } from "../../command-parts.mjs";
import { type PartIndex, partLoader } from "../../src/cli/load-part.ts";
import { temporaryFolder } from "./built-command.ts";

const start = 'const { two } = require("./two.js"); exports.four = two() + two(); exports.where = partUrl;';
const two = "globalThis.ranTwo = (globalThis.ranTwo ?? 0) + 1;\nexports.two = function two() { return 2; }; // zwölf";
const faulty = "\n\nexports.fail = () => { throw new Error('as it should'); };";

/** A folder with these three parts, the first two as they are given. */
function parted(texts = { start, two }): string {
  const folder = temporaryFolder();
  const parts = [
    { name: "./two.js", text: texts.two },
    { name: "./start.js", text: texts.start },
    { name: "./faulty.js", text: faulty },
  ];
  writeParts(folder, parts);
  return folder;
}

const indexOf = (folder: string): PartIndex => JSON.parse(readFileSync(join(folder, "parts.json"), "utf8"));

/** V8's code of each part that is loaded, as the build keeps it. */
function codesOf(folder: string): ReadonlyMap<string, Buffer> {
  const scripts = new Map<string, Script>();
  partLoader(folder, (name, script) => scripts.set(name, script))("./start.js");
  return new Map([...scripts].map(([name, script]) => [name, script.createCachedData()]));
}

/** Of each script that is made, whether V8 took the code that was kept. */
function takenBy(folder: string, entry = "./start.js"): ReadonlyMap<string, boolean | undefined> {
  const taken = new Map<string, boolean | undefined>();
  partLoader(folder, (name, { cachedDataRejected }) => {
    taken.set(name, cachedDataRejected === undefined ? undefined : !cachedDataRejected);
  })(entry);
  return taken;
}

test("a part is run once, asks for others and for what Node brings, and takes itself to lie beside the others", () => {
  const folder = parted();
  const before = Reflect.get(globalThis, "ranTwo") ?? 0;
  const load = partLoader(folder);
  expect(load("./start.js")).toEqual({ four: 4, where: pathToFileURL(join(folder, "start.js")).href });
  load("./two.js");
  expect(Reflect.get(globalThis, "ranTwo")).toBe(before + 1);
  expect(load("node:path")).toHaveProperty("join");
});

test("V8 takes the code of a part, and passes over code of another text or of another V8", () => {
  const folder = parted();
  expect([...takenBy(folder).values()]).toEqual([undefined, undefined]);
  const codes = codesOf(folder);
  writeCode(folder, indexOf(folder), codes);
  expect([...takenBy(folder).values()]).toEqual([true, true]);
  // Texts that this process has not compiled, for those V8 remembers by itself: one longer, one as long as before.
  const others = parted({ start: `${start} `, two: two.replace("2; }", "2;}\n") });
  // The first words of the code are V8's: a sign of its kind, its version, the length of the text.
  const code = Buffer.from(codes.get("./two.js")!);
  code[4]! ^= 255;
  writeCode(others, indexOf(others), new Map([...codes, ["./two.js", code]]));
  expect([...takenBy(others).values()]).toEqual([false, false]);
});

test("a trace names the part and its line", () => {
  const folder = parted();
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

test("a file that ends too soon is told, and not run", () => {
  const folder = parted();
  const text = readFileSync(join(folder, "parts.txt"));
  writeFileSync(join(folder, "parts.txt"), text.subarray(0, text.length - faulty.length - 20));
  expect(() => partLoader(folder)("./faulty.js")).toThrow("parts.txt ends before it should");
});

test("V8 takes the code that the build kept, on the Node that built it", () => {
  const folder = fileURLToPath(new URL("../../dist", import.meta.url));
  const kept = Object.values(indexOf(folder)).filter(({ code }) => code !== undefined);
  expect(kept.length).toBeGreaterThan(50);
  const taken = takenBy(folder, "./cli.js");
  expect(taken.size).toBeGreaterThan(10);
  for (const [name, isTaken] of taken) expect(isTaken, name).toBe(true);
});

test("none of that code is passed over while one record is made: nothing sets a flag of V8 before all is loaded", () => {
  const folder = fileURLToPath(new URL("../../dist", import.meta.url));
  const words = ["report", "data-demo", "--tag", "LT-310", "--quiet", "--out", temporaryFolder()];
  const program = `
    const [taken, passedOver] = [[], []];
    const { partLoader } = require(${JSON.stringify(join(folder, "load-part.js"))});
    const load = partLoader(${JSON.stringify(folder)}, (name, { cachedDataRejected }) => {
      if (cachedDataRejected !== undefined) (cachedDataRejected ? passedOver : taken).push(name);
    });
    process.on("exit", () => console.error(JSON.stringify({ taken: taken.length, passedOver })));
    load("./cli.js").main(${JSON.stringify(words)});`;
  const { stderr } = spawnSync(process.execPath, ["-e", program], { encoding: "utf8" });
  const { taken, passedOver } = JSON.parse(stderr.trim().split("\n").at(-1) ?? "") as Record<string, unknown>;
  expect(passedOver).toEqual([]);
  expect(taken).toBeGreaterThan(80);
});
