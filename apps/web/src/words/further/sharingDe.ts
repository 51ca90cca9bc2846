import { toCounted } from "@halfloaf/words/toCounted";
import type { sharingEn } from "./sharingEn.ts";

const counted = toCounted("de");

/** Texts of shared kitchens in German. */
export const sharingDe: typeof sharingEn = {
  title: "Geteilt mit",
  withNobody: "mit niemandem",
  states: { apart: "Getrennt", joining: "Verbindet …", together: "Zusammen", refused: "Nicht eingelassen" },
  about: (host) =>
    `Mehrere Telefone und Rechner können diese Küche gemeinsam haben: Wer im Laden etwas abhakt, dessen Haken sehen alle sofort. Sie liegt dann auch auf dem Server ${host}.`,
  operator:
    "Wer den Server betreibt, kann die ganze Küche lesen: wer isst, was jemand nicht isst, was gekauft wird und für wie viel. Teilt sie nur auf einem Server von jemandem, dem ihr sie zeigen würdet.",
  deviceName: "Wie dieses Gerät bei den anderen heißt",
  phone: "Telefon",
  laptop: "Rechner",
  code: "Code, nach dem der Server fragt",
  share: "Diese Küche teilen",
  sharedOn: (host) => `Geteilt auf ${host}.`,
  here: (who) => `Auch hier: ${who}`,
  unsent: (count) =>
    counted(count, { one: "1 Eintrag ist noch nicht gesendet", other: `${count} Einträge sind noch nicht gesendet` }),
  roles: { keeper: "führt die Küche", cook: "kauft ein und kocht", reader: "liest nur" },
  roleHere: {
    cook: "Dieses Gerät kauft ein und kocht; Speisepläne, Gerichte und die Küche selbst ändert, wer sie führt.",
    reader: "Dieses Gerät liest nur; wer die Küche führt, kann ihm mehr erlauben.",
  },
  forbidden: {
    keeper: "Jetzt darf dieses Gerät das. Versuche es noch einmal.",
    cook: "Nichts wurde geändert: Dieses Gerät kauft ein und kocht. Alles andere ändert, wer die Küche führt, oder das Gerät, das es eingetragen hat.",
    reader: "Nichts wurde geändert: Dieses Gerät liest nur. Wer die Küche führt, kann ihm mehr erlauben.",
  },
  understood: "Verstanden",
  invite: "Einladen",
  may: "Was das Gerät darf",
  mayOf: (name) => `Was ${name} darf`,
  makeInvitation: "Einladung machen",
  invitationNote:
    "Dieser Link lässt ein Gerät ein, ein einziges Mal. Gib ihn nur dem Menschen, für den er ist; er steht nur dieses eine Mal hier.",
  onlyThisMachine:
    "Diese Adresse führt nur zu diesem Rechner: Andere Geräte können die Einladung nicht öffnen. Öffne die App unter der Adresse, die der Server für Telefone nennt, bringe diese Küche als Sicherung dorthin und teile sie dort.",
  link: "Link der Einladung",
  copy: "Link kopieren",
  copied: "Kopiert.",
  copyByHand: "Das Kopieren ging nicht; markiere den Link und kopiere ihn von Hand.",
  qr: "Der Link als QR-Code, für die Kamera des anderen Telefons",
  openInvitations: "Einladungen, die noch niemand benutzt hat:",
  until: (moment) => `bis ${moment}`,
  revoke: "Zurückziehen",
  devices: "Geräte",
  devicesLater: "Die Liste kommt vom Server, sobald er zu erreichen ist.",
  thisOne: "(dieses)",
  seen: (moment) => `zuletzt hier ${moment}`,
  removeSure: (name) =>
    `${name} entfernen? Das Gerät kommt nicht mehr herein. Was es von der Küche hat, bleibt auf ihm.`,
  calendars: "Kalenderadressen",
  calendarsAbout:
    "Ein Kalender, dem eine solche Adresse gegeben wird, zeigt, was gekocht und eingekauft wird, und folgt dem Speiseplan von selbst. Wer die Adresse hat, kann das lesen und sonst nichts, auch der Dienst hinter dem Kalender.",
  makeCalendar: "Adresse anlegen",
  calendarNote:
    "Diese Adresse wird hier einmal gezeigt. Sie gilt, bis sie zurückgezogen oder das Gerät entfernt wird, das sie angelegt hat.",
  calendarLink: "Adresse für den Kalender",
  openCalendar: "Dem Kalender dieses Geräts geben",
  madeOn: (moment) => `Angelegt ${moment}`,
  byThisOne: "von diesem Gerät",
  askedFor: (moment) => `zuletzt gelesen ${moment}`,
  leave: "Geteilte Küche verlassen",
  leaveSure: "Verlassen? Dieses Gerät behält, was es hat, und sendet und empfängt nichts mehr.",
  leaveNote: "Was auf diesem Gerät ist, bleibt hier.",
  deleteThere: "Auf dem Server löschen",
  deleteSure: "Die Küche auf dem Server löschen, für alle? Jedes Gerät behält, was es hat.",
  returned: (count) =>
    counted(count, { one: "1 Eintrag kam vom Server zurück", other: `${count} Einträge kamen vom Server zurück` }),
  returnedRemedy:
    "Sie zählen nur auf diesem Gerät. Ist die Ursache behoben, biete sie noch einmal an; was verworfen wird, ist hier weg, und dieses Gerät ist wie die anderen. Eine Sicherung behält sie alle.",
  offerAgain: "Noch einmal anbieten",
  drop: "Verwerfen",
  dropSure: "Verwerfen? Es verschwindet von diesem Gerät, als wäre es nie eingetragen worden; niemand sonst hat es.",
  refusals: {
    schema: "der Server versteht es nicht; lade das neueste Halfloaf",
    role: "dieses Gerät darf das nicht; wer die Küche führt, kann es ihm erlauben",
    "not-yours": "es nimmt zurück, was ein anderes Gerät schrieb; das kann jenes Gerät, oder wer die Küche führt",
    "writer-taken": "es trägt den Namen eines anderen Geräts; mache es noch einmal",
    "id-taken": "ein anderer Eintrag heißt so; mache es noch einmal",
    clock: "die Uhr dieses Geräts geht ganz falsch; stelle sie",
    "too-large": "es ist zu groß",
    "kitchen-full": "die Küche auf dem Server ist voll",
    act: "ein anderer Teil derselben Handlung kam zurück",
  },
  otherDevice: "einem anderen Gerät",
  tickedBy: (who) => `abgehakt von ${who}`,
  scan: {
    look: "QR-Code lesen",
    stop: "Kamera ausschalten",
    picture: "Bild der Kamera",
    hold: "Halte den Code in die Mitte des Bildes.",
    refused: "Die Kamera wurde verweigert. Erlaube sie dieser Seite im Browser, oder füge den Link ein.",
    missing: "Hier ist keine Kamera zu gebrauchen. Füge den Link ein.",
  },
  join: "Einer Küche beitreten",
  joinAnother: "Einer anderen Küche mit ihrem Link beitreten",
  joinAbout: "Lies den QR-Code der Einladung, oder füge ihren Link ein.",
  joinSure: (host) =>
    `Du bist in eine Küche auf ${host} eingeladen. Sie kommt auf dieses Gerät, und was du darin tust, sehen alle, die sie teilen. Ist schon eine Kopie davon hier, geht es mit ihr weiter, samt allem, was darin getan wurde; andere Küchen bleiben, wie sie sind.`,
  joinIt: "Beitreten",
  notNow: "Jetzt nicht",
  comes: "Die Küche kommt. Das geht von selbst weiter, sobald der Server zu erreichen ist.",
  elsewhere: (host) => `Diese Küche ist auf einem anderen Server, ${host}.`,
  openThere: "Einladung dort öffnen",
  otherReason: (reason) => `Der Server lehnte ab: ${reason}. Versuche es später noch einmal.`,
  reasons: {
    unreachable: "Der Server ist nicht zu erreichen. Alles bleibt hier; versuche es wieder, wenn es ein Netz gibt.",
    strange: "Dieser Server teilt keine Küchen, oder er ist von anderer Version. Alles bleibt hier.",
    storage: "Der Server kann gerade nichts aufbewahren. Mache weiter; es wird gesendet, sobald es geht.",
    "no-room": "Der Browser gibt keinen Platz für die Küche. Schaffe Platz und versuche es noch einmal.",
    "no-link": "Das ist nicht der Link einer Einladung. Kopiere ihn ganz, auch was hinter # steht.",
    "no-such-invitation":
      "Die Einladung ist benutzt, zurückgezogen oder zu alt. Bitte um eine neue: Jede lässt ein Gerät ein, ein einziges Mal.",
    "other-kitchen":
      "Der Server hat eine andere Küche unter diesem Namen. Nichts wurde vermischt; verlasse sie und tritt neu bei.",
    unknown:
      "Der Server kennt dieses Gerät nicht. Es wurde entfernt, oder die Küche wurde gelöscht; was hier ist, bleibt. Wer sie führt, kann es wieder einladen.",
    revoked: "Dieses Gerät wurde aus der Küche entfernt. Was hier ist, bleibt; wer sie führt, kann es wieder einladen.",
    deleted: "Die Küche wurde auf dem Server gelöscht. Was hier ist, bleibt und kann neu geteilt werden.",
    protocol: "Der Server spricht eine andere Version. Lade das neueste Halfloaf; was hier ist, bleibt.",
    malformed: "Der Server konnte nicht lesen, was dieses Gerät sandte. Lade die Seite neu; was hier ist, bleibt.",
    role: "Dieses Gerät darf das nicht. Wer die Küche führt, darf es.",
    "last-keeper": "Jemand muss die Küche führen. Lass das erst ein anderes Gerät tun, oder lösche sie auf dem Server.",
    "registration-closed": "Der Server nimmt keine neuen Küchen. Frage, wer ihn betreibt.",
    "code-needed": "Der Server nimmt neue Küchen nur mit einem Code. Den hat, wer ihn betreibt.",
    "too-many-invitations": "So viele Einladungen sind offen, dass keine mehr geht. Ziehe erst welche zurück.",
    "too-many-calendars": "Die Küche hat so viele Kalenderadressen, wie sie haben darf. Ziehe zuerst einige zurück.",
    "too-many-devices": "So viele Geräte sind in der Küche, dass keines mehr geht. Entferne erst welche.",
    "too-many-requests": "Zu viele Anfragen kamen aus diesem Netz. Warte eine Minute und versuche es noch einmal.",
    "too-many-mistakes":
      "Zu viele falsche Einladungen kamen aus diesem Netz. Warte einige Minuten und versuche es noch einmal.",
    "too-many-kitchens": "Zu viele neue Küchen kamen aus diesem Netz. Warte eine Stunde und versuche es noch einmal.",
  },
};
