/**
 * The letters of a column, as spreadsheets name it.
 *
 * @param index of the column, from 0
 * @returns letters: A to Z, then AA
 * Source: the usual names of columns in spreadsheets; common practice.
 * @example columnLetters(27) // "AB"
 */
export function columnLetters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${columnLetters(Math.floor(index / 26) - 1)}${last}`;
}
