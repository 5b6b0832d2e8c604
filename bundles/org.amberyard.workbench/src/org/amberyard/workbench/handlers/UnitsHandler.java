package org.amberyard.workbench.handlers;

import java.util.Map;
import java.util.Optional;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Shows the study in other units. The choice is part of the study; no stored value changes. */
public final class UnitsHandler extends AbstractHandler implements IElementUpdater {

    private static final String CHOICE = "org.amberyard.workbench.units.choice";

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(settings().isPresent());
    }

    private static Optional<Settings> settings() {
        return ActiveSession.here().get().map(s -> s.study().getSettings());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (!OpenEntry.close(event)) {
            return null;
        }
        UnitChoice choice = UnitChoice.valueOf(event.getParameter(CHOICE));
        ActiveSession.here().get().ifPresent(session -> settings().filter(s -> s.getUnits() != choice)
                .ifPresent(s -> session.set(s, StudyPackage.Literals.SETTINGS__UNITS, choice)));
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(settings().filter(s -> s.getUnits().name().equals(parameters.get(CHOICE))).isPresent());
    }
}
