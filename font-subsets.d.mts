export const fontPart: RegExp;
export function fontPartModule(path: string): Promise<string>;
