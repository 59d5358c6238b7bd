// Pages that go on working without a signal: those with a form for the outbox, and those that a
// list leads to by data-ahead. sw.js keeps them; this page tells it what it needs.
import { device } from "./sending.js";
import { read, shown } from "./dates.js";

const worker = navigator.serviceWorker;

async function keep() {
  await worker.register(`${device.root}sw.js?edition=${device.edition}`, { updateViaCache: "none" });
  const { active } = await worker.ready;
  const files = performance.getEntriesByType("resource").map((file) => file.name);
  const ahead = [...document.querySelectorAll("a[data-ahead]")].map((link) => link.href);
  const here = document.querySelector("[data-ahead], [data-outbox]") ? [location.href] : [];
  const isFile = (address) => /\/(css|js)\/|\.svg$/.test(address);
  active.postMessage({ files: files.filter(isFile), pages: [...here, ...ahead] });
}

// Served from the device: say of when the page is, and date what is typed today as of today.
function old(at) {
  const time = at.toTimeString().slice(0, 5);
  const words = document.createElement("p");
  words.className = "kept";
  words.textContent = `No signal. This page is as it was on ${day(at)}, ${time}. You can type; it is sent later.`;
  document.querySelector(".outbox").after(words);
  document.querySelectorAll("input.date").forEach((box) => {
    const typed = read(box.value);
    if (typed && shown(typed) === day(at)) box.value = day(new Date());
  });
}

const day = (at) => shown(new Date(Date.UTC(at.getFullYear(), at.getMonth(), at.getDate())));

if (worker && device.edition) {
  worker.addEventListener("message", ({ data }) => old(new Date(data.kept)));
  keep();
}
