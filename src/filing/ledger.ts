import { lookOfName } from "../model/look-of-name.ts";
import { type FiledLine, type LedgerLine, lineHash, noLine, readLedgerLine } from "./ledger-line.ts";
import { plainLine } from "./plain-line.ts";

/** The name of the ledger inside a folder of filed records. */
export const ledgerName = "ledger.jsonl";

type Identity = { tag: string; calibration: string; revision: number };

const keyOf = ({ calibration, revision }: Omit<Identity, "tag">) => JSON.stringify([calibration, revision]);

/**
 * A ledger as far as it was read: every whole line has the form of one, and holds on to the one before it.
 *
 * Of a line that a page was filed by, no object is made until somebody asks for it: who files one page asks for those of
 * its tag.
 */
export class Ledger {
  readonly #lines: (LedgerLine | string)[] = [];
  /** Places of the lines of a tag. */
  readonly #places = new Map<string, number[]>();
  /** Tags by their look; made when somebody first asks. */
  #tagsByLook: Map<string, string[]> | undefined;
  /** SHA-256 of the last line. */
  head = noLine;
  /** Bytes that the lines take, newlines included. */
  length = 0;

  /** How many lines it has. */
  get count(): number {
    return this.#lines.length;
  }

  get lines(): readonly LedgerLine[] {
    return this.#lines.map((_, place) => this.#lineAt(place));
  }

  /**
   * Reads on.
   *
   * @param bytes of the ledger from `length` on
   * @returns how many bytes at the end are no whole line, for want of a newline; or what is wrong with the first line
   *   that does not follow from those before it, which is not taken in, nor is any after it
   */
  readOn(bytes: Uint8Array): { torn: number } | { wrong: string } {
    let start = 0;
    for (const text of decoder.decode(bytes).split("\n").slice(0, -1)) {
      const end = bytes.indexOf(newline, start);
      const wrong = this.#take(text, bytes.subarray(start, end));
      if (wrong !== undefined) return { wrong };
      start = end + 1;
    }
    return { torn: bytes.length - start };
  }

  /** The line by which a revision of a calibration was filed, unless its page was withdrawn. */
  filed({ tag, ...revision }: Identity): FiledLine | undefined {
    return standing(this.linesOf(tag)).get(keyOf(revision));
  }

  /** Every line that names this very tag. */
  linesOf(tag: string): readonly LedgerLine[] {
    return (this.#places.get(tag) ?? []).map((place) => this.#lineAt(place));
  }

  /** Another tag of the folder that a person takes for this one; nothing where pages of this very tag are filed. */
  tagLike(tag: string): string | undefined {
    const isFiled = (one: string) => standing(this.linesOf(one)).size > 0;
    if (isFiled(tag)) return undefined;
    this.#tagsByLook ??= byLook([...this.#places.keys()]);
    return this.#tagsByLook.get(lookOfName(tag))?.find(isFiled);
  }

  #lineAt(place: number): LedgerLine {
    const line = this.#lines[place];
    if (typeof line !== "string") return line as LedgerLine;
    const read = readLedgerLine(line) as LedgerLine;
    this.#lines[place] = read;
    return read;
  }

  /** Takes a line in, or says what is wrong with it. */
  #take(text: string, bytes: Uint8Array): string | undefined {
    const plain = plainLine(text);
    const line = plain ?? readLedgerLine(text);
    const number = this.count + 1;
    if (line === undefined) return `line ${number} is no line of a ledger`;
    if (line.number !== number) return `line ${number} has the number ${line.number}`;
    if (line.previous !== this.head) return `line ${number} does not hold the hash of the line before it`;
    this.#lines.push(plain === undefined ? (line as LedgerLine) : text);
    this.head = lineHash(bytes);
    this.length += bytes.length + 1;
    if ("tag" in line) this.#enterTag(line.tag, number - 1);
    return undefined;
  }

  #enterTag(tag: string, place: number): void {
    const places = this.#places.get(tag);
    if (places !== undefined) return void places.push(place);
    this.#places.set(tag, [place]);
    if (this.#tagsByLook !== undefined) enterLook(this.#tagsByLook, tag);
  }
}

/** Lines by which revisions of a tag were filed that were not withdrawn, by calibration and revision. */
function standing(lines: readonly LedgerLine[]): ReadonlyMap<string, FiledLine> {
  const filed = new Map<string, FiledLine>();
  for (const line of lines) {
    if (line.action === "filed") filed.set(keyOf(line), line);
    if (line.action === "withdrawn") filed.delete(keyOf(line));
    if (line.action !== "restored") continue;
    const again = lines.find((one) => one.action === "filed" && one.path === line.path);
    if (again?.action === "filed") filed.set(keyOf(again), again);
  }
  return filed;
}

function byLook(tags: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const tag of tags) enterLook(found, tag);
  return found;
}

function enterLook(tagsByLook: Map<string, string[]>, tag: string): void {
  const look = lookOfName(tag);
  tagsByLook.set(look, [...(tagsByLook.get(look) ?? []), tag]);
}

const newline = 0x0a;
/** Every byte counts, those of a byte order mark too. */
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
