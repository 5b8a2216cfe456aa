import { expect, test } from "vitest";
import { findSigners } from "../../../src/jobs/signing/find-signers.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { ada, ines } from "../../proof/sample-signing.ts";
import { memoryDisk } from "../memory-disk.ts";
import { signersTable } from "../signed-disk.ts";

async function found(record: string, paths: readonly string[], given?: string) {
  const problems = new ProblemList();
  const texts = Object.fromEntries(paths.map((path) => [path, signersTable([ada.signer])]));
  const table = await findSigners(memoryDisk(texts), record, given, problems);
  return {
    path: table?.path,
    names: table?.signers.map(({ name }) => name),
    codes: problems.all.map(({ code }) => code),
  };
}

test.each([
  ["filed/LT-1/a.html", "filed/signers.csv"],
  ["filed/LT-1/a.html", "filed/LT-1/signers.csv"],
  ["/filed/LT-1/a.html", "/filed/signers.csv"],
  ["LT-1/a.html", "./signers.csv"],
  ["a.html", "./signers.csv"],
  ["a.html", "./../signers.csv"],
  ["../a.html", "../../signers.csv"],
  ["filed\\LT-1\\a.html", "filed/signers.csv"],
])("for %s the table %s is found", async (record, path) => {
  expect(await found(record, [path])).toEqual({ path, names: ["Ada Specimen"], codes: [] });
});

test("the nearer one wins, and one that is named wins over both", async () => {
  const paths = ["filed/LT-1/signers.csv", "filed/signers.csv", "mine.csv"];
  expect((await found("filed/LT-1/a.html", paths)).path).toBe("filed/LT-1/signers.csv");
  expect((await found("filed/LT-1/a.html", paths, "mine.csv")).path).toBe("mine.csv");
});

test("nothing farther up is taken, and one that is named and missing is not replaced", async () => {
  expect((await found("plant/filed/LT-1/a.html", ["plant/signers.csv"])).codes).toEqual(["signing/no-signers"]);
  expect((await found("filed/LT-1/a.html", ["filed/signers.csv"], "mine.csv")).codes).toEqual(["signing/no-signers"]);
});

test("a row that cannot be read is a problem, and the others are there", async () => {
  const problems = new ProblemList();
  const text = signersTable([ada.signer, { ...ines.signer, publicKey: "short" }]);
  const table = await findSigners(memoryDisk({ "signers.csv": text }), "a.html", "signers.csv", problems);
  expect(table?.signers).toEqual([ada.signer]);
  expect(problems.all.map(({ code }) => code)).toEqual(["signing/public-key-form"]);
});
