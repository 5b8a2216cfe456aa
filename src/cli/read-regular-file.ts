import { constants, open } from "node:fs/promises";

/** More than any table or record of ours has; as text it still fits into one string. */
const mostBytes = 256 * 2 ** 20;

/** The disk has something there that cannot be read as a file; told as every other fault of the disk. */
class Unreadable extends Error {
  readonly code = "EINVAL";
  readonly syscall = "read";
}

/**
 * The bytes of a file, through a link too. A pipe, on which one would wait for ever, a device, which never ends, and a
 * file larger than any of ours are faults of the disk.
 */
export async function readRegularFile(path: string): Promise<Uint8Array> {
  const file = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const found = await file.stat();
    if (!found.isFile() && !found.isDirectory()) throw new Unreadable(`${path} is a pipe or a device, and no file`);
    if (found.size > mostBytes) throw new Unreadable(`${path} is larger than 256 MB`);
    return await file.readFile();
  } finally {
    await file.close();
  }
}
