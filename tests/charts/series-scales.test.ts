import { expect, test } from "vitest";
import { colorChannel, dashChannel, fillChannel, type Series, shapeChannel } from "../../src/charts/series-scales.ts";

const rangeOf = (channel: { scale: { domain: readonly string[]; range: readonly unknown[] } }, name: string) =>
  channel.scale.range[channel.scale.domain.indexOf(name)];

test.each<[Series, Series]>([
  ["asFound", "asLeft"],
  ["sensor", "controller"],
])("%s and %s differ in colour, filling and dash, so that no colour is needed", (one, other) => {
  for (const channel of [colorChannel, fillChannel, dashChannel]) {
    expect(rangeOf(channel, one)).toBeDefined();
    expect(rangeOf(channel, other)).toBeDefined();
    expect(rangeOf(channel, one)).not.toEqual(rangeOf(channel, other));
  }
});

test("rising points up, falling points down, stages have shapes of their own, a trip points where the target goes", () => {
  expect(shapeChannel.scale.domain.map((name) => rangeOf(shapeChannel, name))).toEqual([
    "triangle-up",
    "triangle-down",
    "circle",
    "diamond",
    "triangle-left",
    "triangle-right",
  ]);
});
