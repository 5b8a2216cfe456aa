import { signingState } from "../../proof/signing-state.ts";
import { type Column, namedRows } from "../../report/table/column.ts";
import type { SignedRecord } from "./sign-records.ts";

/** What was signed, a row a record, for a terminal; the first row names the columns. */
export function signedRows(signed: readonly SignedRecord[]): readonly (readonly (string | number)[])[] {
  return namedRows(signedColumns, signed);
}

const signedColumns: readonly Column<SignedRecord>[] = [
  { heading: "Tag", name: "tag", text: ({ record }) => record.instrument.tag },
  { heading: "Calibration", name: "calibration", text: ({ record }) => record.calibration.calibration },
  { heading: "Signed as", name: "signed as", text: ({ signedAs }) => signedAs },
  { heading: "By", name: "by", text: ({ signedBy }) => signedBy },
  { heading: "The record is", name: "the record is", text: ({ record }) => stateOf(record) },
  { heading: "Page", name: "page", text: ({ page }) => page },
];

function stateOf(record: SignedRecord["record"]): string {
  const { issuedAt, missing } = signingState(record);
  return issuedAt === undefined ? `a draft: ${missing.join(", ")} missing` : `issued ${issuedAt.slice(0, 10)}`;
}
