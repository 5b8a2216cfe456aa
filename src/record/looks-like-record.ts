/**
 * What a page of a record, or its JSON alone, has in it and nothing else has: in its head, in its data, around them. A
 * page of which one is damaged or cut off still has another.
 */
const marks = [/<title>[^<]* · calibration record /u, /"spanwright-record\//u, /id="record"/u, /"figureBasis"/u];

/**
 * Whether a file is one of a record, be it damaged, rather than something else that lies beside it.
 *
 * @param text of the file
 * @returns false for a register, a sheet of labels, or anything else that holds no record
 * Source: own choice.
 * @example looksLikeRecord("<title>Register</title>") // false
 */
export function looksLikeRecord(text: string): boolean {
  return marks.some((mark) => mark.test(text));
}
