// Puts keys for the signs under the field, since a phone's keyboard lacks most of
// them. Without this the field takes x, / and ? in their place.
"use strict";
(function () {
  var field = document.getElementById("problem");
  var row = document.querySelector(".keys");
  if (!field || !row) return;

  function put(text) {
    field.setRangeText(text, field.selectionStart, field.selectionEnd, "end");
    field.focus();
  }

  row.setAttribute("role", "group");
  row.setAttribute("aria-label", row.dataset.name);
  [["+"], ["−"], ["×"], ["÷"], ["="], ["<"], [">"], ["□", "?"], ["", "/", row.dataset.fraction]].forEach(function (key) {
    var button = document.createElement("button");
    button.type = "button";
    button.textContent = key[0];
    if (key[2]) {
      button.setAttribute("aria-label", key[2]);
      var bar = document.createElement("span");
      bar.className = "fraction";
      bar.append(document.createElement("span"), document.createElement("span"));
      bar.firstChild.textContent = bar.lastChild.textContent = "□";
      button.append(bar);
    }
    // A tap must not take the cursor out of the field.
    button.addEventListener("pointerdown", function (event) { event.preventDefault(); });
    button.addEventListener("click", function () {
      var text = key[1] || key[0];
      put(text === "/" || text === "?" ? text : " " + text + " ");
    });
    row.append(button);
  });
  row.hidden = false;
})();
