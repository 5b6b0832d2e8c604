package org.amberyard.workbench.handlers;

import java.util.Map;
import org.amberyard.workbench.columns.ColumnMenu;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** Does something with the table in focus; what it is stands behind the class name in the extension. */
public final class TableHandler extends AbstractHandler implements IExecutableExtension {

    private static final Map<String, Runnable> ACTIONS = Map.of(
            "add", () -> FeatureTable.inFocus().ifPresent(FeatureTable::addElement),
            "delete", () -> FeatureTable.inFocus().ifPresent(FeatureTable::deleteElements),
            "fillDown", () -> Grid.inFocus().ifPresent(Grid::fillDown),
            "note", () -> FeatureTable.inFocus().ifPresent(FeatureTable::note),
            "filter", () -> Grid.inFocus().ifPresent(Grid::askFilter),
            "columns", ColumnMenu::choose,
            "copyBare", () -> Grid.inFocus().ifPresent(Grid::copyBare),
            "copyPlain", () -> Grid.inFocus().ifPresent(Grid::copyPlain));

    private Runnable action;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        action = ACTIONS.get(data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        action.run();
        return null;
    }
}
