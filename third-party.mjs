import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const licenceFile = /^(?:licen[cs]e|copying|notice)(?:[.-].*)?$/iu;

/** The folders of the packages of which something is in the bundle, sorted; a copy inside another package counts too. */
export function bundledPackages({ outputs }) {
  const inputs = Object.values(outputs).flatMap((output) => Object.entries(output.inputs));
  const folders = inputs
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .flatMap(([path]) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(path)?.[0] ?? []);
  return [...new Set(folders)].sort();
}

/** Whose work is in the bundle, under which licence, with each licence's text once. */
export function thirdPartyText(metafile) {
  const packages = bundledPackages(metafile).map(packageIn);
  const namesByText = new Map();
  for (const { name, version, texts } of packages) {
    for (const text of texts) namesByText.set(text, [...(namesByText.get(text) ?? []), `${name} ${version}`]);
  }
  const rows = packages.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`);
  const sections = [...namesByText].map(
    ([text, names]) => `## ${names.join(", ")}\n\n\`\`\`\`text\n${text}\n\`\`\`\`\n`,
  );
  return [
    "# What Spanwright is bundled with",
    "The command holds parts of these packages, and each page of a record the font Inter. Their licences and notices follow, each text once. Written by the build.",
    ["| package | version | licence |", "| --- | --- | --- |", ...rows].join("\n"),
    ...sections,
  ].join("\n\n");
}

function packageIn(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const files = readdirSync(folder)
    .filter((file) => licenceFile.test(file))
    .sort();
  if (typeof license !== "string" || !files.some((file) => !/^notice/iu.test(file))) {
    throw new Error(`${name} ${version} comes without a licence, so that it cannot be bundled`);
  }
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n").trim());
  return { name, version, licence: license, texts };
}
