/** What a refusal says, without what it quotes: a person who writes NaN is told that NaN was got. */
export const unquoted = (message: string): string => message.replace(/"(?:[^"\\]|\\.)*(?:"|\.\.\.)/g, '');
