export { letterOf, listTicks, type TimelineWords, timelineSvg } from "./timelineSvg.ts";
