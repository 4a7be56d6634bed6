const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/**
 * A picture's name as it may stand in markup.
 * @example escape('"cord" & wheel') // '&quot;cord&quot; &amp; wheel'
 */
export const escape = (text: string): string => text.replace(/[&<>"]/g, (c) => ESCAPES[c]!);
