import * as z from "zod";
import type { LoopResult } from "../verdict/loop-check/judge-loop-check.ts";

const finite = z.number();

const loopCheckItem = z.strictObject({
  row: z.int().describe("line of the file of loop checks"),
  item: z.string(),
  number: z
    .int()
    .nullable()
    .describe("place among the checks that apply to the loop, from 1; null for an item of the user's own"),
  result: z.enum(["pass", "fail", "not applicable", "not looked at"] satisfies LoopResult[]),
  decidedBy: z.enum(["technician", "number"]).nullable(),
  measured: z.union([finite, z.string()]).optional(),
  unit: z.string().nullable(),
  low: finite.nullable().describe("the narrower of the row's own limit and that which follows from the workbook"),
  high: finite.nullable(),
  words: z.array(z.string()).describe("limits of the row that are words"),
  computed: finite.nullable().describe("the same quantity as the other tables give it"),
  basis: z.string().nullable().describe("what the limits rest on, beside the row's own"),
  found: z.string().nullable().describe("what the readings or other tables say of the item, in words"),
  outside: z.array(z.string()).describe("what lies outside, in words"),
  isContradiction: z.boolean().describe("the row says pass, and something lies outside"),
  checkedBy: z.string().optional(),
  time: z.string().optional(),
  remark: z.string().optional(),
});

/** What is in series with the sensor and what may be, in Ω. */
const burden = z.strictObject({
  card: finite,
  barrier: finite,
  cable: z.strictObject({
    lengthMetres: finite,
    ohmsPerKilometre: finite,
    temperatureCelsius: finite,
    resistance: finite.describe("there and back"),
  }),
  total: finite,
  greatest: finite,
  setBy: z.enum(["supply", "load_max"]),
  highestCurrent: finite.optional().describe("that the loop may give, mA; 21 where it is absent"),
  neededSupplyVolts: finite
    .nullable()
    .describe("for the highest current through the total; null where the sensor has a supply apart"),
});

/** The loop around the sensor: each row that was written down, what was not looked at, and what keeps it open. */
export const loopChecksSchema = z.strictObject({
  items: z.array(loopCheckItem),
  notLookedAt: z.array(z.string()),
  incomplete: z.array(z.string()).describe("why the loop is not handed back; empty where it is"),
  burden: burden.nullable(),
  notDetermined: z.record(z.string(), z.string()),
});

export type LoopChecksRecord = z.infer<typeof loopChecksSchema>;
export type LoopCheckItem = z.infer<typeof loopCheckItem>;

/** One line of the set-point table; see `analysis/stages/set-point-table.ts`. */
export const setPointRowSchema = z.strictObject({
  name: z.string(),
  distance: finite.nullable(),
  signal: finite,
  counts: finite.nullable(),
  value: finite.nullable(),
  percentSpan: finite.nullable(),
});
