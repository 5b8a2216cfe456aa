import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import * as z from "zod";
import packageFile from "../../package.json" with { type: "json" };
import { filesBelow, written } from "../cli/built-command.ts";
import { blocksOf } from "../docs/console-blocks.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "spanwright-package-"));
const installed = join(folder, "node_modules/spanwright");
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** As a user's shell would, in the folder where the package is installed; npm reaches no network and no cache of before. */
function run(program: string, ...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(program, words, { cwd: folder, encoding: "utf8" });
  return { exitCode: status, output: stdout, complaints: stderr };
}

const spanwright = (...words: readonly string[]) => run(join(folder, "node_modules/.bin/spanwright"), ...words);

beforeAll(() => {
  // The scripts are left out, for the build that they run would change dist under other tests.
  const words = ["pack", "--json", "--ignore-scripts", "--pack-destination", folder];
  const packed = JSON.parse(execFileSync("npm", words, { cwd: root, encoding: "utf8" }));
  const tarball = z.array(z.object({ filename: z.string() })).parse(packed)[0]?.filename ?? "";
  writeFileSync(join(folder, "package.json"), "{}\n");
  const cache = ["--cache", join(folder, "cache")];
  execFileSync("npm", ["install", "--offline", "--no-audit", "--no-fund", ...cache, join(folder, tarball)], {
    cwd: folder,
  });
}, 60_000);

test("one package is installed, with what its user needs and nothing of the workshop", () => {
  expect(filesBelow(join(folder, "node_modules")).filter((name) => /^[^.].*package\.json$/u.test(name))).toEqual([
    // Says of the files beside it that they are scripts, and is no package of its own.
    "spanwright/dist/package.json",
    "spanwright/package.json",
  ]);
  const files = filesBelow(installed).filter((name) => !name.startsWith("dist/") && !name.startsWith("docs/"));
  expect(files).toEqual(["CHANGELOG.md", "LICENSE", "README.md", "THIRD-PARTY.md", "package.json"]);
  for (const name of ["dist/cli.js", "dist/record.schema.json", "docs/record.md", "docs/record.png"]) {
    expect(existsSync(join(installed, name)), name).toBe(true);
  }
  expect(packageFile).not.toHaveProperty("private");
  expect(packageFile).not.toHaveProperty("dependencies");
  expect(packageFile.scripts.prepack).toBe(packageFile.scripts.build);
});

test("the command says its version, makes a record whose page holds its fonts, and verifies it", () => {
  expect(spanwright("--version")).toEqual({ exitCode: 0, output: `${packageFile.version}\n`, complaints: "" });
  written(join(folder, "book"), smallestWorkbook);
  expect(spanwright("report", "book", "--out", "records")).toMatchObject({ exitCode: 0, complaints: "" });
  const page = readFileSync(join(folder, "records/LT-1/C-1.html"), "utf8");
  expect(page).toMatch(/@font-face\{[^}]*url\(data:font\/woff2;base64,[A-Za-z0-9+/=]{10000,}\)/u);
  const verified = spanwright("verify", "records");
  expect(verified).toMatchObject({ exitCode: 0, complaints: "" });
  expect(verified.output).toContain("2 files verified: no doubt");
});

test("spanwright/record gives form and schema, and a record that the command wrote has that form", async () => {
  const program = `
    import { recordFormat, recordSchema } from "spanwright/record";
    import file from "spanwright/record.schema.json" with { type: "json" };
    console.log(JSON.stringify({ recordFormat, isSame: JSON.stringify(file) === JSON.stringify(recordSchema) }));
  `;
  writeFileSync(join(folder, "form.mjs"), program);
  const { output } = run(process.execPath, "--no-warnings", "form.mjs");
  const record = JSON.parse(readFileSync(join(folder, "records/LT-1/C-1.json"), "utf8"));
  expect(JSON.parse(output)).toEqual({ recordFormat: record.schema, isSame: true });
  const schema = z.fromJSONSchema(JSON.parse(readFileSync(join(installed, "dist/record.schema.json"), "utf8")));
  expect(schema.safeParse(record).error?.issues ?? []).toEqual([]);
  const { seal: _, ...withoutSeal } = record;
  expect(schema.safeParse(withoutSeal).success).toBe(false);
});

test("its types are those of the program's own form, both ways, and the program of docs/record.md has no fault", () => {
  const ours = join(root, "src/record/record-schema.ts");
  const page = readFileSync(join(root, "docs/record.md"), "utf8");
  const documented = blocksOf(page).find(({ language }) => language === "ts");
  written(folder, {
    "documented.ts": `${documented?.lines.join("\n")}\n`,
    "same.ts": `
      import type { SealedRecord } from "spanwright/record";
      import type { SealedRecord as Ours } from ${JSON.stringify(ours)};
      export const there = (record: Ours): SealedRecord => record;
      export const back = (record: SealedRecord): Ours => record;
    `,
    "wrong.ts": `
      import type { SealedRecord } from "spanwright/record";
      export const wrong = (record: SealedRecord): number => record.seal.sha256;
    `,
  });
  const { output } = run(
    process.execPath,
    join(root, "node_modules/typescript/bin/tsc"),
    ...["--ignoreConfig", "--noEmit", "--strict", "--exactOptionalPropertyTypes", "--skipLibCheck"],
    ...["--target", "es2023", "--module", "nodenext", "--allowImportingTsExtensions", "--pretty", "false"],
    ...["--typeRoots", join(root, "node_modules/@types"), "--types", "node"],
    ...["same.ts", "documented.ts", "wrong.ts"],
  );
  // The program that is wrong shows that something is looked at.
  expect(output).toMatch(/^wrong\.ts\(3,\d+\): error TS2322: Type 'string' is not assignable to type 'number'\.\n$/u);
});
