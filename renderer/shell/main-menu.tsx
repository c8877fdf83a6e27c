import {
  Button,
  Header,
  Keyboard,
  Menu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
  Text,
} from "react-aria-components";
import { commands, menuNames } from "../../electron/shared/index.ts";
import { keyWords, labelOf, runCommand } from "../commands/index.ts";
import { useState } from "react";
import type { HostReference } from "../../electron/shared/index.ts";
import { host } from "../host.ts";
import { openRecent } from "../state/documents.ts";
import { useHistory } from "../state/index.ts";
import "./main-menu.css";

const recentPrefix = "recent:";

/** All commands in one menu, for the browser and for whoever looks for a command by its name. */
export function MainMenu() {
  const history = useHistory();
  const [recent, setRecent] = useState<readonly HostReference[]>([]);
  const act = (key: string): void => {
    if (key.startsWith(recentPrefix)) void openRecent(key.slice(recentPrefix.length));
    else runCommand(key);
  };
  return (
    <MenuTrigger
      onOpenChange={(open) => {
        if (open) host.recent().then(setRecent, () => setRecent([]));
      }}
    >
      <Button className="wordmark" aria-label="Wallyear, all commands">
        Wallyear
      </Button>
      <Popover className="menu-popover" placement="bottom start" offset={6}>
        <Menu className="main-menu" aria-label="Commands" onAction={(key) => act(String(key))}>
          {menuNames.map((menu) => (
            <MenuSection key={menu} className="menu-section">
              <Header className="menu-header">{menu}</Header>
              {commands
                .filter((command) => command.menu === menu)
                .map((command) => (
                  <MenuItem
                    key={command.id}
                    id={command.id}
                    className="menu-item"
                    textValue={command.label}
                    isDisabled={
                      (command.id === "edit.undo" && history.undo === null) ||
                      (command.id === "edit.redo" && history.redo === null)
                    }
                  >
                    <Text slot="label">{labelOf(command.id, history)}</Text>
                    {"keys" in command && <Keyboard className="menu-keys">{keyWords(command.keys)}</Keyboard>}
                  </MenuItem>
                ))}
            </MenuSection>
          ))}
          {recent.length > 0 && (
            <MenuSection className="menu-section">
              <Header className="menu-header">Recent</Header>
              {recent.map(({ handle, name }) => (
                <MenuItem key={handle} id={`${recentPrefix}${handle}`} className="menu-item" textValue={name}>
                  <Text slot="label">{name}</Text>
                </MenuItem>
              ))}
            </MenuSection>
          )}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
