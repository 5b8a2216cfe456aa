/** What was looked at around each invented loop, as texts by column; numbers with a decimal point. */
export const everyItem = {
  result: "pass",
  measured: "",
  unit: "",
  low: "",
  high: "",
  checked_by: "",
  time: "",
  remark: "",
};

/** A whole loop check: two wires, hazardous area, safety function. */
const wholeCheck = [
  { item: "identity", remark: "device, drawing and controller: LT-702; serial EX-0702" },
  { item: "as-built drawing", measured: "EX-L-0702, edition 4", remark: "nothing differs" },
  { item: "fuse", measured: "terminal 7, 50 mA", remark: "whole" },
  { item: "supply without load", measured: "22.5", unit: "V", time: "08:31", remark: "ripple 0.1 V" },
  { item: "supply at full output", measured: "16.5", unit: "V", time: "08:34", remark: "20 mA simulated" },
  { item: "polarity and cores", measured: "pin 1 to 7.1, pin 3 to 7.2" },
  { item: "number of wires", measured: "2", unit: "wires" },
  { item: "shield", measured: "earthed at the card", remark: "no continuity to the gland" },
  { item: "ground loop", measured: "0.02", unit: "V", remark: "signal still with the earth at the card lifted" },
  { item: "burden", measured: "379", unit: "Ω", remark: "measured cold, loop isolated" },
  { item: "card channel", measured: "slot 4, channel 2", remark: "4 to 20 mA, two wires, filter 50 Hz" },
  { item: "counts at 0 %", measured: "-2", unit: "counts" },
  { item: "counts at 25 %", measured: "6911", unit: "counts" },
  { item: "counts at 50 %", measured: "13823", unit: "counts" },
  { item: "counts at 75 %", measured: "20735", unit: "counts" },
  { item: "counts at 100 %", measured: "27645", unit: "counts" },
  { item: "scaling", measured: "0 to 27648 is 100 to 0 % fill", remark: "real numbers, not clamped" },
  { item: "value at 0 %", measured: "100.0" },
  { item: "value at 25 %", measured: "75.0" },
  { item: "value at 50 %", measured: "50.0" },
  { item: "value at 75 %", measured: "25.0" },
  { item: "value at 100 %", measured: "0.0" },
  { item: "display and trend", remark: "one decimal on the display; each step in the trend" },
  { item: "end to end", measured: "table readings, as left" },
  { item: "broken wire", measured: "0", unit: "mA", remark: "alarm 'signal lost' after 4 s, value held" },
  { item: "power loss", measured: "value held, alarm after 4 s", remark: "the pump stops" },
  { item: "lost target", measured: "held for 30 s, then 3.5 mA", remark: "the pump stops" },
  { item: "low fault threshold", measured: "3.7", unit: "mA" },
  { item: "high fault threshold", measured: "20.8", unit: "mA", remark: "hold-off 4 s" },
  { item: "response", measured: "11", unit: "s", high: "15" },
  { item: "filter", measured: "sensor 5 s, card 0.02 s, controller none" },
  { item: "indicators", measured: "power and echo lit at 0.4, 4.2 and 8 m" },
  { item: "target", measured: "80", unit: "cm", remark: "aluminium plate, flat, square within 1°, still" },
  { item: "blind zone", measured: "0.31", unit: "m" },
  { item: "obstructions", measured: "ladder 1.1 m beside the axis at 5 m", remark: "outside the beam" },
  { item: "air", result: "not applicable", measured: "14.0", unit: "°C", remark: "radar: no limits are stated" },
  { item: "mounting", measured: "0.5° off the vertical", remark: "flange face is the datum, offset 0" },
  { item: "condition", remark: "antenna clean, gland tight" },
  { item: "warm-up", measured: "35", unit: "min", low: "15" },
  { item: "settings", remark: "unchanged; damping 5 s, holds for 30 s without an echo, locked" },
  { item: "drives running", measured: "0.004", unit: "mA", remark: "pump and heater, 300 A" },
  { item: "insulation", result: "not applicable", remark: "not in the site's procedure for this circuit" },
  { item: "restored", checked_by: "Tom Sample, Ines Example", time: "11:55", remark: "EX-B-0091 closed, to the yard" },
];

/** A part of one, with an item that fails: the supply sags below what the sensor lives on. */
const partOfCheck = [
  { item: "identity" },
  { item: "supply without load", measured: "12.6", unit: "V" },
  {
    item: "supply at full output",
    result: "fail",
    measured: "11.4",
    unit: "V",
    remark: "two further sensors hang on the same pair of cores; to be given a supply of its own",
  },
  { item: "burden", measured: "0.283", unit: "kΩ" },
  { item: "condition", measured: "dust on the face", remark: "wiped off after the readings" },
  { item: "restored", remark: "EX-B-0077 closed, to the shift" },
];

const restoredAlone = (remark) => [{ item: "restored", remark }];

export const loopChecks = [
  { calibration: "C-2026-014", items: restoredAlone("EX-B-0031 closed, to the shift") },
  { calibration: "C-2026-015", items: restoredAlone("EX-B-0035 closed, to the dosing crew") },
  { calibration: "C-2026-021", items: restoredAlone("EX-B-0042 closed, to press 1") },
  { calibration: "C-2026-009", items: restoredAlone("EX-B-0019 closed, to the yard") },
  { calibration: "C-2026-033", items: restoredAlone("EX-B-0058 closed, to line 5") },
  { calibration: "C-2026-047", items: partOfCheck },
  { calibration: "C-2026-055", items: wholeCheck },
  { calibration: "C-2026-058", items: restoredAlone("EX-B-0098 closed, to the shift") },
  { calibration: "C-2026-031", items: restoredAlone("EX-B-0053 closed, to line 2") },
  { calibration: "C-2026-040", items: restoredAlone("EX-B-0068 closed, to the dryer crew") },
  { calibration: "C-2026-042", items: restoredAlone("EX-B-0071 closed, to the grinder crew") },
  {
    calibration: "C-2026-028",
    items: [
      {
        item: "response",
        measured: "0.2",
        unit: "s",
        high: "1",
        remark: "one step of the blade; no filter at the card",
      },
    ],
  },
  {
    calibration: "C-2026-032",
    items: [
      { item: "supply without load", measured: "20.4", unit: "V" },
      { item: "burden", measured: "500", unit: "Ω", remark: "card and indicator in series" },
      {
        item: "simulated 20 mA",
        result: "fail",
        measured: "16.8",
        unit: "mA",
        remark: "simulator in place of the sensor",
      },
      { item: "restored", remark: "EX-B-0056 closed, to the yard" },
    ],
  },
].flatMap(({ calibration, items }) => items.map(({ item, ...rest }) => ({ calibration, item, ...everyItem, ...rest })));
