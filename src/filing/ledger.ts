import { lookOfName } from "../model/look-of-name.ts";
import { type FiledLine, type LedgerLine, lineHash, noLine, type RestoredLine, readLedgerLine } from "./ledger-line.ts";

/** The name of the ledger inside a folder of filed records. */
export const ledgerName = "ledger.jsonl";

type Identity = { tag: string; calibration: string; revision: number };

const keyOf = ({ tag, calibration, revision }: Identity) => JSON.stringify([tag, calibration, revision]);

/** A ledger as far as it was read: every whole line holds on to the one before it. */
export class Ledger {
  readonly lines: LedgerLine[] = [];
  readonly #filed = new Map<string, FiledLine>();
  /** SHA-256 of the last line. */
  head = noLine;
  /** Bytes that the lines take, newlines included. */
  length = 0;

  /**
   * Reads on.
   *
   * @param bytes of the ledger from `length` on
   * @returns how many bytes at the end are no whole line, for want of a newline; or what is wrong with the first line
   *   that does not follow from those before it, which is not taken in, nor is any after it
   */
  readOn(bytes: Uint8Array): { torn: number } | { wrong: string } {
    const end = bytes.lastIndexOf(newline) + 1;
    const texts = decoder.decode(bytes.subarray(0, end)).split("\n").slice(0, -1);
    for (const text of texts) {
      const line = readLedgerLine(text);
      const number = this.lines.length + 1;
      if (line === undefined) return { wrong: `line ${number} is no line of a ledger` };
      if (line.number !== number) return { wrong: `line ${number} has the number ${line.number}` };
      if (line.previous !== this.head) return { wrong: `line ${number} does not hold the hash of the line before it` };
      this.#take(line, text);
    }
    return { torn: bytes.length - end };
  }

  /** The line by which a revision of a calibration was filed, unless its page was withdrawn. */
  filed(identity: Identity): FiledLine | undefined {
    return this.#filed.get(keyOf(identity));
  }

  /** Another tag of the folder that a person takes for this one; nothing where pages of this very tag are filed. */
  tagLike(tag: string): string | undefined {
    const tags = new Set([...this.#filed.values()].map((line) => line.tag));
    if (tags.has(tag)) return undefined;
    const look = lookOfName(tag);
    return [...tags].find((other) => lookOfName(other) === look);
  }

  #putBack(restored: RestoredLine): void {
    const line = this.lines.find((one) => one.action === "filed" && one.path === restored.path);
    if (line?.action === "filed") this.#filed.set(keyOf(line), line);
  }

  #take(line: LedgerLine, text: string): void {
    this.lines.push(line);
    this.head = lineHash(text);
    this.length += new TextEncoder().encode(text).length + 1;
    if (line.action === "filed") this.#filed.set(keyOf(line), line);
    if (line.action === "withdrawn") this.#filed.delete(keyOf(line));
    if (line.action === "restored") this.#putBack(line);
  }
}

const newline = 0x0a;
/** Every byte counts, those of a byte order mark too. */
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
