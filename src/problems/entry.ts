/** `stop`: nothing is written for what the problem touches; `warn`: the record is written and carries the sentence. */
export type Severity = "stop" | "warn";

/** What a code means: how much it stops, what is wrong, what is accepted; `{name}` is filled in from its values. */
export type Entry = { severity: Severity; wrong: string; accepted: string };

export const stop = (wrong: string, accepted: string): Entry => ({ severity: "stop", wrong, accepted });
export const warn = (wrong: string, accepted: string): Entry => ({ severity: "warn", wrong, accepted });
