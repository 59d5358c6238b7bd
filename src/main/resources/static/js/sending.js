// Sends what waits, in the order it was typed. An entry leaves the device when the server has
// answered "stored", and for no other reason but its author's word.
import * as store from "./store.js";

export const device = document.querySelector("meta[name=device]").dataset;
const CAME_BACK = "came-back";

// What a form says: what is sent, and the same as people read it.
export function read(form, submitter) {
  const fields = [...new FormData(form, submitter)].filter(([name]) => name !== "_csrf");
  const said = [...form.elements].filter(isFilled).map((box) => [nameOf(box), textOf(box)]);
  return { key: form.elements.formKey.value, fields, said };
}

const isChoice = (box) => box.type === "radio" || box.type === "checkbox";
const isFilled = (box) =>
  box.name && box.value && !/hidden|submit|button|fieldset/.test(box.type) && (!isChoice(box) || box.checked);
const words = (element) => element.textContent.trim().replace(/\s+/g, " ");

function nameOf(box) {
  const group = box.type === "radio" && box.closest("fieldset")?.querySelector("legend");
  return box.getAttribute("aria-label") ?? words(group || box.labels[0]);
}

function textOf(box) {
  if (box.type === "checkbox") return "yes";
  if (box.type === "radio") return words(box.labels[0].querySelector("b") ?? box.labels[0]);
  return box.selectedOptions ? words(box.selectedOptions[0]) : box.value;
}

// Who would send now; null where nobody answers, or somebody else does, such as a hotspot.
async function sender() {
  try {
    const answer = await fetch(`${device.root}outbox/token`, { signal: AbortSignal.timeout(6000) });
    return await answer.json();
  } catch {
    return null;
  }
}

// Resolves to who would send and where each entry went: { sender, next: Map of key to address }.
// An entry is sent by the account that typed it. The lock lets one page send at a time.
export function sendAll() {
  return navigator.locks.request("outbox", async () => {
    const next = new Map();
    const entries = await store.all();
    const me = entries.length ? await sender() : null;
    for (const entry of entries) {
      if (entry.state !== "waiting" || entry.account !== me?.account) continue;
      const answer = await send(entry, me.token);
      if (!answer) break;
      next.set(entry.key, await settle(entry, answer));
    }
    return { sender: me, next };
  });
}

async function send(entry, token) {
  try {
    const answer = await fetch(entry.address, {
      method: "POST",
      redirect: "manual",
      signal: AbortSignal.timeout(20000),
      headers: { "X-Outbox": entry.edition, "X-CSRF-TOKEN": token },
      body: new URLSearchParams(entry.fields),
    });
    return answer.headers.has("X-Outbox") ? answer : null;
  } catch {
    return null;
  }
}

async function settle(entry, answer) {
  if (answer.status === 204) {
    await forget(entry);
    localStorage.setItem("allSent", Date.now());
    return answer.headers.get("X-Outbox-Next");
  }
  const html = await answer.text();
  const page = new DOMParser().parseFromString(html, "text/html");
  if (answer.status !== 403 && answer.status < 500) return comeBack(entry, answer, html, page);
  await store.put({ ...entry, reasons: said(page) });
  return null;
}

const said = (page) => {
  const wrong = [...page.querySelectorAll(".errors li")];
  return (wrong.length ? wrong : [...page.querySelectorAll("main h1, main h1 + p")]).map(words);
};

// The page that says what is wrong is kept as it came, to be opened and put right at any time.
async function comeBack(entry, answer, html, page) {
  const form =
    page.querySelector("form[data-outbox]:has(.errors)") ?? page.querySelector("form[data-outbox]");
  const back = { ...entry, ...(form && read(form)), state: "refused", reasons: said(page) };
  if (form) {
    const address = new URL(entry.address);
    address.searchParams.set("outbox", back.key);
    back.page = address.href;
    const kept = await caches.open(CAME_BACK);
    await kept.put(back.page, new Response(html, { headers: answer.headers }));
  }
  await store.put(back);
  if (back.key !== entry.key) await forget(entry);
  return back.page ?? null;
}

export async function forget(entry) {
  await store.remove(entry.key);
  if (entry.page) await (await caches.open(CAME_BACK)).delete(entry.page);
}
