import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { fileRecords } from "../../../src/jobs/filing/file-records.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { amended, diskWith, pageOf, sampleRecord, temporaryFolder } from "../../filing/sample-pages.ts";
import { ada, ines, signedBy } from "../../proof/sample-signing.ts";
import { signersTable } from "../signed-disk.ts";
import { bySignatures } from "./by-signatures.ts";

const disk = diskWith();
const draft = pageOf(sampleRecord());
const paper = "binder 7";

function withSignOff(signOff: SealedRecord["signOff"]): string {
  const text = new TextDecoder().decode(draft.bytes);
  return text.replace('"signOff":{"signatures":[]}', `"signOff":${JSON.stringify(signOff)}`);
}

/** Files the pages, each under a name of its own in one folder; an option may be left out. */
async function filed(
  pages: Readonly<Record<string, Uint8Array | string>>,
  options: { paper?: string; by?: string } = {},
  others: Readonly<Record<string, string>> = {},
) {
  const folder = temporaryFolder();
  for (const [name, content] of Object.entries({ ...pages, ...others })) writeFileSync(join(folder, name), content);
  const paths = Object.keys(pages).map((name) => join(folder, name));
  const into = join(folder, "filed");
  const { rows, problems } = await fileRecords(disk, paths, { ...bySignatures, into, ...options });
  return {
    ...{ rows, into, problems: problems.all.map(({ code }) => code) },
    told: problems.all.map((problem) => sentence(problem).slice(folder.length + 1)),
  };
}

test("a draft is not filed, and what it lacks is told", async () => {
  const { rows, told } = await filed({ "a.html": draft.bytes });
  expect(rows).toEqual([]);
  expect(told).toEqual([
    "a.html: the record is a draft: it is not yet signed as performed and authorised; accepted: a record with every signature that it needs, or --signed-on-paper with the place where the signed paper lies",
  ]);
});

test("a draft whose signatures are on paper is filed with the place of the paper", async () => {
  const { rows, into, problems } = await filed({ "a.html": draft.bytes }, { paper, by: "A. Example" });
  expect(problems).toEqual([]);
  expect(rows).toEqual([
    {
      ...{ tag: "LT-1", calibration: "C-1", revision: 1, outcome: "filed" },
      path: `${into}/LT-1/2026-03-04_C-1_r1.html`,
    },
  ]);
  const ledger = new TextDecoder().decode(await disk.read(`${into}/ledger.jsonl`));
  expect(JSON.parse(ledger)).toMatchObject({ paper, by: "A. Example" });
});

test("a record with every signature that it needs is filed as it is", async () => {
  const { signOff } = signedBy(sealRecord(sampleRecord()), [ines, "performed"], [ada, "authorised"]);
  expect(await filed({ "a.html": withSignOff(signOff) })).toMatchObject({ problems: ["signing/no-signers"] });
  const { rows, problems } = await filed({ "a.html": withSignOff(signOff) }, {}, { "signers.csv": signersTable() });
  expect(problems).toEqual([]);
  expect(rows).toHaveLength(1);
});

test("revisions may come in any order", async () => {
  const second = amended(draft.record, "put right");
  const third = amended(second.record, "again");
  const { rows, problems } = await filed(
    { "c.html": third.bytes, "b.html": second.bytes, "a.html": draft.bytes },
    { paper },
  );
  expect(problems).toEqual([]);
  expect(rows.map(({ revision }) => revision)).toEqual([1, 2, 3]);
});

test("what cannot be filed is told, each with its reason, and the others are filed", async () => {
  const text = new TextDecoder().decode(draft.bytes);
  const { rows, problems, told } = await filed(
    {
      "a.json": JSON.stringify(draft.record),
      "b.html": "<p>a page</p>",
      "c.html": text.replace('"figureBasis":"', '"figureBasis":"x'),
      "d.html": amended(pageOf(sampleRecord({ calibration: "C-9" })).record, "x").bytes,
      "e.html": draft.bytes,
      "f.html": text.replace("<p>", "<p>other bytes"),
    },
    { paper },
  );
  expect(problems).toEqual([
    "filing/data-alone",
    "filing/no-record",
    "filing/seal-broken",
    "filing/issued-already",
    "filing/revision-missing",
  ]);
  expect(told[0]).toBe(
    "a.json: this is the data of a record without its page; accepted: the page (.html) as it was signed",
  );
  expect(rows.map(({ calibration }) => calibration)).toEqual(["C-1"]);
  for (const one of told) expect(one).not.toMatch(/\{\w+\}/u);
});

test("a file that is not there is told", async () => {
  const { problems } = await fileRecords(disk, ["/nowhere/x.html"], { ...bySignatures, into: temporaryFolder() });
  expect(problems.all.map(({ code }) => code)).toEqual(["options/no-such-record"]);
});

test("an option that says nothing is told before anything is filed", async () => {
  const { rows, problems } = await filed({ "a.html": draft.bytes }, { paper: " ", by: "" });
  expect([rows, problems]).toEqual([[], ["filing/words-missing", "filing/words-missing"]]);
});

test("the same pages once more are filed already, and the number of pages done is counted", async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "a.html"), draft.bytes);
  const counts: string[] = [];
  const options = {
    ...bySignatures,
    into: join(folder, "filed"),
    paper,
    onFiled: (done: number, all: number) => counts.push(`${done}/${all}`),
  };
  await fileRecords(disk, [join(folder, "a.html")], options);
  const { rows } = await fileRecords(disk, [join(folder, "a.html")], options);
  expect(rows.map(({ outcome }) => outcome)).toEqual(["filed already"]);
  expect(counts).toEqual(["1/1", "1/1"]);
});

test("signatures are checked by the folder's table of signers, else by the one beside the page, else by the one named", async () => {
  const sealed = sealRecord(sampleRecord());
  const issued = withSignOff(signedBy(sealed, [ines, "performed"], [ada, "authorised"]).signOff);
  const forged = withSignOff({
    signatures: signedBy(sealed, [ines, "performed"], [ada, "authorised"]).signOff.signatures.map((one) => ({
      ...one,
      signature: "AA",
    })),
  });
  const table = signersTable();
  const into = async (folder: string, page: string, signers?: string) => {
    const path = join(folder, "a.html");
    writeFileSync(path, page);
    const { rows, problems } = await fileRecords(disk, [path], {
      ...bySignatures,
      into: join(folder, "filed"),
      signers,
    });
    return [
      rows.length,
      ...problems.all.map(({ code, values }) => `${code} ${String(values.says ?? "").split(":")[1] ?? ""}`),
    ];
  };
  for (const place of ["signers.csv", "filed/signers.csv", "x/named.csv"]) {
    const folder = temporaryFolder();
    for (const name of ["filed", "x"]) mkdirSync(join(folder, name));
    writeFileSync(join(folder, place), table);
    const named = place.startsWith("x") ? join(folder, place) : undefined;
    expect(await into(folder, forged, named)).toEqual([0, "filing/signature-doubtful  it does not fit"]);
    expect(await into(folder, issued, named)).toEqual([1]);
  }
  expect(await into(temporaryFolder(), issued, "nowhere.csv")).toEqual([0, "signing/no-signers "]);
});
