package org.amberyard.workbench.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.Parameterization;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;

/** What stands in the menus of a window, by the words of the menus and with its keys. */
public final class MenuEntries {
    private static final String OWN = "org.amberyard.workbench";
    private static final String MENU = "menu:";

    private final ICommandService commands;
    private final IBindingService bindings;

    /**
     * A line of a menu.
     *
     * @param menu id of the menu of the bar in which it stands
     * @param within label of the submenu in which it stands, or of what it chooses a value of; blank where there is neither
     * @param label its words, without the mark of their letter
     * @param command what it does
     * @param keys keys that do the same, the first of them the one that menus show
     */
    public record Entry(String menu, String within, String label, ParameterizedCommand command, List<String> keys) {
        public Entry {
            keys = List.copyOf(keys);
        }
    }

    /** Those of a window. */
    public MenuEntries(IWorkbenchWindow window) {
        commands = window.getService(ICommandService.class);
        bindings = window.getService(IBindingService.class);
    }

    /** All of them, menu by menu. */
    public List<Entry> all() {
        List<Entry> entries = new ArrayList<>();
        for (IConfigurationElement part : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.menus")) {
            String place = String.valueOf(part.getAttribute("locationURI"));
            if (part.getContributor().getName().equals(OWN) && place.startsWith(MENU)) {
                collect(part, place.substring(MENU.length()), "", entries);
            }
        }
        return entries;
    }

    private void collect(IConfigurationElement part, String menu, String within, List<Entry> entries) {
        for (IConfigurationElement child : part.getChildren()) {
            if (child.getName().equals("menu")) {
                collect(child, menu, bare(child.getAttribute("label")), entries);
            } else if (child.getName().equals("command")) {
                entry(child, menu, within).ifPresent(entries::add);
            }
        }
    }

    private Optional<Entry> entry(IConfigurationElement item, String menu, String within) {
        Command command = commands.getCommand(item.getAttribute("commandId"));
        try {
            Parameterization[] parameters = parameters(command, item);
            ParameterizedCommand doing = new ParameterizedCommand(command, parameters);
            String label = item.getAttribute("label") == null ? command.getName() : bare(item.getAttribute("label"));
            String among = within.isEmpty() && parameters.length > 0 ? command.getName() : within;
            return Optional.of(new Entry(menu, among, label, doing, keys(doing)));
        } catch (NotDefinedException e) {
            return Optional.empty();
        }
    }

    private static Parameterization[] parameters(Command command, IConfigurationElement item) throws NotDefinedException {
        List<Parameterization> all = new ArrayList<>();
        for (IConfigurationElement given : item.getChildren("parameter")) {
            all.add(new Parameterization(command.getParameter(given.getAttribute("name")), given.getAttribute("value")));
        }
        return all.toArray(Parameterization[]::new);
    }

    private List<String> keys(ParameterizedCommand command) {
        return Arrays.stream(bindings.getActiveBindingsFor(command)).map(TriggerSequence::format).toList();
    }

    /** Words of a menu without the mark of their letter. */
    private static String bare(String label) {
        return LegacyActionTools.removeMnemonics(label);
    }
}
