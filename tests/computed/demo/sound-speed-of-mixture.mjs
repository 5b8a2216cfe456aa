/**
 * Speed of sound in humid air as in a mixture of two ideal gases, c = √(γ R T / M), at 1008 hPa: another road than the
 * polynomial that the program uses, so that the demo does not prove the program by itself.
 *
 * Dry air: M = 28.9652 g/mol, molar heat capacity 29.12 J/(mol K) at constant pressure; water vapour: 18.0153 g/mol,
 * 33.6 J/(mol K) (textbook values near room temperature). Saturation pressure by Magnus: 6.112 hPa · exp(17.62 t /
 * (243.12 °C + t)) (WMO No. 8, annex 4.B).
 */
export function soundSpeedOfMixture(temperatureCelsius, relativeHumidityPercent) {
  const gasConstant = 8.314462618;
  const saturation = 6.112 * Math.exp((17.62 * temperatureCelsius) / (243.12 + temperatureCelsius));
  const vapour = ((relativeHumidityPercent / 100) * saturation) / 1008;
  const molarMass = (1 - vapour) * 0.0289652 + vapour * 0.0180153;
  const heatCapacity = (1 - vapour) * 29.12 + vapour * 33.6;
  const ratioOfHeats = heatCapacity / (heatCapacity - gasConstant);
  return Math.sqrt((ratioOfHeats * gasConstant * (temperatureCelsius + 273.15)) / molarMass);
}
