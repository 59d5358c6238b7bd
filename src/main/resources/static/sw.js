// Answers for the server while there is no signal: always the network first, then what is kept.
// Files and the two pages without records last as long as the edition; pages with records are
// thrown away whenever somebody signs in or out.
const EDITION = new URL(self.location).searchParams.get("edition");
const FILES = `files-${EDITION}`;
const PAGES = `pages-${EDITION}`;
const CAME_BACK = "came-back";
const HOUR = 3600000;
const PATIENCE = 8000;
const here = (path) => new URL(path, self.registration.scope).href;
let sitting = 0;

self.addEventListener("install", (event) => {
  const own = ["outbox", "no-signal", "js/entries.js", "js/kept-pages.js"].map(here);
  event.waitUntil(caches.open(FILES).then((files) => files.addAll(own)));
  self.skipWaiting();
});

self.addEventListener("activate", (event) => {
  event.waitUntil(sweep([FILES, PAGES, CAME_BACK]).then(() => self.clients.claim()));
});

async function sweep(kept) {
  const names = (await caches.keys()).filter((name) => !kept.includes(name));
  await Promise.all(names.map((name) => caches.delete(name)));
}

self.addEventListener("message", (event) => {
  event.waitUntil(ahead(event.data));
});

self.addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  if (method === "POST" && ["sign-in", "sign-out"].map(here).includes(url)) {
    sitting++;
    event.waitUntil(caches.delete(PAGES));
  } else if (method === "GET" && mode === "navigate") {
    event.respondWith(page(event));
  } else if (method === "GET" && /\/(css|js)\/|\.svg$/.test(url)) {
    event.respondWith(file(event.request));
  }
});

const kept = (url, cacheName) => caches.match(url, { cacheName, ignoreVary: true });

async function file(request) {
  const old = await kept(request.url, FILES);
  try {
    return await within(fetch(request), old ? PATIENCE : HOUR);
  } catch {
    return old ?? Response.error();
  }
}

async function page(event) {
  const { url } = event.request;
  const cameBack = await kept(url, CAME_BACK);
  if (cameBack) return cameBack;
  const old = await kept(url, PAGES);
  try {
    const answer = await within(fetch(event.request), old ? PATIENCE : HOUR);
    if (answer.status >= 502 && answer.status <= 504) throw answer;
    event.waitUntil(keep(url, answer.clone(), sitting));
    return answer;
  } catch {
    if (old) event.waitUntil(sayOld(event.resultingClientId, old.headers.get("date")));
    return old ?? (await kept(url, FILES)) ?? (await kept(here("no-signal"), FILES));
  }
}

const within = (answer, patience) =>
  Promise.race([answer, new Promise((_, late) => setTimeout(late, patience))]);

// Kept are pages on which something can be typed for the outbox, or that lead to such.
async function keep(url, answer, begun) {
  if (!answer.ok || answer.redirected) return;
  const html = await answer.clone().text();
  if (!/<[^>]* data-(outbox|ahead)\b/.test(html) || begun !== sitting) return;
  await (await caches.open(PAGES)).put(url, answer);
}

async function ahead({ files, pages }) {
  const begun = sitting;
  const store = await caches.open(FILES);
  for (const url of files) if (!(await store.match(url))) await store.add(url);
  for (const url of pages) {
    const old = await kept(url, PAGES);
    if (old && Date.now() - new Date(old.headers.get("date")) < HOUR) continue;
    const answer = await fetch(url).catch(() => null);
    if (!answer || begun !== sitting) return;
    await keep(url, answer, begun);
  }
}

async function sayOld(clientId, kept) {
  const client = await self.clients.get(clientId);
  client?.postMessage({ kept });
}
