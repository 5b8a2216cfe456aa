import { expect, test } from "vitest";
import { type RandomStream, randomStream } from "../../src/numeric/random-stream.ts";

const seed = Object.freeze([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16]);
const manyBytes = Uint8Array.from({ length: 32 }, (_, index) => (index * 151 + 77) % 256);

// xoroshiro128+ written anew with whole numbers of 64 bits, from the description of Blackman and Vigna (2018 rotations).
type State = readonly [bigint, bigint];
const MASK = (1n << 64n) - 1n;
const rotated = (word: bigint, by: bigint) => ((word << by) | (word >> (64n - by))) & MASK;
function stepped([first, second]: State): State {
  const mixed = first ^ second;
  return [rotated(first, 24n) ^ mixed ^ ((mixed << 16n) & MASK), rotated(mixed, 37n)];
}

/** The stream's numbers, from the state: 27 upper bits of the low half of one sum, 26 of the next. */
function numbersFrom(start: State, count: number): readonly number[] {
  let state = start;
  const bits = (kept: number) => {
    const low = Number((state[0] + state[1]) & 0xffffffffn);
    state = stepped(state);
    return Math.floor(low / 2 ** (32 - kept));
  };
  return Array.from({ length: count }, () => (bits(27) * 2 ** 26 + bits(26)) / 2 ** 53);
}

// pure-rand keeps [upper half, lower half] of the first word, then of the second; bytes are taken lowest first.
function stateOf(bytes: readonly number[]): State {
  const half = (at: number) =>
    bytes.slice(at, at + 4).reduce((total, byte, index) => total | (BigInt(byte) << BigInt(8 * index)), 0n);
  return [(half(0) << 32n) | half(4), (half(8) << 32n) | half(12)];
}

/** 2⁶⁴ steps: the step is linear over bits, so its matrix is squared 64 times. A row is where one bit of the state goes. */
function jumped(state: State): State {
  const split = (whole: bigint): State => [whole & MASK, whole >> 64n];
  const joined = ([first, second]: State) => first | (second << 64n);
  const applied = (matrix: readonly bigint[], whole: bigint) =>
    matrix.reduce((sum, image, bit) => ((whole >> BigInt(bit)) & 1n ? sum ^ image : sum), 0n);
  let matrix: readonly bigint[] = Array.from({ length: 128 }, (_, bit) => joined(stepped(split(1n << BigInt(bit)))));
  for (let doubling = 0; doubling < 64; doubling++) {
    const once = matrix;
    matrix = once.map((image) => applied(once, image));
  }
  return split(applied(matrix, joined(state)));
}

const taken = (stream: RandomStream, count: number) => Array.from({ length: count }, () => stream.uniform());

test("the first numbers of a seed never change", () => {
  expect(taken(randomStream(seed, 0), 3)).toEqual([0.09408688609312854, 0.08276004254147962, 0.5329255099131143]);
  expect(taken(randomStream(seed, 1), 3)).toEqual([0.2685165585324055, 0.6815495602963308, 0.6110570618880639]);
});

test("the numbers are those of xoroshiro128+ written anew", () => {
  expect(taken(randomStream(seed, 0), 1000)).toEqual(numbersFrom(stateOf(seed), 1000));
});

test("stream 1 begins 2⁶⁴ steps after stream 0, and stream 2 as many after that, so they never overlap", () => {
  const first = jumped(stateOf(seed));
  expect(taken(randomStream(seed, 1), 100)).toEqual(numbersFrom(first, 100));
  expect(taken(randomStream(seed, 2), 100)).toEqual(numbersFrom(jumped(first), 100));
});

test("every byte of a longer seed counts", () => {
  const numbers = taken(randomStream(manyBytes, 0), 2);
  for (const index of manyBytes.keys()) {
    const changed = manyBytes.map((byte, at) => (at === index ? byte ^ 1 : byte));
    expect(taken(randomStream(changed, 0), 2), `byte ${index}`).not.toEqual(numbers);
  }
});

test("numbers lie strictly between 0 and 1 and fill it evenly", () => {
  const stream = randomStream(manyBytes, 0);
  const counts = new Array<number>(100).fill(0);
  for (let draw = 0; draw < 1e6; draw++) {
    const number = stream.uniform();
    if (!(number > 0 && number < 1)) throw new Error(`${number}`);
    counts[Math.floor(number * 100)]! += 1;
  }
  // Chi-squared of 99 degrees of freedom; 99.9 % of all seeds stay under 148.2 (R, qchisq(0.999, 99)).
  const misfit = counts.reduce((total, count) => total + (count - 1e4) ** 2 / 1e4, 0);
  expect(misfit).toBeLessThan(148.2);
  expect(misfit).toBeGreaterThan(50);
});

test("seeds that are short, empty of bits, or no bytes, and streams that are no count, are refused", () => {
  expect(() => randomStream(seed.slice(1), 0)).toThrow("a seed of 15 bytes");
  expect(() => randomStream(new Uint8Array(16), 0)).toThrow("cancel to 0");
  expect(() => randomStream([...seed, ...seed], 0)).toThrow("cancel to 0");
  for (const byte of [256, -1, 0.5, Number.NaN]) expect(() => randomStream([...seed, byte], 0)).toThrow(RangeError);
  for (const stream of [-1, 0.5, Number.NaN]) expect(() => randomStream(seed, stream)).toThrow(RangeError);
});
