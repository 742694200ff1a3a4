// SPDX-License-Identifier: MIT
// A card on the page: the field for its volume, and its figures as they are for that volume.

const words = (text) => withUnitsKept(text);

class Step {
  constructor(item) {
    this.item = item;
    this.line = item.querySelector("p");
    this.what = item.querySelector(".what");
    this.running = item.querySelector(".running");
  }
  /** What is printed there, so that it can stand there again. */
  printed() {
    return {
      what: this.what.textContent,
      amount: this.line.querySelector(".amount")?.cloneNode(true) ?? null,
      remarks: Array.from(this.item.querySelectorAll(".remark"), (it) => it.textContent),
      running: this.running?.textContent,
    };
  }
  show({ what, amount, remarks: lines, running }) {
    this.what.textContent = what;
    this.line.querySelector(".amount")?.remove();
    if (amount) this.line.prepend(amount.cloneNode(true));
    for (const old of this.item.querySelectorAll(".remark")) old.remove();
    this.line.after(...lines.map((line) => made("p", line, { class: "remark" })));
    if (this.running) this.running.textContent = running;
  }
}

function amountElement(before, amount) {
  if (!amount) return null;
  const all = made("span", "", { class: "amount" });
  if (before) all.append(made("small", before + " "));
  all.append(words(withUnit(amount)));
  return all;
}

class CardPage {
  constructor(article, number) {
    this.plan = JSON.parse(article.querySelector(".plan").textContent);
    this.article = article;
    this.runningHead = article.querySelector(".running-head");
    this.makes = article.querySelector(".makes");
    this.rows = article.querySelector(".gather tbody");
    this.steps = Array.from(article.querySelectorAll(".work > li"), (item) => new Step(item));
    this.printed = this.texts();
    this.addField(number);
  }

  texts() {
    const cells = (row) => Array.from(row.cells, (cell) => cell.textContent);
    const gather = Array.from(this.rows?.rows ?? [], cells);
    return { runningHead: this.runningHead.textContent, makes: this.makes.textContent, gather, lines: this.steps.map((step) => step.printed()) };
  }

  addField(number) {
    const box = this.article.querySelector(".rescale");
    this.field = box.querySelector("input");
    this.said = box.querySelector("[role=status]");
    this.field.id = `volume-${number}`;
    this.said.id = `volume-said-${number}`;
    box.querySelector("label").htmlFor = this.field.id;
    this.field.setAttribute("aria-describedby", this.said.id);
    this.field.value = volumeText(Exact.ratio(this.plan.card_ml));
    this.field.addEventListener("input", () => this.rescale());
    box.hidden = false;
    this.rescale();
  }

  rescale() {
    const { ml, trouble } = volumeOf(this.field.value);
    this.field.setAttribute("aria-invalid", String(Boolean(trouble)));
    if (trouble) return this.refuse(trouble);
    if (ml.equals(Exact.ratio(this.plan.card_ml))) return this.show(this.printed, "");
    try {
      this.show(this.worked(ml), `Worked out here for ${volumeText(ml)}.`);
    } catch (error) {
      if (!(error instanceof Unmeasurable)) throw error;
      const option = `--make ${volumeText(ml).replace(blank, "")}`;
      this.refuse(`${error.message}. Print the card of that volume, with ${option}: it says what to do instead.`);
    }
  }

  worked(ml) {
    const { volume, gather, lines } = new Batch(this.plan, ml).texts();
    const step = (line, i) => {
      if (!line) return this.printed.lines[i];
      const amount = amountElement(line.before, line.amount);
      const { what, running = "" } = line;
      return { what: words(what), amount, remarks: line.remarks.map(words), running: words(running) };
    };
    const runningHead = this.printed.runningHead.replace(/–[^–]*$/, `– ${volume}`);
    const makes = words(`makes ${volume}`);
    return { runningHead, makes, gather: gather.map((cells) => cells.map(words)), lines: lines.map(step) };
  }

  show({ runningHead, makes, gather, lines }, said) {
    this.article.classList.remove("refused");
    this.article.classList.toggle("rescaled", said !== "");
    this.said.textContent = said;
    this.runningHead.textContent = runningHead;
    this.makes.textContent = makes;
    this.showGathered(gather);
    this.steps.forEach((step, i) => step.show(lines[i]));
  }

  /** What stands on the bench still stands there at another volume. */
  showGathered(gather) {
    const ticked = new Set(Array.from(this.rows?.querySelectorAll(":checked") ?? [], (box) => box.parentElement.textContent));
    this.rows?.replaceChildren(...gather.map(([name, amount]) => this.row(name, amount, ticked.has(name))));
  }

  row(name, amount, ticked) {
    const row = document.createElement("tr");
    const head = made("th", "", { scope: "row" });
    head.append(tickable(name, ticked));
    row.append(head, made("td", amount, { class: "figure" }));
    return row;
  }

  refuse(why) {
    this.article.classList.remove("rescaled");
    this.article.classList.add("refused");
    this.said.textContent = why;
  }
}

const articles = Array.from(document.querySelectorAll("article")).filter((it) => it.querySelector(".plan"));
articles.forEach((article, i) => new CardPage(article, i + 1));
