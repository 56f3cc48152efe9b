import type { components } from "../generated/v1.js";

/** A pour plan with every fact stated that could stop it, in the generated types. */
export function plan(): components["schemas"]["PourPlanRequest"] {
  return {
    reference: "JOB-0417",
    pourAt: "2026-03-12T08:30:00+01:00",
    units: "metric",
    compound: { profile: "demonstration" },
    conditions: {
      airTemperature: { value: 9, unit: "degC" },
      steelTemperature: { value: 8, unit: "degC" },
      compoundTemperature: { value: 18, unit: "degC" },
      relativeHumidity: { value: 72, unit: "%" },
      ignitionSource: "no",
      place: "indoors",
      room: { volume: { value: 180, unit: "m3" }, airChanges: { value: 6, unit: "1/h" } },
    },
    ends: [
      {
        id: "A",
        quantity: 6,
        rope: {
          diameter: { value: 20, unit: "mm" }, construction: "6x36", core: "iwrc", grade: 1770, finish: "bright", plasticFilled: "no", lubricant: "light",
        },
        socket: {
          basket: {
            smallEndDiameter: { value: 23, unit: "mm" },
            largeEndDiameter: { value: 45, unit: "mm" },
            length: { value: 100, unit: "mm" },
            tolerance: { value: 0.5, unit: "mm" },
          },
          bore: "clean",
        },
        cleaner: "solvent",
      },
    ],
    stock: [{ lot: "A-118", kit: "small", count: 4, expiresOn: "2027-01-31", state: "sealed", quarantined: "no" }],
    crew: { mixers: 1, pourTime: { value: 2, unit: "min" } },
    allowance: { value: 10, unit: "%" },
    objective: "leastCost",
  };
}
