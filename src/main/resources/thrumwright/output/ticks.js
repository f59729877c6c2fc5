"use strict";
(() => {
  const main = document.querySelector("main");
  const boxes = Array.from(main.querySelectorAll("input"));
  const key = main.dataset.ticks;
  try {
    const kept = window.localStorage.getItem(key) || "";
    boxes.forEach((box, i) => {
      box.checked = kept.charAt(i) === "1";
      box.addEventListener("change", () => {
        window.localStorage.setItem(key, boxes.map(each => each.checked ? "1" : "0").join(""));
      });
    });
  } catch (e) {
    // a browser that keeps nothing: boxes can still be ticked
  }
})();
