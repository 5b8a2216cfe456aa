import { bentKinds } from "./bent-kinds.ts";
import { controllerKinds } from "./controller-kinds.ts";
import type { Kind } from "./kind.ts";
import { straightKinds } from "./sensor-kinds.ts";
import { switchKinds } from "./switch-kinds.ts";
import { wiringKinds } from "./wiring-kinds.ts";
import { writingKinds } from "./writing-kinds.ts";

export const kinds: readonly Kind[] = [
  ...straightKinds,
  ...bentKinds,
  ...wiringKinds,
  ...controllerKinds,
  ...switchKinds,
  ...writingKinds,
];

/** Two faults that stand in one loop without hiding each other. */
export const pairs: readonly (readonly [string, string])[] = [
  ["zero shift", "curvature"],
  ["upper end taught wrong", "curvature"],
  ["zero shift", "hysteresis of the sensor"],
  ["zero shift", "play of the rig"],
  ["zero shift", "air temperature"],
  ["both ends taught wrong", "air temperature"],
  ["zero shift", "scatter grows with distance"],
  ["zero shift", "fixed obstruction"],
  ["zero shift", "missed echo, fault signal"],
  ["zero shift", "wild reading"],
  ["both ends taught wrong", "two rows exchanged"],
  ["zero shift", "set point taught wrong"],
  ["zero shift", "leakage"],
  ["upper end taught wrong", "shared 0 V"],
  ["zero shift", "shunt or card gain"],
  ["both ends taught wrong", "offset of card or common"],
  ["zero shift", "high constant wrong"],
  ["upper end taught wrong", "low constant wrong"],
  ["both ends taught wrong", "unit slip"],
  ["curvature", "high constant wrong"],
  ["curvature", "offset of card or common"],
  ["burden-limited top", "low constant wrong"],
  ["zero shift", "clamp in the controller"],
  ["offset of card or common", "high constant wrong"],
  ["taught for another range", "fraction cut off"],
];

export function kindOf(id: string): Kind {
  const found = kinds.find((kind) => kind.id === id);
  if (found === undefined) throw new RangeError(`kindOf: no kind "${id}"`);
  return found;
}
