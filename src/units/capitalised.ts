/** With a capital letter, as a title, a label or a sentence begins. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
