export const packedProgram: RegExp;
export function packedProgramModule(path: string): Promise<string>;
