package org.amberyard.workbench.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.amberyard.core.plan.Role;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A row of a form in which the roles of places are chosen. */
final class RoleChoice {
    private static final Map<Role, String> NAMES = Map.of(Role.ROUTE, Messages.Fill_route, Role.SPARE, Messages.Fill_spare,
            Role.ACTIVITY, Messages.Fill_activity);

    private final Map<Role, Button> roles = new EnumMap<>(Role.class);

    /** @param atFirst roles that are chosen to begin with */
    RoleChoice(Composite area, Predicate<Role> atFirst) {
        Composite row = FormRow.of(area, Messages.Fill_places);
        for (Role role : Role.values()) {
            Button button = new Button(row, SWT.CHECK);
            button.setText(NAMES.get(role));
            button.setSelection(atFirst.test(role));
            roles.put(role, button);
        }
    }

    /** Runs something whenever others are chosen. */
    void listen(Runnable changed) {
        roles.values().forEach(button -> button.addListener(SWT.Selection, e -> changed.run()));
    }

    Set<Role> chosen() {
        return roles.keySet().stream().filter(r -> roles.get(r).getSelection()).collect(Collectors.toSet());
    }
}
