import { expect, test } from "vitest";
import { type PackedPart, packedParts, unpackedPart } from "../../../src/workbook/files/packed-parts.ts";
import { zipOf, zipOfParts } from "../zip-of.ts";

const text = (bytes: Uint8Array | string | undefined) => bytes instanceof Uint8Array && new TextDecoder().decode(bytes);

test("parts have their names and their bytes, packed or not", () => {
  const stored = zipOfParts({ mimetype: "a", "content.xml": "<b/>" });
  expect(packedParts(stored)?.map(({ name }) => name)).toEqual(["mimetype", "content.xml"]);
  expect(packedParts(stored)?.map((part) => text(unpackedPart(stored, part)))).toEqual(["a", "<b/>"]);
  const packed = zipOf("x", new TextEncoder().encode("hello ".repeat(9)));
  expect(text(unpackedPart(packed, packedParts(packed)?.[0] as PackedPart))).toBe("hello ".repeat(9));
});

test("what is no packed file has no parts; a part that is more than stated, or broken, has no bytes", () => {
  expect(packedParts(new Uint8Array(100))).toBeUndefined();
  const lying = zipOf("x", new Uint8Array(5000), 10);
  const [part] = packedParts(lying) as [PackedPart];
  expect(unpackedPart(lying, part)).toBe("more");
  expect(unpackedPart(lying.subarray(0, 30), part)).toBeUndefined();
  expect(unpackedPart(lying, { ...part, at: 2 ** 31 })).toBeUndefined();
});
