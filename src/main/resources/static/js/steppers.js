// Puts − and + around a count and keeps the line that says how many are accounted for.
const value = (input) => Number(input.value.trim() || 0);

function step(input, by) {
  const label = input.labels[0].textContent.trim();
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = by < 0 ? "−" : "+";
  button.setAttribute("aria-label", `${label}: one ${by < 0 ? "fewer" : "more"}`);
  button.addEventListener("click", () => {
    const next = value(input) + by;
    if (Number.isInteger(next) && next >= 0) {
      input.value = next;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }
  });
  return button;
}

document.querySelectorAll(".stepper input").forEach((input) => {
  input.before(step(input, -1));
  input.after(step(input, 1));
});

// Offers what remains to one box; the button says everything that it will write.
function rest(line, total, counts) {
  const row = document.createElement("div");
  row.className = "rest";
  line.after(row);
  const boxes = line.dataset.rest
    .split(" ")
    .map((name) => line.closest("form").elements.namedItem(name));
  const words = (input, number) => `${input.labels[0].textContent.trim()} ${number}`;
  const offered = (taker, left) =>
    boxes
      .filter((box) => box === taker || !box.value.trim())
      .map((box) => [box, box === taker ? value(box) + left : 0]);
  return () => {
    const left = total - counts.reduce((so, input) => so + value(input), 0);
    const begun = counts[0].value.trim() !== "";
    const takers = left > 0 ? boxes : boxes.filter((box) => !box.value.trim()).slice(0, 1);
    row.replaceChildren(
      ...(begun && left >= 0 ? takers : []).map((taker) => {
        const writes = offered(taker, left);
        const button = document.createElement("button");
        button.type = "button";
        button.textContent = writes.map(([box, number]) => words(box, number)).join(", ");
        button.addEventListener("click", () => {
          writes.forEach(([box, number]) => (box.value = number));
          taker.dispatchEvent(new Event("input", { bubbles: true }));
          line.scrollIntoView({ block: "nearest" });
        });
        return button;
      }),
    );
  };
}

document.querySelectorAll(".accounted[data-total]").forEach((line) => {
  const total = Number(line.dataset.total);
  const counts = [...line.closest("form").querySelectorAll(".stepper input")];
  const show = () => {
    const sum = counts.reduce((so, input) => so + value(input), 0);
    if (Number.isNaN(sum)) return;
    line.querySelector("b").textContent = `${sum} of ${total}`;
    line.classList.toggle("all", sum === total);
    line.classList.toggle("over", sum > total);
  };
  const offer = line.dataset.rest ? rest(line, total, counts) : () => {};
  counts.forEach((input) => input.addEventListener("input", show));
  counts.forEach((input) => input.addEventListener("input", offer));
  show();
  offer();
});
