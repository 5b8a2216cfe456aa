import { overTheYears } from "../../assembly/years/over-the-years.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { recordSummary } from "../../record/record-summary.ts";
import type { TagHistory } from "../../report/history-page.tsx";
import type { IntervalSettings } from "../../verdict/intervals/interval-settings.ts";

/** A tag over its records; what it is comes from the last of them. Nothing where no record has a day. */
export function historyOf(
  records: readonly SealedRecord[],
  settings?: IntervalSettings | undefined,
): TagHistory | undefined {
  const instrument = latest(records)?.instrument;
  if (instrument === undefined) return undefined;
  const { tag, description, location, distanceUnit, rangeLower, rangeUpper, intervalMonths, intervalAgreedBy } =
    instrument;
  const found = overTheYears(records.map(recordSummary), { intervalMonths, settings });
  if (found === undefined) return undefined;
  return {
    ...{ tag, description, location, distanceUnit, rangeLower, rangeUpper, intervalMonths, intervalAgreedBy },
    overTheYears: found,
  };
}

function latest(records: readonly SealedRecord[]): SealedRecord | undefined {
  const dayOf = ({ calibration }: SealedRecord) => calibration.performedOn ?? "";
  return records.toSorted((one, other) => (dayOf(one) < dayOf(other) ? -1 : 1)).at(-1);
}
