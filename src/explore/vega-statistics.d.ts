// vega-statistics ships no declarations; these are the parts used here.
declare module 'vega-statistics' {
  export function quantileNormal(p: number, mean?: number, stdev?: number): number;
  export function densityNormal(value: number, mean?: number, stdev?: number): number;
  export function cumulativeNormal(value: number, mean?: number, stdev?: number): number;
}
