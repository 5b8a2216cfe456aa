import * as z from "zod";
import { choice, number, requiredChoice, requiredNumber, requiredText, text } from "./column.ts";

/** One limit at which the controller does something of its own: an alarm or a trip on the value that it shows. */
export const controllerLimitSchema = z.strictObject({
  tag: requiredText("tag of the table instruments"),
  limit: requiredText("what the limit is called, such as high alarm"),
  value: requiredNumber(
    "controller value",
    "value at which the controller acts; a distance where the instrument has no value_lower and value_upper",
  ),
  acts: requiredChoice(["above", "below"], "the side of that value on which it acts"),
  delay: number("s", "time for which the value has to stay there", { atLeast: 0 }),
  deadBand: number("controller value", "how far the value has to come back", { atLeast: 0 }),
  finalAction: text("what it does in the end: the valve, the pump, the horn"),
  kind: choice(["alarm", "trip"], "whether it tells somebody or acts on the plant"),
});

export type ControllerLimit = z.infer<typeof controllerLimitSchema>;
