import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { numberStyleOf } from "../../report/style/number-style.ts";
import { writeSigned } from "../../units/write-number.ts";
import type { WrittenRecord } from "./report-calibrations.ts";

const longestCell = 40;

/** What came out, a row a record, for a terminal; the first row names the columns. */
export function summaryRows(written: readonly WrittenRecord[]): readonly (readonly string[])[] {
  return [
    ["tag", "calibration", "as found", "as left", "worst error, % of span", "to do", "page"],
    ...written.map(summaryRow),
  ];
}

function summaryRow({ record, page }: WrittenRecord): readonly string[] {
  const { asFound, asLeft } = record.phases;
  const { percent } = numberStyleOf(record);
  const worst = [asFound, asLeft].flatMap((phase) => (phase === undefined ? [] : [worstOf(phase, percent)]));
  return [
    oneLine(record.instrument.tag),
    oneLine(record.calibration.calibration),
    verdictOf(asFound),
    verdictOf(asLeft),
    worst.join(" → "),
    toDo(record),
    page,
  ];
}

const shortActions = {
  leave: "leave",
  "re-teach": "re-teach",
  "re-scale": "re-scale",
  "repair wiring or set-up": "repair",
  replace: "replace",
  "cannot be decided": "look again",
} as const;

/** What the last phase asks for, in its order, each kind once. */
function toDo({ recommendation }: CalibrationRecord): string {
  const last = recommendation?.asLeft ?? recommendation?.asFound;
  if (last === undefined) return "–";
  return [...new Set([last, ...last.also].map(({ action }) => shortActions[action]))].join(", ");
}

function verdictOf(phase: PhaseRecord | undefined): string {
  if (phase === undefined) return "–";
  return phase.verdict ?? "not determined";
}

/** With the decimals of the page, so that no rounding speaks against the verdict beside it. */
function worstOf({ worst }: PhaseRecord, decimals: number): string {
  return worst === null ? "not determined" : writeSigned(worst.errorPercentSpan, decimals);
}

function oneLine(text: string): string {
  const characters = [...text.replace(/\s+/gu, " ")];
  return characters.length > longestCell ? `${characters.slice(0, longestCell - 1).join("")}…` : characters.join("");
}
