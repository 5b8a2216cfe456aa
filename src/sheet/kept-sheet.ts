import { type Entries, noEntries } from "./state/entries.ts";

/** What a browser keeps of a sheet, as it lies in its database. */
export type KeptSheet = {
  form: 1;
  calibration: string;
  sheet: string;
  /** Four digits that tell one device from another: two people may open copies of one file. */
  device: string;
  program: string;
  /** The open page that wrote last. */
  writer: string;
  at: string;
  /** When another page of the same sheet, which may write no more, was last seen open. */
  alsoOpen?: string;
  entries: Entries;
};

/**
 * What an earlier or a later program kept, as far as this one understands it: what is missing is empty.
 *
 * @param kept anything that lay in the database
 * @returns the entries; none where it is no sheet
 * Source: own choice: a sheet of another program version reads what an older one kept.
 */
export function entriesOf(kept: unknown): Entries {
  const { entries } = (kept ?? {}) as { entries?: Partial<Entries> };
  if (typeof entries !== "object" || entries === null) return noEntries;
  return { ...noEntries, ...entries };
}

/** Number of the sheet with that of the device: it goes with every row that was typed. */
export function typedIn({ sheet, device }: Pick<KeptSheet, "sheet" | "device">): string {
  return `${sheet}-${device}`;
}

const databaseName = "spanwright-sheets";
const storeName = "sheets";

/** Why nothing can be kept, in words for the person who types. */
export class CannotKeep extends Error {}

/** Another page of the same sheet wrote since this one read: whatever this one writes would undo that. */
export class WrittenElsewhere extends Error {}

/** The browser's own store of sheets; every write is on the disk before it is said to be done. */
export class SheetStore {
  readonly #database: IDBDatabase;

  private constructor(database: IDBDatabase) {
    this.#database = database;
  }

  static async open(factory: IDBFactory): Promise<SheetStore> {
    const request = factory.open(databaseName, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(storeName, { keyPath: ["calibration", "sheet"] });
    };
    return new SheetStore(await resultOf(request));
  }

  /** Everything that was kept of a calibration: by this sheet, and by others that were made for it. */
  async read(calibration: string): Promise<readonly KeptSheet[]> {
    const store = this.#database.transaction(storeName).objectStore(storeName);
    const range = IDBKeyRange.bound([calibration], [calibration, []]);
    return resultOf(store.getAll(range)) as Promise<KeptSheet[]>;
  }

  /**
   * Keeps a sheet, where nobody else wrote since; a page that takes over says so.
   *
   * @throws WrittenElsewhere, CannotKeep
   */
  async write(sheet: KeptSheet, isTakenOver = false): Promise<void> {
    const transaction = this.#database.transaction(storeName, "readwrite", { durability: "strict" });
    const store = transaction.objectStore(storeName);
    let isElsewhere = false;
    const before = store.get([sheet.calibration, sheet.sheet]);
    before.onsuccess = () => {
      const there = before.result as KeptSheet | undefined;
      isElsewhere = there !== undefined && there.writer !== sheet.writer && !isTakenOver;
      if (!isElsewhere) store.put(sheet);
    };
    await ended(transaction);
    if (isElsewhere) throw new WrittenElsewhere();
  }

  /**
   * Looks who wrote last. A page that is not that one leaves word that it is open, so that both can say it.
   *
   * @returns whether this page is the one that writes, and when another was seen
   */
  async look(
    { calibration, sheet, writer }: Pick<KeptSheet, "calibration" | "sheet" | "writer">,
    now: string,
  ): Promise<{ isWriter: boolean; alsoOpen: string | undefined }> {
    const transaction = this.#database.transaction(storeName, "readwrite");
    const store = transaction.objectStore(storeName);
    const request = store.get([calibration, sheet]);
    let found: KeptSheet | undefined;
    request.onsuccess = () => {
      found = request.result as KeptSheet | undefined;
      if (found !== undefined && found.writer !== writer) store.put({ ...found, alsoOpen: now });
    };
    await ended(transaction);
    return { isWriter: found === undefined || found.writer === writer, alsoOpen: found?.alsoOpen };
  }
}

function resultOf<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(new CannotKeep(reasonOf(request.error)));
  });
}

function ended(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(new CannotKeep(reasonOf(transaction.error)));
    transaction.onerror = () => reject(new CannotKeep(reasonOf(transaction.error)));
  });
}

function reasonOf(error: DOMException | null): string {
  if (error?.name === "QuotaExceededError") return "this device has no room left";
  return error?.message ?? "the browser refused";
}
