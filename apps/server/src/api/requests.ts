import { GivenName, ROLES } from "@halfloaf/keep/sync";
import * as v from "valibot";

/** What a device is called by those who see it in a list. */
const DeviceName = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));

/** The longest and the usual time that an invitation holds, in hours. */
const HOURS = { most: 24 * 14, usual: 48 };

/** What is asked with each question over HTTP. */
export const NewKitchen = v.strictObject({
  device: DeviceName,
  code: v.optional(v.pipe(v.string(), v.maxLength(200))),
});
export const NewInvitation = v.strictObject({
  role: v.picklist(ROLES),
  hours: v.optional(v.pipe(v.number(), v.minValue(0.01), v.maxValue(HOURS.most)), HOURS.usual),
});
export const Joining = v.strictObject({
  kitchen: GivenName,
  code: v.pipe(v.string(), v.maxLength(200)),
  device: DeviceName,
});
export const NewRole = v.strictObject({ role: v.picklist(ROLES) });
