/** What a refusal says, without what it quotes: a user who writes NaN reads that it was got. */
export const unquoted = (message: string): string => message.replace(/"(?:[^"\\]|\\.)*(?:"|\.\.\.)/g, '');
