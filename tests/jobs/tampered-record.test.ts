import { describe, expect, test } from "vitest";
import { recordJson } from "../../src/jobs/records/write-record.ts";
import { figureDoubts } from "../../src/jobs/signing/figure-doubts.ts";
import { type RecordVerifier, recordVerifier } from "../../src/jobs/signing/verify-record.ts";
import { sealOf } from "../../src/proof/seal-record.ts";
import type { Doubt } from "../../src/record/doubt.ts";
import { readSealedRecord } from "../../src/record/read-sealed-record.ts";
import { withPlainRecord } from "../../src/record/record-element.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { howMany } from "../how-many.ts";
import { inFolder } from "./memory-disk.ts";
import { demoTexts, reportedFrom, reportedRecord, softwareVersion } from "./reported-records.ts";

const seed = 20_261_125;
/** Of what one byte in a hundred would bring about, 150 bytes show one in 78 runs of 100. */
const times = howMany(150, 1000);
const { record, page, json } = await reportedRecord();
const data = { start: page.indexOf('id="record">') + 'id="record">'.length, end: page.lastIndexOf("</script>") };
const body = page.indexOf("<body>");

/** Numbers from 0 to 1, the same in every run: the multiplicative generator of Park and Miller (1988). */
function drawing(): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const options = { softwareVersion, signers: undefined };

/** The first doubt about a text; each is looked for in the order of verifying, and the first one is enough here. */
async function firstDoubt(verify: RecordVerifier, text: string): Promise<Doubt | undefined> {
  for await (const doubt of verify(text, "a.html", options)) return doubt;
  return undefined;
}

/** What the first doubt is about; "note" where there is none, and something else is said. */
async function firstSaid(verify: RecordVerifier, text: string): Promise<string> {
  const { done, value } = await verify(text, "a.html", options).next();
  if (done !== true) return value.about;
  return value === undefined ? "nothing" : "note";
}

/** What is said of bytes; those that are no UTF-8 are refused before anything is read of them. */
async function saidOf(verify: RecordVerifier, bytes: Uint8Array): Promise<string> {
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return await firstSaid(verify, text);
  } catch (fault) {
    if (fault instanceof TypeError) return "no UTF-8";
    throw fault;
  }
}

/** Counts what is said of a file with one byte exchanged for another one, at so many places between two bounds. */
async function exchanged(text: string, count: number, start = 0, end = Number.POSITIVE_INFINITY) {
  const verify = recordVerifier();
  expect(await firstDoubt(verify, text)).toBeUndefined();
  const bytes = new TextEncoder().encode(text);
  const random = drawing();
  const said: Record<string, number> = {};
  for (let done = 0; done < count; done += 1) {
    const last = Math.min(end, bytes.length);
    const index = start + Math.floor(random() * (last - start));
    const before = bytes[index] ?? 0;
    bytes[index] = before ^ (1 + Math.floor(random() * 255));
    const about = await saidOf(verify, bytes);
    said[about] = (said[about] ?? 0) + 1;
    bytes[index] = before;
  }
  expect(await firstDoubt(verify, new TextDecoder().decode(bytes))).toBeUndefined();
  return said;
}

/** Offsets into the bytes; the page has characters of two bytes. */
const byteAt = (index: number) => new TextEncoder().encode(page.slice(0, index)).length;

describe(`one byte exchanged for another (seed ${seed})`, () => {
  test(`anywhere in a page is found, ${times} times of ${times}`, async () => {
    const said = await exchanged(page, times);
    expect(said).not.toHaveProperty("nothing");
    expect(said.page).toBeGreaterThan(times / 4);
  });

  test(`in what is read of it is found, ${times} times of ${times}, by comparing the page`, async () => {
    const said = await exchanged(page, times, byteAt(body), byteAt(data.start));
    expect(said).not.toHaveProperty("nothing");
    expect((said.page ?? 0) + (said["no UTF-8"] ?? 0) + (said.file ?? 0)).toBe(times);
  });

  test(`in the record packed inside it is found, ${times} times of ${times}, but where it unpacks to the same: that is said`, async () => {
    const said = await exchanged(page, times, byteAt(data.start), byteAt(data.end));
    expect(said).not.toHaveProperty("nothing");
    expect(said.note ?? 0).toBeLessThan(5);
  });

  test(`in the same written plain is found, ${times} times of ${times}, many by the seal alone`, async () => {
    const plain = withPlainRecord(page);
    const start = new TextEncoder().encode(plain.slice(0, plain.indexOf('id="record">') + 12)).length;
    const said = await exchanged(plain, times, start, start + recordJson(record).length);
    expect(said).not.toHaveProperty("note");
    expect(said.seal).toBeGreaterThan(times / 20);
  });

  test(`in the JSON beside it is found, ${times} times of ${times}`, async () => {
    const said = await exchanged(json, times);
    expect(said).not.toHaveProperty("nothing");
    expect(Object.keys(said).toSorted()).toEqual(["file", "no UTF-8", "seal"]);
  });

  test("in the page of another loop, with switched outputs and a loop check, is found", async () => {
    const { files } = await reportedFrom(inFolder("demo", demoTexts), "demo", { tag: "LT-702" });
    const said = await exchanged([...files.values()][0] ?? "", times / 2);
    expect(said).not.toHaveProperty("nothing");
  });
});

