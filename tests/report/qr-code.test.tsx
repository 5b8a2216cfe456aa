import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { QrCode } from "../../src/report/qr-code.tsx";

const text = "C-2026-015, revision 1, puffin wolf melon curtain · bffa 9941 1f65 3c1a";
const svg = renderToString(<QrCode text={text} label="record" />);

/** The modules of the drawing, read back from its path. */
function modulesOf(drawn: string): readonly (readonly boolean[])[] {
  const size = Number(/viewBox="0 0 (\d+)/u.exec(drawn)?.[1]);
  const modules = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [, x, y, length] of drawn.matchAll(/M(\d+) (\d+)h(\d+)v1/gu)) {
    for (let place = Number(x); place < Number(x) + Number(length); place += 1) modules[Number(y)]![place] = true;
  }
  return modules;
}

test("the code has a finder in three corners and four modules of white around it (ISO/IEC 18004, 5.3.2 and 5.3.8)", () => {
  const modules = modulesOf(svg);
  const side = modules.length - 8;
  expect((side - 17) % 4, "version v has 17 + 4v modules").toBe(0);
  const finder = ["1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111"];
  for (const [left, top] of [
    [4, 4],
    [4 + side - 7, 4],
    [4, 4 + side - 7],
  ] as const) {
    const found = finder.map((_, y) => finder.map((__, x) => (modules[top + y]?.[left + x] ? "1" : "0")).join(""));
    expect(found).toEqual(finder);
  }
  const isWhite = (row: readonly boolean[] | undefined) => row?.every((one) => !one);
  for (let edge = 0; edge < 4; edge += 1) {
    expect(isWhite(modules[edge])).toBe(true);
    expect(isWhite(modules.at(-1 - edge))).toBe(true);
  }
});

test("it is named for whoever hears it, and another text is another code", () => {
  expect(svg).toContain('role="img" aria-label="record"');
  expect(renderToString(<QrCode text={`${text}.`} label="record" />)).not.toBe(svg);
});
