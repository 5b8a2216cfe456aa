/**
 * A count with its word, or with as much of the sentence as has to agree with it.
 *
 * @param count how many, a whole number >= 0
 * @param one what follows a 1: "record", "record was signed"
 * @param many what follows every other count; `one` with an s, if it is not given
 * @returns "1 record", "2 records", "0 records were signed"
 * Source: own choice.
 * @example counted(2, "record was signed", "records were signed") // "2 records were signed"
 */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
