import { expose } from "comlink";
import { Thinker } from "./Thinker.ts";

expose(new Thinker());
