/**
 * Three invented parts that could take the place of the sensor of ZT-407, as texts by column: one meets every demand, one
 * meets them once something is changed, one does not reach the far end and is not accurate enough.
 */
const every = {
  candidate: "",
  tags: "ZT-407",
  principle: "inductive",
  range_lower: "",
  range_upper: "",
  distance_unit: "mm",
  signal_lower: "0",
  signal_upper: "10",
  signal_unit: "V",
  polarity: "none",
  supply_min: "15",
  supply_max: "30",
  loop_powered: "no",
  load_min: "",
  temperature_compensated: "",
  beam_angle: "",
  blind_zone: "",
  connector: "M12, 4 pins",
  pins: "1 L+; 2 signal; 3 0 V",
  accuracy: "",
  accuracy_basis: "distance",
};

export const candidates = [
  {
    candidate: "candidate A",
    range_lower: "1",
    range_upper: "8",
    load_min: "2000",
    accuracy: "1",
    accuracy_basis: "percent of span",
  },
  {
    candidate: "candidate B",
    principle: "laser",
    range_lower: "1",
    range_upper: "21",
    signal_lower: "10",
    signal_upper: "0",
    polarity: "either",
    supply_min: "12",
    load_min: "1 kΩ",
    beam_angle: "0.5",
    blind_zone: "0.8",
    connector: "M8, 4 pins",
    pins: "1 L+; 2 Q1; 3 0 V; 4 signal",
    accuracy: "0.1",
    accuracy_basis: "percent of span",
  },
  {
    candidate: "candidate C",
    range_lower: "0.15 cm",
    range_upper: "12",
    load_min: "4700",
    accuracy: "0.03",
  },
].map((candidate) => ({ ...every, ...candidate }));
