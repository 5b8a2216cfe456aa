import { expect, test } from "vitest";
import { readFiledRecord } from "../../src/filing/read-filed-record.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import { samplePage } from "./sample-pages.ts";

const page = samplePage();
const line = { path: "LT-1/x.html", fileSha256: fileDigest(page.bytes).sha256 };
const diskOf = (bytes: Uint8Array | undefined) => ({
  read: async (path: string) => (path === "folder/LT-1/x.html" ? bytes : undefined),
});

test("the record of the page that was filed is read", async () => {
  expect(await readFiledRecord(diskOf(page.bytes), "folder", line)).toMatchObject({ record: page.record });
});

test("a missing page, another page, and a page without a record are told", async () => {
  expect(await readFiledRecord(diskOf(undefined), "folder", line)).toEqual({ says: "the page is missing" });
  const other = new TextEncoder().encode("other bytes");
  expect(await readFiledRecord(diskOf(other), "folder", line)).toEqual({
    says: "the page is not the one that was filed",
  });
  const filed = { ...line, fileSha256: fileDigest(other).sha256 };
  expect(await readFiledRecord(diskOf(other), "folder", filed)).toEqual({
    says: "this is no calibration record: no record is embedded in it",
  });
});

test("a page that may not be read is told, and ends nothing", async () => {
  const refusing = { read: () => Promise.reject(new Error("EACCES")) };
  expect(await readFiledRecord(refusing, "folder", line)).toEqual({ says: "the page cannot be read: EACCES" });
});
