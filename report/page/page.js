"use strict";
// The page's tables: sorting, filtering, opening a finding. Everything shown is set as text, never as markup;
// the drawings of lines are made by the program that wrote this page, with every word escaped.
(function () {
  const data = JSON.parse(document.getElementById("data").textContent);
  const step = 100;

  function make(tag, attributes, ...children) {
    const e = document.createElement(tag);
    for (const [k, v] of Object.entries(attributes || {})) {
      if (k === "class") e.className = v;
      else if (k.startsWith("on")) e.addEventListener(k.slice(2), v);
      else if (v !== undefined && v !== null) e.setAttribute(k, v);
    }
    for (const c of children) e.append(c);
    return e;
  }

  const collator = new Intl.Collator("en", { numeric: true });

  function compare(a, b) {
    const na = typeof a === "number", nb = typeof b === "number";
    if (na && nb) return a - b;
    if (na !== nb) return na ? -1 : 1; // figures before words and blanks
    return collator.compare(String(a), String(b));
  }

  // sortable builds a table whose rows are made on demand, a step at a time.
  function sortable(options) {
    let rows = options.rows, shown = step, sortBy = -1, down = false;
    const body = make("tbody");
    const more = make("button", { type: "button", class: "plain more", onclick: () => { shown += step * 5; draw(); } });
    const status = make("p", { class: "note", role: "status", "aria-live": "polite" });
    const heads = options.columns.map((c, i) => {
      const arrow = make("span", { class: "dir", "aria-hidden": "true" });
      const button = make("button", { type: "button", onclick: () => { down = sortBy === i ? !down : false; sortBy = i; sort(); draw(); } }, c.label, " ", arrow);
      const th = make("th", { scope: "col", class: c.numeric ? "num" : "" }, ...(c.plain ? [c.label] : [button, make("span", { class: "printed", "aria-hidden": "true" }, c.label)]));
      return { th, arrow };
    });
    function sort() {
      const key = options.columns[sortBy].key;
      rows = rows.map((r, i) => [r, i]).sort((x, y) => compare(key(x[0]), key(y[0])) * (down ? -1 : 1) || x[1] - y[1]).map((x) => x[0]);
      heads.forEach((h, i) => {
        if (i === sortBy) h.th.setAttribute("aria-sort", down ? "descending" : "ascending"); else h.th.removeAttribute("aria-sort");
        h.arrow.textContent = i === sortBy ? (down ? "▼" : "▲") : "";
      });
    }
    function draw(all) {
      const n = all ? rows.length : Math.min(shown, rows.length);
      body.replaceChildren(...rows.slice(0, n).flatMap(options.row));
      more.hidden = n >= rows.length;
      more.textContent = "Show more (" + (rows.length - n) + " left)";
      status.textContent = rows.length === 0 ? "Nothing to list." : n + " of " + options.total + " shown" + (options.hidden ? "; " + options.hidden + " more are in audit.xlsx" : "") + ".";
    }
    const table = make("table", { "aria-label": options.title, class: options.columns.length > 9 ? "many" : undefined }, make("thead", {}, make("tr", {}, ...heads.map((h) => h.th))), body);
    draw();
    window.addEventListener("beforeprint", () => { if (rows.length <= 2000) draw(true); });
    window.addEventListener("afterprint", () => draw());
    return {
      element: make("div", {}, status, make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": options.title }, table), more),
      set(next) { rows = next; shown = step; if (sortBy >= 0) sort(); draw(); },
      reveal(row) { const i = rows.indexOf(row); if (i >= shown) { shown = i + 1; draw(); } },
    };
  }

  function grade(f) {
    return make("span", { class: "grade g-" + f.grade }, (f.certainty === "possible" ? "possible " : "") + f.grade);
  }

  function list(title, items) {
    if (!items.length) return "";
    return make("div", {}, make("h3", {}, title), make("ul", {}, ...items.map((t) => make("li", {}, t))));
  }

  function text(title, words) {
    return words ? make("div", {}, make("h3", {}, title), make("p", {}, words)) : "";
  }

  function detail(f) {
    const evidence = make("table", {}, make("thead", {}, make("tr", {}, ...["Cell", "Written", "Says"].map((h) => make("th", { scope: "col" }, h)))),
      make("tbody", {}, ...f.evidence.map((e) => make("tr", {}, ...e.map((t) => make("td", {}, t))))));
    const box = make("div", { class: "cols" },
      text("What was found", f.message), text("Possibly worse", f.higher), text("To settle it", f.ask), text("Why it matters", f.title + ". " + f.why),
      text("Limit", [f.limit, f.source].filter(Boolean).join(" - ")), text("Expected at 1 kHz", f.ohm ? f.ohm + " ohm" : ""),
      f.remedies.length ? list("Remedies", f.remedies) : text("Remedy", f.noRemedy), list("Taken for granted", f.assumed), list("Cautions", f.cautions),
      text("Score", f.score + " = " + f.factors), text("Decided earlier", f.decided), make("div", {}, make("h3", {}, "Evidence"), f.link ? make("p", {}, make("a", { href: f.link }, "marked copy of " + f.file)) : make("p", {}, f.file), make("div", { class: "evidence", tabindex: "0", role: "region", "aria-label": "Evidence of finding " + f.rank }, evidence)));
    const cell = make("td", { colspan: "8" }, box);
    if (f.picture) {
      const picture = make("div", { class: "picture", tabindex: "0", role: "region", "aria-label": "Network" });
      picture.innerHTML = data.pictures[f.picture];
      cell.append(make("h3", {}, "The line: volts and loss at every point"), picture);
    }
    return make("tr", { class: "detail" }, cell);
  }

  function findingRow(f) {
    const button = make("button", { type: "button", class: "open", "aria-expanded": "false", "aria-label": "Details of finding " + f.rank }, "+");
    const row = make("tr", { id: "f-" + f.id }, make("td", {}, button), make("td", { class: "num" }, String(f.rank)), make("td", { class: "num" }, String(f.score)), make("td", {}, grade(f)),
      make("td", {}, f.site), make("td", {}, f.place), make("td", { class: "wide" }, f.higher ? f.message + "; " + f.higher : f.message), make("td", { class: "wide" }, f.remedies[0] || f.noRemedy || f.ask || ""));
    let open = null;
    button.addEventListener("click", () => {
      if (open) { open.remove(); open = null; } else { open = detail(f); row.after(open); }
      button.setAttribute("aria-expanded", String(!!open));
      button.textContent = open ? "−" : "+";
    });
    return [row];
  }

  function findings() {
    const all = data.findings;
    const app = document.getElementById("app");
    if (!all.length) { app.append(make("p", {}, "No findings. What could not be shown is among the questions.")); return; }
    const table = sortable({
      title: "Findings", total: all.length, hidden: data.hidden, rows: all, row: findingRow,
      columns: [{ label: "Details", plain: true, key: () => 0 }, { label: "Rank", numeric: true, key: (f) => f.rank }, { label: "Score", numeric: true, key: (f) => f.score },
        { label: "Grade", key: (f) => -f.level }, { label: "Site", key: (f) => f.site }, { label: "Place", key: (f) => f.place }, { label: "What was found", key: (f) => f.message }, { label: "Remedy", key: (f) => f.remedies[0] || "" }],
    });
    const search = make("input", { type: "search", id: "q", oninput: filter });
    const pick = (id, label, values) => {
      const s = make("select", { id, onchange: filter }, make("option", { value: "" }, "all"), ...[...new Set(values)].sort().map((v) => make("option", { value: v }, v)));
      return [make("label", { for: id }, label, s), s];
    };
    const [ruleLabel, rule] = pick("rule", "Rule", all.map((f) => f.rule));
    const [siteLabel, site] = pick("site", "Site", all.map((f) => f.site));
    const boxes = ["danger", "fault", "caution", "unknown"].map((g) => make("input", { type: "checkbox", id: "g-" + g, value: g, checked: "", onchange: filter }));
    function filter() {
      const words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
      const on = boxes.filter((b) => b.checked).map((b) => b.value);
      table.set(all.filter((f) => on.includes(f.grade) && (!rule.value || f.rule === rule.value) && (!site.value || f.site === site.value) &&
        words.every((w) => (f.site + " " + f.job + " " + f.place + " " + f.room + " " + f.message + " " + f.file + " " + f.cell + " " + f.rule).toLowerCase().includes(w))));
    }
    // a link to a finding shows it, whatever is filtered, and opens it
    function follow() {
      const f = all.find((x) => location.hash === "#f-" + x.id);
      if (!f) return;
      search.value = rule.value = site.value = "";
      boxes.forEach((b) => { b.checked = true; });
      table.set(all);
      table.reveal(f);
      const row = document.getElementById("f-" + f.id), button = row.querySelector("button");
      if (button.getAttribute("aria-expanded") === "false") button.click();
      row.scrollIntoView({ block: "center" });
      button.focus({ preventScroll: true });
    }
    window.addEventListener("hashchange", follow);
    document.addEventListener("click", (e) => { const a = e.target.closest("a[href^='#f-']"); if (a && a.getAttribute("href") === location.hash) follow(); });
    app.append(make("form", { class: "bar", role: "search", onsubmit: (e) => e.preventDefault() }, make("label", { for: "q" }, "Words", search), ruleLabel, siteLabel,
      make("fieldset", {}, make("legend", {}, "Grade"), ...boxes.map((b) => make("label", { for: b.id }, b, " " + b.value)))), table.element);
    follow();
  }

  // letter shows the questions as one text, to be copied into a letter.
  function letter() {
    const area = make("textarea", { readonly: "", rows: String(Math.min(16, data.toSend.length * 2)), "aria-label": "Questions as text" });
    area.value = data.toSend.join("\n\n") + "\n";
    return make("div", { class: "letter" }, make("button", { type: "button", class: "plain", onclick: () => { area.focus(); area.select(); } }, "Select the questions as text"), area);
  }

  function tables() {
    const place = document.getElementById("tables"), nav = document.getElementById("sections");
    nav.append(make("a", { href: "#findings" }, "Findings (" + data.findings.length + ")"));
    for (const t of data.tables) {
      const total = t.rows.length + t.hidden;
      nav.append(make("a", { href: "#t-" + t.name, onclick: () => { box.open = true; } }, t.title + " (" + total + ")"));
      const box = make("details", { id: "t-" + t.name }, make("summary", {}, t.title + " (" + total + ")"), make("p", { class: "note" }, t.note));
      let filled = false;
      const fill = () => {
        if (filled) return;
        filled = true;
        box.append(sortable({
          title: t.title, total, hidden: t.hidden, rows: t.rows, columns: t.columns.map((c, i) => ({ label: c.label, numeric: c.numeric, key: (r) => r[i] })),
          row: (r) => [make("tr", {}, ...r.map((v, i) => make("td", { class: t.columns[i].numeric ? "num" : String(v).length > 60 ? "wide" : "", "data-label": t.columns[i].label }, String(v))))],
        }).element);
        if (t.name === "questions" && data.toSend.length) box.append(letter());
      };
      box.addEventListener("toggle", () => { if (box.open) fill(); });
      place.append(box);
      if (t.open) { box.open = true; fill(); }
    }
  }

  findings();
  tables();
})();
