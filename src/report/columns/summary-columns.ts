import { overallOf } from "../../record/overall-of.ts";
import { overallSays } from "../../record/overall-words.ts";
import type { PhaseName } from "../../record/phase-name.ts";
import { phaseStatement } from "../../record/phase-statement.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { writeSigned } from "../../units/write-number.ts";
import { numberStyleOf } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";

/** A record, and where its page lies. */
export type PlacedRecord = { record: CalibrationRecord; page: string };

/** What came out of a calibration, in one row. */
export const summaryColumns: readonly Column<PlacedRecord>[] = [
  { heading: "Tag", name: "tag", isRowHeader: true, text: ({ record }) => oneLine(record.instrument.tag) },
  { heading: "Calibration", name: "calibration", text: ({ record }) => oneLine(record.calibration.calibration) },
  { heading: "As found", name: "as found", text: ({ record }) => statementOf(record, "asFound") },
  { heading: "As left", name: "as left", text: ({ record }) => statementOf(record, "asLeft") },
  { heading: "Overall", name: "overall", text: ({ record }) => saysOf(record) },
  {
    ...{ heading: "Worst error", unit: "% of span", name: "worst error, % of span" },
    text: ({ record }) => withDecimalMark(record.instrument.decimalMark, () => worstErrors(record)),
  },
  { heading: "What to do", name: "to do", text: ({ record }) => toDo(record) },
  { heading: "Page", name: "page", text: ({ page }) => page },
];

function saysOf(record: CalibrationRecord): string {
  const { word, complete } = overallOf(record);
  return overallSays(word, complete);
}

const longestCell = 40;

const shortActions = {
  leave: "leave",
  "re-teach": "re-teach",
  "re-scale": "re-scale",
  "repair wiring or set-up": "repair",
  replace: "replace",
  "cannot be decided": "cannot be decided",
} as const;

/** What the last phase asks for, in its order, each kind once. */
function toDo({ recommendation }: CalibrationRecord): string {
  const last = recommendation?.asLeft ?? recommendation?.asFound;
  if (last === undefined) return "–";
  return [...new Set([last, ...last.also].map(({ action }) => shortActions[action]))].join(", ");
}

/** Of readings and switched outputs together, as the page and the register say it. */
function statementOf(record: CalibrationRecord, name: PhaseName): string {
  if (record.phases[name] === undefined) return "–";
  return phaseStatement(record, name) ?? "not determined";
}

function worstErrors(record: CalibrationRecord): string {
  const { asFound, asLeft } = record.phases;
  const { percent } = numberStyleOf(record);
  return [asFound, asLeft].flatMap((phase) => (phase === undefined ? [] : [worstOf(phase, percent)])).join(" → ");
}

/** With the decimals of the page, so that no rounding speaks against the verdict beside it. */
function worstOf({ worst }: PhaseRecord, decimals: number): string {
  return worst === null ? "not determined" : writeSigned(worst.errorPercentSpan, decimals);
}

function oneLine(text: string): string {
  const characters = [...text.replace(/\s+/gu, " ")];
  return characters.length > longestCell ? `${characters.slice(0, longestCell - 1).join("")}…` : characters.join("");
}
