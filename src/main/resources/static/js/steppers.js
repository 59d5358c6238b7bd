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
  counts.forEach((input) => input.addEventListener("input", show));
  show();
});
