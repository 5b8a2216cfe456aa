import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** A reproducible run of uniform numbers; each call gives the next one. */
export type RandomStream = {
  /** The next number, strictly between 0 and 1, on a grid of 2⁻⁵³. */
  readonly uniform: () => number;
};

const SEED_BYTES = 16;
const WORDS = 4;

/**
 * Gives a reproducible stream of uniform random numbers; streams of one seed never overlap.
 *
 * Stream k starts k·2⁶⁴ steps after stream 0, and a number takes two steps, so streams stay apart for 2⁶³ numbers.
 *
 * @param seed array of n >= 16 bytes, whole numbers 0 to 255, not all of them cancelling to 0. Let it be a digest: bytes
 * that are nearly all 0 give first numbers that are far from random. Byte k is combined with byte k mod 16 by exclusive or
 * @param stream which stream, a whole number >= 0; starting it takes about 2 µs for each stream before it
 * @returns the stream, with 53 random bits a number
 * Faults: `RangeError` for fewer than 16 bytes, what is no byte, a seed that cancels to 0, or a stream that is no count.
 * Source: xoroshiro128+ 2018 (rotations 24, 16, 37), D. Blackman and S. Vigna, ACM Trans. Math. Softw. 47, 36 (2021);
 * computed by pure-rand 8.4.2. Folding of the seed: own choice, so that every byte of a digest counts.
 * @example randomStream([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16], 0).uniform() // 0.09408688609312854
 */
export function randomStream(seed: Uint8Array | readonly number[], stream: number): RandomStream {
  if (!Number.isSafeInteger(stream) || stream < 0) throw new RangeError(`stream ${stream} is not a whole number >= 0`);
  const generator = xoroshiro128plusFromState(stateOf(seed));
  for (let jumps = 0; jumps < stream; jumps++) generator.jump();
  return { uniform: () => uniformOf(generator) };
}

function stateOf(seed: Uint8Array | readonly number[]): readonly number[] {
  if (seed.length < SEED_BYTES) throw new RangeError(`a seed of ${seed.length} bytes, at least 16 are needed`);
  const state = new Int32Array(WORDS);
  for (const [index, byte] of seed.entries()) {
    if (!Number.isInteger(byte) || byte < 0 || byte > 255) throw new RangeError(`seed: ${byte} is not a byte`);
    state[(index >> 2) % WORDS]! ^= byte << (8 * (index % 4));
  }
  if (state.every((word) => word === 0)) throw new RangeError("the bytes of the seed cancel to 0");
  return [...state];
}

// The lower bits of this generator are its weakest, so 27 and 26 of 32 are kept.
function uniformOf(generator: { next: () => number }): number {
  let value = 0;
  while (value === 0) value = ((generator.next() >>> 5) * 2 ** 26 + (generator.next() >>> 6)) / 2 ** 53;
  return value;
}
