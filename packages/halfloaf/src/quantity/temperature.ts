/** Degrees Celsius from degrees Fahrenheit. **Source**: NIST Special Publication 811, appendix B.8. */
export function toCelsius(temperatureF: number): number {
  return ((temperatureF - 32) * 5) / 9;
}

/** Degrees Fahrenheit from degrees Celsius. **Source**: NIST Special Publication 811, appendix B.8. */
export function toFahrenheit(temperatureC: number): number {
  return (temperatureC * 9) / 5 + 32;
}
