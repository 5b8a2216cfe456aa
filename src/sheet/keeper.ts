import { type KeptSheet, type SheetStore, WrittenElsewhere } from "./kept-sheet.ts";
import type { Entries } from "./state/entries.ts";

/** How keeping stands, in words for whoever types; `isSafe` where everything is on the disk. */
export type Keeping = { isSafe: boolean; says: string };

export type KeeperSettings = {
  store: SheetStore;
  /** What is the same for every write. */
  sheet: Omit<KeptSheet, "at" | "entries">;
  now: () => string;
  tell: (keeping: Keeping) => void;
};

/** Keeps what is typed: one write at a time, always of what stands there last, and nothing where another page writes. */
export class Keeper {
  readonly #settings: KeeperSettings;
  #waiting: Entries | undefined;
  #unkept: Entries | undefined;
  #isWriting = false;
  #isStopped = false;
  #isSafe = true;

  constructor(settings: KeeperSettings) {
    this.#settings = settings;
  }

  /** Keeps the entries as soon as the write before is done, and what a key did is shown before that. */
  keep(entries: Entries): void {
    this.#waiting = entries;
    this.#unkept = entries;
    if (this.#isWriting || this.#isStopped) return;
    this.#isWriting = true;
    this.#settings.tell(beingKept);
    setTimeout(() => void this.#writeAll(false), 0);
  }

  /** What is not on the disk yet, of a page that may write. */
  get unkept(): Entries | undefined {
    return this.#isStopped ? undefined : this.#unkept;
  }

  /** From now on this page is the one that writes. */
  async takeOver(entries: Entries): Promise<void> {
    this.#isStopped = false;
    this.#waiting = entries;
    await this.#writeAll(true);
  }

  /** Asks who writes; to be called every few seconds. */
  async look(): Promise<void> {
    const { store, sheet, now, tell } = this.#settings;
    const { isWriter, alsoOpen } = await store.look(sheet, now());
    if (this.#isWriting) return;
    if (!isWriter) {
      this.#isStopped = true;
      tell(elsewhere);
    } else if (!this.#isSafe) return;
    else if (alsoOpen !== undefined && secondsBetween(alsoOpen, now()) < secondsSeen) tell(alsoThere);
    else tell(kept);
  }

  async #writeAll(isTakenOver: boolean): Promise<void> {
    const { store, sheet, now, tell } = this.#settings;
    this.#isWriting = true;
    try {
      while (this.#waiting !== undefined) {
        const entries = this.#waiting;
        this.#waiting = undefined;
        await store.write({ ...sheet, at: now(), entries }, isTakenOver);
      }
      this.#isSafe = true;
      this.#unkept = undefined;
      tell(kept);
    } catch (error) {
      this.#isSafe = false;
      this.#isStopped = error instanceof WrittenElsewhere;
      tell(this.#isStopped ? elsewhere : notKept(error));
    } finally {
      this.#isWriting = false;
    }
  }
}

/** How long ago another page may have been seen to count as open. */
const secondsSeen = 6;

const elsewhere: Keeping = {
  isSafe: false,
  says: "This sheet is open in another tab or window, which keeps what is typed. Nothing typed here is kept.",
};

const beingKept: Keeping = { isSafe: true, says: "Being kept …" };

const alsoThere: Keeping = {
  isSafe: true,
  says: "Kept on this device. The sheet is open in another tab or window too, where nothing typed is kept.",
};

const kept: Keeping = { isSafe: true, says: "Kept on this device." };

function notKept(error: unknown): Keeping {
  const why = error instanceof Error && error.message !== "" ? error.message : "the browser refused";
  return { isSafe: false, says: `Not kept: ${why}. Hand back what was typed before this page is closed.` };
}

function secondsBetween(earlier: string, later: string): number {
  return (Date.parse(later) - Date.parse(earlier)) / 1000;
}
