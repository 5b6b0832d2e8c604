package org.amberyard.workbench.handlers;

import java.util.Map;
import java.util.function.Consumer;
import org.amberyard.workbench.fields.FeatureTable;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** Does something with the table in focus; what it is stands behind the class name in the extension. */
public final class TableHandler extends AbstractHandler implements IExecutableExtension {

    private static final Map<String, Consumer<FeatureTable>> ACTIONS = Map.of("add", FeatureTable::addElement, "delete",
            FeatureTable::deleteElements, "fillDown", t -> t.grid().fillDown(), "copyBare", t -> t.grid().copyBare());

    private Consumer<FeatureTable> action;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        action = ACTIONS.get(data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        FeatureTable.inFocus().ifPresent(action);
        return null;
    }
}
