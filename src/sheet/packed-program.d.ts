/** A program that runs in a page: bundled, packed by gzip as base64, with the hash by which the page pins it. */
declare module "*?packed" {
  export const packed: string;
  export const sha256: string;
}
