// What was typed and is not yet known to be stored: kept in the browser's own database, by the
// form's key. "strict" asks the browser to have it on the disk before it says so.
const database = new Promise((opened, failed) => {
  const asked = indexedDB.open("trialwood", 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore("entries", { keyPath: "key" });
  asked.onsuccess = () => opened(asked.result);
  asked.onerror = () => failed(asked.error);
});

async function ask(mode, question) {
  const deal = (await database).transaction("entries", mode, { durability: "strict" });
  const asked = question(deal.objectStore("entries"));
  return new Promise((done, failed) => {
    deal.oncomplete = () => done(asked.result);
    deal.onabort = () => failed(deal.error);
  });
}

export const put = (entry) => ask("readwrite", (entries) => entries.put(entry));
export const remove = (key) => ask("readwrite", (entries) => entries.delete(key));
export const get = (key) => ask("readonly", (entries) => entries.get(key));

// In the order in which they were typed.
export async function all() {
  const entries = await ask("readonly", (kept) => kept.getAll());
  return entries.sort((a, b) => a.typedAt - b.typedAt);
}
