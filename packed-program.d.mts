import type { Metafile } from "esbuild";

export const packedProgram: RegExp;
export function packedProgramModule(path: string): Promise<string>;
export function program(path: string): Promise<{ packed: string; sha256: string; metafile: Metafile }>;
