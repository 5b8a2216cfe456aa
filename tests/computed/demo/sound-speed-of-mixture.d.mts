export function soundSpeedOfMixture(temperatureCelsius: number, relativeHumidityPercent: number): number;
