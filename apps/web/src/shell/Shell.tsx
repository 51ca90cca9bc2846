import { type ReactNode, useContext } from "react";
import { Link, Route, Switch, useLocation } from "wouter";
import { useDevice, useOpening } from "../kitchen/KitchenProvider.tsx";
import { NotKept } from "../kitchen/NotKept.tsx";
import { OpeningScreen } from "../kitchen/OpeningScreen.tsx";
import { WasMended } from "../kitchen/WasMended.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { LateLine } from "../loading/LateLine.tsx";
import { lazily } from "../loading/lazily.ts";
import "../sharing/invited.ts";
import { joiningId } from "../sharing/joining.ts";
import { useShared } from "../sharing/shared.ts";
import { DrawnAhead } from "../shown/DrawnAhead.ts";
import { KeepShown } from "../shown/KeepShown.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { Broken } from "./Broken.tsx";
import { LoadNewer } from "./LoadNewer.tsx";
import { isAt, SCREENS, type Screen } from "./screens.ts";
import { useArrival } from "./useArrival.ts";
import "./shell.css";

const JoinScreen = lazily(() => import("../sharing/JoinScreen.tsx"));
const SharingLine = lazily(() => import("../sharing/SharingLine.tsx"));
const CookingBar = lazily(() => import("../work/CookingBar.tsx"));

/** The frame around every screen, and what keeps it for the next start. */
export function Shell(): ReactNode {
  return (
    <>
      <Frame />
      <KeepShown draw={drawFrame} />
    </>
  );
}

function drawFrame(): ReactNode {
  return <Frame />;
}

/** The ways to the screens, and the page. */
function Frame(): ReactNode {
  const { words } = useWords();
  const opening = useOpening();
  const [location] = useLocation();
  const here = SCREENS.find((screen) => isAt(screen, location));
  const isJoining = location === "/join" || (opening.kind === "none" && joiningId() !== undefined);
  // A joining that is under way must not be broken off where the device's own kitchen opens meanwhile.
  const key = isJoining ? "join" : opening.kind === "open" ? "open" : location;
  useArrival(location, here === undefined ? "Halfloaf" : `${words.screens[here.name]} – Halfloaf`);
  return (
    <div className="shell">
      <a className="skip" href="#page">
        {words.shell.skip}
      </a>
      <main id="page" className="page" tabIndex={-1}>
        <LoadNewer />
        <LateLine />
        <Broken key={key} words={words.shell}>
          <Awaited>
            {isJoining ? <JoinScreen /> : opening.kind === "open" ? <Pages /> : <OpeningScreen opening={opening} />}
          </Awaited>
        </Broken>
      </main>
      {opening.kind === "open" && <Ways />}
    </div>
  );
}

function Pages(): ReactNode {
  const { words } = useWords();
  const [location] = useLocation();
  const { device } = useDevice();
  const shared = useShared(device.open);
  const isDrawnAhead = useContext(DrawnAhead);
  return (
    <>
      <NotKept />
      <WasMended />
      {shared !== undefined && !isDrawnAhead && (
        <Awaited isBeside>
          <SharingLine />
        </Awaited>
      )}
      {location !== "/work" && !isDrawnAhead && (
        <Awaited isBeside>
          <CookingBar />
        </Awaited>
      )}
      {/* A screen that is left, on its way or broken must not end what goes on above it: the talk with the server, the timers. */}
      <Broken key={location} words={words.shell}>
        <Awaited>
          <Switch>
            {SCREENS.map(({ path, name, hasPages, Component }) => (
              <Route key={name} path={hasPages ? `${path}/*?` : path}>
                <Component />
              </Route>
            ))}
            <Route path="/more">
              <More />
            </Route>
            <Route>
              <p>{words.shell.lost}</p>
              <Link href="/">{words.shell.toToday}</Link>
            </Route>
          </Switch>
        </Awaited>
      </Broken>
    </>
  );
}

function Ways(): ReactNode {
  const { words } = useWords();
  const [location] = useLocation();
  const isBehindMore = location === "/more" || SCREENS.some((screen) => !screen.first && isAt(screen, location));
  return (
    <nav className="ways" aria-label={words.shell.ways}>
      <ul>
        {SCREENS.map((screen) => (
          <li key={screen.name} className={screen.first ? undefined : "broad"}>
            <Way screen={screen} isHere={isAt(screen, location)} />
          </li>
        ))}
        <li className="narrow">
          <Link href="/more" aria-current={isBehindMore ? "page" : undefined}>
            {words.shell.more}
          </Link>
        </li>
      </ul>
    </nav>
  );
}

function Way({ screen, isHere }: { readonly screen: Screen; readonly isHere: boolean }): ReactNode {
  const { words } = useWords();
  return (
    <Link href={screen.path} aria-current={isHere ? "page" : undefined}>
      {words.screens[screen.name]}
    </Link>
  );
}

/** The screens that have no place along the foot of a narrow page. */
function More(): ReactNode {
  const { words } = useWords();
  return (
    <div className="stack">
      <h1>{words.shell.more}</h1>
      <ul className="lines">
        {SCREENS.filter(({ first }) => !first).map(({ path, name }) => (
          <li key={name}>
            <Link href={path}>{words.screens[name]}</Link>
          </li>
        ))}
      </ul>
    </div>
  );
}
