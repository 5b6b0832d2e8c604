package org.amberyard.workbench.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.find.Section.Line;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.IParameter;
import org.eclipse.core.commands.Parameterization;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.keys.IBindingService;

/** What stands in the menus and can be done now, by the words of the menu and with its key; views are found as views. */
final class MenuCommands {
    private static final String OWN = "org.amberyard.workbench";
    private static final String FIND = "org.amberyard.workbench.find";
    private static final String SHOW_VIEW = "org.eclipse.ui.views.showView";

    private final IWorkbenchWindow window;
    private final IHandlerService handlers;
    private final Control focus;

    /** @param window in it and for what has the focus now is done what is chosen */
    MenuCommands(IWorkbenchWindow window) {
        this.window = window;
        this.handlers = window.getService(IHandlerService.class);
        this.focus = window.getShell().getDisplay().getFocusControl();
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Arrays.stream(Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.menus"))
                .filter(part -> part.getContributor().getName().equals(OWN) && String.valueOf(part.getAttribute("locationURI")).startsWith("menu:"))
                .forEach(part -> collect(part, "", lines));
        return lines;
    }

    /** @param within label of the submenu that the part is; blank for a menu of the bar */
    private void collect(IConfigurationElement part, String within, List<Line> lines) {
        for (IConfigurationElement child : part.getChildren()) {
            if (child.getName().equals("menu")) {
                collect(child, bare(child.getAttribute("label")), lines);
            } else if (child.getName().equals("command")) {
                line(child, within).ifPresent(lines::add);
            }
        }
    }

    private Optional<Line> line(IConfigurationElement item, String within) {
        String id = item.getAttribute("commandId");
        Command command = window.getService(ICommandService.class).getCommand(id);
        command.setEnabled(handlers.getCurrentState());
        if (id.equals(FIND) || id.equals(SHOW_VIEW) || !command.isHandled() || !command.isEnabled()) {
            return Optional.empty();
        }
        try {
            Parameterization[] parameters = parameters(command, item);
            ParameterizedCommand doing = new ParameterizedCommand(command, parameters);
            String name = item.getAttribute("label") == null ? command.getName() : bare(item.getAttribute("label"));
            String among = within.isEmpty() && parameters.length > 0 ? command.getName() : within;
            return Optional.of(new Line(named(among.isEmpty() ? name : NLS.bind(Messages.Find_within, among, name), doing), () -> run(doing)));
        } catch (NotDefinedException e) {
            return Optional.empty();
        }
    }

    private static Parameterization[] parameters(Command command, IConfigurationElement item) throws NotDefinedException {
        List<Parameterization> all = new ArrayList<>();
        for (IConfigurationElement given : item.getChildren("parameter")) {
            IParameter parameter = command.getParameter(given.getAttribute("name"));
            all.add(new Parameterization(parameter, given.getAttribute("value")));
        }
        return all.toArray(Parameterization[]::new);
    }

    /** Words of a menu without the mark of their letter. */
    private static String bare(String label) {
        return LegacyActionTools.removeMnemonics(label);
    }

    private String named(String words, ParameterizedCommand command) {
        TriggerSequence[] keys = window.getService(IBindingService.class).getActiveBindingsFor(command);
        return keys.length == 0 ? words : NLS.bind(Messages.Find_named, words, keys[0].format());
    }

    /** Once the list has gone, what had the focus has it again, and is what the command is for. */
    private void run(ParameterizedCommand command) {
        window.getShell().getDisplay().asyncExec(() -> {
            if (window.getShell().isDisposed()) {
                return;
            }
            window.getShell().forceActive();
            if (focus != null && !focus.isDisposed()) {
                focus.setFocus();
            }
            try {
                IEvaluationContext here = handlers.createContextSnapshot(false);
                // That of the list is still said to be the active one.
                here.addVariable(ISources.ACTIVE_SHELL_NAME, window.getShell());
                handlers.executeCommandInContext(command, null, here);
            } catch (CommandException e) {
                // It could be done when it was listed, and cannot any more.
                ILog.of(MenuCommands.class).error(e.getMessage(), e);
            }
        });
    }
}
