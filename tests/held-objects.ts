import { queryObjects } from "node:v8";
import { letGo } from "../src/cli/threads.ts";

/** How many objects of a class are held; what nobody holds any more is let go of before they are counted. */
export function heldOf(kind: new (...given: never[]) => object): number {
  return queryObjects(kind, { format: "count" });
}

/** Lets go of all that nobody holds, once what runs now has ended: until then whatever a WeakRef was made of is held. */
export async function collectGarbage(): Promise<void> {
  await new Promise((done) => setImmediate(done));
  letGo();
}
