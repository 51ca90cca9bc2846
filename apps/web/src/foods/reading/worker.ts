import { expose } from "comlink";
import { tellPage } from "../../loading/openWorker.ts";
import { TableDesk } from "./TableDesk.ts";

expose(new TableDesk());
tellPage();
