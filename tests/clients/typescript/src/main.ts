import createClient from "openapi-fetch";
import type { paths } from "../generated/v1.js";
import { every } from "./every.js";
import { plan } from "./requests.js";

// By hand, in cm3: the frustum of 23, 45 and 100 mm less 184 mm2 of steel along 100 mm with an obliquity of 1.00302.
const resinVolume = ((Math.PI / 12) * 100 * (23 ** 2 + 23 * 45 + 45 ** 2) - 184 * 100 * 1.00302) / 1000;

function expect(holds: boolean, what: string): asserts holds {
  if (!holds) {
    throw new Error(what);
  }
}

async function run(baseUrl: string, document: string): Promise<void> {
  const client = createClient<paths>({ baseUrl, fetch: (request) => fetch(request, { signal: AbortSignal.timeout(30_000) }) });

  const planned = await client.POST("/v1/pour-plans", { body: plan() });
  expect(planned.data !== undefined, `no plan: ${planned.error?.detail}`);
  expect(planned.data.decision === "proceedWithCare", `decision is ${planned.data.decision}`);
  const nominal = planned.data.result.ends[0]?.resinVolume.nominal;
  expect(nominal?.unit === "cm3", `resin volume is in ${nominal?.unit}`);
  expect(Math.abs(nominal.value - resinVolume) <= 0.0005, `resin volume is ${nominal.value}`);
  expect(planned.data.trace.length === 0, "trace without ?detail=full");

  const full = await client.POST("/v1/pour-plans", { body: plan(), params: { query: { detail: "full" } } });
  expect(full.data !== undefined && full.data.trace.length > 0, "no trace with ?detail=full");

  const thick = plan();
  thick.ends[0]!.rope.diameter = { value: 38.5, unit: "m" };
  const refused = await client.POST("/v1/pour-plans", { body: thick });
  expect(refused.error !== undefined, "a rope 38.5 m thick got a plan");
  expect(refused.response.status === 422 && refused.error.status === 422, `status is ${refused.response.status}`);
  const pointers = refused.error.errors.map((error) => error.pointer);
  expect(pointers.join() === "/ends/0/rope/diameter", `pointer is ${pointers.join()}`);

  await every(client, document, expect);

  const units = await client.GET("/v1/units");
  const length = units.data?.kinds.find((kind) => kind.kind === "Length");
  const inch = length?.units.find((unit) => unit.code === "in");
  expect(inch?.ucum === "[in_i]", `UCUM code of the inch is ${inch?.ucum}`);
}

try {
  await run(process.argv[2] ?? "", process.argv[3] ?? "");
  console.log("ok typescript");
} catch (failure) {
  console.error(`typescript: ${failure instanceof Error ? failure.message : String(failure)}`);
  process.exitCode = 1;
}
