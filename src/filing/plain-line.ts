/** What a line says that most lines of a ledger are: a page was filed. */
export type PlainLine = { number: number; previous: string; tag: string };

const sha256 = "[0-9a-f]{64}";
/** Neither quote, backslash nor control character stands in it, and no space before it: it is its own JSON. */
const words = String.raw`[^"\\\s\0-\x1f][^"\\\0-\x1f]*`;
const whole = String.raw`[1-9]\d{0,14}`;
/** In the order of canonical JSON. */
const fields = [
  String.raw`\{"action":"filed","at":"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)"`,
  `(?:,"by":"${words}")?,"calibration":"${words}","fileSha256":"${sha256}","number":(?<number>${whole})`,
  String.raw`(?:,"paper":"${words}")?,"path":"\w[\w.-]*\/\w[\w.-]*\.html","previous":"(?<previous>${sha256})"`,
  `,"revision":${whole}(?:,"rowSha256":"${sha256}")?,"sealSha256":"${sha256}"`,
  String.raw`(?:,"signersSha256":"${sha256}")?,"tag":"(?<tag>${words})"\}`,
];
const form = new RegExp(`^${fields.join("")}$`, "u");

/**
 * A line by which a page was filed, as this program writes it, told by its form as text: a folder of many records is
 * read without making an object of each of its lines.
 *
 * @returns nothing where it is another line, or the same written otherwise; `readLedgerLine` tells what that is
 */
export function plainLine(text: string): PlainLine | undefined {
  const { number, previous, tag } = form.exec(text)?.groups ?? {};
  if (number === undefined || previous === undefined || tag === undefined) return undefined;
  return { number: Number(number), previous, tag };
}
