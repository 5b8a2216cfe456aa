// Writes the register of many invented loops, page and parts; bundled by large-register.mjs.
import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fingerprintOf } from "../../src/proof/fingerprint-words.ts";
import type { RegisterRow } from "../../src/record/register-form.ts";
import { renderRegister } from "../../src/report/register-page.tsx";
import { randomFrom } from "../computed/loops/random.ts";
import { register, registerRow } from "../report/sample-register.ts";

/** Loops that differ in what loops differ in, so that they pack no better than those of a plant. */
export function writeManyLoops(folder: string, count: number): { page: number; parts: number; bytes: number } {
  const random = randomFrom(1);
  const rows = Array.from({ length: count }, (_, index): RegisterRow => loop(index, random));
  const { page, parts } = renderRegister({ ...register, rows, openFindings: [], late: [] }, undefined);
  mkdirSync(join(folder, "register-parts"), { recursive: true });
  writeFileSync(join(folder, "register.html"), page);
  let bytes = 0;
  for (const { path, render } of parts) {
    const text = render();
    bytes += text.length;
    writeFileSync(join(folder, path), text);
  }
  return { page: page.length, parts: parts.length, bytes };
}

function loop(index: number, random: ReturnType<typeof randomFrom>): RegisterRow {
  const two = (number: number) => String(number).padStart(2, "0");
  const day = (year: number) => `${year}-${two(random.whole(1, 12))}-${two(random.whole(1, 28))}`;
  const [tag, calibration, performedOn] = [`LT-${String(index).padStart(5, "0")}`, `C-2026-${index}`, day(2026)];
  const error = random.between(-1, 1);
  const thing = random.pick(["silo", "bin", "gate", "web", "pit", "hopper", "stack", "carriage"]);
  return registerRow({
    ...{ tag, calibration, performedOn, path: `${tag}/${performedOn}_${calibration}_r1.html` },
    description: `${thing} ${random.whole(1, 99)}, ${random.pick(["distance to the surface", "opening", "height"])}`,
    location: `hall ${random.whole(1, 9)}, ${random.pick(["yard", "roof", "bagging floor", "mill"])}`,
    serial: `EX-${random.whole(0, 1e6)}`,
    asFound: Math.abs(error) > 0.9 ? "fail" : "pass",
    worstAsFound: { errorDistance: 20 * error, errorPercentSpan: error },
    drift: random.isTrue(0.5) ? { notDetermined: "one record only" } : { percentSpanPerYear: error / 3 },
    forecast: { on: day(2030), limit: "upper", isAlready: false },
    fingerprint: fingerprintOf(createHash("sha256").update(tag).digest("hex")),
    due: {
      ...{ state: random.pick(["overdue", "not due", "due soon", "not in tolerance"] as const), on: day(2027) },
      ...{ days: random.whole(0, 300), why: null },
    },
  });
}
