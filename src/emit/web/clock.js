// SPDX-License-Identifier: MIT
// A clock for each wait. It reads the time of day, so that it is right again when a page that slept wakes up.

const minute = 60;

function clockText(seconds) {
  const past = seconds < 0 ? "+" : "";
  const size = Math.abs(seconds);
  const hours = Math.floor(size / 3600);
  const two = (number) => String(number).padStart(2, "0");
  const minutes = Math.floor(size / minute) % minute;
  const rest = two(size % minute);
  return past + (hours ? `${hours}:${two(minutes)}:${rest}` : `${minutes}:${rest}`);
}

function spokenTime(seconds) {
  const part = (number, name) => (number ? `${number} ${name}${number === 1 ? "" : "s"}` : "");
  const hours = part(Math.floor(seconds / 3600), "hour");
  const minutes = part(Math.floor(seconds / minute) % minute, "minute");
  return [hours, minutes, part(seconds % minute, "second")].filter(Boolean).join(" ");
}

/** What is worth saying aloud: the half of a long wait, its last minute, its last ten seconds, its end. */
function momentsOf(seconds) {
  const half = Math.round(seconds / 2);
  const moments = [10, minute, half > 2 * minute ? half : 0];
  return [...moments.filter((left) => left > 0 && left < seconds), 0].sort((a, b) => b - a);
}

class Clock {
  constructor(place, step, seconds) {
    this.step = step;
    this.seconds = seconds;
    this.face = made("span", clockText(seconds), { class: "face", role: "timer", "aria-live": "off" });
    this.face.setAttribute("aria-label", `Clock of step ${step}`);
    this.button = made("button", "", { type: "button" });
    this.said = made("span", "", { class: "said", role: "status" });
    const box = made("div", "", { class: "timer" });
    box.append(this.face, this.button, this.said);
    place.after(box);
    this.button.addEventListener("click", () => (this.running ? this.stop() : this.start()));
    this.name("Start");
  }

  name(verb) {
    this.button.textContent = `${verb} the clock of step ${this.step}`;
  }

  start() {
    this.endsAt = Date.now() + this.seconds * 1000;
    this.moments = momentsOf(this.seconds);
    this.running = setInterval(() => this.tick(), 200);
    this.name("Stop");
    this.said.textContent = `Clock started: ${spokenTime(this.seconds)}.`;
    this.tick();
  }

  stop() {
    clearInterval(this.running);
    this.running = 0;
    this.name("Restart");
    this.said.textContent = `Clock stopped at ${this.face.textContent}.`;
  }

  tick() {
    const left = Math.ceil((this.endsAt - Date.now()) / 1000);
    this.face.textContent = clockText(left);
    let passed = null;
    while (this.moments.length > 0 && left <= this.moments[0]) passed = this.moments.shift();
    if (passed === null) return;
    this.said.textContent = passed > 0 && left > 0 ? `Step ${this.step}: ${spokenTime(left)} left.` : `Step ${this.step}: time is up.`;
  }
}

for (const place of document.querySelectorAll(".work [data-seconds]")) {
  const step = place.closest("li").querySelector(".number").textContent;
  new Clock(place, step, Math.round(Number(place.dataset.seconds)));
}
