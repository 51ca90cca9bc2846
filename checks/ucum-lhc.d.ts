/** What is used of the UCUM library, which states no types of its own. */
declare module "@lhncbc/ucum-lhc" {
  interface Conversion {
    readonly status: "succeeded" | "failed" | "error";
    readonly toVal: number | null;
    readonly msg: readonly string[];
  }
  const ucum: {
    readonly UcumLhcUtils: {
      getInstance(): { convertUnitTo(fromUnit: string, value: number, toUnit: string): Conversion };
    };
  };
  export default ucum;
}
