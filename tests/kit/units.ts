// The units of a sheet, as its options say them.
export const METRIC_UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
export const US_UNITS = { weight: "oz", temperature: "F", length: "in" } as const;
