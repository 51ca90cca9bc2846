import type { Membership } from "@halfloaf/keep/sync";
import { type HostStore, hashSecret, isFault, makeName, makeSecret } from "@halfloaf/server/host";

/** Makes a kitchen with so many devices straight in a store, past the limits for those who come over the network. */
export async function settleKitchen(store: HostStore, count: number): Promise<Membership[]> {
  const kitchen = makeName();
  const memberships: Membership[] = [];
  for (let at = 0; at < count; at++) {
    const [id, secret] = [makeName(), makeSecret()];
    const secretHash = hashSecret(secret);
    const device = { id, kitchen, name: `Phone ${at + 1}`, role: "keeper" as const, secretHash, madeAtMs: 0 };
    const seen = { ...device, seenAtMs: Date.now() };
    if (at === 0) refuseFault(await store.makeKitchen({ id: kitchen, log: makeName() }, seen));
    else {
      const invitation = {
        id: makeName(),
        kitchen,
        role: "keeper" as const,
        secretHash,
        madeBy: id,
        expiresAtMs: 1e15,
      };
      refuseFault(await store.addInvitation(invitation, 0));
      refuseFault(await store.useInvitation(invitation.id, seen, 1));
    }
    memberships.push({ server: "", kitchen, device: id, credential: `${id}.${secret}` });
  }
  return memberships;
}

function refuseFault(outcome: unknown): void {
  if (isFault(outcome)) throw new Error(`${outcome.reason}: ${outcome.detail}`);
}
