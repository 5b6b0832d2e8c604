package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** The studies that were opened last, as a menu. */
public final class RecentMenu extends CompoundContributionItem {

    @Override
    protected IContributionItem[] getContributionItems() {
        List<Path> files = RecentStudies.list();
        IContributionItem[] items = new IContributionItem[files.size()];
        for (int i = 0; i < items.length; i++) {
            items[i] = item(i + 1, files.get(i));
        }
        return items;
    }

    private static IContributionItem item(int number, Path file) {
        CommandContributionItemParameter item = new CommandContributionItemParameter(
                PlatformUI.getWorkbench().getActiveWorkbenchWindow(), null, OpenStudyHandler.COMMAND,
                CommandContributionItem.STYLE_PUSH);
        item.label = "&" + number + "  " + file.getFileName() + "  –  " + file.getParent();
        item.parameters = Map.of(OpenStudyHandler.FILE, file.toString());
        return new CommandContributionItem(item);
    }
}
