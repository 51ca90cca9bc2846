import { expose } from "comlink";
import { tellPage } from "../../loading/openWorker.ts";
import { Reasoner } from "./Reasoner.ts";

expose(new Reasoner());
tellPage();
