import { expect, test } from "vitest";
import { recordPlace } from "../../../src/jobs/records/record-place.ts";
import { isSignedThere, recordFiles, writeRecord } from "../../../src/jobs/records/write-record.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { ada, ines, recordToSign, signedBy } from "../../proof/sample-signing.ts";
import type { Texts } from "../../workbook/smallest-workbook.ts";
import { memoryDisk } from "../memory-disk.ts";

const record = recordToSign();
const place = recordPlace("out", record);

test("the page holds the same record as the JSON beside it, and both come from the record alone", async () => {
  const [page, json] = await recordFiles(record, place);
  expect([page?.path, json?.path]).toEqual([`${place}.html`, `${place}.json`]);
  expect(JSON.parse(String(json?.text))).toEqual(record);
  expect(await recordFiles(structuredClone(record), place)).toEqual([page, json]);
});

test("both files are written, or a problem says why neither was", async () => {
  const problems = new ProblemList();
  const disk = memoryDisk({});
  const files = await recordFiles(record, place);
  expect(await writeRecord(disk, files, place, problems)).toBe(`${place}.html`);
  expect(disk.written.size).toBe(2);
  const full = memoryDisk({}, (path) => path.endsWith(".json"));
  expect(await writeRecord(full, files, place, problems)).toBeUndefined();
  expect(full.written.size).toBe(0);
  expect(problems.all.map(sentence)).toEqual([
    `${place}.html: nothing could be written there: no room for ${place}.json; accepted: a folder in which this user may write`,
  ]);
});

test("a signed record is known by either of its files, also where it cannot be read any more", async () => {
  const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);
  const [page, json] = await recordFiles(signed, place);
  const there = (texts: Texts) => isSignedThere(memoryDisk(texts), place);
  expect(await there({ [`${place}.html`]: page?.text ?? "" })).toBe(true);
  expect(await there({ [`${place}.json`]: json?.text ?? "" })).toBe(true);
  expect(await there({ [`${place}.json`]: String(json?.text).slice(0, -100) })).toBe(true);
  expect(await there({ [`${place}.json`]: '{"signOff":{"signatures" : [ {}]}}' })).toBe(true);
});

test("an unsigned one, another file and no file are none, whatever the tables say of signatures", async () => {
  const there = (texts: Texts) => isSignedThere(memoryDisk(texts), place);
  const remarks = 'see "signatures":[{"protected":"e30"}]';
  const odd = sealRecord({ ...record, calibration: { ...record.calibration, remarks } });
  for (const { path, text } of await recordFiles(odd, place)) expect(await there({ [path]: text }), path).toBe(false);
  expect(await there({ [`${place}.html`]: "<!doctype html>" })).toBe(false);
  expect(await there({})).toBe(false);
  expect(await there({ [`${place}.html/inside`]: "" })).toBe(false);
});
