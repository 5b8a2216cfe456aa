import type { PartIndex } from "./src/cli/load-part.ts";

export function writeParts(folder: string, parts: readonly { name: string; text: string }[]): void;
export function writeCode(folder: string, index: PartIndex, codes: ReadonlyMap<string, Buffer>): void;
