import { createHash } from "node:crypto";

const longestName = 60;
/** Names that Windows keeps for devices, with or without an ending. */
const reservedName = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/iu;

/**
 * A tag or a number as the name of a file or folder: never a path, never hidden, never reserved, never empty.
 *
 * @param text as typed
 * @returns the text itself where it is safe already; otherwise its letters, digits, points, hyphens and underscores,
 *   at most 60, and eight hexadecimal digits of the text's SHA-256, so that two texts share a name only where somebody
 *   typed the digits of another, or where the file system does not tell upper from lower case
 * Source: own choice.
 * @example safeFileName("../../x") // "x-9cdf6a50"
 */
export function safeFileName(text: string): string {
  const plain = text
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .replace(/[^A-Za-z0-9._-]+/gu, "-")
    .replace(/^[.-]+/u, "")
    .slice(0, longestName)
    .replace(/[.-]+$/u, "");
  const isName = plain !== "" && !reservedName.test(plain);
  if (isName && plain === text) return text;
  const digest = createHash("sha256").update(text).digest("hex").slice(0, 8);
  return isName ? `${plain}-${digest}` : `x-${digest}`;
}
