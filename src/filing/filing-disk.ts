/** Everything that filing does to the world; the command line gives the real one. Paths have / between their parts. */
export type FilingDisk = {
  /** The bytes of a file; nothing where there is none. */
  read: (path: string) => Promise<Uint8Array | undefined>;
  /** The bytes of a file from one of them on; a file that is not there has none. Nothing where it is shorter than that. */
  readFrom: (path: string, start: number) => Promise<Uint8Array | undefined>;
  /** When a file was last changed, put there or given other rights, in milliseconds; nothing where there is none. */
  changedAt: (path: string) => Promise<number | undefined>;
  /** Names of what lies in a folder; nothing where there is none. */
  namesIn: (folder: string) => Promise<readonly string[] | undefined>;
  /**
   * Paths of everything below a folder that is no folder, from there on, in order; nothing where there is no folder. A
   * folder below it that cannot be read is a fault of the disk; told of, where there is somebody to tell, and passed over.
   */
  filesBelow: (folder: string, tell?: (unread: Unread) => void) => Promise<readonly string[] | undefined>;
  /** Of those, the ones that are no files of their own: links, pipes, devices; none in a folder that cannot be read. */
  notFilesBelow: (folder: string) => Promise<readonly string[]>;
  /** Makes a file in one step, whole; false where something is there already. Its folders are made too. */
  createOnce: (path: string, content: Uint8Array | string, keeping: Keeping) => Promise<boolean>;
  /** Adds text to the end of a file, which is made where there is none. */
  append: (path: string, text: string, keeping: Keeping) => Promise<void>;
  /** Cuts a file off after so many bytes, durably. */
  cut: (path: string, length: number) => Promise<void>;
  /** Puts a whole file in the place of an older one. */
  replace: (path: string, text: string) => Promise<void>;
  remove: (path: string) => Promise<void>;
  /** Removes what `createOnce` and `replace` left unfinished in a folder, of at least that age. */
  sweep: (folder: string, ageMilliseconds: number) => Promise<void>;
  /** Date and time of day with offset, to the millisecond. */
  now: () => string;
  elapsedMilliseconds: () => number;
  /** Waits a short while, never the same. */
  pause: () => Promise<void>;
  /** Text that no other process, and this one never again, is given. */
  unique: () => string;
  host: string;
  process: number;
  isRunning: (process: number) => boolean;
  /** Called once for each time that somebody else keeps the folder for longer than a moment. */
  tellWaiting: (holder: string) => void;
};

/** A folder that cannot be read: its path from the one on that was asked for, and why. */
export type Unread = { path: string; why: string };

/** Whether a file has to outlast a power cut (`durable`), or may be made again from others. */
export type Keeping = "durable" | "derived";
