// A day back, a day on: most dates typed on a bench are today or yesterday.
const months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
export const shown = (date) =>
  `${date.getUTCDate()} ${months[date.getUTCMonth()]} ${date.getUTCFullYear()}`;

export function read(text) {
  const words = text.trim().match(/^(\d{1,2}) ([A-Za-z]{3})[a-z]* (\d{4})$/);
  const iso = text.trim().match(/^(\d{4})-(\d{2})-(\d{2})$/);
  if (iso) return new Date(Date.UTC(iso[1], iso[2] - 1, iso[3]));
  const month = words ? months.findIndex((m) => m.toLowerCase() === words[2].toLowerCase()) : -1;
  return month < 0 ? null : new Date(Date.UTC(words[3], month, words[1]));
}

document.querySelectorAll("input.date").forEach((input) => {
  const label = input.labels[0].textContent.trim();
  const button = (by, mark, words) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = mark;
    made.setAttribute("aria-label", `${label}: ${words}`);
    made.addEventListener("click", () => {
      const date = read(input.value);
      if (!date) return input.focus();
      date.setUTCDate(date.getUTCDate() + by);
      input.value = shown(date);
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    return made;
  };
  const opened = read(input.value);
  if (opened) input.value = shown(opened);
  const row = document.createElement("div");
  row.className = "stepper";
  input.replaceWith(row);
  row.append(button(-1, "‹", "a day earlier"), input, button(1, "›", "a day later"));
});
