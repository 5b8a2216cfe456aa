/** A line a file below a folder, in the order of its path: SHA-256, two blanks, path, as sha256sum writes it. */
export function digestsOf(folder: string): string;
