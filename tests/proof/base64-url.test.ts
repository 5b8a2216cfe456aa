import fc from "fast-check";
import { expect, test } from "vitest";
import { fromBase64Url, toBase64Url } from "../../src/proof/base64-url.ts";

// RFC 4648, 10: the test vectors of base64, which base64url shares where neither + nor / occurs, without padding.
test.each([
  ["", ""],
  ["f", "Zg"],
  ["fo", "Zm8"],
  ["foo", "Zm9v"],
  ["foob", "Zm9vYg"],
  ["fooba", "Zm9vYmE"],
  ["foobar", "Zm9vYmFy"],
])("%j is %j", (text, encoded) => {
  const bytes = new TextEncoder().encode(text);
  expect(toBase64Url(bytes)).toBe(encoded);
  expect(fromBase64Url(encoded)).toEqual(bytes);
});

test("the two letters of its own stand for 62 and 63", () => {
  expect(toBase64Url(new Uint8Array([251, 255]))).toBe("-_8");
  expect(fromBase64Url("-_8")).toEqual(new Uint8Array([251, 255]));
});

test.each(["-_9", "+/8", "Zg==", "Z", "Zm 9v", "Zm9v\n", "Zm9vYh", "é"])(
  "%j is not the one form of any bytes",
  (text) => {
    expect(fromBase64Url(text)).toBeUndefined();
  },
);

test("whatever bytes there are come back, and no other text gives them", () => {
  const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  fc.assert(
    fc.property(
      fc.uint8Array({ minLength: 1, maxLength: 70 }),
      fc.nat(),
      fc.constantFrom(...letters),
      (bytes, at, letter) => {
        const text = toBase64Url(bytes);
        expect(fromBase64Url(text)).toEqual(new Uint8Array(bytes));
        const index = at % text.length;
        const other = text.slice(0, index) + letter + text.slice(index + 1);
        if (other !== text) expect(fromBase64Url(other)).not.toEqual(new Uint8Array(bytes));
      },
    ),
    { numRuns: 500, seed: 20261125 },
  );
});
