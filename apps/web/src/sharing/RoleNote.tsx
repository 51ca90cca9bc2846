import type { Role } from "@halfloaf/keep/sync";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { useRole } from "./useMayWrite.ts";

/** What this device does in a shared kitchen and who can change that; nothing where it may do everything. */
export function RoleNote(): ReactNode {
  const role = useRole();
  return role === undefined || role === "keeper" ? null : <Told role={role} />;
}

function Told({ role }: { readonly role: Exclude<Role, "keeper"> }): ReactNode {
  const { further } = useFurther("sharing");
  return <p className="small soft">{further.sharing.roleHere[role]}</p>;
}
