/** More widths than any window takes: beyond it a number was mistyped, and counting on would only hide it. */
export const MOST_WIDTHS = 1000;
