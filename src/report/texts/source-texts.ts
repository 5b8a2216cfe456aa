/** Stands behind a source that was not read again; said once, in the glossary. */
export const memoryMark = "*";

/** A source as a page prints it: "IEC 61298-2:2008 terms*". */
export function sourceWords(source: string): string {
  return source.replace(/,? from memory/gu, memoryMark);
}
