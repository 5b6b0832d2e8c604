package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.core.commands.Command;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Every command can be reached by key and by menu, says what it does, and is the only one with its key. */
@ExtendWith(WorkbenchExtension.class)
class CommandsTest {

    private static final String OURS = "org.amberyard.workbench.";
    private static final String SCHEME = "org.amberyard.workbench.keys";

    @Test
    void everyCommandHasAKey(Display display) {
        Set<String> bound = new HashSet<>();
        display.syncExec(() -> bindings().forEach(b -> bound.add(b.getParameterizedCommand().getId())));
        assertEquals(List.of(), commands(display).stream().filter(c -> !bound.contains(c)).toList(), "commands without a key");
    }

    @Test
    void everyCommandStandsInAMenuWithATooltip(Display display) {
        Set<String> inMenus = new HashSet<>();
        List<String> silent = new ArrayList<>();
        for (IConfigurationElement item : menuItems()) {
            inMenus.add(item.getAttribute("commandId"));
            if (item.getAttribute("commandId").startsWith(OURS) && blank(item.getAttribute("tooltip"))) {
                silent.add(item.getAttribute("commandId"));
            }
        }
        assertEquals(List.of(), commands(display).stream().filter(c -> !inMenus.contains(c)).toList(), "commands in no menu");
        assertEquals(List.of(), silent, "menu items that do not say what they do");
    }

    @Test
    void noTwoCommandsShareAKey(Display display) {
        Set<String> seen = new HashSet<>();
        Set<String> twice = new TreeSet<>();
        display.syncExec(() -> bindings().forEach(b -> {
            if (!seen.add(b.getTriggerSequence().format())) {
                twice.add(b.getTriggerSequence().format());
            }
        }));
        assertEquals(Set.of(), twice);
    }

    /** GTK leaves keys of two strokes out of its menus; other platforms show what stands behind a tab. */
    @Test
    void menusShowKeysOfTwoStrokes(Display display) {
        Menu edit = display.syncCall(() -> OpenStudy.page().getWorkbenchWindow().getShell().getMenuBar().getItem(1).getMenu());
        // When it opens for the first time, its items are made.
        for (int type : new int[] {SWT.Show, SWT.Hide, SWT.Show}) {
            display.syncExec(() -> edit.notifyListeners(type, new Event()));
        }
        String keys = "gtk".equals(SWT.getPlatform()) ? "   (Ctrl+L P)" : "\tCtrl+L P";
        OpenStudy.await(display, () -> Arrays.stream(edit.getItems()).map(item -> item.getText().replace("&", ""))
                .anyMatch(("Copy without thousands separators" + keys)::equals));
        display.syncExec(() -> edit.notifyListeners(SWT.Hide, new Event()));
    }

    private static List<Binding> bindings() {
        return Arrays.stream(OpenStudy.page().getWorkbenchWindow().getService(IBindingService.class).getBindings())
                .filter(b -> SCHEME.equals(b.getSchemeId()) && b.getParameterizedCommand() != null).toList();
    }

    private static List<String> commands(Display display) {
        return display.syncCall(() -> Arrays.stream(OpenStudy.page().getWorkbenchWindow().getService(ICommandService.class)
                .getDefinedCommands()).map(Command::getId).filter(id -> id.startsWith(OURS)).sorted().toList());
    }

    private static List<IConfigurationElement> menuItems() {
        List<IConfigurationElement> items = new ArrayList<>();
        for (IConfigurationElement part : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.menus")) {
            if (part.getContributor().getName().equals("org.amberyard.workbench")) {
                collect(part, items);
            }
        }
        return items;
    }

    private static void collect(IConfigurationElement part, List<IConfigurationElement> items) {
        if (part.getName().equals("command")) {
            items.add(part);
        }
        Arrays.stream(part.getChildren()).forEach(child -> collect(child, items));
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
