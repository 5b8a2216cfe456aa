import { columnName } from "../../model/column-name.ts";
import { convert } from "../../units/convert.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

/** Colder or hotter air is rare around a sensor, and more often a number in another unit. Own choice. */
const usualAir = { atLeast: -60, atMost: 70 } as const;

const airOfInstrument = ["taughtAt", "airMin", "airMax"] as const;

/** Air is as warm as air around a sensor is; a number that would be so in °F is asked for its unit. */
export const air: Check = (context) => {
  for (const draft of context.drafts.instruments) {
    for (const key of airOfInstrument) ask("instruments", draft, { key, value: draft.row[key] }, context);
  }
  for (const draft of context.drafts.calibrations) {
    ask("calibrations", draft, { key: "airTemperature", value: draft.row.airTemperature }, context);
  }
};

type Stated = { key: string; value: number | undefined };

function ask(
  table: "instruments" | "calibrations",
  draft: DraftRow<"instruments"> | DraftRow<"calibrations">,
  { key, value }: Stated,
  { report }: CheckContext,
): void {
  if (value === undefined || isUsual(value)) return;
  const asFahrenheit = convert(value, "°F", "°C");
  const hint = isUsual(asFahrenheit) ? `; in °F it would be ${shownNumber(asFahrenheit)} °C` : "";
  const values = { celsius: shownNumber(value), hint, least: usualAir.atLeast, most: usualAir.atMost };
  report(table, draft, "model/air-unlikely", { column: columnName(key), values });
}

function isUsual(celsius: number): boolean {
  return celsius >= usualAir.atLeast && celsius <= usualAir.atMost;
}
