import * as fc from "fast-check";
import { expect, test } from "vitest";
import * as z from "zod";
import type { FiledLine } from "../../src/filing/ledger-line.ts";
import { indexEntry } from "../../src/filing/make-index-entry.ts";
import { isRecordInShort } from "../../src/filing/record-in-short.ts";
import { phaseSummarySchema, recordSummarySchema } from "../../src/record/record-summary-schema.ts";
import { howMany } from "../how-many.ts";
import { sampleLines } from "./sample-lines.ts";
import { samplePage } from "./sample-pages.ts";

const four = z.number();
const phase = phaseSummarySchema
  .omit({ points: true })
  .extend({ places: z.array(z.tuple([four, four, four, four])) })
  .nullable();

/** By another hand: the schema of a record in short, as zod 4 reads it. */
const schema = recordSummarySchema.extend({ asFound: phase, asLeft: phase });

const [line] = sampleLines(1) as [FiledLine];
const found: unknown = JSON.parse(
  JSON.stringify(indexEntry(line, samplePage({ isOutOfTolerance: true }).record).summary),
);

/** Every place of plain data, as the keys that lead to it. */
function placesOf(value: unknown): readonly (readonly string[])[] {
  if (typeof value !== "object" || value === null) return [[]];
  const inside = Object.entries(value).flatMap(([key, one]) => placesOf(one).map((rest) => [key, ...rest]));
  return [[], ...inside];
}

function withOther(value: unknown, [key, ...rest]: readonly string[], other: unknown): unknown {
  if (key === undefined) return other;
  if (Array.isArray(value) && rest.length === 0 && other === undefined) return value.toSpliced(Number(key), 1);
  const copy: Record<string, unknown> = Array.isArray(value) ? ([...value] as never) : { ...(value as object) };
  if (rest.length === 0 && other === undefined) delete copy[key];
  else copy[key] = withOther(copy[key], rest, other);
  return copy;
}

const words = ["pass", "not complete", "sensor", "input card", "controller", "mm", "in", "re-teach", "none", ""];
const days = [
  "2026-02-28",
  "2024-02-29",
  "2026-02-29",
  "2026-13-01",
  "2026-2-3",
  "1900-02-29",
  "2000-02-29",
  "0000-01-01",
];
const anything = fc.oneof(
  fc.constantFrom(undefined, null, 0, 1, -1, 1.5, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY, true, [], {}),
  fc.constantFrom<unknown>(...words, ...days, { word: "pass", missing: [] }, { word: "pass", missing: [1] }),
  fc.constantFrom<unknown>([1, 2, 3, 4], [[1, 2, 3, 4]], [[1, 2, 3]], [[1, 2, 3, "4"]], { word: "?", missing: [] }),
);

test("a record in short has the form that the schema says, whatever is other in one or two places of it", () => {
  expect(isRecordInShort(found)).toBe(true);
  const place = fc.constantFrom(...placesOf(found), ["overall"], ["more"], ["asLeft"], ["asFound", "more"]);
  const change = fc.tuple(place, anything);
  let accepted = 0;
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 2 }), (changes) => {
      const other = changes.reduce<unknown>((value, [at, by]) => {
        const isThere = at.slice(0, -1).reduce<unknown>((inside, key) => (inside as never)?.[key], value);
        return typeof isThere === "object" && isThere !== null ? withOther(value, at, by) : value;
      }, found);
      const isOne = isRecordInShort(other);
      if (isOne) accepted += 1;
      expect(isOne, JSON.stringify(other)).toBe(schema.safeParse(other).success);
    }),
    { numRuns: howMany(3000, 20_000) },
  );
  expect(accepted).toBeGreaterThan(20);
});
