// Plays clients that want to take the service from others, for minutes, while ordinary plans are asked for; prints a row of the
// table in docs/operations.md for each attack. Exits with 1 where one of them did harm.
// Usage: node attacks.mjs <path of CalcService.Api.dll> <docs/openapi/v1.json> [<part of the name of one attack>]
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import net from "node:net";
import { performance } from "node:perf_hooks";
import { setTimeout as sleep } from "node:timers/promises";
import zlib from "node:zlib";

const [service, document, only = ""] = process.argv.slice(2);
const paths = JSON.parse(readFileSync(document, "utf8")).paths;
const example = (path, name) => structuredClone(paths[path].post.requestBody.content["application/json"].examples[name].value);
const plans = "/v1/pour-plans";
const plan = JSON.stringify(example(plans, "plan"));
const rows = [];

/** Starts an instance as the image does, with a listener for probes. */
async function start(environment = {}) {
    const child = spawn("dotnet", [service, "--Kestrel:Endpoints:Work:Url=http://127.0.0.1:0", "--Kestrel:Endpoints:Health:Url=http://127.0.0.1:0"],
        { env: { ...process.env, ...environment }, stdio: ["ignore", "pipe", "inherit"] });
    const addresses = [];
    const log = [];
    await new Promise(resolve => {
        let rest = "";
        child.stdout.on("data", data => {
            const lines = (rest + data).split("\n");
            rest = lines.pop();
            for (const line of lines) {
                const entry = JSON.parse(line);
                if (entry.address) {
                    addresses.push(entry.address);
                }
                if (["Error", "Fatal"].includes(entry["@l"])) {
                    log.push(line);
                }
            }
            if (addresses.length === 2) {
                resolve();
            }
        });
    });
    const [health, work] = addresses;
    return { child, health, work, port: Number(new URL(work).port), log };
}

/** The status of a plan, or of what failed instead. */
async function ask(instance, path = plans, body = plan, type = "application/json", headers = {}) {
    const begun = performance.now();
    try {
        const response = await fetch(instance.work + path, { method: "POST", headers: { "Content-Type": type, ...headers }, body, signal: AbortSignal.timeout(300_000) });
        const text = await response.text();
        return { status: response.status, text, time: performance.now() - begun };
    } catch (failure) {
        return { status: failure.cause?.code ?? failure.name, text: "", time: performance.now() - begun };
    }
}

/** Plans one after the other, and how long each took. */
async function plansFor(instance, seconds) {
    const end = performance.now() + 1000 * seconds;
    const found = { tries: 0, failures: 0, times: [] };
    while (performance.now() < end) {
        const { status, time } = await ask(instance);
        found.tries++;
        found.failures += status === 200 ? 0 : 1;
        found.times.push(time);
        await sleep(20);
    }
    found.times.sort((a, b) => a - b);
    return found;
}

const at = (times, share) => times[Math.min(times.length - 1, Math.floor(share * times.length))];

/** A connection that sends a head and then what it is told to. */
function connect(instance, path, type, length, more = "") {
    const socket = net.connect(instance.port, "127.0.0.1");
    socket.on("error", () => {});
    const framing = length === null ? "Transfer-Encoding: chunked" : `Content-Length: ${length}`;
    socket.write(`POST ${path} HTTP/1.1\r\nHost: here\r\nContent-Type: ${type}\r\n${framing}\r\n${more}\r\n`);
    return socket;
}

/** Plays an attack against an instance of its own; it gives tries and failures and what else is worth saying. */
async function play(name, attack, environment) {
    if (!name.includes(only)) {
        return;
    }
    const instance = await start(environment);
    try {
        for (let warm = 0; warm < 300; warm++) {
            await ask(instance);
        }
        const { tries, failures, said } = await attack(instance);
        const after = await ask(instance);
        const alive = await fetch(instance.health + "/health/live").then(reply => reply.status, () => 0);
        const harm = failures + (after.status === 200 ? 0 : 1) + (alive === 200 ? 0 : 1) + instance.log.length;
        rows.push({ name, tries, harm });
        console.log(`| ${name} | ${tries} | ${harm} | ${said ?? ""} |`);
        instance.log.slice(0, 3).forEach(line => console.log(line.slice(0, 600)));
    } finally {
        instance.child.kill("SIGKILL");
    }
}

/** A shop of thirty ends, no two alike, each with heat and cure in its cone. */
function dearLine() {
    const request = example("/v1/cure-schedules", "shop");
    request.thermalModel = "coupled";
    request.ends = Array.from({ length: 30 }, (_, index) => {
        const end = structuredClone(request.ends[0]);
        const basket = end.socket.basket;
        Object.assign(end, { id: `end ${index}`, quantity: 1 });
        basket.largeEndDiameter.value += index / 10;
        end.socket.outsideDiameter = { value: 75 + index / 10, unit: "mm" };
        return end;
    });
    return JSON.stringify(request) + "\n";
}

const batch = path => path + "/batch";
const lines = "application/x-ndjson";

await play("eight batches of 20,000 of the dearest lines, packed by brotli; plans beside them", async instance => {
    const alone = (await plansFor(instance, 10)).times;
    const body = zlib.brotliCompressSync(Buffer.from(dearLine().repeat(20_000)), { params: { [zlib.constants.BROTLI_PARAM_LGWIN]: 24 } });
    const sockets = Array.from({ length: 8 }, () => {
        const socket = connect(instance, batch("/v1/cure-schedules"), lines, body.length, "Content-Encoding: br\r\n");
        socket.write(body);
        return socket.resume();
    });
    await sleep(3000);
    const found = await plansFor(instance, 60);
    sockets.forEach(socket => socket.destroy());
    const [median, high] = [at(found.times, 0.5), at(found.times, 0.99)];
    const isSlow = high > 100 || median > 5 * at(alone, 0.5);
    return { tries: found.tries, failures: found.failures + (isSlow ? 1 : 0),
        said: `${body.length} bytes each; median ${median.toFixed(1)} ms (alone ${at(alone, 0.5).toFixed(1)}), 99th percentile ${high.toFixed(0)} ms` };
});

