import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { filesBelow } from "../../cli/built-command.ts";

const maker = fileURLToPath(new URL("./make-demo.mjs", import.meta.url));
const demo = fileURLToPath(new URL("../../../data-demo", import.meta.url));
const made = mkdtempSync(join(tmpdir(), "spanwright-demo-"));

describe("the tables of data-demo", () => {
  execFileSync(process.execPath, [maker, made]);
  afterAll(() => rmSync(made, { recursive: true }));

  it("are those that the generator writes, and no others", () => {
    expect(filesBelow(demo).filter((name) => name.endsWith(".csv"))).toEqual(filesBelow(made));
    expect(filesBelow(made)).toHaveLength(9 + 7 * 5);
  });

  it.each(filesBelow(made))("%s is what the generator writes, byte for byte", (name) => {
    expect(readFileSync(join(made, name)).equals(readFileSync(join(demo, name)))).toBe(true);
  });
});
