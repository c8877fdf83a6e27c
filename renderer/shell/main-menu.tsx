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
import { useHistory } from "../state/index.ts";
import "./main-menu.css";

/** All commands in one menu, for the browser and for whoever looks for a command by its name. */
export function MainMenu() {
  const history = useHistory();
  return (
    <MenuTrigger>
      <Button className="wordmark" aria-label="Wallyear, all commands">
        Wallyear
      </Button>
      <Popover className="menu-popover" placement="bottom start" offset={6}>
        <Menu className="main-menu" aria-label="Commands" onAction={(key) => runCommand(String(key))}>
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
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
