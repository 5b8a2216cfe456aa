import { sha256 } from "@noble/hashes/sha2.js";

/**
 * What the program needs of Node's module of that name, in the place of which `packed-program.mjs` puts it: the same
 * digests, so that what is drawn by chance is drawn alike.
 */
export function createHash(_name: "sha256") {
  const hash = sha256.create();
  return {
    update(bytes: Uint8Array) {
      hash.update(bytes);
      return this;
    },
    digest: (): Uint8Array => hash.digest(),
  };
}
