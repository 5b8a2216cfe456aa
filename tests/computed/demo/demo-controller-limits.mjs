/** Alarms and trips of the invented plant's controllers, as texts by column. */
export const controllerLimits = [
  {
    ...{ tag: "LT-702", limit: "silo nearly full", value: "90", acts: "above", delay: "5", dead_band: "2" },
    ...{ final_action: "horn at the yard", kind: "alarm" },
  },
  {
    ...{ tag: "LT-702", limit: "silo overfull", value: "95", acts: "above", delay: "2", dead_band: "1" },
    ...{ final_action: "conveyor stops", kind: "trip" },
  },
  {
    ...{ tag: "ZT-330", limit: "carriage near its end", value: "1400", acts: "above", delay: "", dead_band: "10" },
    ...{ final_action: "drive slows down", kind: "trip" },
  },
  {
    ...{ tag: "LT-333", limit: "hopper nearly empty", value: "36", acts: "above", delay: "10", dead_band: "1" },
    ...{ final_action: "feeder stops", kind: "trip" },
  },
];