test("each number that can be read on the page, altered alone, is found by comparing the page", async () => {
  const verify = recordVerifier();
  const numbers = [...page.slice(body, data.start).matchAll(/>[^<]*/gu)].flatMap(({ 0: text, index }) =>
    [...text.matchAll(/\d+(?:[.,]\d+)?/gu)].map((number) => ({ at: body + index + number.index, text: number[0] })),
  );
  expect(numbers.length).toBeGreaterThan(500);
  // Every sixth one: what holds a number of the page holds its neighbours.
  const apart = howMany(6, 1);
  for (const { at, text } of numbers.filter((_, place) => place % apart === 0)) {
    const last = Number(text.at(-1));
    const altered = `${page.slice(0, at)}${text.slice(0, -1)}${(last + 1) % 10}${page.slice(at + text.length)}`;
    expect((await firstDoubt(verify, altered))?.about, `${text} at ${at}`).toBe("page");
  }
});

/** A field of readings, points or rows stands in each of them: in so many it is altered. */
const ofOneField = howMany(1, Number.POSITIVE_INFINITY);

/** Every field of a record by its path, and the record with that one altered and sealed anew. */
function* forgeries(): Generator<{ path: string; forged: SealedRecord }> {
  const copy = structuredClone(record);
  const done = new Map<string, number>();
  for (const { path, holder, key } of leavesOf(copy, "")) {
    if (path.startsWith("seal") || path.startsWith("signOff")) continue;
    const field = path.replace(/\[\d+\]/gu, "[]");
    const times = (done.get(field) ?? 0) + 1;
    done.set(field, times);
    if (times > ofOneField) continue;
    const before = holder[key];
    holder[key] = altered(before);
    yield { path, forged: { ...copy, seal: sealOf(copy) } };
    holder[key] = before;
  }
}

type Holder = Record<string, unknown>;

function* leavesOf(holder: object, path: string): Generator<{ path: string; holder: Holder; key: string }> {
  for (const [key, value] of Object.entries(holder)) {
    const place = Array.isArray(holder) ? `${path}[${key}]` : path === "" ? key : `${path}.${key}`;
    if (typeof value === "object" && value !== null) yield* leavesOf(value, place);
    else yield { path: place, holder: holder as Holder, key };
  }
}

function altered(value: unknown): unknown {
  if (typeof value === "number") return value === 0 ? 1 : Number.isInteger(value) ? value + 1 : value * 1.01;
  if (typeof value === "boolean") return !value;
  return value === null ? 1 : `${value}x`;
}

/** What a record says that its rows do not: only a signature, or the ledger of a folder, keeps it. */
const takenAsRecorded = [
  /^software\.version$/u,
  /^inputs\.files\[\]\.(?:sha256|byteLength|encoding|delimiter)$/u,
  /^inputs\.files\[\]\.decimalMark$/u, // of a table without a number that has one
  /^inputs\.rows\.\w+\[\]\.line$/u,
];

test("each value altered alone and sealed anew is found by computing it again, but those that no row gives", () => {
  const unfound = new Set<string>();
  const misplaced: string[] = [];
  let tried = 0;
  for (const { path, forged } of forgeries()) {
    tried += 1;
    const { doubts } = figureDoubts(forged);
    if (doubts.length === 0) unfound.add(path.replace(/\[\d+\]/gu, "[]"));
    else if (!path.startsWith("inputs.") && doubts[0]?.place !== path) misplaced.push(path);
  }
  expect(tried).toBeGreaterThan(howMany(150, 500));
  expect([...unfound].filter((path) => !takenAsRecorded.some((pattern) => pattern.test(path)))).toEqual([]);
  for (const pattern of takenAsRecorded) expect([...unfound].some((path) => pattern.test(path))).toBe(true);
  // What the rest hangs on is told by what hangs on it: the name by which the rows are found, and how the run was asked for.
  expect(misplaced.filter((path) => !/^calibration\.calibration$/u.test(path))).toEqual([]);
});

test("the record on which this is tried is whole", () => {
  expect(figureDoubts(record)).toEqual({ doubts: [] });
  expect("record" in readSealedRecord(page, "a.html")).toBe(true);
});
