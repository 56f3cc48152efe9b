// Sends single requests and batches through nginx until standard input ends, and holds every answer against the first
// one. Exits with 1 where one is lost, false, or where the restarts met nothing at work.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";

const [address, document] = process.argv.slice(2);
const path = "/v1/pour-plans";
const batchLines = 300;
const tries = 30;
const examples = JSON.parse(readFileSync(document, "utf8")).paths[path].post.requestBody.content["application/json"].examples;
const requests = Object.values(examples).map(example => JSON.stringify(example.value));
const counts = { singles: 0, singlesRepeated: 0, batches: 0, batchesRepeated: 0, lines: 0, lost: 0, false: 0 };
let stopped = false;
process.stdin.on("end", () => { stopped = true; }).resume();

const digestOf = answer => answer.provenance.resultDigest;

async function post(to, type, body) {
    const response = await fetch(address + to, { method: "POST", headers: { "Content-Type": type }, body, signal: AbortSignal.timeout(120_000) });
    return { status: response.status, text: await response.text() };
}

/** Sends one thing until there is an answer; what a gateway or a stopping instance says is no answer. */
async function repeat(send, what) {
    for (let tried = 1; tried <= tries; tried++) {
        let why;
        try {
            const result = await send();
            if (result.done) {
                return;
            }
            why = result.why;
        } catch (failure) {
            why = failure.cause?.code ?? failure.message;
        }
        counts[what + "Repeated"]++;
        console.log(`${what}: once more, ${why}`);
        await new Promise(resolve => setTimeout(resolve, 500));
    }
    counts.lost++;
    console.log(`${what}: lost after ${tries} tries`);
}

function differs(what) {
    counts.false++;
    console.log(`false: ${what}`);
    return { done: true };
}

async function single(index, expected) {
    const { status, text } = await post(path, "application/json", requests[index]);
    if ([502, 503, 504].includes(status)) {
        return { done: false, why: status };
    }
    if (status !== 200 || digestOf(JSON.parse(text)) !== expected[index]) {
        return differs(`single ${status}`);
    }
    counts.singles++;
    return { done: true };
}

async function batch(expected) {
    const order = Array.from({ length: batchLines }, (_, line) => line % requests.length);
    const body = order.map(index => requests[index] + "\n").join("");
    const { status, text } = await post(path + "/batch", "application/x-ndjson", body);
    if ([502, 503, 504].includes(status)) {
        return { done: false, why: status };
    }
    // Lines as they came; one that was cut off in the middle has no line end.
    const lines = text.split("\n").slice(0, -1).map(line => JSON.parse(line));
    const summary = lines.at(-1)?.summary;
    const answers = lines.filter(line => "line" in line);
    if (status !== 200 || answers.some((line, at) => line.line !== at + 1 || line.status !== 200 || digestOf(line.answer) !== expected[order[at]])) {
        return differs(`batch ${status}`);
    }
    if (!summary) {
        return { done: false, why: "no summary" };
    }
    const digest = "sha256:" + createHash("sha256").update(body).digest("hex");
    if (answers.length !== batchLines || summary.lines !== batchLines || summary.answered !== batchLines || summary.rejected !== 0 || summary.inputDigest !== digest) {
        return differs(`summary ${JSON.stringify(summary)} of ${answers.length} lines`);
    }
    counts.batches++;
    counts.lines += batchLines;
    return { done: true };
}

/** One after the other; what is sent again is the same. */
async function sending(next, what) {
    while (!stopped) {
        await repeat(next(), what);
    }
}

const expected = [];
for (const request of requests) {
    expected.push(digestOf(JSON.parse((await post(path, "application/json", request)).text)));
}
let next = 0;
await Promise.all([
    ...Array.from({ length: 4 }, () => sending(() => { const index = next++ % requests.length; return () => single(index, expected); }, "singles")),
    ...Array.from({ length: 2 }, () => sending(() => () => batch(expected), "batches")),
]);
console.log(JSON.stringify(counts));
if (counts.singles === 0 || counts.batches === 0) {
    console.log("Nothing was sent: this proves nothing.");
    process.exit(1);
}
process.exit(counts.lost + counts.false === 0 ? 0 : 1);
