// The page around the program: it draws the fields that the program names, asks it on every input, and shows the answer.
// What was typed lives in the address and here; dropped files live only here. Every text is set as text.
"use strict";

const page = { sections: [], section: null, values: {}, files: {}, fromLink: false, invented: false, units: "both", samples: {}, extras: {} };
const at = (id) => document.getElementById(id);

// made is an element with attributes, properties where the name begins with ".", and children.
function made(tag, attributes, ...children) {
  const e = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name.startsWith(".")) e[name.slice(1)] = value;
    else if (value === true) e.setAttribute(name, "");
    else if (value !== false && value !== undefined && value !== null) e.setAttribute(name, value);
  }
  e.append(...children.filter((c) => c !== null && c !== undefined && c !== false));
  return e;
}

function ask(name, request) { return JSON.parse(globalThis.lakelarder[name](JSON.stringify(request || {}))); }

// ---- The address: #section?field=value&units=us

function readAddress() {
  const [name, query] = location.hash.replace(/^#/, "").split(/\?(.*)/s);
  const given = new URLSearchParams(query || "");
  page.section = page.sections.find((s) => s.name === name) || page.sections[0];
  page.values = {};
  page.files = {};
  for (const f of page.section.fields) if (given.has(f.name)) page.values[f.name] = given.get(f.name);
  if (["us", "metric", "both"].includes(given.get("units"))) page.units = given.get("units");
  page.invented = given.get("invented") === "yes";
  page.fromLink = Object.keys(page.values).length > 0;
}

function address() {
  const given = new URLSearchParams();
  for (const f of page.section.fields) if (page.values[f.name]) given.set(f.name, page.values[f.name]);
  if (page.units !== "both") given.set("units", page.units);
  if (page.invented) given.set("invented", "yes");
  const query = given.toString();
  return "#" + page.section.name + (query ? "?" + query : "");
}

// ---- The fields

function fieldOf(f) {
  const id = "field-" + f.name;
  const described = `${id}-help ${id}-understood ${id}-fault`;
  const value = page.values[f.name] || "";
  let input;
  if (f.choices) {
    input = made("select", { id, name: f.name, "aria-describedby": described }, made("option", { value: "" }, "not stated"));
    for (const c of f.choices) input.append(made("option", { value: c, selected: c === value }, c));
    if (value && !f.choices.includes(value)) input.append(made("option", { value, selected: true }, value));
  } else {
    input = made("input", { id, name: f.name, type: "text", value, "aria-describedby": described, spellcheck: "false" });
  }
  input.addEventListener("input", () => { page.values[f.name] = input.value; changed(f.name); });
  const parts = [made("label", { for: id }, f.label), input];
  if (f.stops) parts.push(sliderOf(f, input));
  parts.push(made("p", { class: "help", id: id + "-help" }, f.help || ""), made("p", { class: "understood", id: id + "-understood" }),
    made("p", { class: "fault", id: id + "-fault" }), made("div", { class: "buttons", id: id + "-choices" }));
  return made("div", { class: "field" }, ...parts);
}

// sliderOf jumps from one published band to the next and writes the upper end of the band into the field.
function sliderOf(f, input) {
  const slider = made("input", { type: "range", min: "0", step: "1", id: "slider-" + f.name, "aria-label": f.label + ", by published bands" });
  const stops = () => f.stops[page.values.gauge] || f.stops[Object.keys(f.stops)[0]];
  const set = () => {
    slider.max = stops().length - 1;
    const feet = parseFloat((page.values[f.name] || "").replace(/,/g, ""));
    const here = stops().findIndex((s) => parseFloat(s.value.replace(/,/g, "")) >= feet);
    slider.value = here < 0 ? 0 : here;
    slider.setAttribute("aria-valuetext", page.values[f.name] ? stops()[slider.value].says : "not stated");
  };
  slider.addEventListener("input", () => {
    const stop = stops()[slider.value];
    input.value = page.values[f.name] = stop.value;
    slider.setAttribute("aria-valuetext", stop.says);
    changed(f.name);
  });
  page.extras.slider = set;
  set();
  return slider;
}

function dropOf(d) {
  const id = "drop-" + d.name;
  const picked = made("p", { class: "understood", id: id + "-name", role: "status" }, page.files[d.name] ? page.files[d.name].name : "");
  const take = async (file) => { if (file) dropped(d.name, file.name, new Uint8Array(await file.arrayBuffer())); };
  const input = made("input", { id, type: "file", accept: ".csv,.txt,.tsv,text/*", "aria-describedby": id + "-help" });
  input.addEventListener("change", () => take(input.files[0]));
  const box = made("div", { class: "drop" }, made("label", { for: id }, d.label), input,
    made("p", { class: "help", id: id + "-help" }, d.help + ", or drop it here. It stays in this page and is not in the address."), picked,
    made("p", { class: "fault", id: "field-" + d.name + "-fault" }));
  if (d.sample) {
    const sample = made("button", { type: "button", class: "plain", id: "sample-" + d.name }, "Take an invented record");
    sample.addEventListener("click", () => { page.invented = true; dropped(d.name, d.sample, new TextEncoder().encode(page.samples[d.sample] || "")); });
    box.append(made("div", { class: "buttons" }, sample));
  }
  for (const name of ["dragover", "dragleave", "drop"]) box.addEventListener(name, (e) => {
    e.preventDefault();
    box.classList.toggle("over", name === "dragover");
    if (name === "drop") take(e.dataTransfer.files[0]);
  });
  return box;
}

function dropped(field, name, bytes) {
  let text = "";
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  page.files[field] = { name, data: btoa(text), replies: [], confirmed: false };
  at("drop-" + field + "-name").textContent = name;
  changed("");
}

function drawForm() {
  const s = page.section;
  document.title = s.title + " · Lakelarder";
  at("title").textContent = s.title;
  at("about").textContent = s.about;
  page.extras = {};
  const form = at("form");
  form.replaceChildren();
  const groups = new Map([["", form]]);
  for (const f of s.fields) {
    const group = f.group || "";
    if (!groups.has(group)) {
      const open = matchMedia("(min-width: 56rem)").matches && s.fields.some((g) => g.group === group && page.values[g.name]);
      groups.set(group, form.appendChild(made("details", { class: "group", open }, made("summary", {}, group))));
    }
    groups.get(group).append(fieldOf(f));
  }
  for (const d of s.drops || []) form.append(dropOf(d));
  const buttons = made("div", { class: "buttons" });
  if (s.example) {
    const fill = made("button", { type: "button", id: "example" }, "Fill in an invented example");
    fill.addEventListener("click", () => { page.values = { ...s.example }; page.invented = true; page.fromLink = false; drawForm(); changed(""); at("example").focus(); });
    buttons.append(fill);
  }
  const clear = made("button", { type: "button", class: "plain", id: "clear" }, "Clear");
  clear.addEventListener("click", () => { page.values = {}; page.files = {}; page.invented = false; page.fromLink = false; drawForm(); changed(""); at("clear").focus(); });
  const print = made("button", { type: "button", class: "plain" }, "Print");
  print.addEventListener("click", () => { stamp(); window.print(); });
  buttons.append(clear, print);
  form.append(buttons);
  for (const link of at("sections").querySelectorAll("a")) {
    if (link.dataset.section === s.name) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
}

// ---- The answer

function changed(field) {
  if (page.section.example && field && page.values[field] !== page.section.example[field]) page.invented = page.invented && Object.keys(page.files).length > 0;
  if (page.extras.slider) page.extras.slider();
  history.replaceState(null, "", address());
  show();
}

function show() {
  const began = performance.now();
  if (page.section.name === "tables" && page.tables) loadTables();
  const a = ask("answer", { section: page.section.name, system: page.units, values: page.values, files: page.files, fromLink: page.fromLink });
  showFields(a);
  const verdict = at("verdict");
  verdict.replaceChildren();
  if (a.verdict) verdict.append(made("span", { class: "word line " + a.verdict.split(" ")[0] }, a.verdict));
  if (a.headline) verdict.append(made("span", { class: "line" }, a.headline));
  const parts = [];
  if (page.invented) parts.push(made("p", { class: "invented" }, "Invented sample data: no such water, household or record exists."));
  for (const f of a.faults || []) if (!at("field-" + f.field + "-fault")) parts.push(made("p", { class: "fault" }, f.text));
  if (a.confirm) parts.push(confirmOf(a.confirm));
  for (const q of a.asks || []) parts.push(askOf(q));
  if (a.picture) parts.push(pictureOf(a.picture));
  for (const b of a.blocks || []) parts.push(...blockOf(b));
  if (a.cautions) parts.push(made("h2", {}, "Cautions"), ...a.cautions.map(cautionOf));
  if (!parts.length && a.faults) parts.push(made("p", { class: "help" }, "Nothing is computed until the marked fields can be read."));
  at("answer").replaceChildren(...parts);
  document.body.dataset.answered = String(Number(document.body.dataset.answered || 0) + 1);
  document.body.dataset.took = (performance.now() - began).toFixed(1);
}

// loadTables hands the tables to the program, once and only when somebody looks at them.
function loadTables() {
  const began = performance.now();
  const wrong = JSON.parse(globalThis.lakelarder.load(page.tables));
  page.tables = "";
  if (wrong) throw new Error(wrong);
  document.body.dataset.tables = (performance.now() - began).toFixed(0);
}

function showFields(a) {
  for (const f of page.section.fields) {
    const input = at("field-" + f.name);
    const faults = (a.faults || []).filter((x) => x.field === f.name);
    if (faults.length) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
    at("field-" + f.name + "-fault").textContent = faults.map((x) => x.text).join(" ");
    at("field-" + f.name + "-choices").replaceChildren(...faults.flatMap((x) => x.choices || []).map((c) => {
      const b = made("button", { type: "button", class: "plain" }, c);
      b.addEventListener("click", () => { input.value = page.values[f.name] = c; changed(f.name); input.focus(); });
      return b;
    }));
    if (faults.length && input.closest("details")) input.closest("details").open = true;
    const understood = (a.understood || {})[f.name];
    at("field-" + f.name + "-understood").textContent = understood && understood !== page.values[f.name] ? "understood as " + understood : "";
  }
  for (const d of page.section.drops || [])
    at("field-" + d.name + "-fault").textContent = (a.faults || []).filter((x) => x.field === d.name).map((x) => x.text).join(" ");
}

function confirmOf(values) {
  const yes = made("button", { type: "button", id: "confirm" }, "These are mine");
  yes.addEventListener("click", () => { page.fromLink = false; show(); at("content").focus(); });
  return made("div", { class: "ask" }, made("ul", {}, ...values.map((v) => made("li", { class: "line" }, v))), made("div", { class: "buttons" }, yes));
}

function askOf(q) {
  const reply = (answer) => {
    const file = page.files[q.file];
    if (q.ask === "reading") file.confirmed = true;
    else file.replies.push({ ask: q.ask, answer });
    show();
    at("content").focus();
  };
  const box = made("div", { class: "ask", role: "group", "aria-label": q.text }, made("p", { class: "line" }, q.text));
  if (q.choices) {
    for (const c of q.choices) {
      const b = made("button", { type: "button", class: "plain" }, c.answer === c.means ? c.answer : c.answer + ": " + c.means);
      b.addEventListener("click", () => reply(c.answer));
      box.append(made("div", { class: "buttons" }, b));
    }
    return box;
  }
  const input = made("input", { type: "text", "aria-label": q.text });
  const b = made("button", { type: "button" }, "Answer");
  b.addEventListener("click", () => reply(input.value));
  box.append(made("div", { class: "field" }, input), made("div", { class: "buttons" }, b));
  return box;
}

function fromOf(from) {
  if (!from) return null;
  return made("details", { class: "from" }, made("summary", {}, from.length > 1 ? "sources" : "source"), ...from.map((f) => made("p", {}, f)));
}

function blockOf(b) {
  const parts = [];
  if (b.heading) parts.push(made("h2", { class: "line" }, b.heading));
  if (b.lines) parts.push(made("ul", { class: "lines" }, ...b.lines.map((l) => made("li", { class: l.kind || "" },
    l.name ? made("span", { class: "name-of line" }, l.name) : null, made("span", { class: "text line" }, l.text), fromOf(l.from)))));
  if (b.rows || b.head) {
    const row = (cells, link) => made("tr", {}, ...cells.map((c, i) => made("td", {}, link && i === 0 ? made("a", { href: link, class: "line" }, c) : made("span", { class: "line" }, c))));
    const head = b.head ? [made("thead", {}, made("tr", {}, ...b.head.map((h) => made("th", { scope: "col", class: "line" }, h))))] : [];
    parts.push(made("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": b.heading || "rows" },
      made("table", {}, ...head, made("tbody", {}, ...(b.rows || []).map((r, i) => row(r, b.links && b.links[i]))))));
  }
  return parts;
}

function cautionOf(c) {
  return made("div", { class: "caution" + (c.deciding ? " deciding" : "") }, made("span", { class: "text line" }, c.text), " ", made("span", { class: "id" }, c.id), fromOf(c.from));
}

function pictureOf(svg) {
  const drawn = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  return made("div", { class: "picture" }, document.importNode(drawn, true));
}

// ---- The frame

function stamp() {
  at("stamp").textContent = "Lakelarder " + globalThis.lakelarder.version + ", " + new Date().toISOString().slice(0, 10) + ".";
}

function go() {
  readAddress();
  for (const r of document.getElementsByName("units")) r.checked = r.value === page.units;
  drawForm();
  show();
}

async function start() {
  const began = performance.now();
  const program = new Go();
  const tablesFile = fetch("tables.json");
  const [packed, samples] = await Promise.all([fetch("lakelarder.wasm.z"), fetch("samples.json")]);
  page.samples = await samples.json();
  const plain = new Response(packed.body.pipeThrough(new DecompressionStream("gzip")), { headers: { "Content-Type": "application/wasm" } });
  const { instance } = await WebAssembly.instantiateStreaming(plain, program.importObject);
  const compiled = performance.now();
  const ready = new Promise((done) => { globalThis.lakelarderReady = done; });
  program.run(instance);
  await ready;
  page.sections = ask("sections");
  for (const s of page.sections) at("sections").append(made("li", {}, made("a", { href: "#" + s.name, "data-section": s.name }, s.title)));
  at("loading").hidden = true;
  at("title").hidden = at("columns").hidden = false;
  for (const r of document.getElementsByName("units")) r.addEventListener("change", () => { page.units = r.value; changed(""); });
  for (const r of document.getElementsByName("theme")) r.addEventListener("change", () => {
    if (r.value === "auto") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = r.value;
  });
  at("form").addEventListener("submit", (e) => e.preventDefault());
  at("skip").addEventListener("click", (e) => { e.preventDefault(); at("content").focus(); });
  addEventListener("hashchange", () => { go(); at("main").focus(); });
  addEventListener("beforeprint", stamp);
  stamp();
  go();
  document.body.dataset.first = (performance.now() - compiled).toFixed(0);
  page.tables = await (await tablesFile).text();
  if (page.section.name === "tables") show();
  document.body.dataset.loaded = "yes";
  document.body.dataset.compiled = (compiled - began).toFixed(0);
}

start().catch((fault) => { at("loading").textContent = "The program could not be loaded: " + fault.message; at("loading").className = "fault"; });
