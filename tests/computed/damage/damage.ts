import type { Draw } from "../../properties/spoiled/draw.ts";

/** Bytes that were damaged, and how. */
export type Damaged = { bytes: Uint8Array; how: string };

type Way = (bytes: Uint8Array, draw: Draw) => Uint8Array;

const hostile = ["<script>", "\u0000", '"', "=1+1", "1e999", "-", "{", "]", ",,,,", "\n", "\ufeff", "../", "__proto__"];

/** What disks, transfers, editors and people with a plan do to a file. */
const ways: Readonly<Record<string, Way>> = {
  "a byte exchanged": (bytes, draw) => {
    const other = bytes.slice();
    const place = draw.whole(bytes.length);
    other[place] = (bytes[place] ?? 0) ^ (1 + draw.whole(255));
    return other;
  },
  "a part cut out": (bytes, draw) => {
    const [from, to] = partOf(bytes, draw);
    return joined(bytes.subarray(0, from), bytes.subarray(to));
  },
  "the end cut off": (bytes, draw) => bytes.slice(0, draw.whole(bytes.length)),
  "a part twice": (bytes, draw) => {
    const [from, to] = partOf(bytes, draw);
    return joined(bytes.subarray(0, to), bytes.subarray(from));
  },
  "zeros in place of a part": (bytes, draw) => bytes.slice().fill(0, ...partOf(bytes, draw)),
  "another text put in": (bytes, draw) => {
    const place = draw.whole(bytes.length);
    return joined(bytes.subarray(0, place), new TextEncoder().encode(draw.pick(hostile)), bytes.subarray(place));
  },
  "a digit exchanged": (bytes, draw) => {
    const digits = [...bytes.keys()].filter((place) => isDigit(bytes[place]));
    const other = bytes.slice();
    const place = draw.pick(digits.length === 0 ? [0] : digits);
    other[place] = 0x30 + (((bytes[place] ?? 0x30) - 0x30 + 1 + draw.whole(9)) % 10);
    return other;
  },
  "two lines exchanged": (bytes, draw) => {
    const lines = new TextDecoder("latin1").decode(bytes).split("\n");
    const [one, other] = [draw.whole(lines.length), draw.whole(lines.length)];
    [lines[one], lines[other]] = [lines[other] ?? "", lines[one] ?? ""];
    return Uint8Array.from(lines.join("\n"), (character) => character.charCodeAt(0));
  },
};

/** Damages bytes in one way of many; now and then they come out as they were. */
export function damaged(bytes: Uint8Array, draw: Draw): Damaged {
  const how = draw.pick(Object.keys(ways));
  return { bytes: ways[how]?.(bytes, draw) ?? bytes, how };
}

function partOf(bytes: Uint8Array, draw: Draw): [number, number] {
  const from = draw.whole(bytes.length);
  return [from, Math.min(bytes.length, from + 1 + draw.whole(draw.pick([4, 64, 4096])))];
}

function isDigit(byte: number | undefined): boolean {
  return byte !== undefined && byte >= 0x30 && byte <= 0x39;
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(parts));
}
