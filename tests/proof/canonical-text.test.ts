import { expect, test } from "vitest";
import { canonicalText } from "../../src/proof/canonical-text.ts";

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

test.each([[Number.NaN], [Number.POSITIVE_INFINITY], ["\ud800"], [undefined], [{ a: [Number.NaN] }]])(
  "%j is no JSON",
  (value) => {
    expect(() => canonicalText(value)).toThrow(TypeError);
  },
);