await play("eight batches of one line of 256 MiB that is sent in some hundred bytes", async instance => {
    const line = zlib.brotliCompressSync(Buffer.alloc(256 << 20, " "));
    const tries = await Promise.all(Array.from({ length: 8 }, () => ask(instance, batch(plans), line, lines, { "Content-Encoding": "br" })));
    return { tries: tries.length, failures: tries.filter(one => !one.text.includes('"aborted"') || one.text.includes('"summary"')).length };
});

await play("eight batches whose clients never read, then one that does", async instance => {
    const body = (plan + "\n").repeat(5000);
    const sockets = Array.from({ length: 8 }, () => {
        const socket = connect(instance, batch(plans), lines, Buffer.byteLength(body));
        socket.write(body);
        return socket.pause();
    });
    const begun = performance.now();
    let tries = 0;
    let status;
    do {
        await sleep(1000);
        tries++;
        ({ status } = await ask(instance, batch(plans), plan + "\n", lines));
    } while (status === 503 && performance.now() - begun < 120_000);
    sockets.forEach(socket => socket.destroy());
    return { tries, failures: status === 200 ? 0 : 1, said: `answered after ${((performance.now() - begun) / 1000).toFixed(0)} s` };
});

await play("eight batches that send 330 bytes a second after 9 MiB, then one that doesn't", async instance => {
    const sockets = Array.from({ length: 8 }, () => {
        const socket = connect(instance, batch(plans), lines, 100_000_000).resume();
        socket.write(("{}" + " ".repeat(60_000) + "\n").repeat(160));
        const drip = setInterval(() => socket.write("{}".padEnd(329) + "\n"), 1000);
        socket.on("close", () => clearInterval(drip));
        return socket;
    });
    const begun = performance.now();
    let tries = 0;
    let status;
    await sleep(3000);
    do {
        await sleep(1000);
        tries++;
        ({ status } = await ask(instance, batch(plans), plan + "\n", lines));
    } while (status === 503 && performance.now() - begun < 120_000);
    sockets.forEach(socket => socket.destroy());
    return { tries, failures: status === 200 ? 0 : 1, said: `answered after ${((performance.now() - begun) / 1000).toFixed(0)} s` };
});

await play("400 bodies that come slowly; plans beside them", async instance => {
    const sockets = Array.from({ length: 400 }, () => connect(instance, plans, "application/json", 1_000_000));
    const drip = setInterval(() => sockets.forEach(socket => socket.write(" ")), 1000);
    await sleep(1000);
    const found = await plansFor(instance, 40);
    clearInterval(drip);
    sockets.forEach(socket => socket.destroy());
    return found;
});

await play("1,000 idle connections; probes beside them", async instance => {
    const sockets = Array.from({ length: 1000 }, () => net.connect(instance.port, "127.0.0.1").on("error", () => {}));
    await sleep(2000);
    let failures = 0;
    for (let tried = 0; tried < 60; tried++) {
        failures += await fetch(instance.health + "/health/ready", { headers: { Connection: "close" }, signal: AbortSignal.timeout(2000) })
            .then(reply => reply.status === 200 ? 0 : 1, () => 1);
        await sleep(1000);
    }
    sockets.forEach(socket => socket.destroy());
    await sleep(500);
    return { tries: 60, failures };
});

await play("64 plans of 1,000 ends with full detail at once, in a heap of 384 MiB", async instance => {
    const request = example(plans, "plan");
    request.ends = Array.from({ length: 1000 }, (_, index) => ({ ...request.ends[0], id: `end ${index}`, quantity: 1 }));
    const body = JSON.stringify(request);
    const tries = [];
    for (let round = 0; round < 3; round++) {
        tries.push(...await Promise.all(Array.from({ length: 64 }, () => ask(instance, plans + "?detail=full", body))));
    }
    const answered = tries.filter(one => one.status === 200).length;
    return { tries: tries.length, failures: tries.filter(one => ![200, 503].includes(one.status)).length + (answered === 0 ? 1 : 0), said: `${answered} answered` };
}, { DOTNET_GCHeapHardLimit: "0x18000000" });

await play("chunks and lengths that are none, 200 of each", async instance => {
    const kinds = ["80000000\r\n", "FFFFFFFF\r\n", "7FFFFFFFFFFFFFFF\r\n", "10000000000000000\r\n", "-1\r\n", "zz\r\n", "\r\n", "2;x=" + "y".repeat(20_000) + "\r\n{}\r\n", "2\r\n{}XX"];
    let failures = 0;
    for (let round = 0; round < 10; round++) {
        failures += (await Promise.all(Array(20).fill(kinds).flat().map(kind => new Promise(resolve => {
            const socket = connect(instance, plans, "application/json", null, "Connection: close\r\n");
            let seen = "";
            socket.on("data", data => { seen += data; });
            socket.on("close", () => resolve(/^HTTP\/1\.1 4/.test(seen) ? 0 : 1));
            socket.setTimeout(20_000, () => socket.destroy());
            socket.write(kind);
        })))).reduce((sum, one) => sum + one);
    }
    return { tries: 200 * kinds.length, failures };
});

process.exit(rows.every(row => row.harm === 0) ? 0 : 1);
