// A form with data-outbox is written to the device before it is sent. Where no service worker
// answers (no script, no HTTPS, a page loaded past it) the form goes as any other form.
import { device, read, sendAll } from "./sending.js";
import * as store from "./store.js";

const line = document.querySelector(".outbox");
const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
let sender = null;

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (event.defaultPrevented || !form.matches("form[data-outbox]")) return;
  if (!navigator.serviceWorker?.controller || event.submitter?.hasAttribute("formaction")) return;
  event.preventDefault();
  keep(form, event.submitter);
});

async function keep(form, submitter) {
  let entry;
  try {
    entry = await entryOf(form, submitter);
    await store.put(entry);
  } catch {
    return form.submit();
  }
  navigator.storage.persist?.();
  const { next } = await flush();
  location.assign(next.get(entry.key) ?? (await wayOn()));
}

async function entryOf(form, submitter) {
  const { key, fields, said } = read(form, submitter);
  const address = new URL(form.action);
  const cameBack = new URLSearchParams(location.search).get("outbox") === key;
  address.searchParams.delete("outbox");
  const chosen = cameBack ? key : await sheetKey(form, fields);
  return {
    key: chosen,
    fields: fields.map(([name, text]) => [name, name === "formKey" ? chosen : text]),
    said,
    address: address.href,
    title: document.title.replace(/^Error: | · Trialwood$/g, ""),
    account: device.account,
    initials: device.initials,
    edition: device.edition,
    typedAt: Date.now(),
    page: cameBack ? location.href : null,
    state: "waiting",
    reasons: [],
  };
}

// A page kept on the device opens with the same key each time, so the key is the sheet's of paper:
// one for each time a page is opened, the same after Back or a reload. Sent once more unchanged, or
// changed while it waits, it is the same entry; changed after it was sent, it is another.
async function sheetKey(form, fields) {
  const at = [...document.forms].indexOf(form);
  const sheet = history.state?.[at];
  const typed = fields.filter(([name]) => name !== "formKey");
  const goesOn = sheet && (same(sheet.typed, typed) || (await store.get(sheet.key)));
  const key = goesOn ? sheet.key : crypto.randomUUID();
  history.replaceState({ ...history.state, [at]: { key, typed } }, "");
  return key;
}

// Without a signal: on to what this page leads to, or back to the list one came from, if it is here.
async function wayOn() {
  const next = document.querySelector("main a[data-ahead]")?.href;
  const before = document.referrer;
  if (next && (await kept(next))) return next;
  const list = before && !isSignedOut() && (await kept(before));
  return list && !(await list.text()).includes(" data-outbox") ? before : `${device.root}outbox`;
}

const kept = (address) => caches.match(address, { ignoreVary: true });

async function flush() {
  const sent = await sendAll();
  sender = sent.sender;
  await show();
  return sent;
}

const isSignedOut = () => sender !== null && !sender.account;

async function show() {
  const entries = await store.all();
  const waiting = entries.filter((entry) => entry.state === "waiting");
  const words = [];
  if (waiting.length) words.push(`${waiting.length} not sent yet`);
  if (entries.length > waiting.length) words.push(`${entries.length - waiting.length} came back`);
  if (waiting.length && isSignedOut()) words.push("sign in to send");
  const link = document.createElement("a");
  link.href = `${device.root}outbox`;
  link.textContent = words.join(" · ") || allSent();
  line.classList.toggle("waits", entries.length > 0);
  if (line.textContent !== link.textContent) line.replaceChildren(...(link.textContent ? [link] : []));
  mark(new Set(waiting.map((entry) => new URL(entry.address).pathname)));
  document.dispatchEvent(new CustomEvent("outbox", { detail: { entries, sender } }));
}

function allSent() {
  const at = new Date(Number(localStorage.getItem("allSent")));
  const today = at.toDateString() === new Date().toDateString();
  return today ? `all sent ${at.toTimeString().slice(0, 5)}` : "";
}

// On a list, what has been typed but is not sent.
function mark(paths) {
  document.querySelectorAll("a[data-ahead]").forEach((link) => {
    link.classList.toggle("typed", paths.has(link.pathname));
  });
}

document.addEventListener("send", flush);
window.addEventListener("online", flush);
window.addEventListener("pageshow", flush);
document.addEventListener("visibilitychange", () => document.hidden || flush());
setInterval(() => document.hidden || flush(), 30000);
