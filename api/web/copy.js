// Puts buttons beside a picture's address that copy it in the forms that other
// programs take. Without this the address stands there to be copied by hand.
"use strict";
(function () {
  var status = document.getElementById("copied");

  function escaped(text) {
    return text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");
  }

  function img(src, alt, w, h) {
    return '<img src="' + escaped(src) + '" alt="' + escaped(alt) + '" width="' + w + '" height="' + h + '">';
  }

  // The address with another parameter, or as another kind of file.
  function as(src, name, value) { return src + "&" + name + "=" + value; }

  var forms = {
    Address: function (p) { return p.src; },
    Markdown: function (p) { return "![" + p.alt.replace(/([\\[\]])/g, "\\$1") + "](" + p.src.replace(/\(/g, "%28").replace(/\)/g, "%29") + ")"; },
    HTML: function (p) { return img(p.src, p.alt, p.w, p.h); },
    "Light and dark": function (p) {
      return '<picture>\n  <source media="(prefers-color-scheme: dark)" srcset="' + escaped(as(p.src, "theme", "dark")) + '">\n  ' +
        img(p.src, p.alt, p.w, p.h) + "\n</picture>";
    },
    LaTeX: function (p) {
      var png = as(p.src.replace("/v1/picture.svg", "/v1/picture.png"), "scale", "3");
      return "% curl -o picture.png '" + png + "'\n\\includegraphics[width=0.8\\linewidth]{picture.png}";
    },
  };

  function copy(text, button) {
    var box = button.parentNode.querySelector("textarea");
    if (!box) {
      box = document.createElement("textarea");
      box.readOnly = true;
      box.setAttribute("aria-label", button.textContent);
      button.parentNode.append(box);
    }
    box.value = text;
    box.rows = text.split("\n").length + Math.floor(text.length / 90);
    box.select();
    var done = function () {
      button.parentNode.querySelectorAll("button").forEach(function (b) { b.classList.toggle("done", b === button); });
      if (status) status.textContent = status.dataset.says + " " + button.textContent;
    };
    if (navigator.clipboard) navigator.clipboard.writeText(text).then(done, function () {});
    else if (document.execCommand("copy")) done();
    button.focus();
  }

  document.querySelectorAll(".copy").forEach(function (row) {
    var near = row.closest("li") || document.getElementById("story") || document;
    var image = near.querySelector(".picture img.light");
    if (!image) return;
    Object.keys(forms).forEach(function (name) {
      var button = document.createElement("button");
      button.type = "button";
      button.textContent = name;
      button.addEventListener("click", function () {
        copy(forms[name]({ src: row.dataset.src, alt: image.alt, w: image.getAttribute("width"), h: image.getAttribute("height") }), button);
      });
      row.append(button);
    });
    row.hidden = false;
  });
})();
