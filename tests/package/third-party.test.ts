import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { program } from "../../packed-program.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const text = readFileSync(join(root, "THIRD-PARTY.md"), "utf8");

/** What the program of the entry sheet is made of, which is packed and says no more where its pieces came from. */
const inSheet = Object.keys((await program(join(root, "src/sheet/main.browser.tsx"))).metafile.inputs);

/** The bundle is not minified: before each piece stands the path that it came from. */
function foldersInBundle(): readonly string[] {
  const names = readdirSync(join(root, "dist"), { encoding: "utf8", recursive: true }).filter((name) =>
    /\.(?:m?js|txt)$/u.test(name),
  );
  const paths = names.flatMap((name) => {
    const code = readFileSync(join(root, "dist", name), "utf8");
    return [...code.matchAll(/^\s*\/\/!? (node_modules\/\S+)$/gmu)].map(([, path = ""]) => path);
  });
  const ofSheet = inSheet.filter((path) => path.startsWith("node_modules/"));
  return [
    ...new Set([...paths, ...ofSheet].map((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(path)?.[0] ?? "")),
  ].sort();
}

const bundled = foldersInBundle().map((folder) => {
  const { name, version, license } = JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8"));
  return { folder, row: `| ${name} | ${version} | ${license} |` };
});

test("every bundled package stands in THIRD-PARTY.md with version and licence, and no other", () => {
  const rows = text.split("\n").filter((line) => /^\| (?!package|---)/u.test(line));
  expect(bundled.length).toBeGreaterThan(20);
  expect(bundled.map(({ folder }) => folder)).toContain("node_modules/inter-ui");
  expect(rows.toSorted()).toEqual(bundled.map(({ row }) => row).toSorted());
});

test("the text of each of their licences and notices is in it", () => {
  for (const { folder } of bundled) {
    const files = readdirSync(join(root, folder)).filter((name) => /^(?:licen[cs]e|notice|copying)/iu.test(name));
    expect(files.length, folder).toBeGreaterThan(0);
    for (const name of files) {
      const licence = readFileSync(join(root, folder, name), "utf8")
        .replaceAll("\r\n", "\n")
        .trim();
      expect(text.includes(licence), `${folder}/${name}`).toBe(true);
    }
  }
  expect(text).toContain("SIL OPEN FONT LICENSE");
});

test("the packages that the product is built on are in use", () => {
  const { devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const basis = ["papaparse", "simple-statistics", "vega-lite", "vega", "zod", "vitest"];
  for (const name of basis) expect(devDependencies, name).toHaveProperty(name);
  // vega-lite compiles the charts ahead, and vitest runs the tests: the others are in the bundle themselves.
  const names = bundled.map(({ folder }) => folder.replace("node_modules/", ""));
  expect(names).toEqual(expect.arrayContaining(basis.filter((name) => name !== "vega-lite" && name !== "vitest")));
  const compile = readFileSync(join(root, "src/charts/drawing/compiled-chart.ts"), "utf8");
  expect(compile).toMatch(/import \{ compile,.*from "vega-lite"/u);
});
