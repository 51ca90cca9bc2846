/** Where a cooking under way is remembered on the device. */
export const COOKING_KEY = "halfloaf-cooking";
