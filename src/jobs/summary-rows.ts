import type { PhaseRecord } from "../record/record-schema.ts";
import { decimalsForSignificant, writeSigned } from "../units/write-number.ts";
import type { WrittenRecord } from "./report-calibrations.ts";

const longestCell = 40;

/** What came out, a row a record, for a terminal; the first row names the columns. */
export function summaryRows(written: readonly WrittenRecord[]): readonly (readonly string[])[] {
  return [["tag", "calibration", "as found", "as left", "worst error, % of span", "page"], ...written.map(summaryRow)];
}

function summaryRow({ record, page }: WrittenRecord): readonly string[] {
  const { asFound, asLeft } = record.phases;
  const worst = [asFound, asLeft].flatMap((phase) => (phase === undefined ? [] : [worstOf(phase)]));
  return [
    oneLine(record.instrument.tag),
    oneLine(record.calibration.calibration),
    verdictOf(asFound),
    verdictOf(asLeft),
    worst.join(" → "),
    page,
  ];
}

function verdictOf(phase: PhaseRecord | undefined): string {
  if (phase === undefined) return "–";
  return phase.verdict ?? "not determined";
}

function worstOf({ worst }: PhaseRecord): string {
  if (worst === null) return "not determined";
  const { errorPercentSpan, partOfTolerance } = worst;
  const limit = partOfTolerance === 0 || partOfTolerance === null ? 1 : Math.abs(errorPercentSpan / partOfTolerance);
  return writeSigned(errorPercentSpan, decimalsForSignificant(limit, 3));
}

function oneLine(text: string): string {
  const characters = [...text.replace(/\s+/gu, " ")];
  return characters.length > longestCell ? `${characters.slice(0, longestCell - 1).join("")}…` : characters.join("");
}
