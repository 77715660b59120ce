const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it may stand between the tags of a page, and in a quoted attribute. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (c) => entities[c] ?? c);
