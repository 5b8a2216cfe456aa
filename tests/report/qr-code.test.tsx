import { renderToString } from "preact-render-to-string";
import decodeQr from "qr/decode.js";
import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { QrCode } from "../../src/report/qr-code.tsx";
import { sampleRecord } from "../charts/sample-record.ts";

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

/** What a camera sees of a drawing: so many pixels a module, dark ones a little grey and a little grain. */
function photographed(drawn: string, pixels: number) {
  const modules = modulesOf(drawn);
  const side = modules.length * pixels;
  const data = new Uint8Array(4 * side * side).fill(255);
  for (let place = 0; place < side * side; place += 1) {
    const isDark = modules[Math.floor(place / side / pixels)]?.[Math.floor((place % side) / pixels)];
    data.fill((isDark ? 40 : 225) + ((place * 7919) % 23), 4 * place, 4 * place + 3);
  }
  return { width: side, height: side, data };
}

/** Read by a decoder that has nothing in common with the encoder: the package qr. */
test("a reader of its own gives back the text, to the letter, in Latin, Greek and Arabic", () => {
  for (const one of [text, "Q1 ± 0,5 %", "Ελλάδα, revision 12", "خزان-1, revision 1", "x".repeat(200)]) {
    const drawn = renderToString(<QrCode text={one} label="record" />);
    for (const pixels of [3, 8]) expect(decodeQr(photographed(drawn, pixels))).toBe(one);
  }
});

test("what a label carries is its record, revision and fingerprint", () => {
  const record = sealRecord({ ...sampleRecord({ points: 3, cycles: 1 }), revision: 2 });
  const page = renderLabels([record], { isSheet: true, skipped: 0 });
  const drawn = /<svg class="qr".*?<\/svg>/su.exec(page)?.[0] ?? "";
  expect(decodeQr(photographed(drawn, 4))).toBe(
    `${record.calibration.calibration}, revision 2, ${record.seal.fingerprint}`,
  );
});

test("a code in which a tenth of the modules is covered is still read (ISO/IEC 18004, level M: 15 % of the words)", () => {
  const seen = photographed(svg, 4);
  for (let y = 60; y < 84; y += 1) seen.data.fill(225, 4 * (y * seen.width + 60), 4 * (y * seen.width + 84));
  expect(decodeQr(seen)).toBe(text);
});
