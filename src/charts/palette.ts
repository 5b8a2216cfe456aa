/**
 * Colours of the charts and of the page around them.
 * On white: text 4.5:1 or more, marks and limit lines 3:1 or more (WCAG 2.2, 1.4.3 and 1.4.11); the test computes it.
 * No colour carries a meaning alone: shape, filling or dash says the same.
 */
export const palette = Object.freeze({
  paper: "#ffffff",
  ink: "#1b2430",
  quiet: "#525d6a",
  asFound: "#b34a0c",
  asLeft: "#1557a6",
  sensor: "#1b2430",
  controller: "#8e2c72",
  limit: "#6d7885",
  band: "#8aa0b8",
  difference: "#8a929c",
  grid: "#e2e6ea",
});

export const fontFamily = "Inter, system-ui, sans-serif";
