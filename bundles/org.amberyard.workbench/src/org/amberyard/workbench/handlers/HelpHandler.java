package org.amberyard.workbench.handlers;

import java.util.stream.Collectors;
import org.amberyard.report.Cautions;
import org.amberyard.workbench.language.Words;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.handlers.HandlerUtil;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;

/** Shows a text of the help; which one stands behind the class name in the extension. */
public final class HelpHandler extends AbstractHandler implements IExecutableExtension {

    private String topic;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        topic = String.valueOf(data);
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        MessageDialog.open(MessageDialog.INFORMATION, HandlerUtil.getActiveShellChecked(event), title(), text(), 0,
                Messages.Close);
        return null;
    }

    private String title() {
        return switch (topic) {
            case "cautions" -> Messages.Cautions_title;
            default -> Messages.About_title;
        };
    }

    private String text() {
        return switch (topic) {
            case "cautions" -> Cautions.SENTENCES.stream().map(Words::say).collect(Collectors.joining("\n\n"));
            default -> NLS.bind(Messages.About_text, version());
        };
    }

    private static String version() {
        Version version = FrameworkUtil.getBundle(HelpHandler.class).getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }
}
