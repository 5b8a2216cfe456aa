import canonicalize from "canonicalize";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalText } from "../../src/proof/canonical-text.ts";
import { howMany } from "../how-many.ts";

test("the example of the docblock", () => {
  expect(canonicalText({ b: 1e21, a: "é" })).toBe('{"a":"é","b":1e+21}');
});

// RFC 8785, 3.2.2 and 3.2.3: https://www.rfc-editor.org/rfc/rfc8785
test("the sample object of RFC 8785", () => {
  const sample: unknown = JSON.parse(
    '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
      String.raw`"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
  );
  expect(canonicalText(sample)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test("a key whose value is undefined is left out, and the order of keys does not count", () => {
  expect(canonicalText({ b: 1, c: undefined, a: 2 })).toBe('{"a":2,"b":1}');
  expect(canonicalText({ a: 2, b: 1 })).toBe('{"a":2,"b":1}');
});

test("keys that hold a line end are not taken for others that were met before", () => {
  const sets = [["a", "b"], ["a\nb"], ["a\nb", "c"], ["a", "b\nc"], [""], [], ["a", "b", "c"]];
  for (const keys of [...sets, ...sets.toReversed()]) {
    const object = Object.fromEntries(keys.map((key) => [key, 1]));
    expect(canonicalText(object)).toBe(canonicalize(object));
  }
});

test.each([[Number.NaN], [Number.POSITIVE_INFINITY], ["\ud800"], [undefined], [{ a: [Number.NaN] }]])(
  "%j is no JSON",
  (value) => {
    expect(() => canonicalText(value)).toThrow(TypeError);
  },
);

// By another hand: the npm package canonicalize, of S. Erdtman and A. Rundgren, an author of RFC 8785.
test("any plain data gives the text that another program gives", () => {
  const text = fc.string({ unit: "binary" });
  const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer(), fc.constant(-0));
  const { data } = fc.letrec<{ data: unknown }>((tie) => ({
    data: fc.oneof(
      { maxDepth: 4 },
      ...[text, number, fc.boolean(), fc.constant(null)],
      fc.array(tie("data")),
      fc.dictionary(text, tie("data")),
    ),
  }));
  fc.assert(
    fc.property(data, (value) => {
      expect(canonicalText(value)).toBe(canonicalize(value));
    }),
    { numRuns: howMany(300, 1000) },
  );
});

test.each([
  ["\\ud800", '"\\\\ud800"'],
  ["\\\\udfff \u{1f600}", '"\\\\\\\\udfff \u{1f600}"'],
])("a text %s that only looks like an escape is a text", (value, written) => {
  expect(canonicalText(value)).toBe(written);
});

test.each([["\\\ud800"], ["\\\\\udfff"], ["a\udbff"], [{ "\udc00": 1 }]])("half of a pair in %j is told", (value) => {
  expect(() => canonicalText(value)).toThrow("a lone surrogate");
});
