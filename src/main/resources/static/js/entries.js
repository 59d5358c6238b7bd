// The page of the outbox: what was typed, since when it waits, why it came back.
import { forget } from "./sending.js";
import * as store from "./store.js";

const list = document.getElementById("entries");
const pattern = document.getElementById("entry").content;
const $ = (id) => document.getElementById(id);
const at = (moment) =>
  new Date(moment).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });

document.addEventListener("outbox", ({ detail: { entries, sender } }) => {
  const signedOut = sender && !sender.account;
  const waiting = entries.filter((entry) => entry.state === "waiting");
  $("none").hidden = entries.length > 0;
  $("send").hidden = signedOut || !waiting.length;
  $("sign-in").hidden = !signedOut || !waiting.length;
  list.replaceChildren(...entries.map((entry) => sheet(entry, sender)));
});

const by = ({ account, initials }) => (account === initials ? account : `${account} (${initials})`);

function sheet(entry, sender) {
  const item = pattern.cloneNode(true).firstElementChild;
  const part = (name) => item.querySelector(`.${name}`);
  const refused = entry.state === "refused";
  const others = sender?.account && entry.account !== sender.account;
  item.querySelector("h2").textContent = entry.title;
  part("when").textContent = `typed ${at(entry.typedAt)} as ${by(entry)}`;
  part("state").textContent = stateOf(entry, others);
  fill(part("reasons"), entry.reasons.map((reason) => [["li", reason]]));
  fill(part("facts"), entry.said.map(([name, text]) => [["dt", name], ["dd", text]]));
  part("right").hidden = !refused || !entry.page;
  part("right").href = entry.page ?? "";
  part("open").hidden = !refused || Boolean(entry.page);
  part("open").href = entry.address;
  part("again").hidden = !sender?.account || !(others || refused);
  part("again").textContent = others ? `Send it as ${sender.initials}` : "Send it again";
  part("again").addEventListener("click", () => again(entry, sender));
  part("away").addEventListener("click", () => ask(item));
  part("stay").addEventListener("click", () => ask(item, false));
  part("yes").addEventListener("click", async () => {
    await forget(entry);
    send();
  });
  return item;
}

function stateOf(entry, others) {
  if (entry.state === "refused") return "Came back. It is not stored.";
  return others ? `Waits until ${entry.account} signs in.` : "Waits to be sent.";
}

const fill = (parent, rows) =>
  parent.replaceChildren(
    ...rows.flat().map(([tag, text]) => Object.assign(document.createElement(tag), { textContent: text })),
  );

function ask(item, open = true) {
  item.querySelector(".sure").hidden = !open;
  item.querySelector(".choices").hidden = open;
  item.querySelector(open ? ".stay" : ".away").focus();
}

async function again(entry, { account }) {
  await store.put({ ...entry, account, state: "waiting", reasons: [] });
  send();
}

const send = () => document.dispatchEvent(new CustomEvent("send"));
$("send").addEventListener("click", send);
navigator.storage?.persisted?.().then((safe) => ($("evicts").hidden = safe));
send();
