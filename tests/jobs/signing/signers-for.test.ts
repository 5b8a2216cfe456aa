import { expect, test } from "vitest";
import { signersFor } from "../../../src/jobs/signing/signers-for.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { ada, ines } from "../../proof/sample-signing.ts";
import { memoryDisk } from "../memory-disk.ts";
import { signersTable } from "../signed-disk.ts";

const texts = {
  "records/signers.csv": signersTable([ines.signer]),
  "records/LT-1/a.html": "",
  "mine.csv": signersTable([ada.signer]),
  "broken.csv": "name,role\n",
};

async function names(given: string | undefined, record: string) {
  const problems = new ProblemList();
  const find = await signersFor(memoryDisk(texts), given, problems);
  return { names: (await find(record))?.signers.map(({ name }) => name), codes: problems.all.map(({ code }) => code) };
}

test("the table that was given is that of every record", async () => {
  expect(await names("mine.csv", "records/LT-1/a.html")).toEqual({ names: ["Ada Specimen"], codes: [] });
});

test("otherwise it lies beside the record or in the folder above, or there is none", async () => {
  expect(await names(undefined, "records/LT-1/a.html")).toEqual({ names: ["Ines Example"], codes: [] });
  expect(await names(undefined, "records/a.html")).toEqual({ names: ["Ines Example"], codes: [] });
  expect(await names(undefined, "elsewhere/LT-1/a.html")).toEqual({ names: undefined, codes: [] });
});

test("a table that was given and is not there, or cannot be read, is a problem", async () => {
  expect((await names("gone.csv", "a.html")).codes).toEqual(["signing/no-signers"]);
  expect((await names("broken.csv", "a.html")).codes).toContain("tables/column-missing");
});

test("a folder is searched once", async () => {
  const disk = memoryDisk(texts);
  const asked: string[] = [];
  const counting: Pick<typeof disk, "read"> = {
    read: (path, isWanted) => {
      asked.push(path);
      return disk.read(path, isWanted);
    },
  };
  const find = await signersFor(counting, undefined, new ProblemList());
  for (const record of ["records/LT-1/a.html", "records/LT-1/a.json", "records/LT-1/b.html"]) await find(record);
  expect(asked).toEqual(["records/LT-1/signers.csv", "records/signers.csv"]);
});
