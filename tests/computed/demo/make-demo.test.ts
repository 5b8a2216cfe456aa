import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

const maker = fileURLToPath(new URL("./make-demo.mjs", import.meta.url));
const demo = fileURLToPath(new URL("../../../data-demo", import.meta.url));
const made = mkdtempSync(join(tmpdir(), "spanwright-demo-"));

describe("the tables of data-demo", () => {
  execFileSync(process.execPath, [maker, made]);
  afterAll(() => rmSync(made, { recursive: true }));

  it("are those that the generator writes, and no others", () => {
    expect(readdirSync(demo).filter((name) => name.endsWith(".csv"))).toEqual(readdirSync(made));
    expect(readdirSync(made)).toHaveLength(8);
  });

  it.each(readdirSync(made))("%s is what the generator writes, byte for byte", (name) => {
    expect(readFileSync(join(made, name)).equals(readFileSync(join(demo, name)))).toBe(true);
  });
});
