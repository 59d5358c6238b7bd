// What can be opened without a signal.
const names = (await caches.keys()).filter((name) => name.startsWith("pages-"));
const list = document.getElementById("kept-pages");
for (const name of names) {
  const pages = await caches.open(name);
  for (const request of await pages.keys()) {
    const html = await (await pages.match(request)).text();
    const link = document.createElement("a");
    link.href = request.url;
    link.textContent = new DOMParser().parseFromString(html, "text/html").title.replace(" · Trialwood", "");
    const item = document.createElement("li");
    item.append(link);
    list.append(item);
  }
}
document.getElementById("none-kept").hidden = list.childElementCount > 0;
