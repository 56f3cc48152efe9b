import { readFileSync } from "node:fs";
import type { Client } from "openapi-fetch";
import type { components, paths } from "../generated/v1.js";

type Answer = components["schemas"]["PourPlanAnswer"];
type Operation = { path: "/v1/pour-plans"; examples: [string, components["schemas"]["PourPlanRequest"]][] };
type Line = { status: number; answer: Answer; summary?: { answered: number } };

// The types of one path stand for all: which paths there are is known only when the document is read.
function readAll(document: string): Operation[] {
  const all = JSON.parse(readFileSync(document, "utf8")).paths;
  return Object.keys(all)
    .filter((path) => `${path}/batch` in all)
    .map((path) => ({
      path: path as "/v1/pour-plans",
      examples: Object.entries<{ value: Operation["examples"][0][1] }>(all[path].post.requestBody.content["application/json"].examples)
        .map(([name, example]) => [name, example.value]),
    }));
}

/** The contract has the decision one to one from the worst finding; a verification has an outcome instead. */
function decisionOf(answer: Answer): string | undefined {
  const severities = new Set<string>(answer.findings?.map((finding) => finding.severity));
  return !answer.findings ? undefined
    : severities.has("stop") ? "doNotProceed"
    : severities.has("unknown") ? "undetermined"
    : severities.has("caution") ? "proceedWithCare" : "proceed";
}

/** Calls every calculation of the document with every example, alone and in a batch. */
export async function every(client: Client<paths>, document: string, expect: (holds: boolean, what: string) => void): Promise<void> {
  const operations = readAll(document);
  expect(operations.length > 0, "the document has no calculation");
  for (const { path, examples } of operations) {
    const alone: Answer[] = [];
    for (const [name, body] of examples) {
      const { data, error } = await client.POST(path, { body });
      expect(data !== undefined, `${path} ${name}: ${error?.detail}`);
      expect(data!.decision === decisionOf(data!), `${path} ${name}: decision is ${data!.decision}`);
      alone.push(data!);
    }
    expect(alone.length > 0, `${path} has no examples`);

    const lines = examples.map(([, body]) => JSON.stringify(body) + "\n").join("");
    const batch = await client.POST(`${path}/batch`, {
      body: lines, bodySerializer: (text) => text, parseAs: "text", headers: { "Content-Type": "application/x-ndjson" },
    });
    expect(batch.data !== undefined, `${path}/batch: ${batch.error?.detail}`);
    const output: Line[] = batch.data!.trimEnd().split("\n").map((line) => JSON.parse(line));
    expect(output.length === alone.length + 1, `${path}/batch: ${output.length} lines`);
    alone.forEach((answer, at) => {
      const line = output[at]!;
      expect(line.status === 200 && line.answer.decision === answer.decision, `${path}/batch: line ${at + 1} is ${line.status} ${line.answer?.decision}`);
      expect(line.answer.provenance?.resultDigest === answer.provenance?.resultDigest, `${path}/batch: line ${at + 1} has another digest`);
    });
    expect(output.at(-1)!.summary?.answered === alone.length, `${path}/batch: no true summary`);
  }
  console.log(`${operations.flatMap((operation) => operation.examples).length} examples of ${operations.length} calculations, alone and in batches`);
}
