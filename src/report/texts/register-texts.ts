import type { DueState, RegisterRow, WorstError } from "../../record/register-form.ts";
import { counted } from "../../units/counted.ts";
import { decimalsForSignificant, writeSigned } from "../../units/write-number.ts";

/** The states of a loop in the order of their urgency, as a reader sees and chooses them. */
export const dueStates: readonly DueState[] = [
  "overdue",
  "not in tolerance",
  "not complete",
  "due soon",
  "not due",
  "no date",
  "out of use",
];

/** "+0.951 % (+25.7 mm)", or what there is not. */
export function worstErrorWords(worst: WorstError | null, unit: string): string {
  if (worst === null) return "–";
  const { errorPercentSpan, errorDistance } = worst;
  const percent = writeSigned(errorPercentSpan, decimalsForSignificant(errorPercentSpan, 3));
  return `${percent} % (${writeSigned(errorDistance, decimalsForSignificant(errorDistance, 3))} ${unit})`;
}

/** "+0.12" percent of span a year; early under four records; why it is not known otherwise. */
export function driftWords(drift: RegisterRow["drift"]): string {
  if ("notDetermined" in drift) return drift.notDetermined;
  const perYear = writeSigned(drift.percentSpanPerYear, decimalsForSignificant(drift.percentSpanPerYear, 2));
  return drift.isEarly ? `${perYear}, early` : perYear;
}

/** "meets the upper limit on 2027-03-01", early under four records; or why no day can be given. */
export function forecastWords({ forecast }: Pick<RegisterRow, "forecast">): string {
  if ("notDetermined" in forecast) return forecast.notDetermined;
  const { on, limit, isAlready, isEarly } = forecast;
  const meets = isAlready ? `reaches beyond the ${limit} limit already` : `meets the ${limit} limit on ${on}`;
  return isEarly ? `${meets}, early` : meets;
}

/** "2026-12-01, in 6 days"; "2026-11-01, 24 days ago"; or why there is no date. */
export function dueWords({ on, days, why }: RegisterRow["due"]): string {
  if (on === null || days === null) return why ?? "no date";
  if (days === 0) return `${on}, today`;
  const count = counted(Math.abs(days), "day");
  return `${on}, ${days < 0 ? `${count} ago` : `in ${count}`}`;
}
