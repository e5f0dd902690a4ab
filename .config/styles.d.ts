/** A style sheet, imported for its effect: webpack collects it into the page's own. */
declare module '*.css';
