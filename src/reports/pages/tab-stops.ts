/**
 * A box that is wider than the page can be scrolled by keys, and so the Tab key stops at it; where it fits, the stop is
 * taken away again. Without scripts every such box is a stop, which loses nothing but a keypress.
 */
export const TAB_STOPS_SCRIPT = `(() => {
  'use strict';
  const boxes = document.querySelectorAll('.wide');
  const setStops = () => {
    for (const box of boxes) {
      if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
      else box.removeAttribute('tabindex');
    }
  };
  setStops();
  addEventListener('resize', setStops);
})();
`;
