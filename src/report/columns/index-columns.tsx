import { signingState } from "../../proof/signing-state.ts";
import { overallOf } from "../../record/overall-of.ts";
import { type OverallWord, overallWords } from "../../record/overall-words.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { Column } from "../table/column.ts";
import { stateWords } from "../texts/signing-texts.ts";
import { summaryColumns } from "./summary-columns.ts";

/** What an index keeps of a record, as it is printed; the record itself may be let go. */
export type IndexRow = {
  tag: string;
  calibration: string;
  revision: number;
  performedOn: string;
  description: string;
  /** Draft or issued. */
  signing: string;
  overall: OverallWord;
  /** By the names of the summary's columns. */
  summary: Readonly<Record<string, string>>;
  /** Below the folder of the index. */
  page: string;
};

export function indexRow(record: SealedRecord, page: string): IndexRow {
  const { instrument, calibration, revision } = record;
  const told = summaryColumns.map(({ name = "", text }) => [name, text?.({ record, page }) ?? ""] as const);
  return {
    tag: instrument.tag,
    calibration: calibration.calibration,
    revision,
    performedOn: calibration.performedOn ?? "",
    description: [instrument.description, instrument.location].filter((one) => one !== undefined).join(", "),
    signing: stateWords(signingState(record)),
    overall: overallOf(record).word,
    summary: Object.fromEntries(told),
    page,
  };
}

/** The worst first, as a reader chooses them. */
export const indexStates: readonly OverallWord[] = overallWords.toReversed();

/** The same words as `report` prints, with a link to each page. */
export const indexColumns: readonly Column<IndexRow>[] = [
  {
    ...{ heading: "Tag", isRowHeader: true, text: ({ tag }) => tag },
    cell: ({ page, tag }) => (
      <a href={page}>
        <bdi>{tag}</bdi>
      </a>
    ),
  },
  { heading: "What and where", text: ({ description }) => description },
  { heading: "Calibrated", kind: "day", text: ({ performedOn }) => performedOn },
  {
    ...{ heading: "Record", under: "Calibrated" },
    text: ({ calibration, revision }) => `${calibration}, revision ${revision}`,
  },
  { heading: "As found", text: ({ summary }) => summary["as found"] ?? "" },
  { heading: "As left", text: ({ summary }) => summary["as left"] ?? "" },
  {
    ...{ heading: "State", text: stateText, sortBy: ({ overall }) => indexStates.indexOf(overall) },
    cell: (row) => (row.overall.endsWith("pass") ? row.overall : <strong>{stateText(row)}</strong>),
  },
  { heading: "Signed", under: "State", text: ({ signing }) => signing },
  {
    ...{ heading: "Worst error", unit: "% of span", kind: "number" },
    text: ({ summary }) => summary["worst error, % of span"] ?? "",
    sortBy: ({ summary }) => sizeOfLast(summary["worst error, % of span"] ?? ""),
  },
  { heading: "What to do", text: ({ summary }) => summary["to do"] ?? "" },
];

/** The word, and whether it is the whole of it. */
function stateText({ overall, summary }: IndexRow): string {
  return summary.overall ?? overall;
}

/** Of "+0.95 → −0.11" how large the number is that holds now. */
function sizeOfLast(errors: string): number | "" {
  const last = (errors.split("→").at(-1) ?? "").trim();
  return Math.abs(Number(last.replace("−", "-").replace(",", "."))) || "";
}
