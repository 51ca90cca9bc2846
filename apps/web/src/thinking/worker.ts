import { expose } from "comlink";
import { tellPage } from "../loading/openWorker.ts";
import { Thinker } from "./Thinker.ts";

expose(new Thinker());
tellPage();
