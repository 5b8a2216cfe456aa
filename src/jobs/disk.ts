import type { SourceFile } from "../workbook/files/raw-table.ts";

/** A file to be written, by its path: text, or the bytes of a spreadsheet. */
export type NewFile = { path: string; text: string | Uint8Array };

/** A file to be written of which no more than a part is held at once. */
export type PartedFile = { path: string; parts: () => AsyncIterable<Uint8Array> | Iterable<string | Uint8Array> };

/** A file that was read, and where it lies. */
export type FoundFile = SourceFile & { path: string };

/** The file that a lone table from the standard input is said to be. */
export const standardInput = "standard input";

/** The disk refused: no such right, no room, or something else stands in the way. */
export class CannotWrite extends Error {}

/** Everything that a job does to the disk; the command line gives the real one, a test gives its own. */
export type Disk = {
  /**
   * The files of a folder whose names are wanted (all of them if not said), or the one file; nothing where there is none.
   * A name is the last part of the path, so that it is the same from whichever folder and by whichever way it is reached.
   */
  read: (
    path: string,
    isWanted?: (name: string) => boolean,
  ) => Promise<{ isFolder: boolean; files: readonly FoundFile[] } | undefined>;
  /** Names in a folder; nothing where there is no such folder. */
  namesIn: (folder: string) => Promise<readonly string[] | undefined>;
  /** Writes all of the files, or none of them and throws CannotWrite; each is whole at every moment. */
  writeTogether: (files: readonly NewFile[]) => Promise<void>;
};

/** What `writeTogether` does, for files that are given in parts. */
export type PartedDisk = {
  /** Writes all of the files, or none of them and throws CannotWrite; what the making of a part throws goes on. */
  streamTogether: (files: readonly PartedFile[]) => Promise<void>;
};
