import type { Severity } from "./problem.ts";

/** What a code means: how much it stops, what is wrong, what is accepted; `{name}` is filled in from its values. */
export type Entry = { severity: Severity; wrong: string; accepted: string };

export const stop = (wrong: string, accepted: string): Entry => ({ severity: "stop", wrong, accepted });
export const warn = (wrong: string, accepted: string): Entry => ({ severity: "warn", wrong, accepted });
