import { expect, test } from "vitest";
import { ledgerReader } from "../../../src/jobs/signing/ledger-reader.ts";
import { sampleLines, textOfLines } from "../../filing/sample-lines.ts";

const lines = sampleLines(3);
const [, second] = lines;

function readerOf(ledger: () => Promise<Uint8Array | undefined>) {
  const asked: string[] = [];
  const read = (path: string) => {
    asked.push(path);
    return ledger();
  };
  return { asked, lineOf: ledgerReader({ read }) };
}

test("a page is found by its place in the folder, and a ledger is read once", async () => {
  const { asked, lineOf } = readerOf(async () => new TextEncoder().encode(textOfLines(lines)));
  expect(await lineOf(`filed/${second?.path}`)).toEqual({ line: second });
  expect(await lineOf("filed/LT-1/other.html")).toBeUndefined();
  expect(asked).toEqual(["filed/ledger.jsonl"]);
});

test("where there is no ledger, or none that can be read, no page was filed", async () => {
  expect(await readerOf(async () => undefined).lineOf(`filed/${second?.path}`)).toBeUndefined();
  expect(await readerOf(() => Promise.reject(new Error("EIO"))).lineOf(`filed/${second?.path}`)).toBeUndefined();
});
