import { spanOf } from "../../model/range.ts";
import type { Check } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

/** Share of the span by which a limit may lie outside what the controller shows over the range; own choice. */
const beyondAllowed = 0.1;

/** An alarm or a trip of the controller lies where its value can come. */
export const controllerLimits: Check = ({ drafts, instrumentByTag, report }) => {
  for (const draft of drafts.controller_limits) {
    const { tag, value } = draft.row;
    const instrument = tag === undefined ? undefined : instrumentByTag.get(tag)?.row;
    const { rangeLower, rangeUpper, distanceUnit, valueUnit = "", valueLower, valueUpper } = instrument ?? {};
    const isScaled = valueLower !== undefined && valueUpper !== undefined;
    const [one, other] = isScaled ? [valueLower, valueUpper] : [rangeLower, rangeUpper];
    if (value === undefined || one === undefined || other === undefined) continue;
    const [lower, upper] = [Math.min(one, other), Math.max(one, other)];
    const beyond = beyondAllowed * spanOf({ rangeLower: lower, rangeUpper: upper });
    if (value >= lower - beyond && value <= upper + beyond) continue;
    const values = {
      value: shownNumber(value),
      ...{ lower: shownNumber(lower), upper: shownNumber(upper) },
      unit: isScaled ? (valueUnit === "" ? "" : ` ${valueUnit}`) : ` ${distanceUnit}`,
    };
    report("controller_limits", draft, "model/limit-outside-range", { column: "value", values });
  }
};
