import { expect, test } from "vitest";
import { weakPassphrase } from "../../src/proof/weak-passphrase.ts";

test.each([
  ["abababababab", "repeats one piece"],
  ["aaaaaaaaaaaaaaaa", "repeats one piece"],
  ["pass1pass1pass1", "repeats one piece"],
  ["aabbaabbbbaacc", "has fewer than 6 different characters"],
  ["abcdefghijklmnop", "is a row of neighbouring characters"],
  ["123456789012", "is a row of neighbouring characters"],
  ["987654321098", "is a row of neighbouring characters"],
  ["Password2026!", "is a common word with little beside it"],
  ["qwertyqwertz12", "is a common word with little beside it"],
  ["AdaSpecimen2026", "is the name of its owner with little beside it"],
])("%s is weak: it %s", (passphrase, why) => {
  expect(weakPassphrase(passphrase, "Ada Specimen")).toBe(why);
});

test.each(["twelve characters", "plum indigo basil puffin", "Ada walks nine dogs to Rome", "gk2!vNq8#Lw0zR"])(
  "%s is not refused",
  (passphrase) => {
    expect(weakPassphrase(passphrase, "Ada Specimen")).toBeUndefined();
  },
);
