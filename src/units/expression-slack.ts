/** ` - 10^(-9)` inside a ceiling or a floor: it keeps rounding from counting an error of the last digit. */
const slack = / [-+] 10\^\(-\d+\)/;

/** The expression as a reader sees it: without the slack of its rounding. */
export const withoutSlack = (expression: string): string => expression.replace(slack, '');
