import { expose } from "comlink";
import { Reasoner } from "./Reasoner.ts";

expose(new Reasoner());
