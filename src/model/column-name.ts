/** "rangeLower" in the code is "range_lower" in a table. */
export function columnName(key: string): string {
  return key.replace(/[A-Z]/gu, (capital) => `_${capital.toLowerCase()}`);
}
