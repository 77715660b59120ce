/** Strength classes of EN 338 from weak to strong. */
export const strengthClasses = ['C14', 'C16', 'C18', 'C20', 'C22', 'C24', 'C27', 'C30'] as const;
/** Categories of use from the shortest load to one that stays. */
export const categories = ['short', 'hall', 'shelf', 'permanent'] as const;
/** Places from dry to wet. */
export const places = ['heated room', 'under cover', 'outdoors'] as const;
